import { layout } from './layout';
import { pairs } from './no-fit-pairs';

/** Cells that the strip is cut into each way. */
const CELLS = 32;

/** Places in short are as exact as this share of the strip: what could touch is looked for so much further. */
const SHORT: f64 = 1e-6;

/**
 * Which of the other items one item could touch, and what a place would roughly cost it. Nearly all places that a
 * search draws are thrown away, so each must cost little: a row and a column of cells each know, in a bit for every
 * item, whom it could touch from there, and only whom both know is looked at.
 */
class Neighbours {
  /** Left by `fillNear`. */
  near: StaticArray<i32> = new StaticArray<i32>(0);
  nearCount: i32 = 0;
  private item: i32 = 0;
  /** The most that each item reaches from its middle in any of its attitudes, gap and all. */
  private widest: StaticArray<f64> = new StaticArray<f64>(0);
  private tallest: StaticArray<f64> = new StaticArray<f64>(0);
  /** Words of 64 bits for a row or column. */
  words: i32 = 0;
  private columns: StaticArray<i64> = new StaticArray<i64>(0);
  private rows: StaticArray<i64> = new StaticArray<i64>(0);
  private columnsPerUnit: f32 = 0;
  private rowsPerUnit: f32 = 0;

  /** To be called once all items are known. */
  begin(): void {
    const count = layout.count;
    this.words = (count + 63) >> 6;
    this.near = new StaticArray<i32>(count);
    this.columns = new StaticArray<i64>((CELLS + 1) * this.words);
    this.rows = new StaticArray<i64>((CELLS + 1) * this.words);
    this.widest = new StaticArray<f64>(count);
    this.tallest = new StaticArray<f64>(count);
    for (let item = 0; item < count; item++) {
      for (let choice = 0; choice < layout.choices(item); choice++) {
        const lie = layout.lieAt(item, choice);
        this.widest[item] = max(this.widest[item], layout.halfWidthOf(lie) + layout.gap);
        this.tallest[item] = max(this.tallest[item], layout.halfHeightOf(lie) + layout.gap);
      }
    }
  }

  /** Makes ready for an item: to be called again once any other has moved. */
  about(item: i32): void {
    this.item = item;
    this.columnsPerUnit = ((CELLS as f64) / layout.width) as f32;
    this.rowsPerUnit = ((CELLS as f64) / layout.length) as f32;
    for (let choice = 0; choice < layout.choices(item); choice++) pairs.makeAll(layout.lieAt(item, choice));
    this.columns.fill(0);
    this.rows.fill(0);
    this.markEnds(item);
    // Each bit stands so far at the first cell and past the last: summed up, it stands in all between.
    const columns = this.columns;
    const rows = this.rows;
    const words = this.words;
    for (let at = words; at < columns.length; at++) {
      columns[at] ^= columns[at - words];
      rows[at] ^= rows[at - words];
    }
  }

  /** Lists what the item could touch while its middle stays within `reach` of a place. */
  fillNear(lie: i32, x: f64, y: f64, reach: f64): void {
    const width = layout.halfWidthOf(lie) + layout.gap + reach;
    const height = layout.halfHeightOf(lie) + layout.gap + reach;
    const first = this.cells(beside((x - reach) as f32, (y - reach) as f32));
    const last = this.cells(beside((x + reach) as f32, (y + reach) as f32));
    const left = i32x4.extract_lane(first, 0);
    const right = i32x4.extract_lane(last, 0);
    const top = i32x4.extract_lane(first, 1);
    const bottom = i32x4.extract_lane(last, 1);
    const words = this.words;
    let count = 0;
    for (let word = 0; word < words; word++) {
      let beside: i64 = 0;
      let level: i64 = 0;
      for (let column = left; column <= right; column++) beside |= this.columns[column * words + word];
      for (let row = top; row <= bottom; row++) level |= this.rows[row * words + word];
      for (let bits = beside & level; bits !== 0; bits &= bits - 1) {
        const other = word * 64 + (ctz(bits) as i32);
        if (abs(y - layout.y[other]) >= height + layout.halfHeight[other]) continue;
        if (abs(x - layout.x[other]) >= width + layout.halfWidth[other]) continue;
        this.near[count++] = other;
      }
    }
    this.nearCount = count;
  }

  /** Sets each other's bit at the first cell from which the item could touch it, and past the last. */
  private markEnds(item: i32): void {
    const columns = changetype<usize>(this.columns);
    const rows = changetype<usize>(this.rows);
    const places = changetype<usize>(layout.places);
    const halves = changetype<usize>(layout.halves);
    const reachX = this.widest[item] + layout.width * SHORT;
    const reach = beside(reachX as f32, (this.tallest[item] + layout.length * SHORT) as f32);
    for (let other = 0; other < layout.count; other++) {
      if (other === item) continue;
      const far = f32x4.add(reach, v128.load64_zero(halves + (other << 3)));
      const place = v128.load64_zero(places + (other << 3));
      const first = this.cells(f32x4.sub(place, far));
      const last = this.cells(f32x4.add(place, far));
      const bit = (1 as i64) << (other & 63);
      const word = (other >> 6) << 3;
      flip(columns + this.wordsTo(i32x4.extract_lane(first, 0)) + word, bit);
      flip(columns + this.wordsTo(i32x4.extract_lane(last, 0) + 1) + word, bit);
      flip(rows + this.wordsTo(i32x4.extract_lane(first, 1)) + word, bit);
      flip(rows + this.wordsTo(i32x4.extract_lane(last, 1) + 1) + word, bit);
    }
  }

  /** Column and row of a place. */
  cells(place: v128): v128 {
    const cells = i32x4.trunc_sat_f32x4_s(f32x4.mul(place, beside(this.columnsPerUnit, this.rowsPerUnit)));
    return i32x4.min_s(i32x4.splat(CELLS - 1), i32x4.max_s(i32x4.splat(0), cells));
  }

  columnAt(cell: i32): usize {
    return changetype<usize>(this.columns) + this.wordsTo(cell);
  }

  rowAt(cell: i32): usize {
    return changetype<usize>(this.rows) + this.wordsTo(cell);
  }

  /** Bytes before the words of a row or column. */
  private wordsTo(cell: i32): usize {
    return ((cell * this.words) << 3) as usize;
  }
}

/** A place in short: x and y side by side. */
export function beside(x: f32, y: f32): v128 {
  return f32x4.replace_lane(f32x4.splat(x), 1, y);
}

function flip(at: usize, bit: i64): void {
  store<i64>(at, load<i64>(at) ^ bit);
}

export const neighbours = new Neighbours();
