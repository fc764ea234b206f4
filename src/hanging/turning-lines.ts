import type { SeenPoint } from './seen.ts';
import type { Surface } from './surface.ts';

/** A line on a surface as it is seen: to the right, down, towards the eye. mm. */
export type SeenLine = readonly SeenPoint[];

/**
 * Where a surface turns from the eye: the lines on which its face towards the eye changes sign, found cell by cell on the
 * grid (marching squares, Lorensen, Cline 1987 in the plane) and joined from cell to cell.
 */
export function turningLines(seen: Surface): SeenLine[] {
  const facing = facingOf(seen);
  const { crossed, links } = linksOf(seen, facing);
  const lines: SeenLine[] = [];
  const taken = new Uint8Array(links.length / 2);
  const next = (side: number): number => {
    for (const end of [2 * side, 2 * side + 1]) {
      const other = links[end]! - 1;
      if (other >= 0 && taken[other] === 0) return other;
    }
    return -1;
  };
  // Lines that end first, from their ends; then those that close.
  for (const closes of [false, true]) {
    for (const start of crossed) {
      if (taken[start] === 1 || (!closes && links[2 * start + 1]! > 0)) continue;
      const run: number[] = [];
      for (let side = start; side >= 0; side = next(side)) {
        run.push(side);
        taken[side] = 1;
      }
      if (closes) run.push(start);
      lines.push(run.map((side) => crossing(seen, facing, side)));
    }
  }
  return lines;
}

/** By place: the part of the surface's normal that points to the eye, its length left in. */
export function facingOf({ columns, rows, place, closed }: Surface): Float64Array {
  const facing = new Float64Array(columns * rows);
  for (let column = 0; column < columns; column++) {
    const before = (column > 0 ? column - 1 : closed ? columns - 1 : 0) * rows;
    const after = (column + 1 < columns ? column + 1 : closed ? 0 : column) * rows;
    for (let row = 0; row < rows; row++) {
      const own = column * rows + row;
      const up = 3 * (row === 0 ? own : own - 1);
      const down = 3 * (row + 1 === rows ? own : own + 1);
      const p = 3 * (before + row);
      const q = 3 * (after + row);
      const rx = place[q]! - place[p]!;
      const ry = place[q + 1]! - place[p + 1]!;
      const dx = place[down]! - place[up]!;
      const dy = place[down + 1]! - place[up + 1]!;
      facing[own] = rx * dy - ry * dx;
    }
  }
  return facing;
}

/**
 * The sides of cells that a line crosses, and which others of the same cells it goes on to: two at most, one more than
 * their number, so that 0 is none. A side is numbered by its first place: 2i to the next column, 2i + 1 to the next row.
 */
function linksOf(
  { columns, rows, closed }: Surface,
  facing: Float64Array,
): { crossed: number[]; links: Int32Array } {
  const links = new Int32Array(4 * columns * rows);
  const crossed: number[] = [];
  const join = (from: number, to: number): void => {
    if (links[2 * from] === 0) {
      crossed.push(from);
      links[2 * from] = to + 1;
    } else links[2 * from + 1] = to + 1;
  };
  const changes = (i: number, j: number): boolean => facing[i]! > 0 !== facing[j]! > 0;
  for (let column = 0; column < (closed ? columns : columns - 1); column++) {
    const next = ((column + 1) % columns) * rows;
    for (let row = 0; row + 1 < rows; row++) {
      const a = column * rows + row;
      const b = next + row;
      if (!(changes(a, b) || changes(a, a + 1) || changes(b, b + 1))) continue;
      const sides: number[] = [];
      if (changes(a, b)) sides.push(2 * a);
      if (changes(a, a + 1)) sides.push(2 * a + 1);
      if (changes(a + 1, b + 1)) sides.push(2 * (a + 1));
      if (changes(b, b + 1)) sides.push(2 * b + 1);
      for (let k = 0; k + 1 < sides.length; k += 2) {
        join(sides[k]!, sides[k + 1]!);
        join(sides[k + 1]!, sides[k]!);
      }
    }
  }
  return { crossed, links };
}

function crossing({ columns, rows, place }: Surface, facing: Float64Array, side: number): SeenPoint {
  const own = side >> 1;
  const other = (side & 1) === 1 ? own + 1 : (own + rows) % (columns * rows);
  const f = facing[own]!;
  const g = facing[other]!;
  const part = f / (f - g);
  const at = (axis: number): number =>
    place[3 * own + axis]! + (place[3 * other + axis]! - place[3 * own + axis]!) * part;
  return [at(0), at(1), at(2)];
}
