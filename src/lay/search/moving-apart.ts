import { layout } from './layout';
import { ROUNDING } from './neighbours';
import { search } from './place-search';
import { random } from './random';
import { settle } from './settle';

/** Asked of the host once a pass, with the work done so far. */
declare function isStopped(work: f64): bool;

/**
 * After a pass the weight of each overlapping pair grows by a factor, from the least to the most as it overlaps; that of a
 * pair which lies clear shrinks by a factor, but never below where it began. Mean density of the 99 pieces of `shirts`
 * after 300 million look-ups, four seeds, a mean uncertain by 0.2 (2026-11-28): with 1.1, 1.5 and 0.95 85.1 %; 1.2, 2 and
 * 0.95 85.9 %; 1.3, 2.5 and 0.95 86.2 %; 1.2, 2 and 0.9 86.2 %; with these 86.4 %.
 */
const GROWTH_LEAST: f64 = 1.3;
const GROWTH_MOST: f64 = 2.5;
const DECAY: f64 = 0.9;
/**
 * Overlap small enough for settling to be tried, as a share of the sum of the items' sizes (roots of their areas). With half
 * −0.5, +0.1, +0.9, with twice −0.3, −0.2, +0.5, as `../pack/pack-strip.ts` says.
 */
const SETTLES: f64 = 0.003;
/** An overlap is clearly lower than another if it is below this share of it: with 0.96 −0.7, +0.3, +0.3, with 0.99 −0.1, −0.1, +0.3. */
const CLEARLY: f64 = 0.98;

/**
 * Overlap minimisation by guided local search: in each pass, every item that overlaps another moves to its place of
 * least weighted overlap. A pair that goes on overlapping gets a greater weight, so that no pair stays stuck. Sources are
 * named in `../pack/pack-strip.ts`.
 */
class MovingApart {
  /** The overlap of each pair i < j, at i · count + j. */
  private depths: StaticArray<f64> = new StaticArray<f64>(0);
  /** The pairs that overlap, and those whose weight is greater than at the beginning. */
  private overlapping: StaticArray<i32> = new StaticArray<i32>(0);
  private overlaps: i32 = 0;
  private heavy: StaticArray<i32> = new StaticArray<i32>(0);
  private heavies: i32 = 0;
  /** The weights at the beginning: greater for large items, so that small ones make way. */
  private lightest: StaticArray<f64> = new StaticArray<f64>(0);
  /** Overlap below which settling is tried. */
  private settles: f64 = 0;
  /** Items to be moved in a pass. */
  private items: StaticArray<i32> = new StaticArray<i32>(0);
  private among: StaticArray<u8> = new StaticArray<u8>(0);
  /** Left by `listNear`. */
  private near: StaticArray<i32> = new StaticArray<i32>(0);
  /** The layout with the least overlap met. */
  private leastX: StaticArray<f64> = new StaticArray<f64>(0);
  private leastY: StaticArray<f64> = new StaticArray<f64>(0);
  private leastChoice: StaticArray<i32> = new StaticArray<i32>(0);

  /** To be called once all items are known. */
  begin(): void {
    const count = layout.count;
    this.depths = new StaticArray<f64>(count * count);
    this.overlapping = new StaticArray<i32>(count * count);
    this.heavy = new StaticArray<i32>(count * count);
    this.overlaps = 0;
    this.heavies = 0;
    this.items = new StaticArray<i32>(count);
    this.among = new StaticArray<u8>(count);
    this.near = new StaticArray<i32>(count + 2);
    this.leastX = new StaticArray<f64>(count);
    this.leastY = new StaticArray<f64>(count);
    this.leastChoice = new StaticArray<i32>(count);
    this.lightest = weightsBySize();
    let sizes: f64 = 0;
    for (let i = 0; i < count; i++) sizes += Math.sqrt(layout.areas[i]);
    this.settles = SETTLES * sizes;
  }

  /**
   * Goes on from the layout as it lies and leaves the one with the least overlap met; returns that overlap, 0 when all
   * items lie clear. A round ends after so many passes without a clearly lower overlap, all of it after so many rounds
   * without one; each round goes on from the least overlap, with the weights as they have grown.
   */
  run(idlePasses: i32, idleRounds: i32): f64 {
    this.forget();
    let overlap = this.measure();
    let least = overlap;
    let idle = 0;
    this.keepLeast();
    while (least > 0 && idle < idleRounds && !isStopped(layout.work)) {
      const before = least;
      for (let passes = 0; overlap > 0 && passes < idlePasses && !isStopped(layout.work); passes++) {
        this.pass();
        overlap = this.measure();
        this.reweigh();
        if (overlap >= least) continue;
        if (overlap < least * CLEARLY) passes = 0;
        least = overlap;
        this.keepLeast();
        if (overlap > 0 && overlap < this.settles) {
          if (settle()) return 0;
          this.restoreLeast();
        }
      }
      idle = least < before * CLEARLY ? 0 : idle + 1;
      this.restoreLeast();
      overlap = this.measure();
    }
    return least;
  }

  /** Takes every item as moved, and sets all weights back to the beginning. */
  private forget(): void {
    const count = layout.count;
    for (let k = 0; k < this.overlaps; k++) this.depths[this.overlapping[k]] = 0;
    this.overlaps = 0;
    this.heavies = 0;
    layout.moved.fill(1);
    for (let i = 0; i < count; i++) {
      for (let j = 0; j <= i; j++) layout.weigh(j * count + i, this.lightest[j * count + i]);
    }
  }

  private pass(): void {
    const count = this.listOverlapping();
    const items = this.items;
    for (let i = count - 1; i > 0; i--) {
      const j = random.below(i + 1);
      const item = items[i];
      items[i] = items[j];
      items[j] = item;
    }
    for (let i = 0; i < count; i++) search.move(items[i]);
  }

  /** Lists the items that overlap another, in their order; how many. */
  private listOverlapping(): i32 {
    this.among.fill(0);
    for (let k = 0; k < this.overlaps; k++) {
      const at = this.overlapping[k];
      this.among[at % layout.count] = 1;
      this.among[at / layout.count] = 1;
    }
    let count = 0;
    for (let i = 0; i < layout.count; i++) if (this.among[i] === 1) this.items[count++] = i;
    return count;
  }

  /** Looks up the overlaps of items that have moved. Returns the sum of all overlaps. */
  private measure(): f64 {
    const count = layout.count;
    const moved = layout.moved;
    let sum: f64 = 0;
    let kept = 0;
    for (let k = 0; k < this.overlaps; k++) {
      const at = this.overlapping[k];
      if (moved[at % count] === 1 || moved[at / count] === 1) this.depths[at] = 0;
      else {
        sum += this.depths[at];
        this.overlapping[kept++] = at;
      }
    }
    for (let a = 0; a < count; a++) {
      if (moved[a] === 0) continue;
      const near = this.listNear(a);
      for (let k = 0; k < near; k++) {
        const b = this.near[k];
        if (b === a || (moved[b] === 1 && b < a)) continue;
        const first = min(a, b);
        const depth = layout.overlap(first, a + b - first);
        if (depth <= 0) continue;
        const at = first * count + (a + b - first);
        this.depths[at] = depth;
        this.overlapping[kept++] = at;
        sum += depth;
      }
    }
    this.overlaps = kept;
    moved.fill(0);
    layout.work += (count * count) as f64;
    return sum;
  }

  /**
   * Lists the items whose bounds meet those of one, itself among them, and perhaps some that only come near: in single
   * precision, two at a time, each written down and kept only if it counts, as a wrongly predicted jump is slow. How many.
   */
  private listNear(item: i32): i32 {
    const places = changetype<usize>(layout.places);
    const halves = changetype<usize>(layout.halves);
    const at = (item << 3) as usize;
    const gapX = (layout.gap + layout.width * ROUNDING) as f32;
    const gapY = (layout.gap + layout.length * ROUNDING) as f32;
    const place = v128.load64_splat(places + at);
    const half = f32x4.add(v128.load64_splat(halves + at), f32x4(gapX, gapY, gapX, gapY));
    const near = this.near;
    let count = 0;
    for (let other = 0; other < layout.count; other += 2) {
      const shift = f32x4.abs(f32x4.sub(v128.load(places + (other << 3)), place));
      const meets = f32x4.le(shift, f32x4.add(v128.load(halves + (other << 3)), half));
      near[count] = other;
      count += (i64x2.extract_lane(meets, 0) === -1) as i32;
      near[count] = other + 1;
      count += (i64x2.extract_lane(meets, 1) === -1) as i32;
    }
    return count > 0 && near[count - 1] === layout.count ? count - 1 : count;
  }

  private reweigh(): void {
    const depths = this.depths;
    let most: f64 = 0;
    for (let k = 0; k < this.overlaps; k++) most = max(most, depths[this.overlapping[k]]);
    if (most === 0) return;
    let kept = 0;
    for (let k = 0; k < this.heavies; k++) {
      const at = this.heavy[k];
      if (depths[at] > 0) continue;
      const weight = layout.weights[at] * DECAY;
      const light = weight <= this.lightest[at];
      layout.weigh(at, light ? this.lightest[at] : weight);
      if (!light) this.heavy[kept++] = at;
    }
    for (let k = 0; k < this.overlaps; k++) {
      const at = this.overlapping[k];
      const growth = GROWTH_LEAST + (GROWTH_MOST - GROWTH_LEAST) * (depths[at] / most);
      layout.weigh(at, layout.weights[at] * growth);
      this.heavy[kept++] = at;
    }
    this.heavies = kept;
  }

  private keepLeast(): void {
    for (let i = 0; i < layout.count; i++) {
      this.leastX[i] = layout.x[i];
      this.leastY[i] = layout.y[i];
      this.leastChoice[i] = layout.choice[i];
    }
  }

  private restoreLeast(): void {
    for (let i = 0; i < layout.count; i++) {
      layout.put(i, this.leastChoice[i], this.leastX[i], this.leastY[i]);
    }
  }
}

/** For each pair, the geometric mean of its areas, as a share of the mean area. */
function weightsBySize(): StaticArray<f64> {
  const areas = layout.areas;
  const count = layout.count;
  let mean: f64 = 0;
  for (let i = 0; i < count; i++) mean += areas[i] / (count as f64);
  const weights = new StaticArray<f64>(count * count);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      weights[i * count + j] = Math.sqrt((areas[i] / mean) * (areas[j] / mean));
    }
  }
  return weights;
}

export const movingApart = new MovingApart();
