import type { Point } from '../geometry/curve.ts';
import type { DepthMap } from './depth-map.ts';
import type { SeenPoint } from './seen.ts';
import type { SeenLine } from './turning-lines.ts';

/** Cloth in front of a line by less than this does not hide it, mm: the line lies on cloth itself. */
const ON_CLOTH = 8;

/** A line goes on over a stretch like this where it is seen but is none of what is asked for, mm. */
const GAP = 60;

/** A line runs on at both ends into what is seen but is none of what is asked for, mm: to the outline, that is. */
const RUNS_ON = 20;

/**
 * The parts of a line that no cloth hides and that are what is asked for, but for short gaps.
 * @param owner the surface that the line lies on
 */
export function visibleParts(
  map: DepthMap,
  line: SeenLine,
  owner: number,
  also: Also = () => true,
): SeenLine[] {
  const seen = line.map((place) => isSeen(map, place, owner));
  const asked = line.map((place, i) => seen[i]! && also(map, place));
  const runs: { from: number; to: number }[] = [];
  for (const [i, is] of asked.entries()) {
    if (!is) continue;
    const run = runs[runs.length - 1];
    if (run !== undefined && isShortGap(line, seen, run.to, i)) run.to = i;
    else runs.push({ from: i, to: i });
  }
  return runs
    .map(({ from, to }) => line.slice(ranOn(line, seen, from, -1), ranOn(line, seen, to, 1) + 1))
    .filter((own) => own.length > 1);
}

/** Nothing but seen places between two, and no long way. */
function isShortGap(line: SeenLine, seen: readonly boolean[], from: number, to: number): boolean {
  let gap = 0;
  for (let i = from + 1; i <= to; i++) {
    if (!seen[i]) return false;
    if (i < to) gap += flatApart(line[i - 1]!, line[i]!);
  }
  return gap <= GAP;
}

/** The last place that is seen on the way on from an end. */
function ranOn(line: SeenLine, seen: readonly boolean[], end: number, by: 1 | -1): number {
  let [at, passed] = [end, 0];
  while (seen[at + by] === true) {
    passed += flatApart(line[at]!, line[at + by]!);
    if (passed > RUNS_ON) break;
    at += by;
  }
  return at;
}

function flatApart(a: SeenPoint, b: SeenPoint): number {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  return Math.sqrt(x * x + y * y);
}

type Also = (map: DepthMap, place: SeenPoint) => boolean;

/** Seen where any of the cells around shows nothing nearer; cloth of another surface hides however near it lies. */
function isSeen(map: DepthMap, place: SeenPoint, owner: number): boolean {
  return someAround(map, place, 1, (depth, own) => depth <= place[2] + (own === owner ? ON_CLOTH : 0));
}

/** What lies beside a fold must lie this much deeper for it to be drawn, mm: a ripple is not a fold. */
const DEEPER = 12;

/** A fold that hides something, and not the outline, which is drawn apart. */
export function isFold(map: DepthMap, place: SeenPoint): boolean {
  return someAround(map, place, 2, (depth) => depth < place[2] - DEEPER) && !isOutline(map, place);
}

/** Where a surface ends for the eye and another begins behind it. */
export function isOverOther(owner: number): Also {
  return (map, place) =>
    someAround(map, place, 2, (depth, own) => own !== owner && depth < place[2]) && !isOutline(map, place);
}

function depthAt({ left, top, cell, width, height, depth }: DepthMap, x: number, y: number): number {
  const [column, row] = [Math.round((x - left) / cell), Math.round((y - top) / cell)];
  if (column < 0 || row < 0 || column >= width || row >= height) return Number.NEGATIVE_INFINITY;
  return depth[row * width + column]!;
}

/** Nothing of the cloth lies here. */
export function isEmpty(map: DepthMap, { x, y }: Point): boolean {
  return depthAt(map, x, y) === Number.NEGATIVE_INFINITY;
}

export function isOutline(map: DepthMap, place: SeenPoint): boolean {
  return someAround(map, place, 3, (depth) => depth === Number.NEGATIVE_INFINITY);
}

export function notOutline(map: DepthMap, place: SeenPoint): boolean {
  return !isOutline(map, place);
}

/** The parts of a line that nothing hides and that are not the outline. */
export function insideOf(map: DepthMap, line: SeenLine, owner: number): SeenLine[] {
  return visibleParts(map, line, owner, notOutline);
}

function someAround(
  { left, top, cell, width, height, depth, owner }: DepthMap,
  [x, y]: SeenPoint,
  reach: number,
  is: (depth: number, owner: number) => boolean,
): boolean {
  const column = Math.round((x - left) / cell);
  const row = Math.round((y - top) / cell);
  for (let r = Math.max(0, row - reach); r <= Math.min(height - 1, row + reach); r++) {
    for (let c = Math.max(0, column - reach); c <= Math.min(width - 1, column + reach); c++) {
      if (is(depth[r * width + c]!, owner[r * width + c]!)) return true;
    }
  }
  return false;
}

/** Number of the skirt among all that hides. */
export const SKIRT = 0;
