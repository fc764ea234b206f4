import { lieOf, NoFitTable } from './no-fit-table.ts';
import type { SearchCode } from './search-code.ts';
import {
  type Attitude,
  halfBounds,
  type StripPacking,
  type StripProblem,
  signedArea,
} from './strip-problem.ts';

/** How hard one move looks for a place. */
export interface SearchEffort {
  /** How many places are drawn anywhere on the strip, touching another item, and near where the item lies. */
  readonly anywhere: number;
  readonly touching: number;
  readonly nearby: number;
  /** How many of the cheapest are improved step by step. */
  readonly improved: number;
}

/**
 * When an attempt is given up: so many passes without a clearly lower overlap end a round, and so many rounds without one
 * end the attempt. A round begins from the least overlap met, with the weights as they have grown.
 */
export interface Patience {
  readonly idlePasses: number;
  readonly idleRounds: number;
}

/** A layout's positions, to go back to. */
export interface LayoutState {
  readonly length: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly choice: Int32Array;
}

/** Usual effort of a move, for many small items: 85.9 % as `pack-strip.ts` measures; with 5, 60, 5 and 3 85.7 %. */
const SEARCH: SearchEffort = { anywhere: 10, touching: 100, nearby: 10, improved: 3 };

/**
 * Items lying on the strip, overlapping or not, in the compiled search's memory. A table has one layout at a time: the
 * one that was made last.
 */
export class Layout {
  readonly problem: StripProblem;
  readonly count: number;
  readonly areas: readonly number[];
  private readonly table: NoFitTable;
  private readonly code: SearchCode;
  private readonly halfHeights: readonly number[];
  private readonly halfWidths: readonly number[];

  constructor(
    problem: StripProblem,
    seed: number,
    table = new NoFitTable(problem.shapes, problem.gap),
    effort = SEARCH,
  ) {
    const { shapes, items, repeat } = problem;
    const bounds = shapes.map(halfBounds);
    const areas = shapes.map((outline) => Math.abs(signedArea(outline)));
    const lies = items.flatMap(({ attitudes }) => attitudes.map(lieOf));
    this.problem = problem;
    this.count = items.length;
    this.areas = items.map((item) => areas[item.attitudes[0]!.shape]!);
    this.halfWidths = bounds.map(({ width }) => width);
    this.halfHeights = bounds.map(({ height }) => height);
    this.table = table;
    this.code = table.code;
    this.code.beginLayout(items.length, lies.length, shapes.length, problem.width, problem.gap);
    bounds.forEach(({ width, height }, shape) => {
      this.code.setShape(shape, width, height, repeat?.anchors[shape] ?? 0);
    });
    let start = 0;
    items.forEach(({ attitudes, middleAt = Number.NaN }, item) => {
      this.code.setItem(item, start, start + attitudes.length, this.areas[item]!, middleAt);
      start += attitudes.length;
    });
    lies.forEach((lie, at) => {
      this.code.setLie(at, lie);
    });
    if (repeat !== undefined)
      this.code.setPattern(repeat.across?.step ?? 0, repeat.across?.origin ?? 0, repeat.down ?? 0);
    this.code.beginSearch(seed, effort.anywhere, effort.touching, effort.nearby, effort.improved);
  }

  get length(): number {
    return this.code.getLength();
  }

  set length(length: number) {
    this.code.setLength(length);
  }

  /** Work done, in overlap look-ups. Counted, never timed, so that the same problem gives the same packing. */
  get work(): number {
    return this.code.work();
  }

  x(item: number): number {
    return this.code.xOf(item);
  }

  y(item: number): number {
    return this.code.yOf(item);
  }

  /** Which of its attitudes an item has. */
  choice(item: number): number {
    return this.code.choiceOf(item);
  }

  /** How many attitudes an item may choose from. */
  choices(item: number): number {
    return this.problem.items[item]!.attitudes.length;
  }

  private attitude(item: number): Attitude {
    return this.problem.items[item]!.attitudes[this.choice(item)]!;
  }

  /** Half bounds as the item lies. */
  halfWidth(item: number): number {
    return this.halfWidths[this.attitude(item).shape]!;
  }

  halfHeight(item: number): number {
    return this.halfHeights[this.attitude(item).shape]!;
  }

  /** Puts an item down, moved the least to lie within the strip. */
  put(item: number, choice: number, x: number, y: number): void {
    this.code.put(item, choice, x, y);
  }

  /** How deep two items lie in each other. */
  overlap(a: number, b: number): number {
    return this.code.overlap(a, b);
  }

  /**
   * Moves overlapping items until none overlaps or patience is at an end. Leaves the layout with the least overlap met
   * and returns that overlap. `stopped` is asked once a pass, with the work done so far.
   */
  moveApart({ idlePasses, idleRounds }: Patience, stopped: (work: number) => boolean): number {
    this.table.isStopped = stopped;
    return this.code.moveApart(idlePasses, idleRounds);
  }

  /** Pushes all items that overlap a little apart together. Whether all lie clear; if not, some have moved a little. */
  settle(): boolean {
    return this.code.settleAll() === 1;
  }

  /** A random number of the search's, from 0 up to, not including, 1. */
  unit(): number {
    return this.code.unit();
  }

  /** Length really used. */
  used(): number {
    let used = 0;
    for (let i = 0; i < this.count; i++) used = Math.max(used, this.y(i) + this.halfHeight(i));
    return used;
  }

  state(): LayoutState {
    return {
      length: this.length,
      x: Float64Array.from(this.areas, (_, item) => this.x(item)),
      y: Float64Array.from(this.areas, (_, item) => this.y(item)),
      choice: Int32Array.from(this.areas, (_, item) => this.choice(item)),
    };
  }

  restore(state: LayoutState): void {
    this.length = state.length;
    for (let i = 0; i < this.count; i++) this.put(i, state.choice[i]!, state.x[i]!, state.y[i]!);
  }

  packing(): StripPacking {
    const placements = this.problem.items.map((_, i) => ({
      attitude: this.attitude(i),
      x: this.x(i),
      y: this.y(i),
    }));
    return { length: this.used(), placements };
  }
}
