import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { bendsTighterThan } from '../geometry/offset.ts';
import type { LayerSpec, Spec } from '../gown-file/spec.ts';
import { allowancePlan, partPlan } from './allowance-plan.ts';

/** An edge that bends tighter than its allowance is wide: its cut line would fold over itself. */
export interface FoldedEdge {
  readonly gore: string;
  readonly layer: string;
  readonly edge: string;
  /** Of the allowance, mm. */
  readonly width: number;
}

/** Every such edge, found without drawing a cut line. */
export function foldedEdges(spec: Spec, layers: readonly LayerDraft[], parts: readonly Part[]): FoldedEdge[] {
  const seen = new Set<string>();
  const foldedOf = (piece: Piece, layer: LayerSpec, widths: Readonly<Record<string, number>>): FoldedEdge[] =>
    piece.edges
      .filter(({ name, curves }) => curves.some((curve) => bendsTighterThan(curve, widths[name] ?? 0)))
      .map(({ name }) => ({ gore: piece.gore, layer: layer.name, edge: name, width: widths[name] ?? 0 }))
      .filter(({ gore, edge, width }) => {
        const key = `${gore} ${edge} ${width}`;
        return !seen.has(key) && seen.add(key);
      });
  return [
    ...layers.flatMap(({ layer, draft }) =>
      draft.pieces
        .filter((piece) => layer.gores === undefined || layer.gores.includes(piece.gore))
        .flatMap((piece) => {
          const { widths, roughCut } = allowancePlan(spec, layer, piece);
          return foldedOf(piece, layer, { ...widths, hem: (widths.hem ?? 0) + roughCut });
        }),
    ),
    ...parts.flatMap((part) => foldedOf(part.piece, part.layer, partPlan(spec, part).widths)),
  ];
}
