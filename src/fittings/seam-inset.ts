import type { SeamTake } from './alterations.ts';

/** How far a seam line lies inside of where it was, over the slant distance: mm, and mm a mm. */
export interface SeamInset {
  readonly valueAt: (s: number) => number;
  readonly slopeAt: (s: number) => number;
}

/** Part of a stretch over which an alteration of one amount runs out at an end, so that the seam line has no corner there. */
export const RUNS_OUT_OVER = 1 / 3;

/** All stretches of one seam together; they add up. */
export function seamInset(takes: readonly SeamTake[], factor = 1): SeamInset {
  const insets = takes.map(takeInset);
  return {
    valueAt: (s) => factor * insets.reduce((sum, inset) => sum + inset.valueAt(s), 0),
    slopeAt: (s) => factor * insets.reduce((sum, inset) => sum + inset.slopeAt(s), 0),
  };
}

function takeInset(take: SeamTake): SeamInset {
  return take.until === undefined ? runningOut(take) : changing(take, take.until);
}

/** From one amount to another over the whole stretch, and on with them beyond an end that is open. */
function changing({ from, to, amount, open }: SeamTake, until: number): SeamInset {
  const part = (s: number): number => (s - from) / (to - from);
  return {
    valueAt: (s) => {
      if (s < from) return open.above ? amount : 0;
      if (s >= to) return open.below ? until : 0;
      return amount + (until - amount) * eased(part(s));
    },
    slopeAt: (s) => (s < from || s >= to ? 0 : ((until - amount) * easedSlope(part(s))) / (to - from)),
  };
}

function runningOut({ from, to, amount, open }: SeamTake): SeamInset {
  const over = (to - from) * RUNS_OUT_OVER;
  const above = (s: number): number => (open.above ? 1 : (s - from) / over);
  const below = (s: number): number => (open.below ? 1 : (to - s) / over);
  return {
    valueAt: (s) => amount * eased(above(s)) * eased(below(s)),
    slopeAt: (s) =>
      (amount / over) *
      ((open.above ? 0 : easedSlope(above(s))) * eased(below(s)) -
        (open.below ? 0 : easedSlope(below(s))) * eased(above(s))),
  };
}

/** The steepest of `eased`, in its middle. */
export const STEEPEST = 1.875;

/** From 0 to 1 without a corner or a jump of curvature at either end: t³(10 − 15t + 6t²). */
function eased(t: number): number {
  if (t <= 0) return 0;
  return t >= 1 ? 1 : t * t * t * (10 - 15 * t + 6 * t * t);
}

function easedSlope(t: number): number {
  return t <= 0 || t >= 1 ? 0 : 30 * t * t * (1 - t) * (1 - t);
}
