import type { Spec } from '../gown-file/spec.ts';
import type { Layer, LayerShape } from './layer.ts';
import type { Flounce, Godet, Overskirt, Tiers } from './parts.ts';
import type {
  Bodice,
  Bustle,
  Closure,
  Cloth,
  Currency,
  Dates,
  Edging,
  Fitting,
  Fullness,
  Labour,
  Measuring,
  Notion,
  Paper,
  Petticoat,
  Placed,
  PlaceIn,
  SewnAsOne,
  Trim,
  Units,
} from './sections.ts';
import type { Station } from './station.ts';

export type { Cloth, Fullness, Layer, LayerShape, Placed, PlaceIn, Station, Units };

/**
 * How the gores stand for the whole skirt.
 *
 * - `mirrored`: they are the wearer's left half, from the centre front round to the centre back.
 * - `ring`: they run all the way round, by the wearer's left; every station has a name of its own.
 * - `two-halves`: a mirrored gown whose sides came to differ: the left half to the centre back and the right half back
 *   again. Stations off the centres come in twos of one name, told apart by their side.
 */
export type Round = 'mirrored' | 'ring' | 'two-halves';

export type Side = 'left' | 'right';

/**
 * The gown's lines: the measures that its gores are drafted from, and which edge is sewn to which. Lengths in mm, angles
 * in radians; no coordinates yet.
 */
export interface GownLines {
  readonly name: string;
  readonly round: Round;
  readonly gores: readonly Gore[];
  /** One more than the gores: `stations[i]` is in front of gore i. All the way round the last is the first again. */
  readonly stations: readonly Station[];
  /** Station at which the bodice edge may come to a point. */
  readonly pointedAt?: number;
  readonly lengths: LengthRule;
  readonly train?: Train;
  readonly waistSeam: number;
}

/** The whole gown as the file has it, with nothing left to look up. */
export interface Gown extends GownLines, Placed {
  readonly format: number;
  /** Names what the file says; printed on every piece and sheet. */
  readonly content: string;
  readonly client?: string;
  readonly units: Units;
  readonly notes?: string;
  readonly bodice: Bodice;
  readonly measuring: Measuring;
  /** From the inside out. */
  readonly layers: readonly Layer[];
  readonly cloths: readonly Cloth[];
  readonly flounces: readonly Flounce[];
  readonly tiers: readonly Tiers[];
  readonly godets: readonly Godet[];
  readonly overskirts: readonly Overskirt[];
  readonly fittings: readonly Fitting[];
  readonly petticoat?: Petticoat;
  readonly sewnAsOne?: SewnAsOne;
  readonly closure?: Closure;
  readonly edging?: Edging;
  readonly trims: readonly Trim[];
  readonly bustle?: Bustle;
  readonly labour?: Labour;
  readonly notions: readonly Notion[];
  readonly currency?: Currency;
  readonly dates?: Dates;
  readonly paper?: Paper;
  /** By layer: the hash printed on the pieces that it was cut from. */
  readonly cut: Readonly<Record<string, string>>;
  /** The file's form, until every room has moved onto this one. */
  readonly spec: Spec;
}

export interface Gore extends Placed {
  readonly name: string;
  /** The wearer's side, all the way round: on the right the next gore lies towards the front. */
  readonly side?: Side;
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
  /** Extra below the hem, cut off after hanging. */
  readonly roughCut: number;
  readonly notes?: string;
}

/** How wide a gore is below the level waist. */
export type WidthRule =
  | { readonly kind: 'flare'; readonly angle: number }
  | { readonly kind: 'hem'; readonly width: number; readonly at: number }
  | { readonly kind: 'girths'; readonly levels: readonly WidthLevel[] };

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
  /** Station where it is longest: the centre back of a gown whose sides are alike. */
  readonly full: number;
  /** Station where it has risen again, all the way round. */
  readonly ends?: number;
  readonly onFloor: number;
  readonly shape: 'round' | 'pointed' | 'square';
}
