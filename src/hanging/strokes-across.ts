import type { Point } from '../geometry/curve.ts';
import { evenlySpaced } from './smoothed-line.ts';

/** How far apart strokes across an opening stand, and how long they are, mm of the gown. */
const APART = 22;
const LONG = 16;

/** Short strokes across a line, as a placket or a zip is drawn. */
export function strokesAcross(line: readonly Point[]): Point[][] {
  const places = evenlySpaced(line, APART);
  return places.slice(1, -1).map((at, i) => across(at, places[i]!, places[i + 2]!));
}

/** One stroke across the end of a line, as a tack is drawn. */
export function strokeAt(end: Point, next: Point): Point[] {
  return across(end, end, next);
}

function across(at: Point, before: Point, after: Point): Point[] {
  const [x, y] = [after.x - before.x, after.y - before.y];
  const length = Math.sqrt(x * x + y * y);
  if (length === 0) return [];
  const [right, down] = [(-y / length) * (LONG / 2), (x / length) * (LONG / 2)];
  return [
    { x: at.x - right, y: at.y - down },
    { x: at.x + right, y: at.y + down },
  ];
}
