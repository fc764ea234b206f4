import type { GoreFold } from './gore-folds.ts';
import { FINEST } from './gown-panels.ts';

/** A column of pleated cloth; lengths in mm. */
export interface PleatColumn {
  /** Where its line lies: part of the way across the gore, and how far beyond that all the way down. */
  readonly share: number;
  readonly beside: number;
  /** What is let in on its line, and how far into it the column lies. */
  readonly into: number;
  readonly fold?: GoreFold;
  /** First row in which its fold is there. */
  readonly from: number;
  /** Along the top as it is sewn, of the gore's line; and from there to where it lies folded. */
  readonly along: number;
  readonly aside: number;
  readonly ply: number;
  /** It is pressed here; and one sees the fold. */
  readonly isFold: boolean;
  readonly isOuter: boolean;
  /** The cloth from here to the next column is the skirt's own and not a fold's. */
  readonly shows: boolean;
}

/** Even numbers of columns, so that every fold is there in a mesh twice as coarse. */
export function columnsFor(width: number): number {
  return 2 * Math.max(1, Math.round(width / FINEST / 2));
}

/** Cloth narrower than this at the top is none, mm. */
export const NONE = 1;
/** What lies over both plies of a fold. */
export const ON_TOP = 2;
