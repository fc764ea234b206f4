import type { HalfEdge } from './bodice-to-draw.ts';
import { type DrawnPart, rowOf } from './drawn-part.ts';

/** Rows of a band. */
const ROWS = 3;

/** A waistband: upright over the edge that the skirt is sewn to. mm. */
export function bandToDraw(
  { left, right }: { readonly left: HalfEdge; readonly right: HalfEdge },
  width: number,
): DrawnPart {
  // From the centre front by her left to the centre back, and by her right to the front again.
  const edge = [
    ...left,
    ...right
      .slice(1, -1)
      .reverse()
      .map(([x, y, z]) => [-x, y, z] as const),
  ];
  const place = Float64Array.from(
    edge.flatMap(([x, y, z]) =>
      Array.from({ length: ROWS }, (_, row) => [x, y, z + width * (1 - row / (ROWS - 1))]).flat(),
    ),
  );
  const surface = { columns: edge.length, rows: ROWS, place, closed: true };
  return {
    surface,
    filled: true,
    notFromAbove: true,
    lifted: 0,
    edges: [rowOf(surface, 0)],
    seams: [],
    opening: [],
    folds: false,
  };
}
