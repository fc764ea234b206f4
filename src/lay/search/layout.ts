import { clamp } from './clamp';
import { pairs } from './no-fit-pairs';

/**
 * Items lying on the strip, overlapping or not. An item's `lie` is its shape and how that is flipped, as the host
 * numbers them: bit 0 flips x, bit 1 flips y, the shape stands above.
 */
class Layout {
  count: i32 = 0;
  width: f64 = 0;
  length: f64 = Infinity;
  gap: f64 = 0;
  x: StaticArray<f64> = new StaticArray<f64>(0);
  y: StaticArray<f64> = new StaticArray<f64>(0);
  /** Which of its attitudes an item has. */
  choice: StaticArray<i32> = new StaticArray<i32>(0);
  lie: StaticArray<i32> = new StaticArray<i32>(0);
  /** Half bounds as the item lies. */
  halfWidth: StaticArray<f64> = new StaticArray<f64>(0);
  halfHeight: StaticArray<f64> = new StaticArray<f64>(0);
  /** Places, half bounds and weights again in single precision, x and y side by side, for rough prices. */
  places: StaticArray<f32> = new StaticArray<f32>(0);
  halves: StaticArray<f32> = new StaticArray<f32>(0);
  weights32: StaticArray<f32> = new StaticArray<f32>(0);
  areas: StaticArray<f64> = new StaticArray<f64>(0);
  /** Weight of each pair's overlap, symmetric, count × count. */
  weights: StaticArray<f64> = new StaticArray<f64>(0);
  /** 1 for an item that has been put down since this was last cleared. */
  moved: StaticArray<u8> = new StaticArray<u8>(0);
  /** Work done, in overlap look-ups. Counted, never timed, so that the same problem gives the same packing. */
  work: f64 = 0;

  private shapeHalfWidth: StaticArray<f64> = new StaticArray<f64>(0);
  private shapeHalfHeight: StaticArray<f64> = new StaticArray<f64>(0);
  /** By shape: which point of it comes onto the cloth's pattern, as an offset across from the middle of its bounds. */
  private anchors: StaticArray<f64> = new StaticArray<f64>(0);
  /** An item's lies are `lies[starts[item]]` up to, not including, `lies[starts[item + 1]]`. */
  private lies: StaticArray<i32> = new StaticArray<i32>(0);
  private starts: StaticArray<i32> = new StaticArray<i32>(0);
  /** Where an item's middle must lie across the strip; `NaN` where it is free. */
  private middles: StaticArray<f64> = new StaticArray<f64>(0);
  /** The repeat of the cloth's pattern across and down, 0 where there is none; and where the one across begins. */
  private across: f64 = 0;
  private origin: f64 = 0;
  private down: f64 = 0;

  begin(count: i32, lies: i32, shapes: i32, width: f64, gap: f64): void {
    this.count = count;
    this.width = width;
    this.gap = gap;
    this.length = Infinity;
    this.work = 0;
    this.across = 0;
    this.down = 0;
    this.x = new StaticArray<f64>(count);
    this.y = new StaticArray<f64>(count);
    this.choice = new StaticArray<i32>(count);
    this.lie = new StaticArray<i32>(count);
    this.halfWidth = new StaticArray<f64>(count);
    this.halfHeight = new StaticArray<f64>(count);
    // Room for one item more, as two are read at once.
    this.places = new StaticArray<f32>(2 * count + 2);
    this.halves = new StaticArray<f32>(2 * count + 2);
    this.areas = new StaticArray<f64>(count);
    this.weights = new StaticArray<f64>(count * count);
    this.weights.fill(1);
    this.weights32 = new StaticArray<f32>(count * count);
    this.weights32.fill(1);
    this.moved = new StaticArray<u8>(count);
    this.lies = new StaticArray<i32>(lies);
    this.starts = new StaticArray<i32>(count + 1);
    this.middles = new StaticArray<f64>(count);
    this.shapeHalfWidth = new StaticArray<f64>(shapes);
    this.shapeHalfHeight = new StaticArray<f64>(shapes);
    this.anchors = new StaticArray<f64>(shapes);
    pairs.forget();
  }

  setShape(shape: i32, halfWidth: f64, halfHeight: f64, anchor: f64): void {
    this.shapeHalfWidth[shape] = halfWidth;
    this.shapeHalfHeight[shape] = halfHeight;
    this.anchors[shape] = anchor;
  }

  setPattern(across: f64, origin: f64, down: f64): void {
    this.across = across;
    this.origin = origin;
    this.down = down;
  }

  /** Items in order; `middle` is `NaN` where the item may lie anywhere across. */
  setItem(item: i32, start: i32, end: i32, area: f64, middle: f64): void {
    this.starts[item] = start;
    this.starts[item + 1] = end;
    this.areas[item] = area;
    this.middles[item] = middle;
  }

  setLie(at: i32, lie: i32): void {
    this.lies[at] = lie;
  }

  /** How many attitudes an item may choose from. */
  choices(item: i32): i32 {
    return this.starts[item + 1] - this.starts[item];
  }

  lieAt(item: i32, choice: i32): i32 {
    return this.lies[this.starts[item] + choice];
  }

  halfWidthOf(lie: i32): f64 {
    return this.shapeHalfWidth[lie >> 2];
  }

  halfHeightOf(lie: i32): f64 {
    return this.shapeHalfHeight[lie >> 2];
  }

  /** Whether the item's middle may lie in one place only across the strip. */
  isHeld(item: i32): bool {
    return !isNaN(this.middles[item]);
  }

  /** Whether the item may lie anywhere on the strip. */
  isFree(item: i32): bool {
    return this.across === 0 && this.down === 0 && !this.isHeld(item);
  }

  /** Sets the weight of a pair's overlap; `at` is one item's number · count + the other's. */
  weigh(at: i32, weight: f64): void {
    const back = (at % this.count) * this.count + at / this.count;
    this.weights[at] = weight;
    this.weights[back] = weight;
    this.weights32[at] = weight as f32;
    this.weights32[back] = weight as f32;
  }

  /** Puts an item down, moved the least to lie within the strip. */
  put(item: i32, choice: i32, x: f64, y: f64): void {
    const lie = this.lieAt(item, choice);
    const halfWidth = this.halfWidthOf(lie);
    const halfHeight = this.halfHeightOf(lie);
    const withinX = this.withinX(item, lie, x);
    const withinY = this.withinY(lie, y);
    pairs.meet(lie);
    this.moved[item] = 1;
    this.choice[item] = choice;
    this.lie[item] = lie;
    this.halfWidth[item] = halfWidth;
    this.halfHeight[item] = halfHeight;
    this.x[item] = withinX;
    this.y[item] = withinY;
    this.halves[2 * item] = halfWidth as f32;
    this.halves[2 * item + 1] = halfHeight as f32;
    this.places[2 * item] = withinX as f32;
    this.places[2 * item + 1] = withinY as f32;
  }

  /** The nearest x at which the item may lie. */
  withinX(item: i32, lie: i32, x: f64): f64 {
    const half = this.halfWidthOf(lie);
    const middle = this.middles[item];
    if (!isNaN(middle)) return middle;
    const most = this.width - half;
    if (this.across === 0) return clamp(x, half, most);
    const anchor = (lie & 1) === 0 ? this.anchors[lie >> 2] : -this.anchors[lie >> 2];
    return onSteps(x, this.origin - anchor, this.across, half, most);
  }

  /** The nearest y at which it may lie. */
  withinY(lie: i32, y: f64): f64 {
    const half = this.halfHeightOf(lie);
    const most = this.length - half;
    if (this.down === 0) return clamp(y, half, most);
    return onSteps(y, half, this.down, half, max(most, half));
  }

  /** How deep two items lie in each other. */
  overlap(a: i32, b: i32): f64 {
    const dx = this.x[b] - this.x[a];
    const dy = this.y[b] - this.y[a];
    if (abs(dx) >= this.halfWidth[a] + this.halfWidth[b] + this.gap) return 0;
    if (abs(dy) >= this.halfHeight[a] + this.halfHeight[b] + this.gap) return 0;
    const pair = pairs.get(this.lie[a], this.lie[b]);
    return pair.polygon.depth(dx * pair.signX, dy * pair.signY);
  }
}

/** The one of `from`, `from ± step`, `from ± 2 step` … nearest to a value and between two limits; else the nearer limit. */
function onSteps(value: f64, from: f64, step: f64, least: f64, most: f64): f64 {
  const slack = step * 1e-9;
  const first = Math.ceil((least - slack - from) / step);
  const last = Math.floor((most + slack - from) / step);
  if (first > last) return clamp(value, least, most);
  return from + step * clamp(Math.floor((value - from) / step + 0.5), first, last);
}

export const layout = new Layout();
