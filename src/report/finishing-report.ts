import type { Part } from '../draft/part.ts';
import { lengthOfRun } from '../geometry/length.ts';

/** A facing, a band or what lies in an opening, as `report.json` holds it: mm, of one piece. */
export interface FinishingReport {
  /** What it is: `facing`, `waistband` and so on, as `data-part` in the pattern. */
  readonly part: string;
  readonly name: string;
  readonly layer: string;
  readonly cloth: string;
  readonly copies: number;
  readonly onFold: boolean;
  /** A rectangle, given by its size and not printed. */
  readonly bySize: boolean;
  readonly edges: Readonly<Record<string, number>>;
}

export function finishingReport({ piece, layer }: Part): FinishingReport {
  return {
    part: piece.part ?? '',
    name: piece.gore,
    layer: layer.name,
    cloth: layer.cloth.name,
    copies: piece.cut === 'pair' ? 2 : (piece.copies ?? 1),
    onFold: piece.cut === 'on-fold',
    bySize: piece.bySize === true,
    edges: Object.fromEntries(
      piece.edges.map(({ name, curves }) => [name, Math.round(lengthOfRun(curves) * 1e4) / 1e4]),
    ),
  };
}
