import type { Curve, Point } from '../geometry/curve.ts';
import { translated } from '../geometry/transform.ts';
import type { GoreFrame } from './gore-frame.ts';

/** The same piece counted from another level: what lay `by` below its first level lies at slant distance 0. */
export function raisedFrame(frame: GoreFrame, by: number): GoreFrame {
  const shift: Point = { x: 0, y: -by };
  const moved = (curves: readonly Curve[]): Curve[] => curves.map((curve) => translated(curve, shift));
  return {
    widthAt: (s) => frame.widthAt(s + by),
    pointAt: (s, f) => {
      const point = frame.pointAt(s + by, f);
      return { x: point.x, y: point.y - by };
    },
    downAt: (s, f) => frame.downAt(s + by, f),
    bySlant: (s, f) => frame.bySlant(s + by, f),
    levelAt: (s) => moved(frame.levelAt(s + by)),
    sideFrom: (side, from, to) => moved(frame.sideFrom(side, from + by, to + by)),
  };
}
