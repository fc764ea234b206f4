import type { Surface } from './surface.ts';

/** How near the eye the nearest cloth lies, on a grid over the view. mm. */
export interface DepthMap {
  readonly left: number;
  readonly top: number;
  readonly cell: number;
  readonly width: number;
  readonly height: number;
  /** −Infinity where there is none. */
  readonly depth: Float32Array;
  /** Which of the surfaces that is. */
  readonly owner: Uint8Array;
}

/** A surface that hides what lies behind it. */
export interface Hiding {
  readonly surface: Surface;
  /** Its inside is full: she is in it, and one does not look in. */
  readonly filled: boolean;
}

/** Size of a cell, mm: 0.3 mm on paper at 1:10. */
const CELL = 3;
/** Cells left empty all round, so that an outline closes. */
const MARGIN = 4;

export function depthMap(seen: readonly Hiding[]): DepthMap {
  const surfaces = seen.map(({ surface }) => surface);
  const [xs, ys] = [0, 1].map((axis) => rangeOf(surfaces, axis));
  // Cells lie about the middle of the gown, so that what is alike on both sides is drawn alike.
  const left = (Math.floor(xs![0] / CELL) - MARGIN) * CELL;
  const top = (Math.floor(ys![0] / CELL) - MARGIN) * CELL;
  const width = Math.ceil((xs![1] - left) / CELL) + MARGIN;
  const height = Math.ceil((ys![1] - top) / CELL) + MARGIN;
  const map: DepthMap = {
    left,
    top,
    cell: CELL,
    width,
    height,
    depth: new Float32Array(width * height).fill(Number.NEGATIVE_INFINITY),
    owner: new Uint8Array(width * height),
  };
  for (const [owner, { surface, filled }] of seen.entries()) drawSurface(map, surface, owner, filled);
  return map;
}

function rangeOf(seen: readonly Surface[], axis: number): [number, number] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const { place } of seen) {
    for (let i = axis; i < place.length; i += 3) {
      least = Math.min(least, place[i]!);
      most = Math.max(most, place[i]!);
    }
  }
  return [least, most];
}

function drawSurface(
  map: DepthMap,
  { columns, rows, place, closed }: Surface,
  owner: number,
  filled: boolean,
): void {
  for (let column = 0; column < (closed ? columns : columns - 1); column++) {
    const first = column * rows;
    const next = ((column + 1) % columns) * rows;
    for (let row = 0; row + 1 < rows; row++) {
      const a = first + row;
      const b = next + row;
      const c = next + row + 1;
      const d = first + row + 1;
      drawTriangle(map, place, 3 * a, 3 * b, 3 * c, owner, filled);
      drawTriangle(map, place, 3 * a, 3 * c, 3 * d, owner, filled);
    }
  }
}

function drawTriangle(
  { left, top, cell, width, depth, owner: owners }: DepthMap,
  place: Float64Array,
  a: number,
  b: number,
  c: number,
  owner: number,
  filled: boolean,
): void {
  const ax = (place[a]! - left) / cell;
  const ay = (place[a + 1]! - top) / cell;
  const bx = (place[b]! - left) / cell;
  const by = (place[b + 1]! - top) / cell;
  const cx = (place[c]! - left) / cell;
  const cy = (place[c + 1]! - top) / cell;
  const twice = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
  // Towards the eye the columns run to the right and the rows down; the other way about is the inside.
  if (twice === 0 || (filled && twice < 0)) return;
  const x0 = Math.ceil(Math.min(ax, bx, cx));
  const x1 = Math.floor(Math.max(ax, bx, cx));
  const y0 = Math.ceil(Math.min(ay, by, cy));
  const y1 = Math.floor(Math.max(ay, by, cy));
  if (x0 > x1 || y0 > y1) return;
  // Shares of the second and the third corner, and the depth, change evenly from cell to cell.
  const share = 1 / twice;
  const bRight = (cy - ay) * share;
  const bDown = -(cx - ax) * share;
  const cRight = -(by - ay) * share;
  const cDown = (bx - ax) * share;
  const za = place[a + 2]!;
  const zb = place[b + 2]! - za;
  const zc = place[c + 2]! - za;
  for (let y = y0; y <= y1; y++) {
    let wb = (x0 - ax) * bRight + (y - ay) * bDown;
    let wc = (x0 - ax) * cRight + (y - ay) * cDown;
    for (let own = y * width + x0; own <= y * width + x1; own++) {
      if (wb >= -ON_SIDE && wc >= -ON_SIDE && wb + wc <= 1 + ON_SIDE) {
        const z = za + wb * zb + wc * zc;
        if (z > depth[own]!) {
          depth[own] = z;
          owners[own] = owner;
        }
      }
      wb += bRight;
      wc += cRight;
    }
  }
}

/** A cell on the side that two triangles share belongs to one of them at least. */
const ON_SIDE = 1e-9;
