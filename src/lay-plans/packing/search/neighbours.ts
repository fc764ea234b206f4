import { layout } from './layout';
import { CELLS_AT, ENTRY_SHIFT, pairs } from './no-fit-pairs';
import { ROUGH_CELLS } from './no-fit-region';

/** Cells that the strip is cut into each way. */
const CELLS = 32;

/** Added to a short number of fewer than 23 bits, this leaves the nearest whole one in its lowest bits. */
const WHOLE: f32 = 12582912;
const WHOLE_BITS: i32 = 0x4b400000;

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
  /** Words of 32 bits for a row or column. */
  private words: i32 = 0;
  private columns: StaticArray<i32> = new StaticArray<i32>(0);
  private rows: StaticArray<i32> = new StaticArray<i32>(0);
  private columnsPerUnit: f32 = 0;
  private rowsPerUnit: f32 = 0;

  /** To be called once all items are known. */
  begin(): void {
    const count = layout.count;
    this.words = (count + 31) >> 5;
    this.near = new StaticArray<i32>(count);
    this.columns = new StaticArray<i32>((CELLS + 1) * this.words);
    this.rows = new StaticArray<i32>((CELLS + 1) * this.words);
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
    this.prepare(item);
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
      let beside = 0;
      let level = 0;
      for (let column = left; column <= right; column++) beside |= this.columns[column * words + word];
      for (let row = top; row <= bottom; row++) level |= this.rows[row * words + word];
      for (let bits = beside & level; bits !== 0; bits &= bits - 1) {
        const other = word * 32 + ctz(bits);
        if (abs(y - layout.y[other]) >= height + layout.halfHeight[other]) continue;
        if (abs(x - layout.x[other]) >= width + layout.halfWidth[other]) continue;
        this.near[count++] = other;
      }
    }
    this.nearCount = count;
  }

  /**
   * Weighted overlap that the item would roughly have at a place; stops once past `limit`. x and y go side by side,
   * and a region that the place lies outside of is masked, not skipped: a processor cannot foretell such a jump.
   */
  roughCost(lie: i32, x: f64, y: f64, limit: f32): f32 {
    const place = beside(x as f32, y as f32);
    const cells = this.cells(place);
    const column = changetype<usize>(this.columns) + this.wordsTo(i32x4.extract_lane(cells, 0));
    const row = changetype<usize>(this.rows) + this.wordsTo(i32x4.extract_lane(cells, 1));
    return this.summed(pairs.roughOf(lie), place, column, row, limit);
  }

  private summed(entries: usize, place: v128, column: usize, row: usize, limit: f32): f32 {
    const lies = changetype<usize>(layout.lie);
    const places = changetype<usize>(layout.places);
    const weights = changetype<usize>(layout.shortWeights) + ((this.item * layout.count) << 2);
    const words = this.words;
    let sum: f32 = 0;
    for (let word = 0; word < words; word++, column += 4, row += 4) {
      for (let bits = load<i32>(column) & load<i32>(row); bits !== 0; bits &= bits - 1) {
        const other = ((word << 5) + ctz(bits)) as usize;
        const entry = entries + (load<i32>(lies + (other << 2)) << ENTRY_SHIFT);
        const shift = f32x4.sub(place, v128.load64_zero(places + (other << 3)));
        const at = f32x4.add(f32x4.mul(shift, v128.load64_zero(entry)), f32x4.splat(FIRST_MIDDLE));
        const cell = i32x4.sub(f32x4.add(at, f32x4.splat(WHOLE)), i32x4.splat(WHOLE_BITS));
        const held = i32x4.min_u(cell, i32x4.splat(ROUGH_CELLS - 1));
        const plane = v128.load(load<usize>(entry, CELLS_AT) + planeAt(i64x2.extract_lane(held, 0)));
        const grown = f32x4.mul(plane, at);
        const deep = f32x4.add(grown, f32x4.add(lane1(grown), lane2(plane)));
        const inside = i64x2.eq(held, cell);
        const depth = f32x4.extract_lane(v128.and(f32x4.pmax(deep, f32x4.splat(0)), inside), 0);
        sum += depth * load<f32>(weights + (other << 2));
        if (sum >= limit) return sum;
      }
    }
    return sum;
  }

  /** Makes the regions of the item with all others, where they meet for the first time. */
  private prepare(item: i32): void {
    for (let choice = 0; choice < layout.choices(item); choice++) {
      const lie = layout.lieAt(item, choice);
      for (let other = 0; other < layout.count; other++) pairs.make(layout.lie[other], lie);
    }
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
      const bit = 1 << (other & 31);
      const word = (other >> 5) << 2;
      flip(columns + this.wordsTo(i32x4.extract_lane(first, 0)) + word, bit);
      flip(columns + this.wordsTo(i32x4.extract_lane(last, 0) + 1) + word, bit);
      flip(rows + this.wordsTo(i32x4.extract_lane(first, 1)) + word, bit);
      flip(rows + this.wordsTo(i32x4.extract_lane(last, 1) + 1) + word, bit);
    }
  }

  /** Column and row of a place. */
  private cells(place: v128): v128 {
    const cells = i32x4.trunc_sat_f32x4_s(f32x4.mul(place, beside(this.columnsPerUnit, this.rowsPerUnit)));
    return i32x4.min_s(i32x4.splat(CELLS - 1), i32x4.max_s(i32x4.splat(0), cells));
  }

  /** Bytes before the words of a row or column. */
  private wordsTo(cell: i32): usize {
    return ((cell * this.words) << 2) as usize;
  }
}

/** The middle of a grid's first cell, from its corner, taken off a place in cells from the grid's middle. */
const FIRST_MIDDLE: f32 = ((ROUGH_CELLS / 2) as f32) - 0.5;

function beside(x: f32, y: f32): v128 {
  return f32x4.replace_lane(f32x4.splat(x), 1, y);
}

function lane1(lanes: v128): v128 {
  return v128.shuffle<f32>(lanes, lanes, 1, 1, 1, 1);
}

function lane2(lanes: v128): v128 {
  return v128.shuffle<f32>(lanes, lanes, 2, 2, 2, 2);
}

/** Bytes before the plane of a cell, column below and row above. */
function planeAt(cell: i64): usize {
  return (((cell + (cell >>> 28)) & (ROUGH_CELLS * ROUGH_CELLS - 1)) << 4) as usize;
}

function flip(at: usize, bit: i32): void {
  store<i32>(at, load<i32>(at) ^ bit);
}

export const neighbours = new Neighbours();
