import type { LayerDraft } from '../draft/draft-layers.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { FIT } from '../geometry/tolerances.ts';
import type { Spec } from '../gown-file/spec.ts';
import { allowancePlan } from './allowance-plan.ts';

/** A gore at whose top an allowance that is pressed open would stand out beyond both of its sides. */
export interface WideAllowance {
  readonly gore: string;
  readonly layer: string;
  /** The seam and its allowance, and how wide the gore is at its upper cut line, mm. */
  readonly edge: string;
  readonly width: number;
  readonly top: number;
}

/** How much wider than the gore an allowance may be, as a multiple: folded back it then reaches over the other side's. */
const WIDEST = 1.9;

export function wideAllowances(spec: Spec, layers: readonly LayerDraft[]): WideAllowance[] {
  return layers.flatMap(({ layer, draft }) =>
    draft.pieces
      .filter(({ gore }) => layer.gores === undefined || layer.gores.includes(gore))
      .flatMap((piece) => {
        const { widths, waistCorner } = allowancePlan(spec, layer, piece);
        if (waistCorner !== 'mirrored') return [];
        const upper = piece.edges[0]!.curves;
        const cut = offsetRun(upper, widths.waist ?? 0, FIT);
        const top = Math.min(lengthOfRun(upper), cut === undefined ? 0 : lengthOfRun(cut));
        return [piece.frontEdge, piece.backEdge]
          .map((edge) => ({ gore: piece.gore, layer: layer.name, edge, width: widths[edge] ?? 0, top }))
          .filter(({ width }) => width > WIDEST * top)
          .slice(0, 1);
      }),
  );
}
