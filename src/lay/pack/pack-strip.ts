import { Layout, type LayoutState, type Patience, type SearchEffort } from './layout.ts';
import type { NoFitTable } from './no-fit-table.ts';
import { layInRows } from './rows.ts';
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

/** An attempt that failed: the layout with the least overlap met, and that overlap. */
interface Failed {
  readonly overlap: number;
  readonly state: LayoutState;
}

/** Share of the budget for exploring; the rest compresses. */
const EXPLORING = 0.75;
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
  private readonly bound: number;
  private readonly patience: Patience;
  private readonly cutPatience: Patience;
  private best: LayoutState;

  constructor(problem: StripProblem, options: PackOptions) {
    this.problem = problem;
    this.options = options;
    this.patience = options.patience ?? PATIENCE;
    this.cutPatience = options.patience ?? CUT_PATIENCE;
    this.layout = new Layout(problem, options.seed, options.table, options.search);
    layInRows(this.layout);
    if (options.start !== undefined) this.startFrom(options.start);
    const area = this.layout.areas.reduce((sum, a) => sum + a, 0);
    const heights = problem.items.map((_, item) => 2 * this.layout.halfHeight(item));
    this.bound = Math.max(area / problem.width, ...heights);
    this.best = this.layout.state();
  }

  run(): StripPacking {
    this.explore();
    this.compress();
    this.layout.restore(this.best);
    return this.layout.packing();
  }

  private readonly exploreEnds = (work: number) => this.ends(EXPLORING, work);
  private readonly compressEnds = (work: number) => this.ends(1, work);

  private ends(share: number, work: number): boolean {
    return this.best.length <= this.bound * (1 + REACHED) || this.options.spent(work) >= share;
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
    let failed: Failed[] = [];
    while (!this.exploreEnds(this.layout.work)) {
      if (cut >= LEAST_CUT) {
        failed = [];
        this.layout.restore(this.best);
        this.shorten(this.best.length * (1 - cut));
      } else {
        // Small cuts fail too: the best is jammed as it lies, so pieces change places a little below its length.
        if (failed.length > 0 && this.layout.unit() < FROM_FAILED)
          this.layout.restore(this.oneOf(failed).state);
        else this.layout.restore(this.best);
        this.shorten(Math.min(this.layout.length, this.best.length * (1 - LEAST_CUT)));
        this.swapLarge();
      }
      const patience = cut >= LEAST_CUT ? this.cutPatience : this.patience;
      const overlap = this.layout.separate(patience, this.exploreEnds);
      const result = { overlap, state: this.layout.state() };
      if (overlap === 0 || this.fitsStretched(result)) {
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
    if (this.layout.separate(this.patience, this.exploreEnds) === 0) this.keep();
  }

  /** Whether a little more length frees what hardly overlaps; still shorter than the best. */
  private fitsStretched({ overlap, state }: Failed): boolean {
    const { layout } = this;
    for (const times of STRETCHES) {
      const longer = state.length + overlap * times;
      if (longer >= this.best.length * (1 - LAST_CUT)) return false;
      layout.restore(state);
      layout.length = longer;
      for (let i = 0; i < layout.count; i++) {
        layout.put(i, state.choice[i]!, state.x[i]!, (state.y[i]! * longer) / state.length);
      }
      if (layout.settle()) return true;
    }
    return false;
  }

  /** One of the failed attempts, more likely one with little overlap. */
  private oneOf(failed: Failed[]): Failed {
    failed.sort((a, b) => a.overlap - b.overlap);
    const at = Math.floor(Math.abs(this.normal()) * 0.25 * failed.length);
    return failed[Math.min(failed.length - 1, at)]!;
  }

  private keep(): void {
    this.layout.length = this.layout.used();
    if (this.layout.length >= this.best.length) return;
    this.best = this.layout.state();
    this.options.onBetter?.(this.layout.packing());
  }

  private scatter(length: number): void {
    const { layout, problem } = this;
    layout.length = length;
    for (let i = 0; i < layout.count; i++) {
      const choice = Math.floor(layout.unit() * layout.choices(i));
      layout.put(i, choice, layout.unit() * problem.width, layout.unit() * length);
    }
  }

  /** Cuts a stretch out of the strip at a random place; what lay beyond moves up. */
  private shorten(length: number): void {
    const { layout } = this;
    const shorter = Math.max(length, this.bound);
    const by = layout.length - shorter;
    const cut = layout.unit() * layout.length;
    layout.length = shorter;
    for (let i = 0; i < layout.count; i++) {
      const y = layout.y(i);
      layout.put(i, layout.choice(i), layout.x(i), y > cut ? y - by : y);
    }
  }

  /** Two large items of different shape change places. */
  private swapLarge(): void {
    const { layout } = this;
    const order = Array.from(layout.areas.keys()).sort((a, b) => layout.areas[b]! - layout.areas[a]!);
    const large = order.slice(0, Math.max(2, Math.ceil(order.length / 2)));
    const a = this.anyOf(large);
    const others = large.filter((i) => layout.areas[i] !== layout.areas[a]);
    if (others.length === 0) return;
    const b = this.anyOf(others);
    const [x, y] = [layout.x(a), layout.y(a)];
    layout.put(a, layout.choice(a), layout.x(b), layout.y(b));
    layout.put(b, layout.choice(b), x, y);
  }

  private anyOf(items: readonly number[]): number {
    return items[Math.floor(this.layout.unit() * items.length)]!;
  }

  /** Roughly normal, mean 0 and deviation 1: twelve draws summed, so that no logarithm is needed. */
  private normal(): number {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += this.layout.unit();
    return sum;
  }

  private compress(): void {
    const { layout } = this;
    while (!this.compressEnds(layout.work)) {
      const share = Math.max(0, (this.options.spent(layout.work) - EXPLORING) / (1 - EXPLORING));
      layout.restore(this.best);
      this.shorten(this.best.length * (1 - COMPRESSING_CUT * (1 - share) - LAST_CUT));
      if (layout.separate(PATIENCE, this.compressEnds) === 0) this.keep();
    }
  }
}
