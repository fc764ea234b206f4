import type { Layout } from './layout.ts';
import { ROUGH_CELLS, shapeOf } from './no-fit-table.ts';

/** Cells that the strip is cut into each way. */
const CELLS = 32;

/**
 * Which of the other items one item could touch, and what a place would roughly cost it. Nearly all places that a
 * search draws are thrown away, so each must cost little: a row and a column of cells each know, in a bit for every
 * item, whom it could touch from there, and only whom both know is looked at.
 */
export class Neighbours {
  /** Left by `fillNear`. */
  readonly near: Int32Array;
  nearCount = 0;
  private readonly layout: Layout;
  private item = 0;
  /** The most that each item reaches from its middle in any of its attitudes, gap and all. */
  private readonly widest: Float64Array;
  private readonly tallest: Float64Array;
  /** Words of 32 bits for a row or column. */
  private readonly words: number;
  private readonly columns: Int32Array;
  private readonly rows: Int32Array;
  private columnsPerUnit = Number.NaN;
  private rowsPerUnit = Number.NaN;

  constructor(layout: Layout) {
    this.layout = layout;
    this.near = new Int32Array(layout.count);
    const most = (halves: Float64Array, item: number) =>
      Math.max(...layout.problem.items[item]!.attitudes.map(({ shape }) => halves[shape]!)) +
      layout.problem.gap;
    this.widest = Float64Array.from(layout.areas, (_, item) => most(layout.shapeHalfWidth, item));
    this.tallest = Float64Array.from(layout.areas, (_, item) => most(layout.shapeHalfHeight, item));
    this.words = Math.ceil(layout.count / 32);
    this.columns = new Int32Array((CELLS + 1) * this.words);
    this.rows = new Int32Array((CELLS + 1) * this.words);
  }

  /** Makes ready for an item: to be called again once any other has moved. */
  about(item: number): void {
    const { layout, columns, rows, words } = this;
    const { count, problem } = layout;
    const width = this.widest[item]!;
    const height = this.tallest[item]!;
    this.item = item;
    this.columnsPerUnit = CELLS / problem.width;
    this.rowsPerUnit = CELLS / layout.length;
    columns.fill(0);
    rows.fill(0);
    for (let other = 0; other < count; other++) {
      if (other === item) continue;
      const bit = 1 << (other & 31);
      const word = other >> 5;
      const x = layout.x[other]!;
      const y = layout.y[other]!;
      const reachX = width + layout.halfWidth[other]!;
      const reachY = height + layout.halfHeight[other]!;
      columns[this.column(x - reachX) * words + word]! ^= bit;
      columns[(this.column(x + reachX) + 1) * words + word]! ^= bit;
      rows[this.row(y - reachY) * words + word]! ^= bit;
      rows[(this.row(y + reachY) + 1) * words + word]! ^= bit;
    }
    // Each bit stands so far at the first cell and past the last: summed up, it stands in all between.
    for (let at = words; at < columns.length; at++) {
      columns[at]! ^= columns[at - words]!;
      rows[at]! ^= rows[at - words]!;
    }
  }

  /** Lists what the item could touch while its middle stays within `reach` of a place. */
  fillNear(lie: number, x: number, y: number, reach: number): void {
    const { layout, near, words, columns, rows } = this;
    const width = layout.shapeHalfWidth[shapeOf(lie)]! + layout.problem.gap + reach;
    const height = layout.shapeHalfHeight[shapeOf(lie)]! + layout.problem.gap + reach;
    const [left, right] = [this.column(x - reach), this.column(x + reach)];
    const [top, bottom] = [this.row(y - reach), this.row(y + reach)];
    let count = 0;
    for (let word = 0; word < words; word++) {
      let beside = 0;
      let level = 0;
      for (let column = left; column <= right; column++) beside |= columns[column * words + word]!;
      for (let row = top; row <= bottom; row++) level |= rows[row * words + word]!;
      for (let bits = beside & level; bits !== 0; bits &= bits - 1) {
        const other = word * 32 + lowest(bits);
        if (Math.abs(y - layout.y[other]!) >= height + layout.halfHeight[other]!) continue;
        if (Math.abs(x - layout.x[other]!) >= width + layout.halfWidth[other]!) continue;
        near[count++] = other;
      }
    }
    this.nearCount = count;
  }

  /** Weighted overlap that the item would roughly have at a place; stops once past `limit`. */
  roughCost(lie: number, x: number, y: number, limit: number): number {
    const { layout, columns, rows, words } = this;
    const { table, weights } = layout;
    const { lies, cellsPerX, cellsPerY, roughAt } = table;
    const column = this.column(x) * words;
    const row = this.row(y) * words;
    const pairs = this.item * layout.count;
    let sum = 0;
    layout.work++;
    for (let word = 0; word < words; word++) {
      for (let bits = columns[column + word]! & rows[row + word]!; bits !== 0; bits &= bits - 1) {
        const other = word * 32 + lowest(bits);
        const at = layout.lie[other]! * lies + lie;
        if (roughAt[at]! < 0) table.prepare(layout.lie[other]!, lie);
        const across = (x - layout.x[other]!) * cellsPerX[at]! + ROUGH_CELLS / 2;
        if (!(across >= 0 && across < ROUGH_CELLS)) continue;
        const down = (y - layout.y[other]!) * cellsPerY[at]! + ROUGH_CELLS / 2;
        if (!(down >= 0 && down < ROUGH_CELLS)) continue;
        const { rough } = table;
        const cell = roughAt[at]! + 3 * ((down | 0) * ROUGH_CELLS + (across | 0));
        const depth = rough[cell]! + across * rough[cell + 1]! + down * rough[cell + 2]!;
        layout.work++;
        if (depth > 0) {
          sum += depth * weights[pairs + other]!;
          if (sum >= limit) return sum;
        }
      }
    }
    return sum;
  }

  private column(x: number): number {
    return Math.max(0, Math.min(CELLS - 1, (x * this.columnsPerUnit) | 0));
  }

  private row(y: number): number {
    return Math.max(0, Math.min(CELLS - 1, (y * this.rowsPerUnit) | 0));
  }
}

/** Place of the lowest bit set. */
function lowest(bits: number): number {
  return 31 - Math.clz32(bits & -bits);
}
