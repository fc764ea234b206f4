import type { BustleMarked, CutPiece } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import type { Line, Point } from '../geometry/curve.ts';
import { oval } from '../geometry/oval.ts';

export const BUSTLE_MARKS = { anchor: 'bustle-anchor', pickUp: 'bustle-pick-up' } as const;

/** Half the width of a ring or a cross, mm: seen on a sheet, and no larger than what is sewn there. */
const HALF = 4;

/** A ring where a point is anchored, a cross where the cloth is picked up. */
export function bustleMarks(points: readonly BustleMarked[]): CutPiece['marks'] {
  return points.flatMap(({ at: [anchor, pickUp] }) => [
    { name: BUSTLE_MARKS.anchor, curves: oval(anchor, HALF, HALF) },
    ...crossAt(pickUp).map((line) => ({ name: BUSTLE_MARKS.pickUp, curves: [line] })),
  ]);
}

function crossAt({ x, y }: Point): Line[] {
  return [1, -1].map((side) => ({
    kind: 'line',
    from: { x: x - HALF, y: y - side * HALF },
    to: { x: x + HALF, y: y + side * HALF },
  }));
}

export function bustleRemarks(points: readonly BustleMarked[]): PieceRemark[] {
  const seen = points.filter(
    ({ across, anchor }, i) =>
      points.findIndex((one) => one.across === across && one.anchor === anchor) === i,
  );
  return seen.map(({ layer, across, anchor, pickUp }) => ({ kind: 'bustle', layer, across, anchor, pickUp }));
}
