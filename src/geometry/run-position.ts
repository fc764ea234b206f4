import type { Curve, Point } from './curve.ts';
import { pointAt, tangentAt } from './evaluate.ts';
import { lengthOfRun, placeOnRun } from './length.ts';
import { partOf } from './split.ts';
import { SETTLED } from './tolerances.ts';

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
 * and `to`; a value past either end is taken as that end. False position in the Illinois form, to a nanometre.
 */
export function positionWhere(
  run: readonly Curve[],
  measure: (point: Point) => number,
  value: number,
  from: RunPosition = 0,
  to: RunPosition = run.length,
): RunPosition {
  let [low, high] = [from, to];
  let below = measure(pointOnRun(run, low)) - value;
  let above = measure(pointOnRun(run, high)) - value;
  if (below > 0 === above > 0) return Math.abs(below) < Math.abs(above) ? low : high;
  let moved: 'low' | 'high' | undefined;
  for (let step = 0; step < MOST_STEPS && high - low > SETTLED; step++) {
    const next = guess(low, high, below, above);
    const miss = measure(pointOnRun(run, next)) - value;
    if (Math.abs(miss) < NEAR) return next;
    // An end that stays twice in a row is given half its weight, or it would hold the guesses on its side.
    if (miss > 0 === above > 0) {
      if (moved === 'high') below /= 2;
      [high, above, moved] = [next, miss, 'high'];
    } else {
      if (moved === 'low') above /= 2;
      [low, below, moved] = [next, miss, 'low'];
    }
  }
  return (low + high) / 2;
}

const MOST_STEPS = 80;
/** mm. */
const NEAR = 1e-6;

/** Where the straight line between the two misses crosses nought, kept inside the bracket. */
function guess(low: number, high: number, below: number, above: number): number {
  const at = (low * above - high * below) / (above - below);
  return at > low && at < high ? at : (low + high) / 2;
}

function curveIndex(run: readonly Curve[], position: RunPosition): number {
  return Math.min(run.length - 1, Math.max(0, Math.floor(position)));
}

/** The part of a run between two of its places. */
export function partOfRun(run: readonly Curve[], from: number, to: number): Curve[] {
  return run.flatMap((curve, i) => {
    const [start, end] = [Math.max(0, from - i), Math.min(1, to - i)];
    if (end - start <= 1e-12) return [];
    return [start === 0 && end === 1 ? curve : partOf(curve, start, end)];
  });
}

/** The place at so much of a run's length, mm. */
export function positionAt(run: readonly Curve[], length: number): number {
  let left = length;
  for (const [i, curve] of run.entries()) {
    const own = lengthOfRun([curve]);
    if (left <= own) return i + placeOnRun([curve], left).t;
    left -= own;
  }
  return run.length;
}
