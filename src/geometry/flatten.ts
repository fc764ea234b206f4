import type { Curve, Point } from './curve.ts';
import { endOf, pointAt, secondDerivativeAt, startOf } from './evaluate.ts';

/** Points along a curve, ends included, whose chords lie within `tolerance` mm of it. */
export function flattened(curve: Curve, tolerance: number): Point[] {
  if (curve.kind === 'line') return [curve.from, curve.to];
  const pieces = piecesNeeded(curve, tolerance);
  const points = [startOf(curve)];
  for (let i = 1; i < pieces; i++) points.push(pointAt(curve, i / pieces));
  points.push(endOf(curve));
  return points;
}

/** A run flattened, without doubled points at its joins. */
export function flattenedRun(curves: readonly Curve[], tolerance: number): Point[] {
  const points: Point[] = [];
  for (const curve of curves) {
    const own = flattened(curve, tolerance);
    points.push(...(points.length === 0 ? own : own.slice(1)));
  }
  return points;
}

function piecesNeeded(curve: Curve, tolerance: number): number {
  if (curve.kind === 'arc') {
    const step = 2 * Math.acos(Math.max(0, 1 - tolerance / curve.radius));
    return Math.max(1, Math.ceil(Math.abs(curve.sweep) / step));
  }
  // |error| ≤ h²/8 · max|f''|, and f'' of a cubic is largest at an end.
  const bend = Math.max(
    ...[0, 1].map((t) => {
      const second = secondDerivativeAt(curve, t);
      return Math.hypot(second.x, second.y);
    }),
  );
  return Math.max(1, Math.ceil(Math.sqrt(bend / 8 / tolerance)));
}
