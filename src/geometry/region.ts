import type { Curve, Point } from './curve.ts';
import { flattenedRun } from './flatten.ts';
import { CLOTH_HOLDS, OUTLINE_READ } from './tolerances.ts';

/**
 * The inside of a closed outline, read off chords that lie near its lines. Each chord knows the edge that it came from.
 */
export interface Region {
  /** x and y of every corner by turns, the first repeated at the end. */
  readonly corners: Float64Array;
  /** Index of the edge that the chord from corner i to corner i + 1 belongs to. */
  readonly edgeOf: readonly number[];
  /** The least and the greatest y of every `STRETCH` chords, by turns. */
  readonly reaches: Float64Array;
}

/** Chords whose reach is known together: about the root of how many an outline has. */
const STRETCH = 16;

/** Where a point lies in a region. */
export interface Depth {
  /** Distance to the outline, mm: positive inside, negative outside. */
  readonly depth: number;
  /** Unit vector along which the depth grows. */
  readonly deeper: Point;
  /** The edge nearest to it. */
  readonly edge: number;
}

/**
 * @param outline closed, clockwise as drawn: its runs in order, each with the index of the edge that it belongs to
 * @param tolerance how far its chords may lie from its lines, mm
 */
export function regionOf(
  outline: readonly { readonly curves: readonly Curve[]; readonly edge: number }[],
  tolerance = OUTLINE_READ,
): Region {
  const corners: number[] = [];
  const edgeOf: number[] = [];
  for (const { curves, edge } of outline) {
    for (const point of flattenedRun(curves, tolerance).slice(0, -1)) {
      corners.push(point.x, point.y);
      edgeOf.push(edge);
    }
  }
  corners.push(corners[0]!, corners[1]!);
  return { corners: Float64Array.from(corners), edgeOf, reaches: reachesOf(corners) };
}

function reachesOf(corners: readonly number[]): Float64Array {
  const reaches: number[] = [];
  for (let from = 1; from + 2 < corners.length; from += 2 * STRETCH) {
    let [least, most] = [Infinity, -Infinity];
    for (let i = from; i <= from + 2 * STRETCH && i < corners.length; i += 2) {
      least = Math.min(least, corners[i]!);
      most = Math.max(most, corners[i]!);
    }
    reaches.push(least, most);
  }
  return Float64Array.from(reaches);
}

/** How deep a point lies inside. On the outline itself the direction points inwards of a clockwise outline. */
export function depthIn(region: Region, x: number, y: number): Depth {
  const { corners } = region;
  let least = Infinity;
  let nearest = 0;
  let nearX = 0;
  let nearY = 0;
  let inside = false;
  for (let i = 0; i + 3 < corners.length; i += 2) {
    const ax = corners[i]!;
    const ay = corners[i + 1]!;
    const bx = corners[i + 2]!;
    const by = corners[i + 3]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    const dx = bx - ax;
    const dy = by - ay;
    const size = dx * dx + dy * dy;
    const part = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / size));
    const footX = ax + dx * part;
    const footY = ay + dy * part;
    const away = (x - footX) ** 2 + (y - footY) ** 2;
    if (away < least) {
      least = away;
      nearest = i;
      nearX = footX;
      nearY = footY;
    }
  }
  const distance = Math.sqrt(least);
  const sign = inside ? 1 : -1;
  return {
    depth: sign * distance,
    deeper:
      distance > 1e-9
        ? { x: (sign * (x - nearX)) / distance, y: (sign * (y - nearY)) / distance }
        : inwards(corners, nearest),
    edge: region.edgeOf[nearest / 2]!,
  };
}

/** Whether a point lies inside: what `depthIn` finds too, at a fraction of the work. */
export function isInside({ corners, reaches }: Region, x: number, y: number): boolean {
  let inside = false;
  for (let stretch = 0; stretch < reaches.length; stretch += 2) {
    if (reaches[stretch]! > y || reaches[stretch + 1]! <= y) continue;
    const from = stretch * STRETCH;
    for (let i = from; i < from + 2 * STRETCH && i + 3 < corners.length; i += 2) {
      const ay = corners[i + 1]!;
      const by = corners[i + 3]!;
      if (ay > y === by > y) continue;
      const ax = corners[i]!;
      if (x < ax + ((y - ay) / (by - ay)) * (corners[i + 2]! - ax)) inside = !inside;
    }
  }
  return inside;
}

/** Where a line leaves a region: how far on, mm, and through which edge. */
export interface Exit {
  readonly distance: number;
  readonly edge: number;
}

/**
 * Where a line from a point leaves the region: the first crossing ahead of a point inside, the last one behind a point
 * outside (a negative distance); undefined where the line misses the region.
 */
export function exitFrom(
  region: Region,
  from: Point,
  direction: Point,
  inside = depthIn(region, from.x, from.y).depth > -ON_OUTLINE,
): Exit | undefined {
  let best: Exit | undefined;
  const { corners } = region;
  for (let i = 0; i + 3 < corners.length; i += 2) {
    const ax = corners[i]! - from.x;
    const ay = corners[i + 1]! - from.y;
    const dx = corners[i + 2]! - corners[i]!;
    const dy = corners[i + 3]! - corners[i + 1]!;
    const area = direction.x * dy - direction.y * dx;
    // Only where the line goes out of a clockwise outline, not where it comes in.
    if (area <= 0) continue;
    const part = (ax * direction.y - ay * direction.x) / area;
    if (part < -1e-9 || part > 1 + 1e-9) continue;
    const distance = (ax * dy - ay * dx) / area;
    const better = inside
      ? distance >= -ON_OUTLINE && (best === undefined || distance < best.distance)
      : distance < 0 && (best === undefined || distance > best.distance);
    if (better) best = { distance, edge: region.edgeOf[i / 2]! };
  }
  return best;
}

/** Whether a region is no taller and no wider than another: one that is cannot lie in it. */
export function isNoLarger(a: Region, b: Region): boolean {
  return [0, 1].every((axis) => reach(a, axis) <= reach(b, axis) + 2 * CLOTH_HOLDS);
}

function reach({ corners }: Region, axis: number): number {
  let least = Infinity;
  let most = -Infinity;
  for (let i = axis; i < corners.length; i += 2) {
    least = Math.min(least, corners[i]!);
    most = Math.max(most, corners[i]!);
  }
  return most - least;
}

/** Turns smaller than this belong to a curve that was read as chords, radians. */
const CORNER = 0.03;

/** Corners at which a clockwise outline stands into its own inside. */
export function reentrantCorners({ corners }: Region): Point[] {
  const found: Point[] = [];
  const count = corners.length / 2 - 1;
  for (let i = 0; i < count; i++) {
    const before = (i + count - 1) % count;
    const fromX = corners[2 * i]! - corners[2 * before]!;
    const fromY = corners[2 * i + 1]! - corners[2 * before + 1]!;
    const toX = corners[2 * i + 2]! - corners[2 * i]!;
    const toY = corners[2 * i + 3]! - corners[2 * i + 1]!;
    const turn = Math.atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
    if (turn < -CORNER) found.push({ x: corners[2 * i]!, y: corners[2 * i + 1]! });
  }
  return found;
}

/** Nearer than this to the outline counts as on it, mm: rounding of coordinates a metre long is far less. */
export const ON_OUTLINE = 1e-6;

function inwards(corners: Float64Array, at: number): Point {
  const dx = corners[at + 2]! - corners[at]!;
  const dy = corners[at + 3]! - corners[at + 1]!;
  const size = Math.hypot(dx, dy);
  return size === 0 ? { x: 0, y: 0 } : { x: -dy / size, y: dx / size };
}
