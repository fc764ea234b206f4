import type { Point } from '../../geometry/curve.ts';
import type { ClothFacts, LaySection, PlacedPiece, Rectangle } from './lay-plan.ts';
import { trueOutline } from './working-outline.ts';

/** Spare cloth is looked for on squares of this side, mm: finer finds no piece that is worth keeping. */
const SQUARE = 10;

/** What is worth naming: enough for a pocket or a facing (common practice). mm. */
const LEAST_SIDE = 100;
const LEAST_AREA = 60_000;
const MOST = 4;

/** The largest upright rectangles that no piece and no cut across the cloth touches, each clear of the ones before it. */
export function spareAreas(
  pieces: readonly PlacedPiece[],
  sections: readonly LaySection[],
  facts: ClothFacts,
  length: number,
): Rectangle[] {
  const left = facts.selvedge + facts.edgingDepth;
  const columns = Math.floor(facts.usable / SQUARE);
  const rows = Math.floor(length / SQUARE);
  const taken = Array.from({ length: rows }, () => new Uint8Array(columns));
  for (const { outline } of pieces) markTaken(taken, trueOutline(outline), left);
  for (const y of cutsAcross(sections)) taken[Math.floor(y / SQUARE)]?.fill(1);
  const spare: Rectangle[] = [];
  while (spare.length < MOST) {
    const found = largestFree(taken, columns);
    if (found === undefined || !isWorthNaming(found)) break;
    spare.push({
      x: left + found.column * SQUARE,
      y: found.row * SQUARE,
      width: found.columns * SQUARE,
      height: found.rows * SQUARE,
    });
    for (let row = found.row; row < found.row + found.rows; row++) {
      taken[row]!.fill(1, found.column, found.column + found.columns);
    }
  }
  return spare;
}

/** Where the cloth is cut straight across before the pieces are cut. */
function cutsAcross(sections: readonly LaySection[]): number[] {
  return sections
    .flatMap(({ from, to, upperTurned }) => [from, ...(upperTurned ? [(from + to) / 2] : [])])
    .filter((y) => y > 0);
}

interface Block {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

function isWorthNaming({ columns, rows }: Block): boolean {
  return Math.min(columns, rows) * SQUARE >= LEAST_SIDE && columns * rows * SQUARE * SQUARE >= LEAST_AREA;
}

/** In each band of squares, all from the outline's leftmost to its rightmost point there. */
function markTaken(taken: readonly Uint8Array[], ring: readonly Point[], left: number): void {
  const reach = taken.map(() => ({ from: Infinity, to: -Infinity }));
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    widenBands(reach, a, b);
    a = b;
  }
  taken.forEach((row, index) => {
    const { from, to } = reach[index]!;
    if (from > to) return;
    row.fill(
      1,
      Math.max(0, Math.floor((from - left) / SQUARE)),
      Math.max(0, Math.ceil((to - left) / SQUARE)),
    );
  });
}

/** By a line, each band that it touches. */
function widenBands(reach: readonly { from: number; to: number }[], a: Point, b: Point): void {
  const [low, high] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
  const last = Math.min(reach.length - 1, Math.floor(high / SQUARE));
  for (let index = Math.max(0, Math.ceil(low / SQUARE) - 1); index <= last; index++) {
    const top = index * SQUARE;
    const band = reach[index]!;
    const widen = (y: number) => {
      const x = a.y === b.y ? a.x : a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
      band.from = Math.min(band.from, x);
      band.to = Math.max(band.to, x);
    };
    widen(Math.max(top, low));
    widen(Math.min(top + SQUARE, high));
    if (a.y === b.y) {
      band.from = Math.min(band.from, b.x);
      band.to = Math.max(band.to, b.x);
    }
  }
}

/** Largest rectangle of free squares: for each row the largest under the skyline of free columns above it. */
function largestFree(taken: readonly Uint8Array[], columns: number): Block | undefined {
  const free = new Int32Array(columns + 1);
  let best: Block | undefined;
  let most = 0;
  taken.forEach((row, index) => {
    for (let c = 0; c < columns; c++) free[c] = row[c] === 0 ? free[c]! + 1 : 0;
    const open: { from: number; rows: number }[] = [];
    for (let c = 0; c <= columns; c++) {
      let from = c;
      while (open.length > 0 && open[open.length - 1]!.rows >= free[c]!) {
        const last = open.pop()!;
        from = last.from;
        const area = last.rows * (c - last.from);
        if (area > most) {
          most = area;
          best = { column: last.from, row: index + 1 - last.rows, columns: c - last.from, rows: last.rows };
        }
      }
      open.push({ from, rows: free[c]! });
    }
  });
  return best;
}
