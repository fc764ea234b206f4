import type { Layout } from './layout.ts';
import { shapeOf } from './no-fit-table.ts';

const BANDS = 12;

/**
 * Which items one item could touch. Two lists, because most of the search's time would else go on items far away:
 * by band along the strip for places anywhere, and one short list for steps around a place.
 */
export class Neighbours {
  /** Items of band `b` stand at `starts[b] … starts[b + 1]`. */
  readonly starts = new Int32Array(BANDS + 1);
  items = new Int32Array(256);
  readonly near: Int32Array;
  nearCount = 0;
  private readonly layout: Layout;
  private readonly next = new Int32Array(BANDS);
  private bandsPerUnit = 1;

  constructor(layout: Layout) {
    this.layout = layout;
    this.near = new Int32Array(layout.count);
  }

  bandAt(y: number): number {
    return Math.max(0, Math.min(BANDS - 1, (y * this.bandsPerUnit) | 0));
  }

  /** Sorts all other items into the bands in which the middle of this one could touch them. */
  fillBands(item: number): void {
    const { layout, starts } = this;
    const height = this.tallest(item);
    this.bandsPerUnit = BANDS / layout.length;
    starts.fill(0);
    this.eachBand(item, height, (_, band) => {
      starts[band + 1]!++;
    });
    for (let band = 0; band < BANDS; band++) {
      this.next[band] = starts[band]!;
      starts[band + 1]! += starts[band]!;
    }
    if (starts[BANDS]! > this.items.length) this.items = new Int32Array(2 * starts[BANDS]!);
    this.eachBand(item, height, (other, band) => {
      this.items[this.next[band]!++] = other;
    });
  }

  /** Lists what the item could touch while its middle stays within `reach` of a place. */
  fillNear(item: number, lie: number, x: number, y: number, reach: number): void {
    const { layout, near } = this;
    const width = layout.shapeHalfWidth[shapeOf(lie)]! + layout.problem.gap + reach;
    const height = layout.shapeHalfHeight[shapeOf(lie)]! + layout.problem.gap + reach;
    let count = 0;
    for (let other = 0; other < layout.count; other++) {
      if (other === item || Math.abs(y - layout.y[other]!) >= height + layout.halfHeight[other]!) continue;
      if (Math.abs(x - layout.x[other]!) >= width + layout.halfWidth[other]!) continue;
      near[count++] = other;
    }
    this.nearCount = count;
  }

  private tallest(item: number): number {
    const { layout } = this;
    let height = 0;
    for (let choice = 0; choice < layout.choices(item); choice++) {
      height = Math.max(height, layout.shapeHalfHeight[shapeOf(layout.lieAt(item, choice))]!);
    }
    return height + layout.problem.gap;
  }

  private eachBand(item: number, height: number, visit: (other: number, band: number) => void): void {
    const { layout } = this;
    for (let other = 0; other < layout.count; other++) {
      if (other === item) continue;
      const reach = height + layout.halfHeight[other]!;
      const last = this.bandAt(layout.y[other]! + reach);
      for (let band = this.bandAt(layout.y[other]! - reach); band <= last; band++) visit(other, band);
    }
  }
}
