import type { Curve, Point } from '../../geometry/curve.ts';
import { flattenedRun } from '../../geometry/flatten.ts';

/** Chord height of the outline that is taken for the true one, mm: far below what two pieces may share. */
const TRUE_OUTLINE = 0.005;

/** Farthest that a working outline may stand outside the true one, mm. Larger wastes cloth; smaller slows the search. */
const OUTSIDE = 1;

/** Corners are kept to this, mm, so that the last digits of a machine's sines decide nothing. */
const GRID = 1e-4;

/** A corner of the outline in work, and what giving it up (or the edge after it) would cost. */
interface Corner {
  readonly at: Point;
  change: Change | undefined;
}

interface Change {
  /** Farthest that the outline would come to stand outside the true one. */
  readonly outside: number;
  /** The corner that takes the place of this one and the next; absent where this one is only left out. */
  readonly meeting?: Point;
}

/**
 * The outline that is packed in place of a cut outline: few corners, never inside the true one. Hollow corners are
 * bridged and short edges given up for the point where their neighbours meet, the least change first.
 */
export function workingOutline(outline: readonly Curve[]): Point[] {
  const truth = trueOutline(outline);
  const ring: Corner[] = truth.map((at) => ({ at, change: undefined }));
  ring.forEach((corner, i) => {
    corner.change = changeAt(ring, i, truth);
  });
  while (ring.length > 3) {
    const index = cheapest(ring);
    if (index < 0) break;
    const { meeting } = ring[index]!.change!;
    if (meeting === undefined) ring.splice(index, 1);
    else {
      ring[index] = { at: meeting, change: undefined };
      ring.splice((index + 1) % ring.length, 1);
    }
    for (let near = index - 3; near <= index + 2; near++) {
      const i = (near + 2 * ring.length) % ring.length;
      ring[i]!.change = changeAt(ring, i, truth);
    }
  }
  return withinBounds(
    ring.map(({ at }) => at),
    truth,
  );
}

/** The true outline as a polygon, clockwise as drawn, without the doubled last point. */
export function trueOutline(outline: readonly Curve[]): Point[] {
  const points = flattenedRun(outline, TRUE_OUTLINE).map(({ x, y }) => ({ x: onGrid(x), y: onGrid(y) }));
  return points.filter((point, i) => {
    const before = points[(i + points.length - 1) % points.length]!;
    return point.x !== before.x || point.y !== before.y;
  });
}

/**
 * Tips that stand out beyond the true outline's bounds cut off: a piece that just fits its cloth must not seem too wide.
 */
function withinBounds(ring: readonly Point[], truth: readonly Point[]): Point[] {
  const xs = truth.map(({ x }) => x);
  const ys = truth.map(({ y }) => y);
  let kept = [...ring];
  kept = cutOff(kept, ({ x }) => x - Math.min(...xs));
  kept = cutOff(kept, ({ x }) => Math.max(...xs) - x);
  kept = cutOff(kept, ({ y }) => y - Math.min(...ys));
  kept = cutOff(kept, ({ y }) => Math.max(...ys) - y);
  return kept.filter((point, i) => !isSame(point, kept[(i + 1) % kept.length]!));
}

/** Corners nearer than the grid are one. */
function isSame(a: Point, b: Point): boolean {
  return Math.abs(a.x - b.x) < GRID && Math.abs(a.y - b.y) < GRID;
}

/** The part of a ring where `inside` is not negative (I. Sutherland and G. Hodgman, 1974). */
function cutOff(ring: readonly Point[], inside: (point: Point) => number): Point[] {
  return ring.flatMap((point, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const own = inside(point);
    const previous = inside(before);
    const kept = own >= 0 ? [point] : [];
    if (own >= 0 === previous >= 0) return kept;
    const share = previous / (previous - own);
    return [
      { x: before.x + (point.x - before.x) * share, y: before.y + (point.y - before.y) * share },
      ...kept,
    ];
  });
}

function onGrid(value: number): number {
  return Math.round(value / GRID) * GRID;
}

function cheapest(ring: readonly Corner[]): number {
  let best = -1;
  ring.forEach(({ change }, i) => {
    if (change !== undefined && (best < 0 || change.outside < ring[best]!.change!.outside)) best = i;
  });
  return best;
}

/** What may be done at a corner, if the outline then stays near enough to the true one. */
function changeAt(ring: readonly Corner[], index: number, truth: readonly Point[]): Change | undefined {
  const [before, corner, after, beyond] = [-1, 0, 1, 2].map(
    (step) => ring[(index + step + ring.length) % ring.length]!.at,
  ) as [Point, Point, Point, Point];
  if (turn(before, corner, after) <= 0) {
    const outside = Math.max(
      ...[0.25, 0.5, 0.75].map((share) =>
        distanceTo(truth, {
          x: before.x + (after.x - before.x) * share,
          y: before.y + (after.y - before.y) * share,
        }),
      ),
    );
    return outside <= OUTSIDE ? { outside } : undefined;
  }
  if (turn(corner, after, beyond) <= 0) return undefined;
  const meeting = lineMeeting(before, corner, beyond, after);
  if (meeting === undefined) return undefined;
  const outside = distanceTo(truth, meeting);
  return outside <= OUTSIDE ? { outside, meeting } : undefined;
}

/** Where the lines a→b and c→d meet, beyond b and d. */
function lineMeeting(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const abx = b.x - a.x;
  const aby = b.y - a.y;
  const cdx = d.x - c.x;
  const cdy = d.y - c.y;
  const area = abx * cdy - aby * cdx;
  if (area === 0) return undefined;
  const t = ((c.x - a.x) * cdy - (c.y - a.y) * cdx) / area;
  const u = ((c.x - a.x) * aby - (c.y - a.y) * abx) / area;
  return t >= 1 && u >= 1 ? { x: a.x + abx * t, y: a.y + aby * t } : undefined;
}

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
}

function distanceTo(ring: readonly Point[], point: Point): number {
  let least = Infinity;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[(i + 1) % ring.length]!;
    const ex = b.x - a.x;
    const ey = b.y - a.y;
    const square = ex * ex + ey * ey;
    const along = Math.max(0, Math.min(1, ((point.x - a.x) * ex + (point.y - a.y) * ey) / square));
    const dx = point.x - a.x - along * ex;
    const dy = point.y - a.y - along * ey;
    least = Math.min(least, dx * dx + dy * dy);
  }
  return Math.sqrt(least);
}
