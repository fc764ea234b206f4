import fc from 'fast-check';

/** Steps between the two ends of a range. */
const STEPS = 1 << 24;

/**
 * A number between two, each as likely as the next, the ends now and then. A double is drawn by its bits: between 0
 * and 1 nearly all are next to nothing, and a property hardly tried.
 */
export function evenly(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: STEPS }).map((step) => low + ((high - low) * step) / STEPS);
}
