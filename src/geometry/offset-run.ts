import { meeting } from './corner.ts';
import type { Curve } from './curve.ts';
import { offsetCurve } from './offset.ts';

/**
 * A run of smoothly joined curves moved to its left by `distance` mm. Where part of it bends tighter than the distance
 * allows, that part is left out and its neighbours are brought together. Undefined where nothing of it is left.
 */
export function offsetRun(
  run: readonly Curve[],
  distance: number,
  tolerance: number,
): readonly Curve[] | undefined {
  const parts = run.map((curve) => offsetCurve(curve, distance, tolerance));
  const [first, ...rest] = parts.filter((part) => part !== undefined);
  if (first === undefined) return undefined;
  const whole = rest.length + 1 === parts.length;
  let curves: readonly Curve[] = first;
  for (const part of rest) {
    const corner = whole ? undefined : meeting(curves, part, Math.abs(distance));
    curves = corner === undefined ? curves.concat(part) : corner.before.concat(corner.after);
  }
  return curves;
}
