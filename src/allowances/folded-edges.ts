import type { Span } from '../diagnostics/diagnostic.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { bendsTighterThan } from '../geometry/offset.ts';
import { hasGore, type Layer } from '../gown/layer.ts';
import { allowancePlan, partPlan } from './allowance-plan.ts';

/** An edge that bends tighter than its allowance is wide: its cut line would fold over itself. */
export interface FoldedEdge {
  readonly gore: string;
  /** Called by the gores that it faces. */
  readonly facing?: true;
  readonly layer: string;
  readonly edge: string;
  /** Of the allowance, mm. */
  readonly width: number;
  /** Of the gore or the part. */
  readonly place: () => Span;
}

/** Every such edge, found without drawing a cut line. */
export function foldedEdges(layers: readonly LayerDraft[], parts: readonly Part[]): FoldedEdge[] {
  const seen = new Set<string>();
  const foldedOf = (
    piece: Piece,
    layer: Layer,
    widths: Readonly<Record<string, number>>,
    place: () => Span,
  ): FoldedEdge[] =>
    piece.edges
      .filter(({ name, curves }) => curves.some((curve) => bendsTighterThan(curve, widths[name] ?? 0)))
      .map(({ name }) => ({
        gore: piece.gore,
        ...(piece.part === 'facing' && { facing: true as const }),
        layer: layer.name,
        edge: name,
        width: widths[name] ?? 0,
        place,
      }))
      .filter(({ gore, edge, width }) => {
        const key = `${gore} ${edge} ${width}`;
        return !seen.has(key) && seen.add(key);
      });
  return [
    ...layers.flatMap(({ layer, draft }) =>
      draft.pieces
        .map((piece, i) => ({ piece, gore: draft.gown.gores[i]! }))
        .filter(({ gore }) => hasGore(layer, gore))
        .flatMap(({ piece, gore }) => {
          const { widths, roughCut } = allowancePlan(layer, piece, gore.roughCut);
          return foldedOf(piece, layer, { ...widths, hem: (widths.hem ?? 0) + roughCut }, gore.place);
        }),
    ),
    ...parts.flatMap((part) => foldedOf(part.piece, part.layer, partPlan(part).widths, part.place)),
  ];
}
