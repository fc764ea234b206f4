/**
 * Thread for a lockstitched (ISO 4915, 301) metre at the stitch length below: 2.5 m, half on the needle and half on the
 * bobbin. From published thread-consumption tables.
 */
const THREAD_PER_SEAM = 2.5;
const STITCH_OF_TABLE = 2.5;

/** Ends, breaks and trials: the tables say 10 to 15 %. */
export const THREAD_WASTE = 0.15;

/** Stitch length when the scrap test has not settled one, mm. From memory. */
export const USUAL_STITCH = 2.5;

/** All mm. */
export interface ThreadNeed {
  readonly sewn: number;
  readonly needle: number;
  readonly bobbin: number;
  /** Both, with waste. */
  readonly toBuy: number;
}

/**
 * Thread drawn per length sewn. Each stitch lays its own length twice and goes through the cloth twice, so the ratio is
 * 2 + c/stitch, where c makes the table's ratio true at the table's stitch.
 */
export function threadRatio(stitch: number): number {
  return 2 + ((THREAD_PER_SEAM - 2) * STITCH_OF_TABLE) / stitch;
}

/** @param sewn all rows of stitching together, mm; @param stitch mm */
export function threadFor(sewn: number, stitch: number = USUAL_STITCH): ThreadNeed {
  const drawn = sewn * threadRatio(stitch);
  return { sewn, needle: drawn / 2, bobbin: drawn / 2, toBuy: drawn * (1 + THREAD_WASTE) };
}
