import { layout } from './layout';
import { pairs } from './no-fit-pairs';

/** The most sweeps over all pairs. */
const SWEEPS = 150;

/**
 * A pair is pushed apart by a little more than it overlaps: by so much of the overlap, and by so much of the strip's width.
 * Without the latter, a row that is pushed against a wall comes ever closer to lying clear and never does.
 */
const PUSH: f64 = 1.05;
const PUSH_AT_LEAST: f64 = 1e-7;

/** Sweeping goes on only while each so many sweeps leave at most this share of the overlap. */
const CHECK_EVERY = 15;
const LEAVES: f64 = 0.7;

/** After a sweep, pairs whose bounds are nearer than so many times the overlap met in it are looked at. */
const NEAR: f64 = 4;

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

/**
 * Pushes all items that overlap a little out of each other together, each half of the way, until none overlaps. Where a
 * whole row has to give way a little, moving one item at a time cannot do that. This is the relaxation of constraints by
 * projection (M. Müller and others, "Position based dynamics", 2007); that all items move at once, each a little, is
 * what T. Imamichi, M. Yagiura and H. Nagamochi do by minimising all overlaps together ("An iterated local search
 * algorithm based on nonlinear programming for the irregular strip packing problem", 2009).
 * Returns whether all lie clear; if not, items have moved a little.
 */
export function settle(): bool {
  let before: f64 = Infinity;
  nearPairs.list(Infinity);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const overlap = pushApart();
    if (overlap === 0) return true;
    if (sweep === 0 || nearPairs.isOld()) nearPairs.list(NEAR * overlap);
    if (sweep % CHECK_EVERY !== 0) continue;
    if (overlap > before * LEAVES) return false;
    before = overlap;
  }
  return false;
}

/** One sweep: each overlapping pair in turn is pushed apart. Returns the overlap met; if none, no item has moved. */
function pushApart(): f64 {
  const x = layout.x;
  const y = layout.y;
  let overlap: f64 = 0;
  for (let k = 0; k < nearPairs.count; k++) {
    const a = nearPairs.first[k];
    const b = nearPairs.second[k];
    const dy = y[b] - y[a];
    const reachY = layout.halfHeight[a] + layout.halfHeight[b] + layout.gap;
    if (dy >= reachY || dy <= -reachY) continue;
    const dx = x[b] - x[a];
    const reachX = layout.halfWidth[a] + layout.halfWidth[b] + layout.gap;
    if (dx >= reachX || dx <= -reachX) continue;
    const pair = pairs.get(layout.lie[a], layout.lie[b]);
    const depth = pair.polygon.depthAndWayOut(dx * pair.signX, dy * pair.signY);
    layout.work += 1;
    if (depth <= 0) continue;
    overlap += depth;
    const push = (depth * PUSH + layout.width * PUSH_AT_LEAST) / 2;
    const pushX = pair.polygon.outX * pair.signX * push;
    const pushY = pair.polygon.outY * pair.signY * push;
    layout.put(b, layout.choice[b], x[b] + pushX, y[b] + pushY);
    layout.put(a, layout.choice[a], x[a] - pushX, y[a] - pushY);
  }
  layout.work += ((layout.count * layout.count) >> 3) as f64;
  return overlap;
}
