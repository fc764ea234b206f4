/** A grid of places in the air; three numbers a place, column by column, each from the top down. mm. */
export interface Surface {
  readonly columns: number;
  readonly rows: number;
  readonly place: Float64Array;
  /** The last column goes on to the first. */
  readonly closed: boolean;
}

/** Distance between two places of a grid by their numbers, mm. */
export function placesApart({ place }: Pick<Surface, 'place'>, a: number, b: number): number {
  const x = place[3 * b]! - place[3 * a]!;
  const y = place[3 * b + 1]! - place[3 * a + 1]!;
  const z = place[3 * b + 2]! - place[3 * a + 2]!;
  return Math.sqrt(x * x + y * y + z * z);
}

/** Parts that every distance of the hung cloth is drawn in. */
export const FINER = 2;

/**
 * The cloth drawn smoothly through its places: Catmull-Rom splines round and down (Catmull, Rom 1974). Column `c`, row
 * `r` of the cloth stand at `FINER · c`, `FINER · r`.
 */
export function smoothSurface({ columns, rows, place, closed }: Surface): Surface {
  const wide = finer(place, columns, (column, row) => column * rows + row, rows, closed);
  const across = finerCount(columns, closed);
  const down = (rows - 1) * FINER + 1;
  const tall = new Float64Array(3 * across * down);
  for (let column = 0; column < across; column++) {
    const own = wide.subarray(3 * column * rows, 3 * (column + 1) * rows);
    const smooth = finer(own, rows, (row) => row, 1, false);
    tall.set(smooth, 3 * column * down);
  }
  return { columns: across, rows: down, place: tall, closed };
}

/** The same surface with the columns beside those left out joined to one another. */
export function withoutColumns(surface: Surface, left: readonly number[]): Surface {
  if (left.length === 0) return surface;
  const out = new Set(left);
  const { columns, rows, place, closed } = surface;
  const kept = Array.from({ length: columns }, (_, column) => column).filter((column) => !out.has(column));
  const own = new Float64Array(3 * kept.length * rows);
  for (const [to, column] of kept.entries())
    own.set(place.subarray(3 * column * rows, 3 * (column + 1) * rows), 3 * to * rows);
  return { columns: kept.length, rows, place: own, closed };
}

function finerCount(count: number, closed: boolean): number {
  return closed ? count * FINER : (count - 1) * FINER + 1;
}

/** Splines over `count` places, for each of `lines` lines beside one another. */
function finer(
  place: Float64Array,
  count: number,
  index: (at: number, line: number) => number,
  lines: number,
  closed: boolean,
): Float64Array {
  const all = finerCount(count, closed);
  const out = new Float64Array(3 * all * lines);
  const wrap = (at: number): number => (closed ? (at + count) % count : Math.min(count - 1, Math.max(0, at)));
  for (let k = 0; k < all; k++) {
    const at = Math.floor(k / FINER);
    const t = (k % FINER) / FINER;
    const [wa, wb, wc, wd] = weights(t);
    const before = wrap(at - 1);
    const here = wrap(at);
    const next = wrap(at + 1);
    const beyond = wrap(at + 2);
    for (let line = 0; line < lines; line++) {
      const a = 3 * index(before, line);
      const b = 3 * index(here, line);
      const c = 3 * index(next, line);
      const d = 3 * index(beyond, line);
      const own = 3 * (k * lines + line);
      for (let axis = 0; axis < 3; axis++) {
        out[own + axis] =
          wa * place[a + axis]! + wb * place[b + axis]! + wc * place[c + axis]! + wd * place[d + axis]!;
      }
    }
  }
  return out;
}

function weights(t: number): [number, number, number, number] {
  const [t2, t3] = [t * t, t * t * t];
  return [(-t3 + 2 * t2 - t) / 2, (3 * t3 - 5 * t2 + 2) / 2, (-3 * t3 + 4 * t2 + t) / 2, (t3 - t2) / 2];
}
