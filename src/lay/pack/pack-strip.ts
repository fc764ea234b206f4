import { type Disturbance, disturb } from './disturb.ts';
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
  /** A packing of the same items to improve; the result is never longer. */
  readonly start?: StripPacking;
  /** From how many random layouts to start, the best of which is gone on with; not used with `start`. */
  readonly starts?: number;
  /** The ways in which a jammed layout is disturbed, one drawn each time; usually those for many items. */
  readonly disturbances?: readonly Disturbance[];
  /** When an attempt at a jammed layout is given up; usually later for many items. */
  readonly patience?: Patience;
  /** Share of the budget for rearranging, the rest tightens; usually less for many items. */
  readonly rearranging?: number;
  /** How hard each move looks for a place; usually harder for many items. */
  readonly search?: SearchEffort;
  /** No-fit polygons made before for the same shapes and gap. */
  readonly table?: NoFitTable;
}

/** A layout in which something still overlaps, and how much in all. */
interface NearMiss {
  readonly overlap: number;
  readonly state: LayoutState;
}

// Figures beside a number, here and in `lay/search`, were measured on 2026-11-28 with that number alone changed: by how much
// the mean density of four seeds changed, in per cent, for `shirts` (99 pieces, 100 million overlap look-ups, 85.8 %),
// `albano` twice over (48, 40 million, 86.3 %) and `albano` (24, 25 million, 86.1 %, four unlucky seeds: nearly all variants
// came out above). Such a difference is uncertain by 0.5, and nothing was changed for less. One figure alone is `shirts`
// after 300 million: 85.9 %, uncertain by 0.2.

/**
 * Share of the budget for rearranging; the rest tightens. With 0.6 85.6 %; with 0.5 −0.3, 0.0, −0.2; with 0.9 0.0, +0.1, +0.2,
 * which gowns' few pieces take; on `shirts` one run of 4,700 million look-ups came to 87.6 % with it.
 */
const REARRANGING = 0.75;
/**
 * Share of the rearranging that is divided among the starts, if there are several. Five quick lays of nine pieces, four seeds
 * each, as shares of the shortest known, a mean uncertain by 0.15: with 0.25 99.5 %, with this 99.4, with 0.8 99.5.
 * Many items have one start: with three `shirts` came to 87.4 % after 1,600 million look-ups, three seeds, with one to 87.1,
 * but after 5,000 million to 87.6 and 87.9, with one to 87.6 and 88.2.
 */
const STARTING = 0.5;
/**
 * Patience with a jammed layout, with 60 and 2 85.8 %, with 50 passes −0.1, −0.2, 0.0, with 200 −0.1, 0.0, +0.5; and with one
 * that is not known to be jammed, with 20 −0.4, −0.3, +1.2, with 80 −0.4, +0.4, −0.1.
 */
const PATIENCE: Patience = { idlePasses: 100, idleRounds: 3 };
const CUT_PATIENCE: Patience = { idlePasses: 40, idleRounds: 1 };

/** Density aimed at first, by the first layout. With 0.5 −0.3, 0.0, +0.4, with 0.85 −0.5, −0.2, +0.3. */
const FIRST_DENSITY = 0.7;
/**
 * How much the strip is cut shorter, as shares of its length: at first, with 0.05 −0.1, −0.3, +1.1, with 0.2 −1.1, −0.1, +1.1;
 * by what factor after success, with 1.1 −1.4, +0.5, +0.8, with 1.44 +0.2, −0.4, +0.5; and after failure, with 0.25 −0.1, −0.3,
 * +0.2, with 0.7 −0.1, +0.2, 0.0.
 */
const FIRST_CUT = 0.1;
const CUT_AFTER_SUCCESS = 1.2;
const CUT_AFTER_FAILURE = 0.5;
/**
 * A layout that not even this cut shortens is jammed: with 0.0005 +0.1, +0.1, +0.3, with 0.002 +0.2, 0.0, +1.1, and
 * with eight other seeds +0.2, +0.1, 0.0. Once
 * it is freed, cuts begin with the second: with 0.002 0.0, −0.2, +0.1, with 0.008 0.0, −0.3, 0.0.
 */
const LEAST_CUT = 0.001;
const CUT_ONCE_FREED = 0.004;
/**
 * The ways in which a jammed layout is disturbed, one drawn each time. Of 1,500 million look-ups with three seeds: with a
 * far exchange alone 86.7 %, with these 87.4 %, with a second near exchange for the second none 86.6 %; with none alone,
 * two seeds, 86.5 %. In two runs with all ways at hand, so many attempts succeeded in 100 million look-ups: none 5.8, move
 * 3.0, near 2.3, far 1.3. Turning round a stretch of the strip (0.6), moving four items (0.6) and beginning the strip at
 * another place (0) were tried too and left out. On four strips of 48 to 99 pieces, 30 s each, so many succeeded in 100
 * million look-ups: move 2.3, none 1.8, near 0.6, far 0.1. With move and none alone two of eight runs of 20 s stuck all the
 * same, 1.6 and 3.1 of density below these: an exchange seldom succeeds, and what it frees nothing else does.
 */
const DISTURBANCES: readonly Disturbance[] = ['none', 'none', 'move', 'exchange-near'];
/** How often the search goes on from a near miss instead of the best layout. With 0.2 85.8 %, with 0.25 0.0, 0.0, 0.0, always 0.0, +0.1, +0.2. */
const FROM_NEAR_MISS = 0.5;
/** A near miss is made longer by these multiples of its overlap, as that may free it. With 1 alone −0.1, −0.1, +0.3, with 64 too 0. */
const STRETCHES = [1, 4, 16];

/**
 * Cuts of the tightening, from first to last: with half the first 0.0, 0.0, +0.5, with twice 0.0, +0.1, +0.2. The last, some
 * hundredths of a millimetre on a gown's lay, less than is printed: with 1e-4 0.0, +0.1, +0.7, with 1e-6 0.0, 0.0, +0.3.
 */
const TIGHTENING_CUT = 0.0005;
const LAST_CUT = 0.00001;

/** Shares of the length within which the bound counts as reached. */
const REACHED = 1e-6;

/**
 * Packs a strip as short as the budget allows, by minimising overlap: the strip is cut shorter, and what then overlaps
 * is moved apart. The method is a published, general one. Overlap minimised by moving one item at a time, pairs that go on
 * overlapping weighing more and more: J. Egeblad, B. Nielsen and A. Odgaard, "Fast neighborhood search for two- and
 * three-dimensional nesting problems", 2007; S. Umetani and others, "Solving the irregular strip packing problem via guided
 * local search for overlap minimization", 2009. All items pushed apart together: T. Imamichi, M. Yagiura and H. Nagamochi,
 * "An iterated local search algorithm based on nonlinear programming for the irregular strip packing problem", 2009, by
 * projection as in M. Müller and others, "Position based dynamics", 2007. Places sampled, then refined; near misses gone on
 * from; first long cuts, then ever shorter ones: J. Gardeyn, G. Vanden Berghe and T. Wauters, "An open-source heuristic to
 * reboot 2D nesting research", 2025, arXiv 2509.13329.
 *
 * First it rearranges: cuts grow and shrink with success and failure, and a jammed layout is disturbed. Then it tightens
 * the best layout by cuts that shrink to nothing.
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
  private readonly rearranging: number;
  private readonly rows: LayoutState;
  private best: LayoutState;

  constructor(problem: StripProblem, options: PackOptions) {
    this.problem = problem;
    this.options = options;
    this.patience = options.patience ?? PATIENCE;
    this.rearranging = options.rearranging ?? REARRANGING;
    this.cutPatience = options.patience ?? CUT_PATIENCE;
    this.layout = new Layout(problem, options.seed, options.table, options.search);
    layInRows(this.layout);
    if (options.start !== undefined) this.startFrom(options.start);
    const area = this.layout.areas.reduce((sum, a) => sum + a, 0);
    const heights = problem.items.map((_, item) => 2 * this.layout.halfHeight(item));
    this.bound = Math.max(area / problem.width, ...heights);
    this.rows = this.layout.state();
    this.best = this.rows;
  }

  run(): StripPacking {
    const { start, starts = 1 } = this.options;
    if (start === undefined) this.startAnew(starts);
    this.rearrange(this.rearranging);
    this.tighten();
    this.layout.restore(this.best);
    return this.layout.packing();
  }

  /** Rearranges a random layout for each start, each with its share of the budget. The best is kept. */
  private startAnew(starts: number): void {
    let best = this.best;
    for (let begun = 1; begun <= starts; begun++) {
      this.best = this.rows;
      const until = (STARTING * this.rearranging * begun) / starts;
      this.scatterFirst();
      if (starts > 1) this.rearrange(until);
      if (this.best.length < best.length) best = this.best;
    }
    this.best = best;
  }

  private hasSpent(share: number, work: number): boolean {
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

  private rearrange(until: number): void {
    const { layout } = this;
    const ends = (work: number) => this.hasSpent(until, work);
    let cut = FIRST_CUT;
    let nearMisses: NearMiss[] = [];
    while (!ends(layout.work)) {
      const jammed = cut < LEAST_CUT;
      if (!jammed) {
        nearMisses = [];
        layout.restore(this.best);
        this.shorten(this.best.length * (1 - cut));
      } else {
        const missed = nearMisses.length > 0 && layout.unit() < FROM_NEAR_MISS;
        layout.restore(missed ? this.oneOf(nearMisses).state : this.best);
        this.shorten(Math.min(layout.length, this.best.length * (1 - LEAST_CUT)));
        disturb(layout, this.options.disturbances ?? DISTURBANCES);
      }
      const overlap = layout.moveApart(jammed ? this.patience : this.cutPatience, ends);
      const left = { overlap, state: layout.state() };
      if (overlap === 0 || this.fitsStretched(left)) {
        this.keep();
        nearMisses = [];
        cut = jammed ? CUT_ONCE_FREED : cut * CUT_AFTER_SUCCESS;
      } else if (jammed) nearMisses.push(left);
      else cut *= CUT_AFTER_FAILURE;
    }
  }

  /** Moves a random layout apart: where much space is to be left, that alone gets there. */
  private scatterFirst(): void {
    const ends = (work: number) => this.hasSpent(this.rearranging, work);
    this.scatter(Math.min(this.best.length, this.bound / FIRST_DENSITY));
    if (this.layout.moveApart(this.patience, ends) === 0) this.keep();
  }

  /** Whether a little more length, still less than the best, frees a near miss. */
  private fitsStretched({ overlap, state }: NearMiss): boolean {
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

  /** A near miss, more probably one with little overlap: the smallest of three drawn. */
  private oneOf(nearMisses: readonly NearMiss[]): NearMiss {
    const drawn = Array.from(
      { length: 3 },
      () => nearMisses[Math.floor(this.layout.unit() * nearMisses.length)]!,
    );
    return drawn.reduce((a, b) => (b.overlap < a.overlap ? b : a));
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

  private tighten(): void {
    const { layout } = this;
    const ends = (work: number) => this.hasSpent(1, work);
    while (!ends(layout.work)) {
      const from = this.rearranging;
      const share = Math.max(0, (this.options.spent(layout.work) - from) / (1 - from));
      layout.restore(this.best);
      this.shorten(this.best.length * (1 - TIGHTENING_CUT * (1 - share) - LAST_CUT));
      if (layout.moveApart(PATIENCE, ends) === 0) this.keep();
    }
  }
}
