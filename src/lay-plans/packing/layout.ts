import { lieOf, NoFitTable, shapeOf } from './no-fit-table.ts';
import { halfBounds, type StripPacking, type StripProblem, signedArea } from './strip-problem.ts';

/** A layout's positions, to go back to. */
export interface LayoutState {
  length: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly choice: Int32Array;
}

/**
 * Items lying on the strip, overlapping or not. Plain arrays, because the search reads them millions of times a
 * second. An item's `lie` is its shape and flip as `NoFitTable` numbers them.
 *
 * Here and around, what will be fractional begins as `NaN` or `Infinity` and what counts stays whole: a field that
 * turns from one to the other throws away the code compiled for it, a tenth of a short search.
 */
export class Layout {
  readonly problem: StripProblem;
  readonly table: NoFitTable;
  readonly count: number;
  length = Infinity;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Which of its attitudes an item has. */
  readonly choice: Int32Array;
  readonly lie: Int32Array;
  /** Half bounds as the item lies. */
  readonly halfWidth: Float64Array;
  readonly halfHeight: Float64Array;
  readonly shapeHalfWidth: Float64Array;
  readonly shapeHalfHeight: Float64Array;
  readonly areas: Float64Array;
  /** Weight of each pair's overlap, symmetric, count × count. */
  readonly weights: Float64Array;
  /** Set to 1 for an item whenever it is put down; whoever needs to know clears it. */
  readonly moved: Uint8Array;
  /** Work done: overlaps looked up. Counted, never timed, so that the same problem gives the same packing. */
  work = 0;
  private readonly lies: readonly number[][];

  constructor(problem: StripProblem, table = new NoFitTable(problem.shapes, problem.gap)) {
    this.problem = problem;
    this.table = table;
    this.count = problem.items.length;
    this.x = new Float64Array(this.count);
    this.y = new Float64Array(this.count);
    this.choice = new Int32Array(this.count);
    this.lie = new Int32Array(this.count);
    this.halfWidth = new Float64Array(this.count);
    this.halfHeight = new Float64Array(this.count);
    const bounds = problem.shapes.map(halfBounds);
    this.shapeHalfWidth = Float64Array.from(bounds, ({ width }) => width);
    this.shapeHalfHeight = Float64Array.from(bounds, ({ height }) => height);
    const areas = problem.shapes.map((outline) => Math.abs(signedArea(outline)));
    this.areas = Float64Array.from(problem.items, (item) => areas[item.attitudes[0]!.shape]!);
    this.moved = new Uint8Array(this.count).fill(1);
    this.weights = new Float64Array(this.count * this.count).fill(1);
    this.lies = problem.items.map((item) => item.attitudes.map(lieOf));
  }

  /** How many attitudes an item may choose from. */
  choices(item: number): number {
    return this.lies[item]!.length;
  }

  lieAt(item: number, choice: number): number {
    return this.lies[item]![choice]!;
  }

  /** Puts an item down, moved the least to lie within the strip. */
  put(item: number, choice: number, x: number, y: number): void {
    const lie = this.lieAt(item, choice);
    this.moved[item] = 1;
    this.choice[item] = choice;
    this.lie[item] = lie;
    this.halfWidth[item] = this.shapeHalfWidth[shapeOf(lie)]!;
    this.halfHeight[item] = this.shapeHalfHeight[shapeOf(lie)]!;
    this.x[item] = this.withinX(item, lie, x);
    this.y[item] = this.withinY(lie, y);
  }

  /** The nearest x at which the item may lie. */
  withinX(item: number, lie: number, x: number): number {
    const half = this.shapeHalfWidth[shapeOf(lie)]!;
    const { repeat, width, items } = this.problem;
    const middleAt = items[item]!.middleAt;
    if (middleAt !== undefined) return middleAt;
    if (repeat?.across === undefined) return Math.max(half, Math.min(width - half, x));
    const anchor = repeat.anchors[shapeOf(lie)]! * ((lie & 1) === 0 ? 1 : -1);
    return onSteps(x, repeat.across.origin - anchor, repeat.across.step, half, width - half);
  }

  /** The nearest y at which it may lie. */
  withinY(lie: number, y: number): number {
    const half = this.shapeHalfHeight[shapeOf(lie)]!;
    const down = this.problem.repeat?.down;
    if (down === undefined) return Math.max(half, Math.min(this.length - half, y));
    return onSteps(y, half, down, half, Math.max(half, this.length - half));
  }

  /** How deep two items lie in each other. */
  overlap(a: number, b: number): number {
    const dx = this.x[b]! - this.x[a]!;
    const dy = this.y[b]! - this.y[a]!;
    const { gap } = this.problem;
    if (Math.abs(dx) >= this.halfWidth[a]! + this.halfWidth[b]! + gap) return 0;
    if (Math.abs(dy) >= this.halfHeight[a]! + this.halfHeight[b]! + gap) return 0;
    const region = this.table.prepare(this.lie[a]!, this.lie[b]!);
    const at = this.lie[a]! * this.table.lies + this.lie[b]!;
    return region.depth(dx * this.table.signX[at]!, dy * this.table.signY[at]!);
  }

  /** Length really used. */
  used(): number {
    let used = 0;
    for (let i = 0; i < this.count; i++) used = Math.max(used, this.y[i]! + this.halfHeight[i]!);
    return used;
  }

  state(): LayoutState {
    return { length: this.length, x: this.x.slice(), y: this.y.slice(), choice: this.choice.slice() };
  }

  /** Writes the positions over a state that nobody needs any more. */
  keepIn(state: LayoutState): void {
    state.length = this.length;
    state.x.set(this.x);
    state.y.set(this.y);
    state.choice.set(this.choice);
  }

  restore(state: LayoutState): void {
    this.length = state.length;
    for (let i = 0; i < this.count; i++) this.put(i, state.choice[i]!, state.x[i]!, state.y[i]!);
  }

  packing(): StripPacking {
    const placements = this.problem.items.map((item, i) => ({
      attitude: item.attitudes[this.choice[i]!]!,
      x: this.x[i]!,
      y: this.y[i]!,
    }));
    return { length: this.used(), placements };
  }
}

/** The nearest of `from`, `from ± step`, … between two limits; the limit itself where none lies between them. */
function onSteps(value: number, from: number, step: number, least: number, most: number): number {
  const slack = step * 1e-9;
  const first = Math.ceil((least - slack - from) / step);
  const last = Math.floor((most + slack - from) / step);
  if (first > last) return Math.max(least, Math.min(most, value));
  return from + step * Math.max(first, Math.min(last, Math.round((value - from) / step)));
}
