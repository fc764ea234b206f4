import { Layout, type LayoutState } from './layout.ts';
import type { NoFitTable } from './no-fit-table.ts';
import type { SearchEffort } from './place-search.ts';
import { Random } from './random.ts';
import { layInRows } from './rows.ts';
import { type Patience, type Separated, Separation } from './separation.ts';
import { settle } from './settle.ts';
import type { StripPacking, StripProblem } from './strip-problem.ts';

export interface PackOptions {
  readonly seed: number;
  /** Share of the budget that is spent, given the work done so far; the search ends at 1. */
  readonly spent: (work: number) => number;
  /** Called with each shorter packing. */
  readonly onBetter?: (packing: StripPacking) => void;
  /** A packing of the same items to better; the result is never longer. */
  readonly start?: StripPacking;
  /** When an attempt to explore is given up; more for many items. */
  readonly patience?: Patience;
  /** How hard each move looks for a place; harder for many items. */
  readonly search?: SearchEffort;
  /** Regions made for the same shapes and gap before. */
  readonly table?: NoFitTable;
}

/** Share of the budget for exploring; the rest compresses. */
const EXPLORING = 0.75;
const SEARCH: SearchEffort = { anywhere: 10, touching: 50, nearby: 25, improved: 3 };
const PATIENCE: Patience = { passes: 100, strikes: 3 };
const CUT_PATIENCE: Patience = { passes: 40, strikes: 1 };

/** Density aimed at first, and how the strip is shortened: by this share, less after each success and failure. */
const FIRST_DENSITY = 0.7;
const FIRST_CUT = 0.1;
const CUT_AFTER_SUCCESS = 1.2;
const CUT_AFTER_FAILURE = 0.5;
const CUT_AFTER_SWAP = 0.004;
const LEAST_CUT = 0.001;
/** How often a jammed search goes on from an attempt that failed and not from the best; and the lengthening tried on what
 * failed by little, as multiples of its overlap. */
const FROM_FAILED = 0.5;
const STRETCHES = [1, 4, 16];

/** Cuts of the compression, as shares of the length, from first to last. */
const COMPRESSING_CUT = 0.0005;
const LAST_CUT = 0.00001;

/** Shares of the length within which the bound counts as reached. */
const REACHED = 1e-6;

/**
 * Packs a strip as short as the budget allows. Explores first: the strip is shortened after each success, and an
 * attempt that fails is shaken up and tried again. Then compresses the best packing by ever smaller cuts.
 */
export function packStrip(problem: StripProblem, options: PackOptions): StripPacking {
  return new StripPacker(problem, options).run();
}

class StripPacker {
  private readonly problem: StripProblem;
  private readonly options: PackOptions;
  private readonly layout: Layout;
  private readonly random: Random;
  private readonly separation: Separation;
  private readonly bound: number;
  private readonly patience: Patience;
  private readonly cutPatience: Patience;
  private best: LayoutState;

  constructor(problem: StripProblem, options: PackOptions) {
    this.problem = problem;
    this.options = options;
    this.patience = options.patience ?? PATIENCE;
    this.cutPatience = options.patience ?? CUT_PATIENCE;
    this.layout = new Layout(problem, options.table);
    this.random = new Random(options.seed);
    this.separation = new Separation(this.layout, this.random, options.search ?? SEARCH);
    layInRows(this.layout);
    if (options.start !== undefined) this.startFrom(options.start);
    const area = this.layout.areas.reduce((sum, a) => sum + a, 0);
    this.bound = Math.max(area / problem.width, ...Array.from(this.layout.halfHeight, (half) => 2 * half));
    this.best = this.layout.state();
  }

  run(): StripPacking {
    this.explore();
    this.compress();
    this.layout.restore(this.best);
    return this.layout.packing();
  }

  private readonly exploreEnds = () => this.ends(EXPLORING);
  private readonly compressEnds = () => this.ends(1);

  private ends(share: number): boolean {
    return this.best.length <= this.bound * (1 + REACHED) || this.options.spent(this.layout.work) >= share;
  }

  private startFrom(packing: StripPacking): void {
    this.layout.length = packing.length;
    packing.placements.forEach(({ attitude, x, y }, i) => {
      const choice = this.problem.items[i]!.attitudes.findIndex(
        (own) =>
          own.shape === attitude.shape &&
          own.mirrored === attitude.mirrored &&
          own.turned === attitude.turned,
      );
      if (choice < 0) throw new RangeError(`item ${i} starts in an attitude that it may not have`);
      this.layout.put(i, choice, x, y);
    });
  }

  private explore(): void {
    if (this.options.start === undefined) this.scatterFirst();
    let cut = FIRST_CUT;
    let failed: Separated[] = [];
    while (!this.exploreEnds()) {
      if (cut >= LEAST_CUT) {
        failed = [];
        this.layout.restore(this.best);
        this.shorten(this.best.length * (1 - cut));
      } else {
        // Small cuts fail too: the best is jammed as it lies, so pieces change places a little below its length.
        if (failed.length > 0 && this.random.unit() < FROM_FAILED)
          this.layout.restore(this.oneOf(failed).state);
        else this.layout.restore(this.best);
        this.shorten(Math.min(this.layout.length, this.best.length * (1 - LEAST_CUT)));
        this.swapLarge();
      }
      const result = this.separation.run(
        cut >= LEAST_CUT ? this.cutPatience : this.patience,
        this.exploreEnds,
      );
      if (result.overlap === 0 || this.fitsStretched(result)) {
        this.keep();
        failed = [];
        cut = cut >= LEAST_CUT ? cut * CUT_AFTER_SUCCESS : CUT_AFTER_SWAP;
      } else if (cut >= LEAST_CUT) cut *= CUT_AFTER_FAILURE;
      else failed.push(result);
    }
  }

  /** A quick try from anywhere: dense strips are reached at once, and others lose little. */
  private scatterFirst(): void {
    this.scatter(Math.min(this.best.length, this.bound / FIRST_DENSITY));
    if (this.separation.run(this.patience, this.exploreEnds).overlap === 0) this.keep();
  }

  /** Whether a little more length frees what hardly overlaps; still shorter than the best. */
  private fitsStretched({ overlap, state }: Separated): boolean {
    const { layout } = this;
    for (const times of STRETCHES) {
      const longer = state.length + overlap * times;
      if (longer >= this.best.length * (1 - LAST_CUT)) return false;
      layout.restore(state);
      layout.length = longer;
      for (let i = 0; i < layout.count; i++) {
        layout.put(i, layout.choice[i]!, layout.x[i]!, (layout.y[i]! * longer) / state.length);
      }
      if (settle(layout)) return true;
    }
    return false;
  }

  /** One of the failed attempts, more likely one with little overlap. */
  private oneOf(failed: Separated[]): Separated {
    failed.sort((a, b) => a.overlap - b.overlap);
    const at = Math.floor(Math.abs(this.random.normal()) * 0.25 * failed.length);
    return failed[Math.min(failed.length - 1, at)]!;
  }

  private keep(): void {
    this.layout.length = this.layout.used();
    if (this.layout.length >= this.best.length) return;
    this.best = this.layout.state();
    this.options.onBetter?.(this.layout.packing());
  }

  private scatter(length: number): void {
    const { layout, random } = this;
    layout.length = length;
    for (let i = 0; i < layout.count; i++) {
      const choice = random.below(layout.choices(i));
      layout.put(i, choice, random.unit() * this.problem.width, random.unit() * length);
    }
  }

  /** Cuts a stretch out of the strip at a random place; what lay beyond moves up. The new length. */
  private shorten(length: number): number {
    const { layout } = this;
    const shorter = Math.max(length, this.bound);
    const by = layout.length - shorter;
    const cut = this.random.between(0, layout.length);
    layout.length = shorter;
    for (let i = 0; i < layout.count; i++) {
      const y = layout.y[i]!;
      layout.put(i, layout.choice[i]!, layout.x[i]!, y > cut ? y - by : y);
    }
    return shorter;
  }

  /** Two large items of different shape change places. */
  private swapLarge(): void {
    const { layout, random } = this;
    const order = Array.from(layout.areas.keys()).sort((a, b) => layout.areas[b]! - layout.areas[a]!);
    const large = order.slice(0, Math.max(2, Math.ceil(order.length / 2)));
    const a = large[random.below(large.length)]!;
    const others = large.filter((i) => layout.areas[i] !== layout.areas[a]);
    if (others.length === 0) return;
    const b = others[random.below(others.length)]!;
    const [x, y] = [layout.x[a]!, layout.y[a]!];
    layout.put(a, layout.choice[a]!, layout.x[b]!, layout.y[b]!);
    layout.put(b, layout.choice[b]!, x, y);
  }

  private compress(): void {
    const { layout } = this;
    while (!this.compressEnds()) {
      const share = Math.max(0, (this.options.spent(layout.work) - EXPLORING) / (1 - EXPLORING));
      layout.restore(this.best);
      this.shorten(this.best.length * (1 - COMPRESSING_CUT * (1 - share) - LAST_CUT));
      if (this.separation.run(PATIENCE, this.compressEnds).overlap === 0) this.keep();
    }
  }
}
