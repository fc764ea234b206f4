import type { Cape, Strap } from '../gown/above-waist.ts';
import type { Flounce, Godet, Tiers } from '../gown/parts.ts';

/** What a part is, with what of the gown it stands for. mm. */
export type PartKind =
  | PlainKind
  | { readonly kind: 'flounce'; readonly flounce: Flounce; readonly open: boolean }
  | { readonly kind: 'tiers'; readonly tiers: Tiers; readonly run: TierRun; readonly runs: number }
  | { readonly kind: 'godet'; readonly godet: Godet }
  | { readonly kind: 'panel' }
  | { readonly kind: 'strap'; readonly strap: Strap }
  | { readonly kind: 'cape'; readonly cape: Cape; readonly inner: number };

/** Kinds that say by themselves what is done with the piece. */
export type PlainKind =
  | { readonly kind: 'modesty-panel' }
  | { readonly kind: 'hem-facing'; readonly faces: string; readonly depth: number }
  | { readonly kind: 'upper-facing'; readonly depth: number }
  | { readonly kind: 'waist-facing'; readonly depth: number }
  | { readonly kind: 'yoke'; readonly of: string; readonly round: number }
  | { readonly kind: 'edge-facing'; readonly edge: string; readonly depth: number }
  | { readonly kind: 'ties'; readonly length: number; readonly width: number }
  | { readonly kind: 'placket'; readonly width: number; readonly opening: number }
  | { readonly kind: 'guard'; readonly width: number }
  | { readonly kind: 'opening-facing'; readonly at: string }
  | { readonly kind: 'slit-facing' | 'slit-stay'; readonly seam: string }
  | { readonly kind: 'pocket'; readonly seam: string; readonly opening: number }
  | { readonly kind: 'loops'; readonly count: number; readonly length: number; readonly width: number }
  | { readonly kind: 'binding'; readonly strip: BiasStrip; readonly edge: string }
  | {
      readonly kind: 'waistband';
      readonly width: number;
      readonly sewn: number;
      readonly overlap: number;
      readonly shaped: boolean;
      /** Where the skirt's seams meet it, from its end. */
      readonly places: readonly { readonly name: string; readonly at: number }[];
    };

/** A strip cut on the bias from a block of cloth. mm. */
export interface BiasStrip {
  readonly width: number;
  readonly length: number;
  /** Where strips across the block are joined end to end. */
  readonly joins: number;
  /** Of the block, mm²: length times width. */
  readonly area: number;
}

/** One run of strips: all tiers of one depth, cut together and not tier by tier. */
export interface TierRun {
  readonly name: string;
  readonly depth: number;
  /** Length of the run, all its tiers end to end, mm. */
  readonly length: number;
  readonly strips: number;
  /** Tiers that the run is cut into, from the top, mm. */
  readonly tiers: readonly number[];
}
