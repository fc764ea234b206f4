import type { Point } from '../geometry/curve.ts';
import { evenlySpaced } from './smoothed-line.ts';

/** How far apart strokes across an opening stand, and how long they are, mm of the gown. */
const APART = 22;
const LONG = 16;

/** Short strokes across a line, as a placket or a zip is drawn. */
export function strokesAcross(line: readonly Point[]): Point[][] {
  const places = evenlySpaced(line, APART);
  return places.flatMap((at, i): Point[][] => {
    const [before, after] = [places[i - 1], places[i + 1]];
    if (before === undefined || after === undefined) return [];
    const [x, y] = [after.x - before.x, after.y - before.y];
    const length = Math.sqrt(x * x + y * y);
    if (length === 0) return [];
    const [across, down] = [(-y / length) * (LONG / 2), (x / length) * (LONG / 2)];
    return [
      [
        { x: at.x - across, y: at.y - down },
        { x: at.x + across, y: at.y + down },
      ],
    ];
  });
}
