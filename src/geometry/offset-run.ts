import { meeting } from './corner.ts';
import type { Curve, Line, Point } from './curve.ts';
import { endOf, startOf, tangentAt } from './evaluate.ts';
import { bendsTighterThan, offsetCurve, stretchesThatOffset } from './offset.ts';
import { angleBetween, distance as distanceBetween } from './point.ts';
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
  const [first, ...rest] = stretchesOf(run, distance)
    .map(({ curves, afterCorner }) => ({
      afterCorner,
      curves: curves.flatMap((curve) => offsetCurve(curve, distance, tolerance) ?? []),
    }))
    .filter(({ curves }) => curves.length > 0);
  if (first === undefined) return undefined;
  let moved: readonly Curve[] = first.curves;
  for (const { curves, afterCorner } of rest) {
    const reach = Math.abs(distance) * (afterCorner ? MITRE_LIMIT : 1);
    const corner = meeting(moved, curves, 0) ?? meeting(moved, curves, reach);
    if (corner !== undefined) moved = corner.before.concat(corner.after);
    else if (afterCorner) moved = moved.concat(between(moved, curves), curves);
    else moved = moved.concat(curves);
  }
  return moved;
}

function between(before: readonly Curve[], after: readonly Curve[]): Line {
  return { kind: 'line', from: endOf(before[before.length - 1]!), to: startOf(after[0]!) };
}

interface Stretch {
  readonly curves: Curve[];
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
      if (joins && !isCorner) stretches[stretches.length - 1]!.curves.push(part);
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
