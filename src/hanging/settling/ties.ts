import { cloth } from './cloth';

/** Holds places together that were drawn up. */
class Ties {
  /** By tie: the row above its anchor and part of the way to the one below, the place that is picked up, and how far off it is kept. */
  private anchor: StaticArray<i32> = new StaticArray<i32>(0);
  private part: StaticArray<f64> = new StaticArray<f64>(0);
  private pickUp: StaticArray<i32> = new StaticArray<i32>(0);
  private outside: StaticArray<f64> = new StaticArray<f64>(0);
  /** Axes in which it is held: all, or seen from above alone. */
  private axes: StaticArray<i32> = new StaticArray<i32>(0);

  begin(count: i32): void {
    this.anchor = new StaticArray<i32>(count);
    this.part = new StaticArray<f64>(count);
    this.pickUp = new StaticArray<i32>(count);
    this.outside = new StaticArray<f64>(count);
    this.axes = new StaticArray<i32>(count);
  }

  set(tie: i32, anchor: i32, part: f64, pickUp: i32, outside: f64, axes: i32): void {
    this.anchor[tie] = anchor;
    this.part[tie] = part;
    this.pickUp[tie] = pickUp;
    this.outside[tie] = outside;
    this.axes[tie] = axes;
  }

  solve(): void {
    const place = cloth.place;
    const ease = cloth.ease;
    for (let tie = 0; tie < this.anchor.length; tie++) {
      const above = this.anchor[tie];
      const picked = this.pickUp[tie];
      const lower = this.part[tie];
      const upper = 1 - lower;
      const a = 3 * above;
      const p = 3 * picked;
      const x = place[a] * upper + place[a + 3] * lower;
      const y = place[a + 1] * upper + place[a + 4] * lower;
      const out = Math.sqrt(x * x + y * y);
      const off: f64 = out > 0 ? this.outside[tie] / out : 0;
      const sum = ease[above] * upper * upper + ease[above + 1] * lower * lower + ease[picked];
      if (sum === 0) continue;
      for (let axis = 0; axis < this.axes[tie]; axis++) {
        const anchor = place[a + axis] * upper + place[a + 3 + axis] * lower;
        const wanted: f64 = axis === 0 ? x * off : axis === 1 ? y * off : 0;
        const push = (place[p + axis] - anchor - wanted) / sum;
        place[a + axis] += ease[above] * upper * push;
        place[a + 3 + axis] += ease[above + 1] * lower * push;
        place[p + axis] -= ease[picked] * push;
      }
    }
  }
}

export const ties = new Ties();
