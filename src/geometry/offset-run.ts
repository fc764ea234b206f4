import { meeting } from './corner.ts';
import type { Curve, Point } from './curve.ts';
import { endOf, startOf } from './evaluate.ts';
import { bendsTighterThan, offsetCurve, stretchesThatOffset } from './offset.ts';
import { distance as distanceBetween } from './point.ts';
import { JOIN } from './tolerances.ts';

/**
 * A run of smoothly joined curves moved to its left by `distance` mm. Where it bends tighter than the distance allows,
 * the moved line would run backwards in a loop: the loop is cut off where its two sides cross. Undefined where nothing
 * of the run is left.
 */
export function offsetRun(
  run: readonly Curve[],
  distance: number,
  tolerance: number,
): readonly Curve[] | undefined {
  const stretches = stretchesOf(run, distance);
  const [first, ...rest] = stretches
    .map((stretch) => stretch.flatMap((curve) => offsetCurve(curve, distance, tolerance) ?? []))
    .filter((stretch) => stretch.length > 0);
  if (first === undefined) return undefined;
  let curves: readonly Curve[] = first;
  for (const stretch of rest) {
    const corner = meeting(curves, stretch, 0) ?? meeting(curves, stretch, Math.abs(distance));
    curves = corner === undefined ? curves.concat(stretch) : corner.before.concat(corner.after);
  }
  return curves;
}

/** The run as stretches between the places where it bends too tightly; one where it nowhere does. */
function stretchesOf(run: readonly Curve[], distance: number): Curve[][] {
  const stretches: Curve[][] = [];
  let goesOn = false;
  for (const curve of run) {
    const parts = bendsTighterThan(curve, distance) ? stretchesThatOffset(curve, distance) : [curve];
    for (const [i, part] of parts.entries()) {
      if (goesOn && i === 0 && samePlace(startOf(part), startOf(curve)))
        stretches[stretches.length - 1]!.push(part);
      else stretches.push([part]);
    }
    const last = parts[parts.length - 1];
    goesOn = last !== undefined && samePlace(endOf(last), endOf(curve));
  }
  return stretches;
}

function samePlace(a: Point, b: Point): boolean {
  return distanceBetween(a, b) < JOIN;
}
