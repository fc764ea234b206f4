import type { Part } from '../draft/part.ts';
import { lengthOfRun } from '../geometry/length.ts';

/** A flounce, a run of strips or a godet as `report.json` holds it: mm, of one piece. */
export interface PartReport {
  readonly name: string;
  /** The layer that it is let into, or that stands for it. */
  readonly layer: string;
  readonly copies: number;
  /** By edge; the two sides of a strip share one name and are equal. */
  readonly edges: Readonly<Record<string, number>>;
}

export function partReport({ piece, layer }: Part): PartReport {
  return {
    name: piece.gore,
    layer: layer.name,
    copies: piece.cut === 'pair' ? 2 : (piece.copies ?? 1),
    edges: Object.fromEntries(piece.edges.map(({ name, curves }) => [name, rounded(lengthOfRun(curves))])),
  };
}

function rounded(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
