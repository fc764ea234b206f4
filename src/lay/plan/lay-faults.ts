import type { Point } from '../../geometry/curve.ts';
import type { ClothFacts, PlacedPiece } from './lay-plan.ts';
import { trueOutline } from './working-outline.ts';

/** Two pieces may run into each other, or a piece out of the cloth, by this, mm: less than chalk is wide. */
export const LAY_AGREES = 0.05;

/** What is wrong with a finished lay, in words; empty when nothing is. */
export type LayFault = string;

/**
 * A finished lay checked afresh: the true cut lines as placed on flat cloth, against each other and the cloth's edges.
 * Nothing that the search worked with is used here.
 */
export function layFaults(pieces: readonly PlacedPiece[], facts: ClothFacts, length: number): LayFault[] {
  const outlines = pieces.map(({ outline }) => boundedRing(trueOutline(outline)));
  const faults: LayFault[] = [];
  const margin = facts.selvedge + facts.edgingDepth;
  outlines.forEach(({ left, right, top, bottom }, i) => {
    const out = Math.max(margin - left, right - (facts.width - margin), -top, bottom - length);
    if (out > LAY_AGREES) faults.push(`${nameOf(pieces[i]!)} lies ${out.toFixed(2)} mm outside the cloth`);
    for (let j = 0; j < i; j++) {
      const depth = overlapOf(outlines[i]!, outlines[j]!);
      if (depth > LAY_AGREES) {
        faults.push(`${nameOf(pieces[i]!)} and ${nameOf(pieces[j]!)} overlap by ${depth.toFixed(2)} mm`);
      }
    }
  });
  return faults;
}

interface Ring {
  readonly points: readonly Point[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** A point well inside of it. */
  readonly inner: Point;
}

function boundedRing(points: readonly Point[]): Ring {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    points,
    inner: innerPoint(points, (Math.min(...ys) + Math.max(...ys)) / 2),
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** In the middle of the widest stretch of cloth that lies at a height. */
function innerPoint(points: readonly Point[], y: number): Point {
  const crossed = points.flatMap((a, i) => {
    const b = points[(i + 1) % points.length]!;
    return a.y > y !== b.y > y ? [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)] : [];
  });
  const xs = crossed.sort((a, b) => a - b);
  const stretches = xs.flatMap((x, i) => (i % 2 === 0 ? [{ x, wide: xs[i + 1]! - x }] : []));
  const widest = stretches.reduce((best, own) => (own.wide > best.wide ? own : best), { x: NaN, wide: 0 });
  return { x: widest.x + widest.wide / 2, y };
}

/** How deep the boundary of either runs inside the other, or both lie over one point, mm. */
function overlapOf(a: Ring, b: Ring): number {
  if (a.left >= b.right || b.left >= a.right || a.top >= b.bottom || b.top >= a.bottom) return 0;
  return Math.max(depthInside(a.points, b), depthInside(b.points, a), depthOfBoth(a, b));
}

/** One piece laid just as another has no boundary inside that other. */
function depthOfBoth(a: Ring, b: Ring): number {
  if (!isInside(a.inner, b)) return 0;
  return Math.min(distanceToRing(a.inner, a.points), distanceToRing(a.inner, b.points));
}

/** Deepest of the corners of `ring`, and of the middles of the stretches between its crossings with `other`. */
function depthInside(ring: readonly Point[], other: Ring): number {
  let deepest = 0;
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const cuts = [0, ...crossings(from, to, other), 1].sort((a, b) => a - b);
    const shares = [0, ...cuts.slice(1).map((cut, k) => (cut + cuts[k]!) / 2)];
    for (const share of shares) {
      const point = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
      if (isInside(point, other)) deepest = Math.max(deepest, distanceToRing(point, other.points));
    }
  });
  return deepest;
}

/** Shares of a segment at which it crosses the ring. */
function crossings(from: Point, to: Point, { points, left, right, top, bottom }: Ring): number[] {
  if (Math.max(from.x, to.x) < left || Math.min(from.x, to.x) > right) return [];
  if (Math.max(from.y, to.y) < top || Math.min(from.y, to.y) > bottom) return [];
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const found: number[] = [];
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length]!;
    const area = dx * (b.y - a.y) - dy * (b.x - a.x);
    if (area === 0) return;
    const share = ((a.x - from.x) * (b.y - a.y) - (a.y - from.y) * (b.x - a.x)) / area;
    const along = ((a.x - from.x) * dy - (a.y - from.y) * dx) / area;
    if (share > 0 && share < 1 && along >= 0 && along <= 1) found.push(share);
  });
  return found;
}

function isInside({ x, y }: Point, { points, left, right, top, bottom }: Ring): boolean {
  if (x < left || x > right || y < top || y > bottom) return false;
  let inside = false;
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}

function distanceToRing(point: Point, points: readonly Point[]): number {
  let least = Infinity;
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length]!;
    const ex = b.x - a.x;
    const ey = b.y - a.y;
    const square = ex * ex + ey * ey;
    const share =
      square === 0 ? 0 : Math.max(0, Math.min(1, ((point.x - a.x) * ex + (point.y - a.y) * ey) / square));
    least = Math.min(least, Math.hypot(point.x - a.x - share * ex, point.y - a.y - share * ey));
  });
  return least;
}

function nameOf({ gore, copy }: PlacedPiece): string {
  return `${gore} ${copy}`;
}
