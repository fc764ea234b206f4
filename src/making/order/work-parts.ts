import type { Trim } from '../../gown/sections.ts';

/** What several steps speak of. mm. */
export interface StepStrip {
  readonly kind: Trim['kind'];
  readonly layer: string;
  readonly along: string;
  readonly width: number | undefined;
  readonly length: number;
  readonly drawnIn: number | undefined;
}

/** A stretch of seam left open to turn through; `from` below the waist seam where the spec says. */
export interface GapMark {
  readonly layer: string;
  readonly at: string;
  readonly length: number;
  readonly from: number | undefined;
}
