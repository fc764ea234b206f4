import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { CutPiece } from '../../draft/piece.ts';
import { type Fitted, fitToCloth, type Unfitted } from './fit-to-cloth.ts';
import { biasItem, type LayItem, layItem } from './lay-items.ts';
import type { LayPlan } from './lay-plan.ts';
import type { LayerInLay, LayToPlan } from './lay-to-plan.ts';

/** All that is cut in one lay, made to fit the width of the cloth: layer by layer. */
export interface FittedLayers extends Pick<LayPlan, 'joins' | 'railroaded'> {
  readonly items: readonly LayItem[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Undefined items where a piece cannot be cut from this cloth. */
export function fitLayers(toLay: LayToPlan): FittedLayers | Unfitted {
  const shaped = new Map<CutPiece, LayItem>();
  const fitted = toLay.layers.map((layer) => ({ layer, ...fitLayer(layer, toLay, shaped) }));
  const diagnostics = fitted.flatMap((own) => own.diagnostics);
  const fitting = fitted.filter((own) => own.items !== undefined);
  if (fitting.length < fitted.length) return { items: undefined, diagnostics };
  return {
    items: fitting.flatMap(({ items }) => items),
    joins: fitting.flatMap(({ joins }) => joins),
    railroaded: fitting.flatMap(({ railroaded, layer }) => (railroaded ? [layer.name] : [])),
    diagnostics,
  };
}

/** @param shaped by piece: a piece that several layers have is shaped once */
function fitLayer(
  { name, seam }: LayerInLay,
  toLay: LayToPlan,
  shaped: Map<CutPiece, LayItem>,
): Fitted | Unfitted {
  const { cloth, facts, span, say } = toLay;
  const items = toLay.pieces
    .filter(({ layers }) => layers.includes(name))
    .map((cut) => {
      const item = shaped.get(cut) ?? (cut.piece.bias ? biasItem(cut, name) : layItem(cut, name));
      shaped.set(cut, item);
      return { ...item, layer: name };
    });
  return fitToCloth(items, { layer: name, cloth, facts, seam, span, say });
}
