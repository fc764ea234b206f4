import type { Curve, Point } from './curve.ts';
import { pointAt, tangentAt } from './evaluate.ts';

/**
 * A place on a run of curves: whole part the curve, rest the parameter on it; 0 at the run's start, `run.length` at its
 * end. Cheap where the distance along the run does not matter.
 */
export type RunPosition = number;

export function pointOnRun(run: readonly Curve[], position: RunPosition): Point {
  const index = curveIndex(run, position);
  return pointAt(run[index]!, position - index);
}

export function tangentOnRun(run: readonly Curve[], position: RunPosition): Point {
  const index = curveIndex(run, position);
  return tangentAt(run[index]!, position - index);
}

/**
 * Where a measure of the run's points takes a value. The measure has to rise or fall all along the run between `from`
 * and `to`, and the value to lie between its ends; bisection, to the last bit that matters.
 */
export function positionWhere(
  run: readonly Curve[],
  measure: (point: Point) => number,
  value: number,
  from: RunPosition = 0,
  to: RunPosition = run.length,
): RunPosition {
  let [low, high] = [from, to];
  const rises = measure(pointOnRun(run, high)) > measure(pointOnRun(run, low));
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (measure(pointOnRun(run, middle)) < value === rises) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function curveIndex(run: readonly Curve[], position: RunPosition): number {
  return Math.min(run.length - 1, Math.max(0, Math.floor(position)));
}
