import type { Curve, Point } from '../geometry/curve.ts';
import type { GoreFrame } from './gore-frame.ts';

/**
 * A gore as a sector of a ring, the exact development of its part of a cone (the frustum rule: top arc a, bottom arc
 * b, slant ℓ give the angle θ = (b − a)/ℓ and the radius a/θ).
 *
 * Written in the curvature κ = θ/a, so that θ → 0 is a rectangle without dividing by zero and θ < 0 is a pegged gore.
 * @param width at slant distance `at`, mm, > 0
 * @param front angle of the flare towards the front of the grain, radians
 * @param back angle towards the back; front + back = θ
 * @param at where the width is given: the level waist, or a level below it where a deep drop leaves none at the waist
 */
export function sectorFrame(width: number, front: number, back: number, at = 0): GoreFrame {
  const flare = front + back;
  const curvature = flare / width;
  const tilt = (back - front) / 2;
  const pointAt = (s: number, f: number): Point => {
    const across = width * (f - 0.5);
    const turn = curvature * across;
    const below = s - at;
    const x = (1 + curvature * below) * across * sinc(turn);
    const y = at + below * Math.cos(turn) - across * (turn / 2) * sinc(turn / 2) ** 2;
    return {
      x: Math.cos(tilt) * x + Math.sin(tilt) * y,
      y: -Math.sin(tilt) * x + Math.cos(tilt) * y,
    };
  };
  return {
    widthAt: (s) => width + flare * (s - at),
    pointAt,
    downAt: (_s, f) => -front + flare * f,
    bySlant: (_s, f) => ({ x: Math.sin(flare * f - front), y: Math.cos(flare * f - front) }),
    levelAt: (s) => [levelOf(pointAt(s, 0), pointAt(s, 1), width / flare + s - at, front, flare)],
    sideFrom: (side, from, to) => {
      const f = side === 'front' ? 0 : 1;
      return [{ kind: 'line', from: pointAt(from, f), to: pointAt(to, f) }];
    },
  };
}

/** Flare below which a level is drawn as a straight line: its arc would rise less than a millionth of its width. */
const STRAIGHT = 1e-7;

/** The level between two points of the sides. @param radius negative on a pegged gore, whose apex lies below */
function levelOf(from: Point, to: Point, radius: number, front: number, flare: number): Curve {
  if (Math.abs(flare) < STRAIGHT) return { kind: 'line', from, to };
  // The apex lies up the front edge from its point on this level.
  const apex = { x: from.x + radius * Math.sin(front), y: from.y - radius * Math.cos(front) };
  const start = Math.atan2(from.y - apex.y, from.x - apex.x);
  return { kind: 'arc', centre: apex, radius: Math.abs(radius), start, sweep: -flare };
}

function sinc(x: number): number {
  return Math.abs(x) < 1e-4 ? 1 - (x * x) / 6 : Math.sin(x) / x;
}
