/**
 * What bodies, gowns and cloths measure: what every figure of a spec is held against, so that a digit too
 * many, a decimal that moved or inches for centimetres are told before cloth is cut. In mm; weights in g/m², shares of 1.
 *
 * Outside `least` to `most` is unusual and gets a note; outside `possible` (twice as far out, where it is not said) it
 * is a slip or a very odd gown, and gets a warning. Unlike the bounds of the shape, nothing here refuses anybody's work.
 */
export interface Usual {
  readonly least: number;
  readonly most: number;
  readonly possible?: readonly [number, number];
  /** What a maker would expect, for choosing between repairs of a slip. */
  readonly typical: number;
  /** What it is, for the message: "an allowance at a seam is commonly …". */
  readonly of: string;
  /** Where the figures come from. */
  readonly source: string;
  readonly kind?: 'length' | 'share' | 'weight';
  /** Judged by its size alone: these may be negative. */
  readonly signed?: true;
}

export const PRACTICE = 'common practice';
