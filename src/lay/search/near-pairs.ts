import { layout } from './layout';

/**
 * The pairs that may touch, in order: in a sweep items move by about as much as they overlap in all. A pair that comes
 * to touch all the same is found in the next sweep.
 */
class NearPairs {
  first: StaticArray<i32> = new StaticArray<i32>(0);
  second: StaticArray<i32> = new StaticArray<i32>(0);
  count: i32 = 0;
  private margin: f64 = 0;
  /** Where the items lay when the pairs were listed. */
  private fromX: StaticArray<f64> = new StaticArray<f64>(0);
  private fromY: StaticArray<f64> = new StaticArray<f64>(0);

  /** To be called once all items are known. */
  begin(): void {
    const count = layout.count;
    this.first = new StaticArray<i32>((count * (count - 1)) / 2);
    this.second = new StaticArray<i32>((count * (count - 1)) / 2);
    this.fromX = new StaticArray<f64>(count);
    this.fromY = new StaticArray<f64>(count);
  }

  /** Lists the pairs whose bounds are nearer than a margin. */
  list(margin: f64): void {
    this.margin = margin;
    let near = 0;
    for (let a = 0; a < layout.count; a++) {
      const x = layout.x[a];
      const y = layout.y[a];
      const reachX = layout.halfWidth[a] + layout.gap + margin;
      const reachY = layout.halfHeight[a] + layout.gap + margin;
      this.fromX[a] = x;
      this.fromY[a] = y;
      for (let b = a + 1; b < layout.count; b++) {
        if (abs(layout.y[b] - y) >= reachY + layout.halfHeight[b]) continue;
        if (abs(layout.x[b] - x) >= reachX + layout.halfWidth[b]) continue;
        this.first[near] = a;
        this.second[near++] = b;
      }
    }
    this.count = near;
  }

  /** Whether an item has strayed so far that a pair which is not listed may touch. */
  isOld(): bool {
    const most = this.margin / 2;
    for (let item = 0; item < layout.count; item++) {
      if (abs(layout.x[item] - this.fromX[item]) > most) return true;
      if (abs(layout.y[item] - this.fromY[item]) > most) return true;
    }
    return false;
  }
}

export const nearPairs = new NearPairs();
