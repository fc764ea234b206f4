import { meeting } from './corner.ts';
import type { Curve } from './curve.ts';
import { offsetCurve } from './offset.ts';

export interface OffsetRun {
  readonly curves: readonly Curve[];
  /** True where part of the run bends tighter than the distance allows and was left out. */
  readonly folded: boolean;
}

/** A run of smoothly joined curves moved to its left by `distance` mm; undefined where nothing of it is left. */
export function offsetRun(run: readonly Curve[], distance: number, tolerance: number): OffsetRun | undefined {
  const parts = run.map((curve) => offsetCurve(curve, distance, tolerance));
  const whole = parts.filter((part) => part !== undefined);
  if (whole.length === parts.length) return { curves: whole.flat(), folded: false };
  const [first, ...rest] = whole;
  if (first === undefined) return undefined;
  let curves: readonly Curve[] = first;
  for (const part of rest) {
    const corner = meeting(curves, part, Math.abs(distance));
    curves = corner === undefined ? curves.concat(part) : corner.before.concat(corner.after);
  }
  return { curves, folded: true };
}
