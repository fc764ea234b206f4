import { layout } from './layout';
import { neighbours, WHOLE, WHOLE_BITS } from './neighbours';
import { CELLS_AT, ENTRY_SHIFT, pairs } from './no-fit-pairs';
import { ROUGH_CELLS } from './no-fit-region';

/**
 * A drawn place has two to this power of bytes: x, y and what the place costs so far, in 16; then whom of one word it
 * has still to be looked at with, and where its column and row of cells stand.
 */
const PLACE_SHIFT = 5;
const COST: u8 = 2;
const COST_AT = 8;
const MASK_AT = 16;
const COLUMN_AT = 24;
const ROW_AT = 28;

/** The middle of a grid's first cell, from its corner, taken off a place in cells from the grid's middle. */
const FIRST_MIDDLE: f32 = ((ROUGH_CELLS / 2) as f32) - 0.5;

/**
 * Places drawn for one item in one attitude, in short, and roughly what they cost. Nearly all are soon known to cost
 * too much, which no processor can foretell: so all go through the same steps together, each with one other item at a
 * time, and what is written is kept or written over, without a jump.
 */
class DrawnPlaces {
  /** How many there are; after `price`, those that cost less than the limit, in any order. */
  count: i32 = 0;
  private places: usize = 0;
  /** Those that are done with a word, while it is looked at. */
  private done: usize = 0;

  /** Room for so many places. */
  begin(most: i32): void {
    // One more, as what does not count is written before it is known not to.
    this.places = heap.alloc((most + 1) << PLACE_SHIFT);
    this.done = heap.alloc((most + 1) << PLACE_SHIFT);
    this.count = 0;
  }

  /** Adds a place if it counts. */
  add(place: v128, counts: bool): void {
    v128.store(this.at(this.count), place);
    this.count += counts as i32;
  }

  /** Puts each place where the item may lie, on its line or the pattern. */
  snap(item: i32, lie: i32): void {
    const end = this.at(this.count);
    for (let at = this.places; at < end; at += 1 << PLACE_SHIFT) {
      store<f32>(at, layout.withinX(item, lie, load<f32>(at) as f64) as f32);
      store<f32>(at, layout.withinY(lie, load<f32>(at, 4) as f64) as f32, 4);
    }
  }

  /** Finds what each place costs the item that `neighbours` are about; keeps what is below the limit. */
  price(item: i32, lie: i32, limit: f32): void {
    const entries = pairs.roughOf(lie);
    const weights = changetype<usize>(layout.shortWeights) + ((item * layout.count) << 2);
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

  /** Begins each place: no cost yet, and the column and row of cells that it stands in. */
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

  /** Parts the places with anyone in a word to be looked at, how many, from those that are done with it. */
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

  /** Adds to each place's cost what one more of its word costs. */
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
      const held = i32x4.min_u(cell, i32x4.splat(ROUGH_CELLS - 1));
      const plane = v128.load(load<usize>(entry, CELLS_AT) + planeAt(i64x2.extract_lane(held, 0)));
      const grown = f32x4.mul(plane, inCells);
      const deep = f32x4.add(grown, f32x4.add(lane1(grown), lane2(plane)));
      const inside = i64x2.eq(held, cell);
      const depth = f32x4.extract_lane(v128.and(f32x4.pmax(deep, f32x4.splat(0)), inside), 0);
      const cost = f32x4.extract_lane(place, COST) + depth * load<f32>(weights + (other << 2));
      v128.store(at, f32x4.replace_lane(place, COST, cost));
      store<i64>(at, bits & (bits - 1), MASK_AT);
    }
  }

  /** Leaves the places that cost too much; parts those with more of the word to come, how many, from those done with. */
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

/** Bytes before the plane of a cell, column below and row above. */
function planeAt(cell: i64): usize {
  return (((cell + (cell >>> 28)) & (ROUGH_CELLS * ROUGH_CELLS - 1)) << 4) as usize;
}

export const drawnPlaces = new DrawnPlaces();
