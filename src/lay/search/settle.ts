import { layout } from './layout';
import { pairs } from './no-fit-pairs';

/** Sweeps over all pairs before settling is given up. */
const SWEEPS = 150;

/**
 * Overlaps are pushed apart by more than they are deep: by a share, and by a share of the strip's width, without which
 * a row against a wall comes ever nearer to lying clear and never does.
 */
const PUSH: f64 = 1.05;
const PUSH_AT_LEAST: f64 = 1e-7;

/** Swept on only while each so many sweeps leave at most this share of the overlap. */
const CHECK_EVERY = 15;
const LEAVES: f64 = 0.7;

/**
 * Pushes all items that overlap a little out of each other at once, half the way each, until none does: what moving
 * one item at a time cannot do where a whole row has to give way. After the relaxation of constraints by projection
 * (M. Müller et al., "Position based dynamics", 2007). Whether all lie clear; if not the layout is somewhat changed.
 */
export function settle(): bool {
  let before: f64 = Infinity;
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const overlap = pushApart();
    if (overlap === 0) return true;
    if (sweep % CHECK_EVERY !== 0) continue;
    if (overlap > before * LEAVES) return false;
    before = overlap;
  }
  return false;
}

/** One sweep: each overlapping pair in turn pushed apart. The overlap found. */
function pushApart(): f64 {
  const count = layout.count;
  const x = layout.x;
  const y = layout.y;
  let overlap: f64 = 0;
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      const dy = y[b] - y[a];
      const reachY = layout.halfHeight[a] + layout.halfHeight[b] + layout.gap;
      if (dy >= reachY || dy <= -reachY) continue;
      const dx = x[b] - x[a];
      const reachX = layout.halfWidth[a] + layout.halfWidth[b] + layout.gap;
      if (dx >= reachX || dx <= -reachX) continue;
      const pair = pairs.get(layout.lie[a], layout.lie[b]);
      const depth = pair.region.depthAndWayOut(dx * pair.signX, dy * pair.signY);
      layout.work += 1;
      if (depth <= 0) continue;
      overlap += depth;
      const push = (depth * PUSH + layout.width * PUSH_AT_LEAST) / 2;
      const pushX = pair.region.outX * pair.signX * push;
      const pushY = pair.region.outY * pair.signY * push;
      layout.put(b, layout.choice[b], x[b] + pushX, y[b] + pushY);
      layout.put(a, layout.choice[a], x[a] - pushX, y[a] - pushY);
    }
  }
  layout.work += ((count * count) >> 3) as f64;
  return overlap;
}
