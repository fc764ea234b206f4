import { LAPPED } from '../../gown/openings.ts';
import type { Trim } from '../../gown/sections.ts';

/** Kept over for horsehair braid's going round a curve and fraying at the ends. Common practice. */
const BRAID_SPARE = 0.05;

/** Length of a strip round an edge, all mm. */
export interface StripLength {
  readonly edge: number;
  readonly overlap: number;
  readonly spare: number;
  readonly length: number;
  /** How much the strip's inner edge is drawn in, by its thread or by steam: flare × width. */
  readonly drawnIn: number | undefined;
}

/**
 * @param edge the edge that the strip follows, sewn
 * @param flare radians along that edge: 0 where it is not a hem
 * @param closed whether the strip meets itself
 */
export function stripLength(
  kind: Trim['kind'],
  edge: number,
  options: { readonly flare: number; readonly width?: number; readonly closed: boolean },
): StripLength {
  const overlap = options.closed ? LAPPED : 0;
  const spare = kind === 'horsehair' ? edge * BRAID_SPARE : 0;
  const drawnIn = options.width === undefined ? undefined : options.flare * options.width;
  return { edge, overlap, spare, length: edge + overlap + spare, drawnIn };
}
