import type { Surface } from './surface.ts';

/** Half-way to the middle of its neighbours, then back by this part of the way to the middle of where they are now. */
const THERE = 0.5;
const BACK = -0.36;

/**
 * Hung cloth as a hand sees it: what goes in and out from place to place, which is the grid's and not the cloth's, is
 * taken from it, round and down, and what is broader stays (Taubin 1995): of a wave over eight places 95 % are left, over
 * four 68 %, over two none. Rows that are sewn keep their shape downwards.
 *
 * @param joins rows along which strips are sewn together
 * @param pressed columns in the folds of pleats, which keep their shape round
 */
export function fairedSurface(
  surface: Surface,
  joins: readonly number[] = [],
  pressed: ReadonlySet<number> = new Set(),
): Surface {
  const place = surface.place.slice();
  for (const part of [THERE, BACK]) round(surface, place, part, pressed);
  for (const part of [THERE, BACK]) down(surface, place, part, joins);
  return { ...surface, place };
}

function round(
  { columns, rows, closed }: Surface,
  place: Float64Array,
  part: number,
  pressed: ReadonlySet<number>,
): void {
  const from = place.slice();
  for (let column = 0; column < columns; column++) {
    if (pressed.has(column) || (!closed && (column === 0 || column === columns - 1))) continue;
    const [before, after] = [(column + columns - 1) % columns, (column + 1) % columns];
    for (let row = 1; row < rows; row++)
      towards(from, place, before * rows + row, column * rows + row, after * rows + row, part);
  }
}

function down({ columns, rows }: Surface, place: Float64Array, part: number, joins: readonly number[]): void {
  const from = place.slice();
  for (let column = 0; column < columns; column++) {
    for (let row = 1; row + 1 < rows; row++) {
      const own = column * rows + row;
      if (!joins.includes(row)) towards(from, place, own - 1, own, own + 1, part);
    }
  }
}

function towards(
  from: Float64Array,
  to: Float64Array,
  before: number,
  own: number,
  after: number,
  part: number,
): void {
  for (let axis = 0; axis < 3; axis++) {
    const middle = (from[3 * before + axis]! + from[3 * after + axis]!) / 2;
    const faired = from[3 * own + axis]! * (1 - part) + middle * part;
    // Above the floor it stays.
    to[3 * own + axis] = axis === 2 ? Math.max(0, faired) : faired;
  }
}
