import type { Curve, Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { along, cross, distance, dot, subtract, unit } from '../geometry/point.ts';

/** An edge of a piece as a line of points, with the way along it to each. mm. */
export interface SeamLine {
  readonly points: readonly Point[];
  readonly ways: readonly number[];
}

/** Where a point lies beside a side: how far along the side its foot is, and how far the point is from it. */
export interface Beside {
  readonly way: number;
  readonly away: number;
}

/** @param curves of a side from the waist down */
export function seamLine(curves: readonly Curve[]): SeamLine {
  const points = flattenedRun(curves, DRAWN);
  let way = 0;
  const ways = points.map((point, i) => {
    if (i > 0) way += distance(points[i - 1]!, point);
    return way;
  });
  return { points, ways };
}

/** Between a side and its line of points, mm: far less than a stone is set by eye. */
const DRAWN = 0.05;

/** The nearest place on a side. */
export function beside({ points, ways }: SeamLine, point: Point): Beside {
  let best: Beside = { way: 0, away: Number.POSITIVE_INFINITY };
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1]!, points[i]!];
    const line = subtract(to, from);
    const share = Math.min(1, Math.max(0, dot(subtract(point, from), line) / dot(line, line)));
    const away = distance(point, along(from, line, share));
    if (away < best.away) best = { way: ways[i - 1]! + share * (ways[i]! - ways[i - 1]!), away };
  }
  return best;
}

/** The point at a distance down a side, and the side's direction there, downwards. */
export function frameAt({ points, ways }: SeamLine, way: number): { at: Point; down: Point } {
  const after = ways.findIndex((own) => own >= way);
  const i = Math.max(1, after < 0 ? ways.length - 1 : after);
  const down = unit(subtract(points[i]!, points[i - 1]!));
  return { at: along(points[i - 1]!, down, way - ways[i - 1]!), down };
}

/**
 * A point of the piece on the other side of a seam, where it lies once both are sewn: laid beside this piece so that the
 * two sides touch at `way` and run alike there. Exact where the seam is straight; elsewhere near enough for neighbours.
 * @param mirrored the other piece is this one's own mirror image
 */
export function acrossSeam(
  own: SeamLine,
  other: SeamLine,
  way: number,
  point: Point,
  mirrored: boolean,
): Point {
  const [here, there] = [frameAt(own, way), frameAt(other, way)];
  const from = subtract(point, there.at);
  const down = dot(from, there.down);
  const out = cross(there.down, from) * (mirrored ? -1 : 1);
  const right = { x: -here.down.y, y: here.down.x };
  return along(along(here.at, here.down, down), right, out);
}
