import { layout } from './layout';
import { pairs } from './no-fit-pairs';

/** Cells that the strip is cut into each way. */
const CELLS = 32;

/** 1.5 · 2^23. Added to a small number in single precision, it leaves the nearest integer in the lowest bits of the sum. */
export const WHOLE: f32 = 12582912;
export const WHOLE_BITS: i32 = 0x4b400000;

/** Single precision rounds a place by less than this share of the strip: neighbours are looked for so much further away. */
export const ROUNDING: f64 = 1e-6;

/**
 * Which other items one item could touch, by where it lies. Nearly all places that the search draws are thrown away, so
 * each must cost little. The strip is divided into rows and columns of cells. For each row, and for each column, a bit
 * set says which items could be touched from there; the intersection of the two is looked at, nothing else.
 */
class Neighbours {
  /** Left by `fillNear`. */
  near: StaticArray<i32> = new StaticArray<i32>(0);
  nearCount: i32 = 0;
  /** Half the width and height of each item, the largest of its attitudes, and the gap. */
  private widest: StaticArray<f64> = new StaticArray<f64>(0);
  private tallest: StaticArray<f64> = new StaticArray<f64>(0);
  /** 64-bit words in a row's or column's bit set, a power of two; and the shift from a cell to its first byte. */
  words: i32 = 0;
  private wordShift: i32 = 0;
  /** The bit sets, by column or row, then by word. */
  private columns: StaticArray<i64> = new StaticArray<i64>(0);
  private rows: StaticArray<i64> = new StaticArray<i64>(0);
  /** A bit in the cell where an item's range begins and in the one after its end; all zero between moves. */
  private columnEnds: StaticArray<i64> = new StaticArray<i64>(0);
  private rowEnds: StaticArray<i64> = new StaticArray<i64>(0);
  /** Columns and rows per unit of length: across, down, across, down. */
  private cellsPerUnit: v128 = f32x4.splat(0);

  /** To be called once all items are known. */
  begin(): void {
    const count = layout.count;
    for (this.words = 1; this.words * 64 < count; ) this.words *= 2;
    this.wordShift = 3 + ctz(this.words);
    this.near = new StaticArray<i32>(count);
    this.columns = new StaticArray<i64>((CELLS + 1) * this.words);
    this.rows = new StaticArray<i64>((CELLS + 1) * this.words);
    this.columnEnds = new StaticArray<i64>((CELLS + 1) * this.words);
    this.rowEnds = new StaticArray<i64>((CELLS + 1) * this.words);
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

  /** Prepares for the moves of one item. To be called again once another item has moved. */
  about(item: i32): void {
    const columnsPerUnit = (((CELLS - 1) as f64) / layout.width) as f32;
    const rowsPerUnit = (((CELLS - 1) as f64) / layout.length) as f32;
    this.cellsPerUnit = f32x4(columnsPerUnit, rowsPerUnit, columnsPerUnit, rowsPerUnit);
    for (let choice = 0; choice < layout.choices(item); choice++) pairs.makeAll(layout.lieAt(item, choice));
    this.markEnds(item);
    this.sumUp();
  }

  /** Lists what the item could touch while its middle stays within `reach` of a place. */
  fillNear(lie: i32, x: f64, y: f64, reach: f64): void {
    const width = layout.halfWidthOf(lie) + layout.gap + reach;
    const height = layout.halfHeightOf(lie) + layout.gap + reach;
    const ends = this.cells(
      f32x4((x - reach) as f32, (y - reach) as f32, (x + reach) as f32, (y + reach) as f32),
    );
    const left = i32x4.extract_lane(ends, 0);
    const right = i32x4.extract_lane(ends, 2);
    const top = i32x4.extract_lane(ends, 1);
    const bottom = i32x4.extract_lane(ends, 3);
    const words = this.words;
    const next = 1 << this.wordShift;
    let count = 0;
    for (let word = 0; word < words; word++) {
      const columns = this.columnAt(word << 3);
      const rows = this.rowAt(word << 3);
      let beside: i64 = 0;
      let level: i64 = 0;
      for (let column = left; column <= right; column += next) beside |= load<i64>(columns + column);
      for (let row = top; row <= bottom; row += next) level |= load<i64>(rows + row);
      for (let bits = beside & level; bits !== 0; bits &= bits - 1) {
        const other = word * 64 + (ctz(bits) as i32);
        if (abs(y - layout.y[other]) >= height + layout.halfHeight[other]) continue;
        if (abs(x - layout.x[other]) >= width + layout.halfWidth[other]) continue;
        this.near[count++] = other;
      }
    }
    this.nearCount = count;
  }

  /** Byte offsets of the columns and rows of two places; of the nearest cells, should they lie outside. */
  cells(places: v128): v128 {
    const cells = f32x4.mul(places, this.cellsPerUnit);
    const clamped = f32x4.pmin(f32x4.splat((CELLS - 1) as f32), f32x4.pmax(f32x4.splat(0), cells));
    return i32x4.shl(
      i32x4.sub(f32x4.add(clamped, f32x4.splat(WHOLE)), i32x4.splat(WHOLE_BITS)),
      this.wordShift,
    );
  }

  columnAt(bytes: i32): usize {
    return changetype<usize>(this.columns) + bytes;
  }

  rowAt(bytes: i32): usize {
    return changetype<usize>(this.rows) + bytes;
  }

  /** Turns marks at the beginning and past the end of each range into bits set all along it. */
  private sumUp(): void {
    const size = (CELLS + 1) << this.wordShift;
    for (let word = 0; word < this.words; word++) {
      let beside: i64 = 0;
      let level: i64 = 0;
      for (let at = word << 3; at < size; at += 1 << this.wordShift) {
        beside ^= load<i64>(changetype<usize>(this.columnEnds) + at);
        level ^= load<i64>(changetype<usize>(this.rowEnds) + at);
        store<i64>(this.columnAt(at), beside);
        store<i64>(this.rowAt(at), level);
        store<i64>(changetype<usize>(this.columnEnds) + at, 0);
        store<i64>(changetype<usize>(this.rowEnds) + at, 0);
      }
    }
  }

  /** Marks, for each other item, the first cell from which this one could touch it, and the one after the last. */
  private markEnds(item: i32): void {
    const columns = changetype<usize>(this.columnEnds);
    const rows = changetype<usize>(this.rowEnds);
    const places = changetype<usize>(layout.places);
    const halves = changetype<usize>(layout.halves);
    const reachX = (this.widest[item] + layout.width * ROUNDING) as f32;
    const reachY = (this.tallest[item] + layout.length * ROUNDING) as f32;
    const reach = f32x4(reachX, reachY, reachX, reachY);
    const signs = f32x4(-0.0, -0.0, 0, 0);
    const next = (1 << this.wordShift) as usize;
    for (let other = 0; other < layout.count; other++) {
      if (other === item) continue;
      const far = f32x4.add(reach, v128.load64_splat(halves + (other << 3)));
      const place = v128.load64_splat(places + (other << 3));
      const ends = this.cells(f32x4.add(place, v128.xor(far, signs)));
      const bit = (1 as i64) << (other & 63);
      const word = (other >> 6) << 3;
      flip(columns + word + i32x4.extract_lane(ends, 0), bit);
      flip(columns + word + i32x4.extract_lane(ends, 2) + next, bit);
      flip(rows + word + i32x4.extract_lane(ends, 1), bit);
      flip(rows + word + i32x4.extract_lane(ends, 3) + next, bit);
    }
  }
}

/** A place in single precision: x and y side by side. */
export function beside(x: f32, y: f32): v128 {
  return f32x4.replace_lane(f32x4.splat(x), 1, y);
}

function flip(at: usize, bit: i64): void {
  store<i64>(at, load<i64>(at) ^ bit);
}

export const neighbours = new Neighbours();
