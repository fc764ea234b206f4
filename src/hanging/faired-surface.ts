import type { Surface } from './surface.ts';

/**
 * Hung cloth as a hand sees it: every place, round and down, where a cubic B-spline over the grid has it (Schoenberg
 * 1946), twice. Of what goes in and out from place to place, which is the grid's and not the cloth's, a ninth is left; a
 * round of radius r loses a third of the square of their distance over r: under 2 mm of a skirt. Rows that are sewn keep
 * their shape downwards.
 *
 * @param joins rows along which strips are sewn together
 */
export function fairedSurface(surface: Surface, joins: readonly number[] = []): Surface {
  const { columns, rows, closed } = surface;
  const place = surface.place.slice();
  const between = (from: Float64Array, before: number, own: number, after: number): void => {
    for (let axis = 0; axis < 3; axis++) {
      const mean = (from[3 * before + axis]! + 4 * from[3 * own + axis]! + from[3 * after + axis]!) / 6;
      place[3 * own + axis] = mean;
    }
  };
  for (let round = 0; round < ROUNDS; round++) {
    const across = place.slice();
    for (let column = 0; column < columns; column++) {
      if (!closed && (column === 0 || column === columns - 1)) continue;
      const [before, after] = [(column + columns - 1) % columns, (column + 1) % columns];
      for (let row = 1; row < rows; row++)
        between(across, before * rows + row, column * rows + row, after * rows + row);
    }
    const down = place.slice();
    for (let column = 0; column < columns; column++) {
      for (let row = 1; row + 1 < rows; row++) {
        if (joins.includes(row)) continue;
        const own = column * rows + row;
        between(down, own - 1, own, own + 1);
      }
    }
  }
  return { ...surface, place };
}

const ROUNDS = 2;
