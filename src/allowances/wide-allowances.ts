import type { Span } from '../diagnostics/diagnostic.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { FIT } from '../geometry/tolerances.ts';
import { hasGore } from '../gown/layer.ts';
import { allowancePlan } from './allowance-plan.ts';

/** A gore at whose top an allowance that is pressed open would stand out beyond both of its sides. */
export interface WideAllowance {
  readonly gore: string;
  readonly layer: string;
  /** The seam and its allowance, and how wide the gore is at its upper cut line, mm. */
  readonly edge: string;
  readonly width: number;
  readonly top: number;
  /** Of the gore. */
  readonly place: () => Span;
}

/** How much wider than the gore an allowance may be, as a multiple: folded back it then reaches over the other side's. */
const WIDEST = 1.9;

export function wideAllowances(layers: readonly LayerDraft[]): WideAllowance[] {
  return layers.flatMap(({ layer, draft }) =>
    draft.pieces
      .map((piece, i) => ({ piece, gore: draft.gown.gores[i]! }))
      .filter(({ gore }) => hasGore(layer, gore))
      .flatMap(({ piece, gore }) => {
        const { widths, waistCorner } = allowancePlan(layer, piece, gore.roughCut);
        if (waistCorner !== 'mirrored') return [];
        const upper = piece.edges[0]!.curves;
        const cut = offsetRun(upper, widths.waist ?? 0, FIT);
        const top = Math.min(lengthOfRun(upper), cut === undefined ? 0 : lengthOfRun(cut));
        return [piece.frontEdge, piece.backEdge]
          .map((edge) => ({
            gore: piece.gore,
            layer: layer.name,
            edge,
            width: widths[edge] ?? 0,
            top,
            place: gore.place,
          }))
          .filter(({ width }) => width > WIDEST * top)
          .slice(0, 1);
      }),
  );
}
