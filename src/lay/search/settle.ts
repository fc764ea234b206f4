import { layout } from './layout';
import { nearPairs } from './near-pairs';
import { pairs } from './no-fit-pairs';

// Figures are as `../pack/pack-strip.ts` says.

/** The most sweeps over all pairs. With 75 −0.4, 0.0, +0.8, with 300 −0.7, −0.7, +0.3. */
const SWEEPS = 150;

/**
 * A pair is pushed apart by a little more than it overlaps: by so much of the overlap, and by so much of the strip's width.
 * Without the latter, a row that is pushed against a wall comes ever closer to lying clear and never does.
 * With half the excess −0.2, −0.4, +0.1, with twice −0.8, −0.1, +0.1.
 */
const PUSH: f64 = 1.05;
const PUSH_AT_LEAST: f64 = 1e-7;

/**
 * Sweeping goes on only while each so many sweeps, with 8 +0.3, +0.3, +0.3, with 30 +0.1, +0.1, +0.5, leave at most this share of
 * the overlap, with 0.35 −0.2, +0.3, +0.9, with 0.9 0.0, −0.2, +0.4.
 */
const CHECK_EVERY = 15;
const LEAVES: f64 = 0.7;

/**
 * After a sweep, pairs whose bounds are nearer than so many times the overlap met in it are looked at. With 2 and with 8 every
 * packing came out the same, in as much time.
 */
const NEAR: f64 = 4;

/**
 * Pushes all items that overlap a little out of each other together, each half of the way, until none overlaps. Where a
 * whole row has to give way a little, moving one item at a time cannot do that. Sources are named in `../pack/pack-strip.ts`.
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
