import type { Curve, Line, Point } from '../geometry/curve.ts';
import { along } from '../geometry/point.ts';

/** Names of the lines of pleats: what is folded, what the outer fold is brought to, which way, and how far it is stitched. */
export const PLEAT_MARKS = {
  fold: 'fold-line',
  placement: 'placement-line',
  arrow: 'pleat-arrow',
  stitched: 'stitched-to',
} as const;

/** Of an arrow, mm. */
const HEAD = { long: 5, wide: 2 } as const;

/** One stroke from tail to tip and over both barbs. */
export function arrowFrom(tail: Point, tip: Point, across: Point): Curve[] {
  const long = Math.hypot(tip.x - tail.x, tip.y - tail.y);
  const back = { x: (tail.x - tip.x) / long, y: (tail.y - tip.y) / long };
  const base = along(tip, back, Math.min(HEAD.long, long / 2));
  const barbs = [along(base, across, HEAD.wide), along(base, across, -HEAD.wide)] as const;
  const stroke = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
  return [stroke(tail, tip), stroke(tip, barbs[0]), stroke(barbs[0], tip), stroke(tip, barbs[1])];
}
