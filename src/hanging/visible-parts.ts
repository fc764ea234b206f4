import type { DepthMap } from './depth-map.ts';
import type { SeenLine } from './turning-lines.ts';

/** Cloth in front of a line by less than this does not hide it, mm: the line lies on cloth itself. */
const ON_CLOTH = 8;

/** The parts of a line that no cloth hides. */
export function visibleParts(map: DepthMap, line: SeenLine, also: Also = () => true): SeenLine[] {
  const parts: (readonly [number, number, number])[][] = [];
  let part: (readonly [number, number, number])[] = [];
  for (const place of line) {
    if (isSeen(map, place) && also(map, place)) part.push(place);
    else if (part.length > 0) {
      parts.push(part);
      part = [];
    }
  }
  if (part.length > 0) parts.push(part);
  return parts.filter((own) => own.length > 1);
}

type Also = (map: DepthMap, place: readonly [number, number, number]) => boolean;

/** Seen where any of the cells around shows nothing nearer. */
function isSeen(map: DepthMap, place: readonly [number, number, number]): boolean {
  return someAround(map, place, 1, (depth) => depth <= place[2] + ON_CLOTH);
}

/** What lies beside a fold must lie this much deeper for it to be drawn, mm: a ripple is not a fold. */
const DEEPER = 12;

/** A fold that hides something, and not the outline, which is drawn apart. */
export function isFold(map: DepthMap, place: readonly [number, number, number]): boolean {
  return (
    someAround(map, place, 3, (depth) => depth < place[2] - DEEPER) && !isOutline(map, place)
  );
}

export function isOutline(map: DepthMap, place: readonly [number, number, number]): boolean {
  return someAround(map, place, 2, (depth) => depth === Number.NEGATIVE_INFINITY);
}

function someAround(
  { left, top, cell, width, height, depth }: DepthMap,
  [x, y]: readonly [number, number, number],
  reach: number,
  is: (depth: number) => boolean,
): boolean {
  const column = Math.round((x - left) / cell);
  const row = Math.round((y - top) / cell);
  for (let r = Math.max(0, row - reach); r <= Math.min(height - 1, row + reach); r++) {
    for (let c = Math.max(0, column - reach); c <= Math.min(width - 1, column + reach); c++) {
      if (is(depth[r * width + c]!)) return true;
    }
  }
  return false;
}
