import type { Layout } from './layout.ts';

/** Sweeps over all pairs before settling is given up. */
const SWEEPS = 150;

/**
 * Overlaps are pushed apart by more than they are deep: by a share, and by a share of the strip's width, without which
 * a row against a wall comes ever nearer to lying clear and never does.
 */
const PUSH = 1.05;
const PUSH_AT_LEAST = 1e-7;

/** Swept on only while each so many sweeps leave at most this share of the overlap. */
const CHECK_EVERY = 15;
const LEAVES = 0.7;

/**
 * Pushes all items that overlap a little out of each other at once, half the way each, until none does: what moving
 * one item at a time cannot do where a whole row has to give way. After the relaxation of constraints by projection
 * (M. Müller et al., "Position based dynamics", 2007). Whether all lie clear; if not the layout is somewhat changed.
 */
export function settle(layout: Layout): boolean {
  let before = Infinity;
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const overlap = pushApart(layout);
    if (overlap === 0) return true;
    if (sweep % CHECK_EVERY !== 0) continue;
    if (overlap > before * LEAVES) return false;
    before = overlap;
  }
  return false;
}

/** One sweep: each overlapping pair in turn pushed apart. The overlap found. */
function pushApart(layout: Layout): number {
  const { count, table, x, y, halfWidth, halfHeight, lie, problem } = layout;
  let overlap = 0;
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      const dy = y[b]! - y[a]!;
      const reachY = halfHeight[a]! + halfHeight[b]! + problem.gap;
      if (dy >= reachY || dy <= -reachY) continue;
      const dx = x[b]! - x[a]!;
      const reachX = halfWidth[a]! + halfWidth[b]! + problem.gap;
      if (dx >= reachX || dx <= -reachX) continue;
      const region = table.prepare(lie[a]!, lie[b]!);
      const at = lie[a]! * table.lies + lie[b]!;
      const depth = region.depthAndWayOut(dx * table.signX[at]!, dy * table.signY[at]!);
      layout.work++;
      if (depth <= 0) continue;
      overlap += depth;
      const push = (depth * PUSH + problem.width * PUSH_AT_LEAST) / 2;
      const pushX = region.outX * table.signX[at]! * push;
      const pushY = region.outY * table.signY[at]! * push;
      layout.put(b, layout.choice[b]!, x[b]! + pushX, y[b]! + pushY);
      layout.put(a, layout.choice[a]!, x[a]! - pushX, y[a]! - pushY);
    }
  }
  layout.work += (count * count) >> 3;
  return overlap;
}
