import type { Layout, LayoutState } from './layout.ts';
import { PlaceSearch, type SearchEffort } from './place-search.ts';
import type { Random } from './random.ts';
import { settle } from './settle.ts';

/** When an attempt is given up: passes without a clearly lower overlap make a strike, so many strikes end it. */
export interface Patience {
  readonly passes: number;
  readonly strikes: number;
}

/** Result of an attempt: the layout with the least overlap met, and that overlap (0 when all lie clear). */
export interface Separated {
  readonly overlap: number;
  readonly state: LayoutState;
}

/** A pass makes an overlapping pair heavier by these factors, the most for the pair that overlaps most. */
const GROWTH_LEAST = 1.2;
const GROWTH_MOST = 2;
/** A pair that lies clear grows lighter by this, down to where it began. */
const DECAY = 0.95;
/** Overlap small enough for settling, as a share of the items' sizes added up. */
const SETTLES = 0.003;
/** What counts as a clearly lower overlap. */
const CLEARLY = 0.98;

/**
 * Guided local search: overlapping items are moved one at a time to their places of least weighted overlap; pairs
 * that stay in each other grow heavier, so that no pair is left stuck (J. Egeblad, B. Nielsen, A. Odgaard, "Fast
 * neighborhood search for two- and three-dimensional nesting problems", 2007; S. Umetani et al., "Solving the
 * irregular strip packing problem via guided local search for overlap minimization", 2009).
 */
export class Separation {
  private readonly layout: Layout;
  private readonly random: Random;
  private readonly search: PlaceSearch;
  private readonly depths: Float64Array;
  /** Pairs i < j, as i · count + j, that overlap, and those weighed more than they begin with. */
  private readonly overlapping: number[] = [];
  private readonly heavy: number[] = [];
  /** Overlap below which all items together are tried to be pushed apart. */
  private readonly settles: number;
  /** Weights to begin with: more for large items, so that small ones make way. */
  private readonly lightest: Float64Array;

  constructor(layout: Layout, random: Random, effort: SearchEffort) {
    this.layout = layout;
    this.random = random;
    this.search = new PlaceSearch(layout, random, effort);
    this.depths = new Float64Array(layout.count * layout.count);
    this.lightest = weightsBySize(layout.areas);
    this.settles = SETTLES * layout.areas.reduce((sum, area) => sum + Math.sqrt(area), 0);
  }

  /** Works on the layout as it lies. `stop` is asked once a pass. */
  run(patience: Patience, stop: () => boolean): Separated {
    const { layout } = this;
    layout.weights.set(this.lightest);
    layout.moved.fill(1);
    this.heavy.length = 0;
    let overlap = this.measure();
    const state = layout.state();
    let least = overlap;
    let strikes = 0;
    while (least > 0 && strikes < patience.strikes && !stop()) {
      const before = least;
      for (let idle = 0; overlap > 0 && idle < patience.passes && !stop(); idle++) {
        this.pass();
        overlap = this.measure();
        this.reweigh();
        if (overlap >= least) continue;
        if (overlap < least * CLEARLY) idle = 0;
        least = overlap;
        layout.keepIn(state);
        if (overlap > 0 && overlap < this.settles) {
          if (settle(layout)) return { overlap: 0, state: layout.state() };
          layout.restore(state);
        }
      }
      strikes = least < before * CLEARLY ? 0 : strikes + 1;
      layout.restore(state);
      overlap = this.measure();
    }
    return { overlap: least, state };
  }

  private pass(): void {
    const items = this.overlappingItems();
    this.random.shuffle(items);
    for (const item of items) this.search.move(item);
  }

  private overlappingItems(): number[] {
    const { count } = this.layout;
    const among = new Uint8Array(count);
    for (const at of this.overlapping) {
      among[at % count] = 1;
      among[Math.floor(at / count)] = 1;
    }
    const items: number[] = [];
    for (let i = 0; i < count; i++) if (among[i] === 1) items.push(i);
    return items;
  }

  /** The pairs' depths that moves have changed, and the sum of all. */
  private measure(): number {
    const { layout, depths, overlapping } = this;
    const { count, moved } = layout;
    let sum = 0;
    let kept = 0;
    for (const at of overlapping) {
      if (moved[at % count] === 1 || moved[Math.floor(at / count)] === 1) depths[at] = 0;
      else {
        sum += depths[at]!;
        overlapping[kept++] = at;
      }
    }
    overlapping.length = kept;
    for (let a = 0; a < count; a++) {
      if (moved[a] === 0) continue;
      for (let b = 0; b < count; b++) {
        if (b === a || (moved[b] === 1 && b < a)) continue;
        const first = Math.min(a, b);
        const depth = layout.overlap(first, a + b - first);
        if (depth <= 0) continue;
        const at = first * count + (a + b - first);
        depths[at] = depth;
        overlapping.push(at);
        sum += depth;
      }
    }
    moved.fill(0);
    layout.work += count * count;
    return sum;
  }

  private reweigh(): void {
    const { depths, lightest, overlapping } = this;
    const { weights } = this.layout;
    let most = 0;
    for (const at of overlapping) most = Math.max(most, depths[at]!);
    if (most === 0) return;
    let kept = 0;
    for (const at of this.heavy) {
      if (depths[at]! > 0) continue;
      const weight = weights[at]! * DECAY;
      const light = weight <= lightest[at]!;
      this.weigh(at, light ? lightest[at]! : weight);
      if (!light) this.heavy[kept++] = at;
    }
    this.heavy.length = kept;
    for (const at of overlapping) {
      this.weigh(at, weights[at]! * (GROWTH_LEAST + (GROWTH_MOST - GROWTH_LEAST) * (depths[at]! / most)));
      this.heavy.push(at);
    }
  }

  private weigh(at: number, weight: number): void {
    const { weights, count } = this.layout;
    weights[at] = weight;
    weights[(at % count) * count + Math.floor(at / count)] = weight;
  }
}

/** The fourth root of each pair's areas multiplied, by square roots, which every machine rounds alike. */
function weightsBySize(areas: Float64Array): Float64Array {
  const mean = areas.reduce((sum, area) => sum + area, 0) / areas.length;
  const weights = new Float64Array(areas.length * areas.length);
  for (let i = 0; i < areas.length; i++) {
    for (let j = 0; j < areas.length; j++) {
      weights[i * areas.length + j] = Math.sqrt(Math.sqrt((areas[i]! / mean) * (areas[j]! / mean)));
    }
  }
  return weights;
}
