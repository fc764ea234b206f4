import type { Surface } from './surface.ts';

/** How near the eye the nearest cloth lies, on a grid over the view. mm. */
export interface DepthMap {
  readonly left: number;
  readonly top: number;
  readonly cell: number;
  readonly width: number;
  readonly height: number;
  /** −Infinity where there is none. */
  readonly depth: Float64Array;
  /** Which of the surfaces that is. */
  readonly owner: Uint8Array;
}

/** A surface that hides what lies behind it. */
export interface Hiding {
  readonly surface: Surface;
  /** Its inside is full: she is in it, and one does not look in. */
  readonly filled: boolean;
}

/** Size of a cell, mm: 0.2 mm on paper at 1:10. */
const CELL = 2;
/** Cells left empty all round, so that an outline closes. */
const MARGIN = 4;

export function depthMap(seen: readonly Hiding[]): DepthMap {
  const surfaces = seen.map(({ surface }) => surface);
  const [xs, ys] = [0, 1].map((axis) => rangeOf(surfaces, axis));
  const left = xs![0] - MARGIN * CELL;
  const top = ys![0] - MARGIN * CELL;
  const width = Math.ceil((xs![1] - left) / CELL) + MARGIN;
  const height = Math.ceil((ys![1] - top) / CELL) + MARGIN;
  const map: DepthMap = {
    left,
    top,
    cell: CELL,
    width,
    height,
    depth: new Float64Array(width * height).fill(Number.NEGATIVE_INFINITY),
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
  const za = place[a + 2]!;
  const zb = place[b + 2]!;
  const zc = place[c + 2]!;
  const x0 = Math.ceil(Math.min(ax, bx, cx));
  const x1 = Math.floor(Math.max(ax, bx, cx));
  const y0 = Math.ceil(Math.min(ay, by, cy));
  const y1 = Math.floor(Math.max(ay, by, cy));
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      const wb = ((x - ax) * (cy - ay) - (cx - ax) * (y - ay)) / twice;
      const wc = ((bx - ax) * (y - ay) - (x - ax) * (by - ay)) / twice;
      if (wb < 0 || wc < 0 || wb + wc > 1) continue;
      const z = za + wb * (zb - za) + wc * (zc - za);
      if (z <= depth[y * width + x]!) continue;
      depth[y * width + x] = z;
      owners[y * width + x] = owner;
    }
  }
}
