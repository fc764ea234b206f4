import type {
  BodiceSpec,
  BustleSpec,
  ClosureSpec,
  DatesSpec,
  EdgingSpec,
  FittingSpec,
  LabourSpec,
  LengthsSpec,
  NotionSpec,
  PaperSpec,
  PetticoatSpec,
  SewnAsOneSpec,
  TrimSpec,
} from '../gown-file/spec.ts';
import type { Cloth } from './cloth.ts';
import type { Layer } from './layer.ts';
import type { Placed } from './placed.ts';
import type { Station } from './station.ts';

export { USUAL_OFF_FLOOR } from '../gown-file/shape/usual.ts';

/** What the papers say of the bodice; its sewn edge is in the stations and the gores. */
export interface Bodice
  extends Pick<BodiceSpec, 'bonesEnd' | 'secondRow' | 'plies' | 'notes'>,
    Placed<['bodice']> {
  /** It has panels below which the gores lie, and their seams meet. */
  readonly panelled: boolean;
}

/** How the lengths were taken. */
export interface Measuring
  extends Pick<LengthsSpec, 'measured' | 'offFloor' | 'hemWidthAt' | 'measuredIn' | 'wornIn' | 'notes'>,
    Placed<['lengths']> {}

export interface Petticoat extends PetticoatSpec, Placed<['petticoat']> {}

export interface SewnAsOne extends SewnAsOneSpec, Placed<['sewn-as-one']> {}

export interface Closure extends Omit<ClosureSpec, 'at' | 'cloth' | 'width'>, Placed<['closure']> {
  /** What its placket, guard or facing is cut as, and how wide that is sewn, mm. */
  readonly piece?: { readonly layer: Layer; readonly width: number };
  /** Its seam, on its side where there are two. `side` is known wherever her two sides have one each. */
  readonly station: Station;
}

export interface Edging extends Omit<EdgingSpec, 'start' | 'cloth'>, Placed<['edging']> {
  /** Where its join lies. */
  readonly start: Station;
  /** The file does not say; it is taken from the closure or the centre back. */
  readonly startAssumed: boolean;
  /** Whose own edges are cut off, or that it is cut from. */
  readonly cloth?: Cloth;
}

export interface Trim extends Omit<TrimSpec, 'layer' | 'cloth'>, Placed<['trims', number]> {
  /** What a binding is cut as, on the bias, where it is not bought. */
  readonly bias?: Layer;
  readonly layer: Layer;
  /** Along a seam: the seams of that name. */
  readonly stations: readonly Station[];
}

export interface Bustle extends Omit<BustleSpec, 'points'>, Placed<['bustle']> {
  readonly points: readonly BustlePointAsked[];
}

/** A point on one station, where her sides differ each with a point of its own; or on every gore of a name. */
export interface BustlePointAsked extends Placed<['bustle', 'points', number]> {
  readonly at: Station | OnGore;
  readonly anchor: number;
}

/** A line down a gore. */
export interface OnGore {
  readonly gore: string;
  /** Share of the gore's width, or of its half's, from its front edge to its back edge at every level, 0 … 1. */
  readonly across: number;
}

export interface Fitting extends FittingSpec, Placed<['fittings', number]> {}
export interface Labour extends LabourSpec, Placed<['labour']> {}
export interface Notion extends NotionSpec, Placed<['notions', number]> {}
export interface Dates extends DatesSpec, Placed<['dates']> {}
export interface Paper extends PaperSpec, Placed<['paper']> {}
/** ISO 4217 code. */
export type Currency = string;
