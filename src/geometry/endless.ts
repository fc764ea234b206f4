import type { Curve, Point } from './curve.ts';
import { endOf, startOf } from './evaluate.ts';

/**
 * How far from the origin anything of a gown can lie, mm: many times the longest train on the largest skirt. What is
 * drawn farther away, or at no number at all, came out of a division by nothing, and a loop over it need not end.
 */
const FARTHEST = 1_000_000;

/** Whether curves lie at real places, near enough to be of a gown. */
export function areDrawable(curves: readonly Curve[]): boolean {
  return curves.every((curve) => {
    const isReal = numbersOf(curve).every(Number.isFinite);
    // An arc that is hardly bent has its centre far away: what counts is where it begins and ends.
    return isReal && isNear(startOf(curve)) && isNear(endOf(curve));
  });
}

function isNear({ x, y }: Point): boolean {
  return Math.abs(x) < FARTHEST && Math.abs(y) < FARTHEST;
}

function numbersOf(curve: Curve): number[] {
  if (curve.kind === 'arc') return [curve.centre.x, curve.centre.y, curve.radius, curve.start, curve.sweep];
  const points =
    curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.control1, curve.control2, curve.to];
  return points.flatMap(({ x, y }) => [x, y]);
}
