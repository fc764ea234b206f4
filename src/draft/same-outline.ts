import type { Curve, Point } from '../geometry/curve.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { distance } from '../geometry/point.ts';
import type { Piece } from './piece.ts';

/** Farther apart than this two seam lines are different lines, mm. Larger would cut a pair where its sides differ; smaller is how curves are fitted. */
const SAME_LINE = 0.01;
/** Places along an edge at which two lines are held against each other. */
const PLACES = 12;

/** Whether two pieces drawn the same way round have one outline. */
export function isSameOutline(a: Piece, b: Piece): boolean {
  return a === b || a.edges.every(({ curves }, i) => liesOn(curves, b.edges[i]!.curves));
}

function liesOn(a: readonly Curve[], b: readonly Curve[]): boolean {
  if (a === b) return true;
  const [lengthA, lengthB] = [lengthOfRun(a), lengthOfRun(b)];
  if (Math.abs(lengthA - lengthB) > SAME_LINE) return false;
  return Array.from({ length: PLACES + 1 }, (_, i) => i / PLACES).every(
    (part) => distance(along(a, part * lengthA), along(b, part * lengthB)) <= SAME_LINE,
  );
}

function along(run: readonly Curve[], length: number): Point {
  const { curve, t } = placeOnRun(run, length);
  return pointAt(curve, t);
}
