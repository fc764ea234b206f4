import type { Point } from '../../geometry/curve.ts';
import { outwardOf } from './convex-sum.ts';

/** A straight piece of the boundary of a union. Outside is where `(direction.y, −direction.x)` points. */
export interface BoundarySegment {
  readonly from: Point;
  /** Unit. */
  readonly direction: Point;
  readonly length: number;
  /** Whether the points beyond an end, nearest to it of all the boundary, are inside: the corner there is a hollow one. */
  readonly insideAtStart: boolean;
  readonly insideAtEnd: boolean;
}

/** How far outside an edge it is looked whether another polygon covers it, as a share of the union's size. */
const BESIDE = 1e-9;

/**
 * Boundary of the union of convex polygons of positive signed area, as segments in any order: a distance needs no more.
 * Each edge is moved outwards by a hair, and the parts of it that lie in other polygons are cut away. So where two
 * polygons touch along an edge, both edges vanish without a special case.
 */
export function boundaryOfUnion(polygons: readonly Point[][], size: number): BoundarySegment[] {
  const hair = size * BESIDE;
  const bounded = polygons.map((ring) => ({ ring, ...boundsOf(ring) }));
  const loose: LooseSegment[] = [];
  bounded.forEach((own, index) => {
    own.ring.forEach((from, i) => {
      const to = own.ring[(i + 1) % own.ring.length]!;
      const others = bounded.filter((other, j) => j !== index && meets(other, from, to));
      loose.push(
        ...uncovered(
          from,
          to,
          others.map((other) => other.ring),
          hair,
        ),
      );
    });
  });
  return withCorners(mergedInLine(loose, hair), polygons, size);
}

/** Whether a point lies in a convex polygon, edges included. */
function contains(ring: readonly Point[], point: Point): boolean {
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[(i + 1) % ring.length]!;
    if ((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x) < 0) return false;
  }
  return true;
}

interface LooseSegment {
  readonly from: Point;
  readonly direction: Point;
  readonly length: number;
}

interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boundsOf(ring: readonly Point[]): Bounds {
  const xs = ring.map((p) => p.x);
  const ys = ring.map((p) => p.y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function meets(bounds: Bounds, from: Point, to: Point): boolean {
  return (
    Math.max(from.x, to.x) >= bounds.left &&
    Math.min(from.x, to.x) <= bounds.right &&
    Math.max(from.y, to.y) >= bounds.top &&
    Math.min(from.y, to.y) <= bounds.bottom
  );
}

function uncovered(
  from: Point,
  to: Point,
  others: readonly (readonly Point[])[],
  hair: number,
): LooseSegment[] {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length <= hair) return [];
  const outward = outwardOf(from, to);
  const start = { x: from.x + outward.x * hair, y: from.y + outward.y * hair };
  const direction = { x: dx / length, y: dy / length };
  let open: [number, number][] = [[0, length]];
  for (const other of others) {
    const covered = spanInside(other, start, direction, length);
    if (covered === undefined) continue;
    open = open.flatMap(([a, b]) => without(a, b, covered));
    if (open.length === 0) return [];
  }
  return open
    .filter(([a, b]) => b - a > hair)
    .map(([a, b]) => ({
      from: { x: from.x + direction.x * a, y: from.y + direction.y * a },
      direction,
      length: b - a,
    }));
}

/** The stretch of a line inside a convex polygon (M. Cyrus and J. Beck, 1978). */
function spanInside(
  ring: readonly Point[],
  start: Point,
  direction: Point,
  length: number,
): [number, number] | undefined {
  let enter = 0;
  let leave = length;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[(i + 1) % ring.length]!;
    const ex = b.x - a.x;
    const ey = b.y - a.y;
    const inside = ex * (start.y - a.y) - ey * (start.x - a.x);
    const rate = ex * direction.y - ey * direction.x;
    if (rate === 0) {
      if (inside < 0) return undefined;
    } else if (rate > 0) enter = Math.max(enter, -inside / rate);
    else leave = Math.min(leave, -inside / rate);
    if (enter >= leave) return undefined;
  }
  return [enter, leave];
}

function without(a: number, b: number, [from, to]: [number, number]): [number, number][] {
  if (to <= a || from >= b) return [[a, b]];
  const left: [number, number][] = [];
  if (from > a) left.push([a, from]);
  if (to < b) left.push([to, b]);
  return left;
}

/** Joins segments that continue or repeat each other on one line: fewer to measure against. */
function mergedInLine(segments: LooseSegment[], hair: number): LooseSegment[] {
  const kept: LooseSegment[] = [];
  for (let segment of segments) {
    for (let i = kept.length - 1; i >= 0; i--) {
      const union = inLine(kept[i]!, segment, hair);
      if (union === undefined) continue;
      segment = union;
      kept.splice(i, 1);
    }
    kept.push(segment);
  }
  return kept;
}

function inLine(a: LooseSegment, b: LooseSegment, hair: number): LooseSegment | undefined {
  const turn = a.direction.x * b.direction.y - a.direction.y * b.direction.x;
  const same = a.direction.x * b.direction.x + a.direction.y * b.direction.y;
  if (same < 0 || Math.abs(turn) > 1e-9) return undefined;
  const px = b.from.x - a.from.x;
  const py = b.from.y - a.from.y;
  if (Math.abs(px * a.direction.y - py * a.direction.x) > hair) return undefined;
  const begin = px * a.direction.x + py * a.direction.y;
  if (begin > a.length + 4 * hair || begin + b.length < -4 * hair) return undefined;
  const from = Math.min(0, begin);
  return {
    from: { x: a.from.x + a.direction.x * from, y: a.from.y + a.direction.y * from },
    direction: a.direction,
    length: Math.max(a.length, begin + b.length) - from,
  };
}

function withCorners(
  segments: readonly LooseSegment[],
  polygons: readonly Point[][],
  size: number,
): BoundarySegment[] {
  const step = size * BESIDE * 100;
  const inside = (x: number, y: number) => polygons.some((ring) => contains(ring, { x, y }));
  return segments.map(({ from, direction, length }) => ({
    from,
    direction,
    length,
    insideAtStart: inside(from.x - direction.x * step, from.y - direction.y * step),
    insideAtEnd: inside(from.x + direction.x * (length + step), from.y + direction.y * (length + step)),
  }));
}
