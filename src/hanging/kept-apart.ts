import type { Point } from '../geometry/curve.ts';
import { evenlySpaced, lengthOfLine } from './smoothed-line.ts';

/** A fold that runs along another line nearer than this says nothing that the line does not say, mm: 1.4 at 1:10. */
const NEAR = 14;
/** Lines that cross are not alike: they run along each other within some 30°. */
const ALIKE = 0.87;
/** Distance between the places at which they are compared, mm. */
const STEP = 6;

interface LinePlace extends Point {
  /** The way that the line runs there, of length 1. */
  readonly dx: number;
  readonly dy: number;
}

/**
 * Of these lines the stretches that run along none of the others.
 *
 * @param least a shorter stretch is left out, mm
 */
export function keptApart(
  lines: readonly (readonly Point[])[],
  others: readonly (readonly Point[])[],
  least: number,
): Point[][] {
  const drawn = drawnAlready(others);
  return lines.flatMap((line) => freeOf(drawn, line, least));
}

/** The same, and along one another neither: the longer ones first, as a hand draws them. */
export function keptApartFromAll(
  lines: readonly (readonly Point[])[],
  others: readonly (readonly Point[])[],
  least: number,
): Point[][] {
  const drawn = drawnAlready(others);
  const longestFirst = lines
    .map((line) => ({ line, long: lengthOfLine(line) }))
    .sort((a, b) => b.long - a.long);
  return longestFirst.flatMap(({ line }) => {
    const free = freeOf(drawn, line, least);
    for (const stretch of free) drawn.add(stretch);
    return free;
  });
}

function drawnAlready(lines: readonly (readonly Point[])[]): Near {
  const drawn = new Near();
  for (const line of lines) drawn.add(placesOf(line));
  return drawn;
}

function freeOf(drawn: Near, line: readonly Point[], least: number): LinePlace[][] {
  return stretches(placesOf(line), (place) => !drawn.hasAlong(place)).filter(
    (stretch) => lengthOfLine(stretch) >= least,
  );
}

function placesOf(line: readonly Point[]): LinePlace[] {
  if (line.length < 2) return [];
  const points = evenlySpaced(line, STEP);
  return points.map((point, i) => {
    const [a, b] = [points[Math.max(0, i - 1)]!, points[Math.min(points.length - 1, i + 1)]!];
    const [x, y] = [b.x - a.x, b.y - a.y];
    const length = Math.sqrt(x * x + y * y);
    return { ...point, dx: length > 0 ? x / length : 0, dy: length > 0 ? y / length : 0 };
  });
}

function stretches(places: readonly LinePlace[], isFree: (place: LinePlace) => boolean): LinePlace[][] {
  const found: LinePlace[][] = [[]];
  for (const place of places) {
    if (isFree(place)) found[found.length - 1]!.push(place);
    else if (found[found.length - 1]!.length > 0) found.push([]);
  }
  return found.filter((stretch) => stretch.length > 1);
}

/** Places of lines by the square that they lie in. */
class Near {
  private readonly squares = new Map<string, LinePlace[]>();

  add(places: readonly LinePlace[]): void {
    for (const place of places) {
      const key = `${Math.floor(place.x / NEAR)} ${Math.floor(place.y / NEAR)}`;
      const own = this.squares.get(key);
      if (own === undefined) this.squares.set(key, [place]);
      else own.push(place);
    }
  }

  hasAlong({ x, y, dx, dy }: LinePlace): boolean {
    const [column, row] = [Math.floor(x / NEAR), Math.floor(y / NEAR)];
    for (let r = row - 1; r <= row + 1; r++) {
      for (let c = column - 1; c <= column + 1; c++) {
        for (const other of this.squares.get(`${c} ${r}`) ?? []) {
          const apart = (other.x - x) * (other.x - x) + (other.y - y) * (other.y - y);
          if (apart < NEAR * NEAR && Math.abs(other.dx * dx + other.dy * dy) > ALIKE) return true;
        }
      }
    }
    return false;
  }
}
