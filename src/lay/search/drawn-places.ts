import { layout } from './layout';
import { neighbours, WHOLE, WHOLE_BITS } from './neighbours';
import { CELLS_AT, ENTRY_SHIFT, pairs } from './no-fit-pairs';
import { ROUGH_CELLS } from './no-fit-polygon';

/**
 * A drawn place takes two to this power of bytes: a vector of x, y and its cost so far; then a bit set of the items of
 * one word that it has still to be priced against, and the addresses of its column's and its row's bit sets.
 */
const PLACE_SHIFT = 5;
const COST: u8 = 2;
const COST_AT = 8;
const MASK_AT = 16;
const COLUMN_AT = 24;
const ROW_AT = 28;

/** Added to a shift in cells from the middle of the grid, it counts from the middle of the first cell. */
const FIRST_MIDDLE: f32 = ((ROUGH_CELLS / 2) as f32) - 0.5;

/**
 * Places drawn for one item in one attitude, and their rough prices, in single precision. Most places turn out too dear
 * after one or two other items, which a processor cannot predict, and a wrongly predicted jump is slow. So nothing here
 * jumps: all places are priced against one other item each, then sorted into those that go on and those that do not by
 * writing every place to both lists and advancing only one of them.
 */
class DrawnPlaces {
  /** How many places there are; after `price`, how many cost less than the limit, in any order. */
  count: i32 = 0;
  private places: usize = 0;
  /** Places that have been priced against all items of the present word. */
  private done: usize = 0;

  /** Makes room for at most so many places. */
  begin(most: i32): void {
    // One more, as a place that does not count is written all the same.
    this.places = heap.alloc((most + 1) << PLACE_SHIFT);
    this.done = heap.alloc((most + 1) << PLACE_SHIFT);
    this.count = 0;
  }

  /** Adds a place if it counts. */
  add(place: v128, counts: bool): void {
    v128.store(this.at(this.count), place);
    this.count += counts as i32;
  }

  /** Moves each place to the nearest one that the item may have, on its line or on the cloth's pattern. */
  snap(item: i32, lie: i32): void {
    const end = this.at(this.count);
    for (let at = this.places; at < end; at += 1 << PLACE_SHIFT) {
      store<f32>(at, layout.withinX(item, lie, load<f32>(at) as f64) as f32);
      store<f32>(at, layout.withinY(lie, load<f32>(at, 4) as f64) as f32, 4);
    }
  }

  /** Prices all places for the item that `neighbours` was prepared for; keeps those below the limit. */
  price(item: i32, lie: i32, limit: f32): void {
    const entries = pairs.roughOf(lie);
    const weights = changetype<usize>(layout.weights32) + ((item * layout.count) << 2);
    this.findCells();
    for (let word = 0; word < neighbours.words; word++) {
      let left = this.mask(word);
      while (left > 0) {
        this.visit(left, word << 6, entries, weights);
        left = this.sift(left, limit);
      }
      const places = this.places;
      this.places = this.done;
      this.done = places;
    }
  }

  xAt(index: i32): f64 {
    return load<f32>(this.at(index)) as f64;
  }

  yAt(index: i32): f64 {
    return load<f32>(this.at(index), 4) as f64;
  }

  costAt(index: i32): f64 {
    return load<f32>(this.at(index), COST_AT) as f64;
  }

  private at(index: i32): usize {
    return this.places + (index << PLACE_SHIFT);
  }

  /** Begins each place: cost zero, and the addresses of its column and row. */
  private findCells(): void {
    const end = this.at(this.count);
    for (let at = this.places; at < end; at += 1 << PLACE_SHIFT) {
      const place = f32x4.replace_lane(v128.load(at), COST, 0);
      const cells = neighbours.cells(place);
      v128.store(at, place);
      store<usize>(at, neighbours.columnAt(i32x4.extract_lane(cells, 0)), COLUMN_AT);
      store<usize>(at, neighbours.rowAt(i32x4.extract_lane(cells, 1)), ROW_AT);
    }
  }

  /** Divides the places into those with an item of the word to be priced against, how many, and those without. */
  private mask(word: i32): i32 {
    const bytes = word << 3;
    let to = this.places;
    let done = this.done;
    const end = this.at(this.count);
    for (let at = this.places; at < end; at += 1 << PLACE_SHIFT) {
      const place = v128.load(at);
      const rest = v128.load(at, MASK_AT);
      const column = i32x4.extract_lane(rest, 2) + bytes;
      const row = i32x4.extract_lane(rest, 3) + bytes;
      const bits = load<i64>(column) & load<i64>(row);
      const masked = i64x2.replace_lane(rest, 0, bits);
      v128.store(to, place);
      v128.store(to, masked, MASK_AT);
      v128.store(done, place);
      v128.store(done, masked, MASK_AT);
      const some = (bits !== 0) as i32;
      to += some << PLACE_SHIFT;
      done += (1 - some) << PLACE_SHIFT;
    }
    this.count = ((done - this.done) >> PLACE_SHIFT) as i32;
    return ((to - this.places) >> PLACE_SHIFT) as i32;
  }

  /** Adds to each place's cost its overlap with the next item of the word. */
  private visit(left: i32, first: i32, entries: usize, weights: usize): void {
    const lies = changetype<usize>(layout.lie);
    const items = changetype<usize>(layout.places);
    const end = this.at(left);
    for (let at = this.places; at < end; at += 1 << PLACE_SHIFT) {
      const place = v128.load(at);
      const bits = load<i64>(at, MASK_AT);
      const other = first + (ctz(bits) as i32);
      const entry = entries + (load<i32>(lies + (other << 2)) << ENTRY_SHIFT);
      const shift = f32x4.sub(place, v128.load64_zero(items + (other << 3)));
      const inCells = f32x4.add(f32x4.mul(shift, v128.load64_zero(entry)), f32x4.splat(FIRST_MIDDLE));
      const cell = i32x4.sub(f32x4.add(inCells, f32x4.splat(WHOLE)), i32x4.splat(WHOLE_BITS));
      const clamped = i32x4.min_u(cell, i32x4.splat(ROUGH_CELLS - 1));
      const plane = v128.load(load<usize>(entry, CELLS_AT) + planeAt(i64x2.extract_lane(clamped, 0)));
      const grown = f32x4.mul(plane, inCells);
      const deep = f32x4.add(grown, f32x4.add(lane1(grown), lane2(plane)));
      const inside = i64x2.eq(clamped, cell);
      const depth = f32x4.extract_lane(v128.and(f32x4.pmax(deep, f32x4.splat(0)), inside), 0);
      const cost = f32x4.extract_lane(place, COST) + depth * load<f32>(weights + (other << 2));
      v128.store(at, f32x4.replace_lane(place, COST, cost));
      store<i64>(at, bits & (bits - 1), MASK_AT);
    }
  }

  /** Drops places that cost too much; divides the others into those with more of the word to come, how many, and the rest. */
  private sift(left: i32, limit: f32): i32 {
    let to = this.places;
    let done = this.done + (this.count << PLACE_SHIFT);
    const end = this.at(left);
    for (let at = this.places; at < end; at += 1 << PLACE_SHIFT) {
      const place = v128.load(at);
      const bits = load<i64>(at, MASK_AT);
      const cells = load<i64>(at, COLUMN_AT);
      v128.store(to, place);
      store<i64>(to, bits, MASK_AT);
      store<i64>(to, cells, COLUMN_AT);
      v128.store(done, place);
      store<i64>(done, cells, COLUMN_AT);
      const cheap = (f32x4.extract_lane(place, COST) < limit) as i32;
      const last = (bits === 0) as i32;
      to += (cheap & (last ^ 1)) << PLACE_SHIFT;
      done += (cheap & last) << PLACE_SHIFT;
    }
    this.count = ((done - this.done) >> PLACE_SHIFT) as i32;
    return ((to - this.places) >> PLACE_SHIFT) as i32;
  }
}

function lane1(lanes: v128): v128 {
  return v128.shuffle<f32>(lanes, lanes, 1, 1, 1, 1);
}

function lane2(lanes: v128): v128 {
  return v128.shuffle<f32>(lanes, lanes, 2, 2, 2, 2);
}

/** Byte offset of a cell's plane; the column stands in the lower 32 bits, the row in the upper. */
function planeAt(cell: i64): usize {
  return (((cell + (cell >>> 28)) & (ROUGH_CELLS * ROUGH_CELLS - 1)) << 4) as usize;
}

export const drawnPlaces = new DrawnPlaces();
