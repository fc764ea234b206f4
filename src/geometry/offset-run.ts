import { meeting, straightOn } from './corner.ts';
import type { Curve, Line, Point } from './curve.ts';
import { endOf, startOf, tangentAt } from './evaluate.ts';
import { lengthOf } from './length.ts';
import { bendsTighterThan, offsetCurve, stretchesThatOffset } from './offset.ts';
import { angleBetween, distance as distanceBetween } from './point.ts';
import { partOf, reversed, reversedRun } from './split.ts';
import { JOIN } from './tolerances.ts';

/** How much farther than the line is moved its corners may reach, as a multiple, before they are cut off straight. */
const MITRE_LIMIT = 4;

/** Directions that differ by more are a corner, radians; fitted curves join far more smoothly, and drawn corners are far sharper. */
const CORNER = 1e-3;

/**
 * A run of curves moved to its left by `distance` mm. Where it bends tighter than the distance allows, the moved line
 * would run backwards in a loop: the loop is cut off where its two sides cross. So is what overlaps on the inside of a
 * corner; on the outside both sides run on until they meet. Undefined where nothing of the run is left.
 */
export function offsetRun(
  run: readonly Curve[],
  distance: number,
  tolerance: number,
): readonly Curve[] | undefined {
  if (distance === 0) return run;
  const known = MOVED.get(run)?.find((one) => one.distance === distance && one.tolerance === tolerance);
  if (known !== undefined) return known.moved;
  const moved = movedRun(run, distance, tolerance);
  MOVED.set(run, [...(MOVED.get(run) ?? []), { distance, tolerance, moved }]);
  return moved;
}

interface Moved {
  readonly distance: number;
  readonly tolerance: number;
  readonly moved: readonly Curve[] | undefined;
}

/** By the run itself, which never changes: layers of one shape share their lines, and are moved once. */
const MOVED = new WeakMap<readonly Curve[], readonly Moved[]>();

function movedRun(run: readonly Curve[], distance: number, tolerance: number): readonly Curve[] | undefined {
  const stretches = stretchesOf(run, distance);
  const moved = (curves: readonly Curve[]): Curve[] =>
    curves.flatMap((curve) => offsetCurve(curve, distance, tolerance) ?? []);
  if (stretches.length === 1 && stretches[0]!.curves.every((curve, i) => curve === run[i])) {
    const whole = moved(run);
    return whole.length === 0 ? undefined : whole;
  }
  const kept = stretches
    .map(({ curves, afterCorner }) => ({ afterCorner, curves: moved(curves) }))
    .filter(({ curves }) => curves.length > 0);
  if (kept.length === 0) return undefined;
  const lead = MITRE_LIMIT * Math.abs(distance);
  const [before, after] = [straightOn(reversedRun(run), lead), straightOn(run, lead)];
  const all = joinedUp(
    [
      { afterCorner: false, curves: moved([reversed(before)]) },
      ...kept,
      { afterCorner: false, curves: moved([after]) },
    ],
    distance,
  );
  return withoutLead(reversedRun(withoutLead(reversedRun(all), lead)), lead);
}

/** Stretches one after the other, each cut off or lengthened where it meets the next. */
function joinedUp([first, ...rest]: readonly Stretch[], distance: number): readonly Curve[] {
  let moved: readonly Curve[] = first!.curves;
  for (const { curves, afterCorner } of rest) {
    // What goes on from where the run before it ends needs no corner.
    if (!afterCorner && samePlace(endOf(moved[moved.length - 1]!), startOf(curves[0]!))) {
      moved = moved.concat(curves);
      continue;
    }
    const reach = Math.abs(distance) * (afterCorner ? MITRE_LIMIT : 1);
    const corner = meeting(moved, curves, 0) ?? meeting(moved, curves, reach);
    if (corner !== undefined) moved = corner.before.concat(corner.after);
    else if (afterCorner) moved = moved.concat(between(moved, curves), curves);
    else moved = moved.concat(curves);
  }
  return moved;
}

/** So much of a lead is left where the run itself has been cut off, mm: it says which way the line came. */
const LEFT_OF_LEAD = 0.1;

/**
 * The line by which a run was led up to, straight, taken away again. A run that folds as it begins is cut off where
 * it crosses that line: whether its very first bit folds too then makes no difference.
 */
function withoutLead(run: readonly Curve[], lead: number): readonly Curve[] {
  const [first, ...rest] = run as readonly [Curve, ...Curve[]];
  const length = lengthOf(first);
  if (Math.abs(length - lead) < JOIN) return rest;
  // A corner that lies beyond where the lead ends has drawn it out.
  const left = Math.max(LEFT_OF_LEAD, length - lead);
  return [partOf(first, Math.max(0, 1 - left / length), 1), ...rest];
}

function between(before: readonly Curve[], after: readonly Curve[]): Line {
  return { kind: 'line', from: endOf(before[before.length - 1]!), to: startOf(after[0]!) };
}

interface Stretch {
  readonly curves: readonly Curve[];
  /** It begins at a corner of the run, not where the run bends too tightly. */
  readonly afterCorner: boolean;
}

/** The run as stretches between its corners and the places where it bends too tightly; one where it has neither. */
function stretchesOf(run: readonly Curve[], distance: number): Stretch[] {
  const stretches: Stretch[] = [];
  let goesOn = false;
  for (const [k, curve] of run.entries()) {
    const isCorner = k > 0 && turn(run[k - 1]!, curve) > CORNER;
    const parts = bendsTighterThan(curve, distance) ? stretchesThatOffset(curve, distance) : [curve];
    for (const [i, part] of parts.entries()) {
      const joins = i === 0 && goesOn && samePlace(startOf(part), startOf(curve));
      const last = stretches[stretches.length - 1];
      if (joins && !isCorner) stretches[stretches.length - 1] = { ...last!, curves: [...last!.curves, part] };
      else stretches.push({ curves: [part], afterCorner: joins });
    }
    const last = parts[parts.length - 1];
    goesOn = last !== undefined && samePlace(endOf(last), endOf(curve));
  }
  return stretches;
}

function turn(before: Curve, after: Curve): number {
  return angleBetween(tangentAt(before, 1), tangentAt(after, 0));
}

function samePlace(a: Point, b: Point): boolean {
  return distanceBetween(a, b) < JOIN;
}
