import type { FlounceSpec, GodetSpec, PleatSpec, StonesSpec, TiersSpec } from '../gown-file/spec.ts';
import type { Layer } from './layer.ts';
import type { Placed } from './placed.ts';
import type { Station } from './station.ts';

/** A strip sewn to a layer. mm. */
export interface Flounce
  extends Omit<FlounceSpec, 'layer' | 'cloth' | 'hem' | 'allowances'>,
    Placed<['flounces', number]> {
  /** What it is sewn to. */
  readonly sewnTo: Layer;
  /** Itself as a layer: its cloth, its hem, its allowances, `top` among them. */
  readonly layer: Layer;
  readonly roughCut: number;
}

/** Tiers of strips, cut as one run. mm. */
export interface Tiers extends Omit<TiersSpec, 'cloth' | 'allowances'>, Placed<['tiers', number]> {
  readonly layer: Layer;
  /** What its yoke is cut as. */
  readonly yokeLayer?: Layer;
}

/** Beads or stones of one kind, scattered over a layer and set by hand. mm. */
export interface Stones extends Omit<StonesSpec, 'layer'>, Placed<['stones', number]> {
  readonly layer: Layer;
}

/** A wedge let into a seam. mm. */
export interface Godet extends Omit<GodetSpec, 'layers'>, Placed<['godets', number]> {
  /** Its seam: one, or that of each side where they differ; `seam` is their name. */
  readonly stations: readonly Station[];
  /** Names of the layers that have it. */
  readonly layers: readonly string[];
  readonly roughCut: number;
}

/** A pleat with its place: its folds run down to the hem, or from a height above it. mm. */
export interface Pleat extends Omit<PleatSpec, 'gore' | 'layers'>, Placed<['pleats', number]> {
  /** Which gore has it, where it does not lie at the seam itself. */
  readonly gore?: string;
  /** Names of the layers that have it. */
  readonly layers: readonly string[];
}
