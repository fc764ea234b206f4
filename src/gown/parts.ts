import type { FlounceSpec, GodetSpec, OverskirtSpec, TiersSpec } from '../gown-file/spec.ts';
import type { Gown } from './gown.ts';
import type { Layer } from './layer.ts';
import type { Placed } from './sections.ts';
import type { Station } from './station.ts';

/** A strip sewn to a layer. mm. */
export interface Flounce extends Omit<FlounceSpec, 'layer' | 'cloth' | 'hem' | 'allowances'>, Placed {
  /** What it is sewn to. */
  readonly sewnTo: Layer;
  /** Itself as a layer: its cloth, its hem, its allowances, `top` among them. */
  readonly layer: Layer;
  readonly roughCut: number;
}

/** Tiers of strips, cut as one run. mm. */
export interface Tiers extends Omit<TiersSpec, 'cloth' | 'allowances'>, Placed {
  readonly layer: Layer;
}

/** A wedge let into a seam. mm. */
export interface Godet extends Omit<GodetSpec, 'layers'>, Placed {
  /** Its seam: one, or that of each side where they differ; `seam` is their name. */
  readonly stations: readonly Station[];
  /** Names of the layers that have it. */
  readonly layers: readonly string[];
  readonly roughCut: number;
}

/** A detachable train or an overskirt. */
export interface Overskirt
  extends Pick<OverskirtSpec, 'name' | 'fastened' | 'edges' | 'quickRelease' | 'notes'>,
    Placed {
  /** Itself, as a gown: its stations have its own names, its ends are free edges. */
  readonly gown: Gown;
  /** Stations of the gown between which it is fastened, on the half. */
  readonly from: string;
  readonly to?: string;
}
