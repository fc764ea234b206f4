import { lengthOfRun } from '../geometry/length.ts';
import type { MeasuredPart } from '../truing/true-parts.ts';

/** A flounce, a run of strips or a godet as `report.json` holds it: mm, of one piece. */
export interface PartReport {
  readonly name: string;
  /** The layer that it is let into, or that stands for it. */
  readonly layer: string;
  readonly copies: number;
  /** By edge; the two sides of a strip share one name and are equal. */
  readonly edges: Readonly<Record<string, number>>;
  /** Of its seams, at worst: a side against what it is sewn to, and the sum of two angles at the hem, degrees. */
  readonly seams: { readonly difference: number; readonly hemAngle: number };
}

export function partReport({ part: { piece, layer }, measures }: MeasuredPart): PartReport {
  return {
    name: piece.gore,
    layer: layer.name,
    copies: piece.cut === 'pair' ? 2 : (piece.copies ?? 1),
    edges: Object.fromEntries(piece.edges.map(({ name, curves }) => [name, rounded(lengthOfRun(curves))])),
    seams: {
      difference: rounded(measures.difference),
      hemAngle: rounded((measures.hemAngle * 180) / Math.PI),
    },
  };
}

function rounded(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
