import { straightOn } from '../geometry/corner.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { curvatureAt, derivativeAt, endOf, pointAt, tangentAt } from '../geometry/evaluate.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { nearestOnRun } from '../geometry/nearest.ts';
import { dot, leftOf, subtract } from '../geometry/point.ts';
import { reversed } from '../geometry/split.ts';
import { FIT, JOIN } from '../geometry/tolerances.ts';

/**
 * The side's cut line below a turned hem: the mirror image, across the hem line, of the side's cut line above it, so
 * that the turned allowance lies exactly on the cloth that it is turned against. Across a curved hem every point goes
 * to the other side of its nearest point on the hem.
 * @param side cut line of the side, running down to the hem line
 * @param hem hem line, lengthened past the side's cut line
 * @param depth of the allowance, mm
 * @returns the mirrored line, running down from the hem line to `depth` below it; undefined where the side is too
 *   short to be mirrored
 */
export function mirroredBelowHem(
  side: readonly Curve[],
  hem: readonly Curve[],
  depth: number,
): Curve[] | undefined {
  const mirrored: Curve[] = [];
  for (let i = side.length - 1; i >= 0; i--) {
    const upwards = reversed(side[i]!);
    const above = (t: number): number => nearestOnRun(hem, pointAt(upwards, t)).distance;
    const end = above(1) <= depth ? 1 : parameterAtHeight(above, depth);
    const image = imageAcross(upwards, hem);
    mirrored.push(...fitCubics(image, 0, end, FIT));
    if (end < 1) return mirrored;
  }
  return undefined;
}

/**
 * Where a line has risen to `depth` above the hem: by the secant rule, since the height grows almost evenly; where that
 * leads out of what is known to hold the place, by halves.
 */
function parameterAtHeight(above: (t: number) => number, depth: number): number {
  let low = 0;
  let high = 1;
  let before = 0;
  let beforeHeight = above(0);
  let t = Math.min(1, depth / above(1));
  for (let step = 0; step < 60; step++) {
    const height = above(t);
    if (Math.abs(height - depth) < JOIN) break;
    if (height < depth) low = t;
    else high = t;
    const next = t + ((depth - height) * (t - before)) / (height - beforeHeight);
    before = t;
    beforeHeight = height;
    t = next > low && next < high ? next : (low + high) / 2;
  }
  return t;
}

/** Every point p of a curve sent to 2·foot − p, and the derivative of that. */
function imageAcross(
  curve: Curve,
  hem: readonly Curve[],
): { pointAt: (t: number) => Point; derivativeAt: (t: number) => Point } {
  return {
    pointAt: (t) => {
      const point = pointAt(curve, t);
      const foot = nearestOnRun(hem, point).point;
      return { x: 2 * foot.x - point.x, y: 2 * foot.y - point.y };
    },
    derivativeAt: (t) => {
      const point = pointAt(curve, t);
      const speed = derivativeAt(curve, t);
      const near = nearestOnRun(hem, point);
      const tangent = tangentAt(hem[near.index]!, near.t);
      const kappa = curvatureAt(hem[near.index]!, near.t);
      const height = dot(subtract(point, near.point), leftOf(tangent));
      // The foot runs along the hem at the speed of the point's shadow on it.
      const footSpeed = dot(speed, tangent) / (1 + kappa * height);
      return { x: 2 * tangent.x * footSpeed - speed.x, y: 2 * tangent.y * footSpeed - speed.y };
    },
  };
}

/** A hem line run on at both ends with the bend that it has there, so that images across it bend without a jump. */
export function lengthened(hem: readonly Curve[], reach: number): Curve[] {
  return [reversed(runOn(reversed(hem[0]!), reach)), ...hem, runOn(hem[hem.length - 1]!, reach)];
}

/** Farthest that a line is run on round its own bend, radians; beyond that it would come back on itself. */
const BEND_LIMIT = 0.5;

function runOn(curve: Curve, reach: number): Curve {
  const kappa = curvatureAt(curve, 1);
  if (Math.abs(kappa) * reach < 1e-6 || Math.abs(kappa) * reach > BEND_LIMIT)
    return straightOn([curve], reach);
  const end = endOf(curve);
  // leftOf points away from the centre of a clockwise bend.
  const out = leftOf(tangentAt(curve, 1));
  const centre = { x: end.x - out.x / kappa, y: end.y - out.y / kappa };
  const start = Math.atan2(end.y - centre.y, end.x - centre.x);
  return { kind: 'arc', centre, radius: 1 / Math.abs(kappa), start, sweep: reach * kappa };
}
