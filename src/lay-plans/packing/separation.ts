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
    let overlap = this.measure();
    let best: Separated = { overlap, state: layout.state() };
    let strikes = 0;
    while (best.overlap > 0 && strikes < patience.strikes && !stop()) {
      const before = best.overlap;
      for (let idle = 0; overlap > 0 && idle < patience.passes && !stop(); idle++) {
        this.pass();
        overlap = this.measure();
        this.reweigh();
        if (overlap >= best.overlap) continue;
        if (overlap < best.overlap * CLEARLY) idle = 0;
        best = { overlap, state: layout.state() };
        if (overlap > 0 && overlap < this.settles) {
          if (settle(layout)) return { overlap: 0, state: layout.state() };
          layout.restore(best.state);
        }
      }
      strikes = best.overlap < before * CLEARLY ? 0 : strikes + 1;
      layout.restore(best.state);
      overlap = this.measure();
    }
    return best;
  }

  private pass(): void {
    const items = this.overlappingItems();
    this.random.shuffle(items);
    for (const item of items) this.search.move(item);
  }

  private overlappingItems(): number[] {
    const { count } = this.layout;
    const items: number[] = [];
    for (let i = 0; i < count; i++) {
      for (let j = 0; j < count; j++) {
        if (this.depths[i * count + j]! > 0) {
          items.push(i);
          break;
        }
      }
    }
    return items;
  }

  /** All pairs' depths, and their sum. */
  private measure(): number {
    const { layout, depths } = this;
    let sum = 0;
    for (let i = 0; i < layout.count; i++) {
      for (let j = i + 1; j < layout.count; j++) {
        const depth = layout.overlap(i, j);
        depths[i * layout.count + j] = depth;
        depths[j * layout.count + i] = depth;
        sum += depth;
      }
    }
    layout.work += layout.count * layout.count;
    return sum;
  }

  private reweigh(): void {
    const { depths, lightest } = this;
    const { weights } = this.layout;
    let most = 0;
    for (const depth of depths) if (depth > most) most = depth;
    if (most === 0) return;
    for (let k = 0; k < weights.length; k++) {
      const depth = depths[k]!;
      if (depth > 0) weights[k]! *= GROWTH_LEAST + (GROWTH_MOST - GROWTH_LEAST) * (depth / most);
      else weights[k] = Math.max(lightest[k]!, weights[k]! * DECAY);
    }
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
