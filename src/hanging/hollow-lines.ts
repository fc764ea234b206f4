import { placesApart, type Surface } from './surface.ts';

/** Cloth to both sides of a hollow that is looked at for the folds beside it, mm, and how far out these must stand. */
const BESIDE = 220;
const STANDS_OUT = 14;
/** Cloth lower than this lies on the floor and has hollows of another kind, mm. */
const ABOVE_FLOOR = 40;
/** A hollow goes on in the next row within this many columns. */
const STRAYS = 2;
/** Rows that a hollow must go on for. */
const LEAST_ROWS = 8;

/**
 * The bottoms of the hollows between hanging folds, downwards, as places of the surface: where a row comes nearer to
 * the middle of the skirt than on both sides, and lies behind the straight line from fold to fold by as much as one is deep.
 */
export function hollowLines(surface: Surface): number[][] {
  const { rows } = surface;
  const lines: number[][] = [];
  let open: number[][] = [];
  for (let row = 0; row < rows; row++) {
    const found = hollowsOf(surface, row);
    const taken = new Set<number>();
    const still: number[][] = [];
    for (const line of open) {
      const column = Math.floor(line[line.length - 1]! / rows);
      const next = nearest(found, column, surface.columns, taken);
      if (next === undefined) lines.push(line);
      else {
        taken.add(next);
        line.push(next * rows + row);
        still.push(line);
      }
    }
    for (const column of found) if (!taken.has(column)) still.push([column * rows + row]);
    open = still;
  }
  return [...lines, ...open].filter((line) => line.length >= LEAST_ROWS);
}

function nearest(
  found: readonly number[],
  column: number,
  columns: number,
  taken: ReadonlySet<number>,
): number | undefined {
  const off = (other: number): number => {
    const apart = Math.abs(other - column);
    return Math.min(apart, columns - apart);
  };
  return found
    .filter((other) => !taken.has(other) && off(other) <= STRAYS)
    .sort((a, b) => off(a) - off(b))[0];
}

/** Columns at which one row has a hollow. */
function hollowsOf({ columns, rows, place, closed }: Surface, row: number): number[] {
  const on = (column: number): number =>
    closed ? (column + columns) % columns : Math.min(columns - 1, Math.max(0, column));
  const at = (column: number): number => 3 * (on(column) * rows + row);
  const out = Array.from({ length: columns }, (_, column) => {
    const [x, y] = [place[at(column)]!, place[at(column) + 1]!];
    return Math.sqrt(x * x + y * y);
  });
  const outAt = (column: number): number => out[on(column)]!;
  const apart = (a: number, b: number): number =>
    placesApart({ place }, on(a) * rows + row, on(b) * rows + row);
  /** Where the cloth comes farthest out on one side of a column. */
  const farthest = (column: number, side: number): number => {
    let [passed, most] = [0, column + side];
    for (let k = 1; passed < BESIDE && k < columns; k++) {
      passed += apart(column + side * (k - 1), column + side * k);
      if (outAt(column + side * k) > outAt(most)) most = column + side * k;
    }
    return most;
  };
  return out.flatMap((own, column) => {
    if (place[at(column) + 2]! < ABOVE_FLOOR) return [];
    if (!(own < outAt(column - 1) && own <= outAt(column + 1))) return [];
    const [from, to] = [at(farthest(column, -1)), at(farthest(column, 1))];
    return behindLine(place, at(column), from, to) >= STANDS_OUT ? [column] : [];
  });
}

/** From above: how far nearer the middle than the straight line between two others a place lies; an oval's flat side does not. mm. */
function behindLine(place: Float64Array, own: number, from: number, to: number): number {
  const [x, y] = [place[to]! - place[from]!, place[to + 1]! - place[from + 1]!];
  const length = Math.sqrt(x * x + y * y);
  const [px, py] = [place[own]! - place[from]!, place[own + 1]! - place[from + 1]!];
  const [ox, oy] = [-place[from]!, -place[from + 1]!];
  const side = x * oy - y * ox > 0 ? 1 : -1;
  return length > 0 ? (side * (x * py - y * px)) / length : 0;
}
