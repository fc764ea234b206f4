import type { Point } from '../../geometry/curve.ts';

/**
 * The no-fit polygon of two convex polygons of positive signed area: the Minkowski sum of A and of B reflected through
 * the origin, grown by `gap`. It holds the shifts of B at which B touches or overlaps A, and its area is positive too. The
 * edges of both are merged by direction (M. de Berg and others, "Computational Geometry", 3rd ed., 2008, section 13.3).
 */
export function convexSum(a: readonly Point[], b: readonly Point[], gap: number): Point[] {
  const negated = b.map((point) => ({ x: -point.x, y: -point.y }));
  const edges = merged(edgesFromLowest(a), edgesFromLowest(negated));
  const startA = a[lowest(a)]!;
  const startB = negated[lowest(negated)]!;
  let at = { x: startA.x + startB.x, y: startA.y + startB.y };
  const sum = edges.map((edge) => {
    const corner = at;
    at = { x: at.x + edge.x, y: at.y + edge.y };
    return corner;
  });
  return gap === 0 ? sum : grown(sum, gap);
}

function lowest(ring: readonly Point[]): number {
  let best = 0;
  ring.forEach((point, i) => {
    const low = ring[best]!;
    if (point.y < low.y || (point.y === low.y && point.x < low.x)) best = i;
  });
  return best;
}

function edgesFromLowest(ring: readonly Point[]): Point[] {
  const first = lowest(ring);
  return ring.map((_, i) => {
    const from = ring[(first + i) % ring.length]!;
    const to = ring[(first + i + 1) % ring.length]!;
    return { x: to.x - from.x, y: to.y - from.y };
  });
}

/** The edges of both polygons in the order of their directions; parallel edges become one. */
function merged(a: readonly Point[], b: readonly Point[]): Point[] {
  const edges: Point[] = [];
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const p = a[i];
    const q = b[j];
    const order = p === undefined ? -1 : q === undefined ? 1 : p.x * q.y - p.y * q.x;
    const flat = p !== undefined && q !== undefined && isParallel(p, q);
    if (flat) edges.push({ x: p.x + q.x, y: p.y + q.y });
    else edges.push(order > 0 ? p! : q!);
    if (flat || order > 0) i++;
    if (flat || order <= 0) j++;
  }
  return edges;
}

function isParallel(p: Point, q: Point): boolean {
  const cross = p.x * q.y - p.y * q.x;
  const dot = p.x * q.x + p.y * q.y;
  return dot > 0 && Math.abs(cross) <= 1e-12 * dot;
}

/** Each edge moved outwards by `gap`, corners kept sharp. */
function grown(ring: readonly Point[], gap: number): Point[] {
  return ring.map((corner, i) => {
    const before = outwardOf(ring[(i + ring.length - 1) % ring.length]!, corner);
    const after = outwardOf(corner, ring[(i + 1) % ring.length]!);
    const share = gap / (1 + before.x * after.x + before.y * after.y);
    return { x: corner.x + (before.x + after.x) * share, y: corner.y + (before.y + after.y) * share };
  });
}

/** Unit outward normal of an edge of a polygon of positive signed area. */
export function outwardOf(from: Point, to: Point): Point {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  return { x: dy / length, y: -dx / length };
}
