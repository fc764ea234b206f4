import type { Span } from '../diagnostics/diagnostic.ts';
import type {
  BodiceSpec,
  BustleSpec,
  ClosureSpec,
  ClothSpec,
  DatesSpec,
  EdgingSpec,
  FittingSpec,
  FullnessSpec,
  LabourSpec,
  LengthsSpec,
  NotionSpec,
  PaperSpec,
  PetticoatSpec,
  SewnAsOneSpec,
  TrimSpec,
} from '../gown-file/spec.ts';
import type { Layer } from './layer.ts';
import type { Station } from './station.ts';

export type { Units } from '../diagnostics/units.ts';
export type { HemFinish, Money } from '../gown-file/spec.ts';

/** Where a value of a section stands in the file, by the keys below the section; the section itself without keys. */
export type PlaceIn = (...path: readonly (string | number)[]) => Span;

/** What a finding may point at. */
export interface Placed {
  readonly place: PlaceIn;
}

/** Cloth gathered or pleated to the edge that it is sewn to. */
export type Fullness = FullnessSpec;

export interface Cloth extends ClothSpec, Placed {
  readonly name: string;
}

/** What the papers say of the bodice; its sewn edge is in the stations and the gores. */
export interface Bodice extends Pick<BodiceSpec, 'bonesEnd' | 'secondRow' | 'plies' | 'notes'>, Placed {}

/** How the lengths were taken. */
export interface Measuring
  extends Pick<LengthsSpec, 'measured' | 'offFloor' | 'hemWidthAt' | 'measuredIn' | 'wornIn' | 'notes'>,
    Placed {}

export interface Petticoat extends PetticoatSpec, Placed {}

export interface SewnAsOne extends SewnAsOneSpec, Placed {}

export interface Closure extends Omit<ClosureSpec, 'at'>, Placed {
  /** Its seam, on its side where there are two. `side` is known wherever her two sides have one each. */
  readonly station: Station;
}

export interface Edging extends Omit<EdgingSpec, 'start' | 'cloth'>, Placed {
  /** Where its join lies. */
  readonly start: Station;
  /** The file does not say; it is taken from the closure or the centre back. */
  readonly startAssumed: boolean;
  /** Whose own edges are cut off, or that it is cut from. */
  readonly cloth?: Cloth;
}

export interface Trim extends Omit<TrimSpec, 'layer'>, Placed {
  readonly layer: Layer;
  /** Along a seam: the seams of that name. */
  readonly stations: readonly Station[];
}

export interface Bustle extends Omit<BustleSpec, 'points'>, Placed {
  readonly points: readonly BustlePointAsked[];
}

/** A point on one station; where her sides differ each has a point of its own. */
export interface BustlePointAsked extends Placed {
  readonly station: Station;
  readonly anchor: number;
}

export interface Fitting extends FittingSpec, Placed {}
export interface Labour extends LabourSpec, Placed {}
export interface Notion extends NotionSpec, Placed {}
export interface Dates extends DatesSpec, Placed {}
export interface Paper extends PaperSpec, Placed {}
/** ISO 4217 code. */
export type Currency = string;
