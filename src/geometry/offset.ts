import type { Curve } from './curve.ts';
import { curvatureAt, derivativeAt, pointAt, tangentAt } from './evaluate.ts';
import { fitCubics } from './fit-cubics.ts';
import { along, leftOf, scaled } from './point.ts';

/**
 * A curve moved to its left (outwards on a clockwise outline) by `distance` mm, at true distance everywhere:
 * lines and arcs exactly, cubics within `tolerance` mm. Negative distances move it to the right.
 * Returns nothing where the curve bends tighter than the distance allows: such an offset folds over itself.
 */
export function offsetCurve(curve: Curve, distance: number, tolerance: number): Curve[] | undefined {
  if (distance === 0) return [curve];
  if (curve.kind === 'line') {
    const shift = scaled(leftOf(tangentAt(curve, 0)), distance);
    return [
      {
        kind: 'line',
        from: { x: curve.from.x + shift.x, y: curve.from.y + shift.y },
        to: { x: curve.to.x + shift.x, y: curve.to.y + shift.y },
      },
    ];
  }
  if (curve.kind === 'arc') {
    if (bendsTighterThan(curve, distance)) return undefined;
    return [{ ...curve, radius: curve.radius + distance * Math.sign(curve.sweep) }];
  }
  if (bendsTighterThan(curve, distance)) return undefined;
  return fitCubics(
    {
      pointAt: (t) => along(pointAt(curve, t), leftOf(tangentAt(curve, t)), distance),
      derivativeAt: (t) => scaled(derivativeAt(curve, t), 1 + curvatureAt(curve, t) * distance),
    },
    0,
    1,
    tolerance,
  );
}

/** True where a curve moved to its left by `distance` would run backwards somewhere: 1 + κd comes to nothing. */
export function bendsTighterThan(curve: Curve, distance: number): boolean {
  if (curve.kind === 'line' || distance === 0) return false;
  const places = curve.kind === 'arc' ? 0 : 32;
  for (let i = 0; i <= places; i++) {
    if (1 + curvatureAt(curve, places === 0 ? 0 : i / places) * distance <= FOLDING) return true;
  }
  return false;
}

/** Least share of its length that a stretch of curve keeps in its offset. Smaller lets needles of no width through. */
const FOLDING = 0.02;
