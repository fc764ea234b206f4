import type { Profile } from '../geometry/hermite-profile.ts';

/**
 * The gown as a ring of gores: which edge is sewn to which, and the measures that each is drafted from.
 * Lengths in mm, angles in radians; no coordinates yet.
 */
export interface Gown {
  readonly name: string;
  /** False: the gores are the wearer's left half, mirrored. True: they run all the way round. */
  readonly closed: boolean;
  readonly gores: readonly Gore[];
  /** One more than the gores: `stations[i]` is in front of gore i. On a closed ring the last is the first again. */
  readonly stations: readonly Station[];
  /** Station at which the bodice edge may come to a point. */
  readonly pointedAt?: number;
  /** The edge of another skirt that this one is sewn on, in place of one through its own stations' drops. */
  readonly edge?: SewnEdge;
  readonly lengths: LengthRule;
  readonly train?: Train;
  readonly waistSeam: number;
}

/** How deep a sewn edge lies below the level waist over the way round, and the way at each station; mm. */
export interface SewnEdge extends Profile {
  readonly ways: readonly number[];
}

export interface Station {
  readonly name: string;
  /** Sewn edge of the bodice below the level waist. */
  readonly drop: number;
  /** As the spec gives it, before any train: along the cloth from the sewn edge of the bodice. */
  readonly length?: number;
}

export interface Gore {
  readonly name: string;
  /** The wearer's side, on a closed ring: on the right the ring's next gore lies towards the front. */
  readonly side?: 'left' | 'right';
  /** The side on which the piece lies on the fold; the gore is then one half of what is cut. */
  readonly fold?: 'front' | 'back';
  /** Sewn top edge, of the half on a fold. */
  readonly top: number;
  /** The bodice edge that the top meets, of the half on a fold. */
  readonly panel?: number;
  readonly width: WidthRule;
  readonly fullness?: Fullness;
  /** How the flare lies about the grain: part of it towards the front, 0 … 1, or two angles. */
  readonly grain: { readonly frontPart: number } | { readonly front: number; readonly back: number };
}

/** How wide a gore is below the level waist. */
export type WidthRule =
  | { readonly kind: 'flare'; readonly angle: number }
  | { readonly kind: 'hem'; readonly width: number; readonly at: number }
  | { readonly kind: 'girths'; readonly levels: readonly WidthLevel[]; readonly fading?: Fading };

/** Fullness at the waist that is gone at slant distance `to`, the hem; without it the level waist is `plain` wide. mm. */
export interface Fading {
  readonly plain: number;
  readonly to: number;
}

/** Finished width of a gore (of its half on a fold) at a slant distance below the level waist; down > 0. */
export interface WidthLevel {
  readonly down: number;
  readonly width: number;
}

export type LengthRule =
  | { readonly measured: 'finished' }
  | { readonly measured: 'to-floor'; readonly offFloor: number };

export interface Train {
  /** Station where the hem begins to fall behind. */
  readonly begins: number;
  /** Station where it is longest: the centre back of a mirrored gown. */
  readonly full: number;
  /** Station where it has risen again, on a closed ring. */
  readonly ends?: number;
  readonly onFloor: number;
  readonly shape: 'round' | 'pointed' | 'square';
}

/** Cloth gathered or pleated to the edge that it is sewn to. */
export interface Fullness {
  /** Cloth for one of the edge, ≥ 1. */
  readonly ratio: number;
  /** Down to the hem, or at the waist only, the hem staying as wide as without. */
  readonly where: 'throughout' | 'waist';
}

/** How one layer's seam lines differ from the gown's. */
export interface LayerShape {
  /** Hem higher by this, mm. */
  readonly shorter: number;
  /** Fractions taken off, for cloth that stretches. */
  readonly smallerAcross: number;
  readonly smallerAlong: number;
  readonly fullness?: Fullness;
}
