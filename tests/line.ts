import type { Line } from '../src/geometry/curve.ts';

/** A straight line from x, y to toX, toY. */
export const line = (x: number, y: number, toX: number, toY: number): Line => ({
  kind: 'line',
  from: { x, y },
  to: { x: toX, y: toY },
});
