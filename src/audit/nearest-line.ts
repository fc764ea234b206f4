import type { Stroke, XY } from './plane.ts';

/** Lines in a grid of cells, to find the nearest to a point quickly. */
export class LineIndex {
  private readonly cells = new Map<number, Stroke[]>();

  constructor(lines: readonly Stroke[]) {
    for (const line of lines) {
      for (const { x, y } of spread(line, CELL / 2)) this.put(x, y, line);
    }
  }

  /** Distance to the nearest line, mm; `FAR` where none is nearer. */
  distanceTo(point: XY): number {
    let best = FAR;
    for (const line of this.cells.get(key(Math.floor(point.x / CELL), Math.floor(point.y / CELL))) ?? []) {
      best = Math.min(best, distance(line, point));
    }
    return best;
  }

  /** Into the cell and those round it, so that a look into one cell finds all within `FAR`. */
  private put(x: number, y: number, line: Stroke): void {
    for (let across = -1; across <= 1; across++) {
      for (let down = -1; down <= 1; down++) {
        const place = key(Math.floor(x / CELL) + across, Math.floor(y / CELL) + down);
        const list = this.cells.get(place);
        if (list === undefined) this.cells.set(place, [line]);
        else if (list.at(-1) !== line) list.push(line);
      }
    }
  }
}

/** Points on a line no farther apart than `step`, ends included. */
export function spread({ from, to }: Stroke, step: number): XY[] {
  const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
  return Array.from({ length: parts + 1 }, (_, part) => ({
    x: from.x + ((to.x - from.x) * part) / parts,
    y: from.y + ((to.y - from.y) * part) / parts,
  }));
}

/** mm. A line farther away than this is another line. */
export const FAR = 4;
const CELL = 8;

function key(across: number, down: number): number {
  return (across + 50_000) * 100_000 + down + 50_000;
}

function distance({ from, to }: Stroke, point: XY): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const size = x * x + y * y;
  const along = size === 0 ? 0 : ((point.x - from.x) * x + (point.y - from.y) * y) / size;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(from.x + x * t - point.x, from.y + y * t - point.y);
}
