import type { Curve, Point } from './curve.ts';
import { derivativeAt, pointAt, secondDerivativeAt } from './evaluate.ts';
import { distance, dot, subtract } from './point.ts';

export interface Nearest {
  /** Which curve of the run, and the parameter on it. */
  readonly index: number;
  readonly t: number;
  readonly point: Point;
  readonly distance: number;
}

/** Samples a curve for the first guess; between two of them an outline's curve does not turn back. */
const SAMPLES = 12;

/** Nearest point of a run to `point`: the best sample of every curve, made exact by Newton's method on the foot. */
export function nearestOnRun(run: readonly Curve[], point: Point): Nearest {
  let best: Nearest | undefined;
  for (const [index, curve] of run.entries()) {
    const found = nearestOnCurve(curve, index, point);
    if (best === undefined || found.distance < best.distance) best = found;
  }
  if (best === undefined) throw new RangeError('an empty run has no nearest point');
  return best;
}

function nearestOnCurve(curve: Curve, index: number, point: Point): Nearest {
  let t = 0;
  let least = Infinity;
  for (let i = 0; i <= SAMPLES; i++) {
    const away = distance(pointAt(curve, i / SAMPLES), point);
    if (away < least) {
      least = away;
      t = i / SAMPLES;
    }
  }
  const guess = t;
  for (let step = 0; step < 12; step++) {
    const gap = subtract(pointAt(curve, t), point);
    const first = derivativeAt(curve, t);
    const bend = dot(first, first) + dot(gap, secondDerivativeAt(curve, t));
    if (bend <= 0) break;
    const next = Math.min(1, Math.max(0, t - dot(gap, first) / bend));
    if (Math.abs(next - t) < 1e-14) break;
    t = next;
  }
  const foot = pointAt(curve, t);
  const away = distance(foot, point);
  if (away <= least) return { index, t, point: foot, distance: away };
  return { index, t: guess, point: pointAt(curve, guess), distance: least };
}
