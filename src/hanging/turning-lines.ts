import type { Surface } from './surface.ts';

/** A line on a surface as it is seen: to the right, down, towards the eye. mm. */
export type SeenLine = readonly (readonly [number, number, number])[];

/**
 * Where a surface turns from the eye: the lines on which its face towards the eye changes sign, found cell by cell on the
 * grid (marching squares, Lorensen, Cline 1987 in the plane) and joined from cell to cell.
 */
export function turningLines(seen: Surface): SeenLine[] {
  const facing = facingOf(seen);
  const links = linksOf(seen, facing);
  const lines: SeenLine[] = [];
  const taken = new Set<number>();
  const place = (side: number): [number, number, number] => crossing(seen, facing, side);
  const walk = (from: number): number[] => {
    const run = [from];
    taken.add(from);
    for (let next = nextOf(links, from, taken); next !== undefined; next = nextOf(links, next, taken)) {
      run.push(next);
      taken.add(next);
    }
    return run;
  };
  // Lines that end first, from their ends; then those that close.
  for (const wanted of [1, 2]) {
    for (const [side, beside] of links) {
      if (taken.has(side) || (wanted === 1 && beside.length !== 1)) continue;
      const run = walk(side);
      const closes = wanted === 2 && links.get(run[run.length - 1]!)!.includes(run[0]!);
      lines.push((closes ? [...run, run[0]!] : run).map(place));
    }
  }
  return lines;
}

function nextOf(
  links: ReadonlyMap<number, readonly number[]>,
  side: number,
  taken: ReadonlySet<number>,
): number | undefined {
  return links.get(side)!.find((other) => !taken.has(other));
}

/** By place: the part of the surface's normal that points to the eye, its length left in. */
function facingOf({ columns, rows, place }: Surface): Float64Array {
  const facing = new Float64Array(columns * rows);
  for (let column = 0; column < columns; column++) {
    const before = ((column + columns - 1) % columns) * rows;
    const after = ((column + 1) % columns) * rows;
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

/** A side of a cell, numbered by its first place: 2i to the next column, 2i + 1 to the next row. */
function linksOf({ columns, rows }: Surface, facing: Float64Array): Map<number, number[]> {
  const links = new Map<number, number[]>();
  const link = (a: number, b: number): void => {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const beside = links.get(from);
      if (beside === undefined) links.set(from, [to]);
      else beside.push(to);
    }
  };
  const changes = (i: number, j: number): boolean => facing[i]! > 0 !== facing[j]! > 0;
  for (let column = 0; column < columns; column++) {
    const next = ((column + 1) % columns) * rows;
    for (let row = 0; row + 1 < rows; row++) {
      const a = column * rows + row;
      const b = next + row;
      const sides: number[] = [];
      if (changes(a, b)) sides.push(2 * a);
      if (changes(a, a + 1)) sides.push(2 * a + 1);
      if (changes(a + 1, b + 1)) sides.push(2 * (a + 1));
      if (changes(b, b + 1)) sides.push(2 * b + 1);
      if (sides.length >= 2) link(sides[0]!, sides[1]!);
      if (sides.length === 4) link(sides[2]!, sides[3]!);
    }
  }
  return links;
}

function crossing(
  { columns, rows, place }: Surface,
  facing: Float64Array,
  side: number,
): [number, number, number] {
  const own = side >> 1;
  const other = (side & 1) === 1 ? own + 1 : (own + rows) % (columns * rows);
  const f = facing[own]!;
  const g = facing[other]!;
  const part = f / (f - g);
  const at = (axis: number): number =>
    place[3 * own + axis]! + (place[3 * other + axis]! - place[3 * own + axis]!) * part;
  return [at(0), at(1), at(2)];
}
