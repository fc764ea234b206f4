import type { Stroke } from './plane.ts';

/** The test square as it measures on a page, mm; undefined where there is none. */
export interface ReadSquare {
  readonly across: number;
  readonly down: number;
}

/**
 * Finds the test square among the lines of a page: two level and two upright lines, joined at the corners, near 100 mm
 * each. `largest` where several would do: the inch and centimetre ticks are far shorter.
 */
export function readSquare(strokes: readonly Stroke[]): ReadSquare | undefined {
  const level = strokes.filter(
    ({ from, to }) => Math.abs(from.y - to.y) < STRAIGHT && isNearly100(from.x - to.x),
  );
  const upright = strokes.filter(
    ({ from, to }) => Math.abs(from.x - to.x) < STRAIGHT && isNearly100(from.y - to.y),
  );
  for (const lower of level) {
    const left = Math.min(lower.from.x, lower.to.x);
    const right = Math.max(lower.from.x, lower.to.x);
    const side = (x: number) =>
      upright.find(
        ({ from, to }) =>
          Math.abs(from.x - x) < STRAIGHT && Math.abs(Math.min(from.y, to.y) - lower.from.y) < STRAIGHT,
      );
    const [a, b] = [side(left), side(right)];
    if (a === undefined || b === undefined) continue;
    const top = Math.max(a.from.y, a.to.y);
    const upper = level.find(({ from }) => Math.abs(from.y - top) < STRAIGHT);
    if (upper !== undefined) return { across: right - left, down: top - lower.from.y };
  }
  return undefined;
}

/** Ends of lines that meet lie within this, mm. */
const STRAIGHT = 0.01;

/** Half of the size to half as much again: a page shrunk to fit is still found, to be named. */
function isNearly100(length: number): boolean {
  return Math.abs(length) > 50 && Math.abs(length) < 150;
}
