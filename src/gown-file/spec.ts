import type { Span } from '../diagnostics/diagnostic.ts';
import type { Units } from '../diagnostics/units.ts';

/**
 * A gown spec as read: every length in mm, every angle in radians, every share a fraction of 1.
 * Keys are the spec's own in camelCase; names of gores, stations, layers and cloths stay as written.
 */
export interface Spec {
  readonly format: 1;
  readonly gown: string;
  readonly client?: string;
  readonly units: Units;
  readonly notes?: string;
  /** `mirrored`: the gores are one half. `none`: they run all the way round, by the wearer's left. */
  readonly symmetry: 'mirrored' | 'none';
  readonly bodice: BodiceSpec;
  readonly gores: readonly GoreSpec[];
  /** Full hem all round at `lengths.hemWidthAt`, shared out as the tops are. */
  readonly sweep?: number;
  readonly lengths: LengthsSpec;
  readonly train?: TrainSpec;
  /** By edge: `seam`, `waist`, `hem`, or a station. */
  readonly allowances: Allowances;
  /** By gore: extra below the hem, cut off after hanging. */
  readonly roughCut: Readonly<Record<string, number>>;
  readonly layers: readonly LayerSpec[];
  readonly sewnAsOne?: SewnAsOneSpec;
  readonly cloths: Readonly<Record<string, ClothSpec>>;
  readonly petticoat?: PetticoatSpec;
  readonly flounces?: readonly FlounceSpec[];
  readonly tiers?: readonly TiersSpec[];
  readonly godets?: readonly GodetSpec[];
  readonly overskirts?: readonly OverskirtSpec[];
  readonly closure?: ClosureSpec;
  readonly edging?: EdgingSpec;
  readonly trims?: readonly TrimSpec[];
  readonly bustle?: BustleSpec;
  readonly fittings?: readonly FittingSpec[];
  readonly labour?: LabourSpec;
  readonly notions?: readonly NotionSpec[];
  /** ISO 4217 code. */
  readonly currency?: string;
  readonly dates?: DatesSpec;
  readonly paper?: PaperSpec;
  /** By layer: the hash printed on the pieces that it was cut from. */
  readonly cut?: Readonly<Record<string, string>>;
  /** Where each value stands, keyed by its path: `gores.1.top`, `lengths.at.centre-front`. See `placeOf`. */
  readonly places: ReadonlyMap<string, Span>;
}

export type { Units };
export type Allowances = Readonly<Record<string, number>>;

export interface BodiceSpec {
  readonly waistSeam: number;
  readonly panels: Readonly<Record<string, number>>;
  readonly bonesEnd?: number;
  /** How far a second row of stitching at the waist seam lies above the first, mm. */
  readonly secondRow?: number;
  /** Thicknesses of the bodice that the waist seam goes through, its own seams apart. */
  readonly plies?: number;
  readonly dropBelowWaist: Readonly<Record<string, number>>;
  readonly point?: 'centre-front' | 'centre-back';
  readonly notes?: string;
}

export interface GoreSpec {
  readonly name: string;
  readonly onFold: boolean;
  /** Sewn top edge; on a gore on the fold `halfTop` instead. */
  readonly top?: number;
  readonly halfTop?: number;
  /** Width along the arc at `lengths.hemWidthAt`. */
  readonly hem?: number;
  readonly halfHem?: number;
  /** Angle of the sector, or the two angles towards the front and the back of the grain. */
  readonly flare?: number | readonly [number, number];
  readonly halfFlare?: number;
  readonly grain: 'centre' | 'front-edge' | 'back-edge';
  /** Share of the petticoat's girths, in place of the share by top. */
  readonly share?: number | readonly number[];
  readonly fullness?: FullnessSpec;
  readonly notes?: string;
}

/** Cloth gathered or pleated to a shorter edge. `fullness: 2.5` alone is gathered, and as full down to the hem. */
export interface FullnessSpec {
  /** Cloth for one of the edge, at least 1. */
  readonly ratio: number;
  readonly where: 'throughout' | 'waist';
  readonly by: 'gathers' | 'pleats';
  /** Of one pleat, fold to fold, mm; with pleats only. */
  readonly depth?: number;
  /** Which way the pleats lie. */
  readonly towards?: 'front' | 'back' | 'box';
}

/** A strip sewn to a layer: straight and gathered, or cut in the round. */
export interface FlounceSpec {
  readonly name: string;
  readonly layer: string;
  readonly cloth: string;
  readonly kind: 'straight' | 'circular';
  /** Finished, mm. */
  readonly depth: number;
  /** Straight: cloth for one of the edge. Circular: outer edge for one of the inner. */
  readonly fullness: number;
  /** Above the layer's sewn hem, along the cloth, mm; 0 sews it to the hem itself. */
  readonly aboveHem: number;
  /** Pieces all round; straight ones are cut from the cloth's width where absent. */
  readonly pieces?: number;
  readonly hem: HemFinish;
  readonly allowances: Allowances;
  readonly notes?: string;
}

/** Tiers of strips, each gathered to the one above, the first to the yoke; cut as one run. */
export interface TiersSpec {
  readonly name: string;
  readonly cloth: string;
  /** Edge that the first tier is gathered to, all round, mm. */
  readonly yoke: number;
  /** Length of each tier all round, from the top, mm. */
  readonly tiers: readonly number[];
  /** Finished depth of each tier, mm; one for all or one each. */
  readonly depths: readonly number[];
  readonly allowances: Allowances;
  readonly notes?: string;
}

/** A wedge let into a seam, from a point on it down to the hem. */
export interface GodetSpec {
  readonly name: string;
  readonly seam: string;
  /** Where its point lies: from the waist seam down the seam, mm. */
  readonly from: number;
  /** Along the arc, at the hem, mm. */
  readonly width: number;
  /** Layers that have it; all when absent. */
  readonly layers?: readonly string[];
  readonly notes?: string;
}

/** A detachable train or an overskirt: gores of its own on part of the waist, its end edges finished. */
export interface OverskirtSpec {
  readonly name: string;
  /** Stations of the gown between which it is fastened, on the half; `to` is the centre back when absent. */
  readonly from: string;
  readonly to?: string;
  readonly gores: readonly GoreSpec[];
  readonly sweep?: number;
  readonly lengths: LengthsSpec;
  readonly train?: TrainSpec;
  readonly layers: readonly LayerSpec[];
  readonly fastened: 'hooks' | 'buttons' | 'snaps' | 'ties';
  /** How its end edges are finished. */
  readonly edges: 'bound' | 'faced' | 'turned';
  readonly quickRelease: boolean;
  readonly notes?: string;
}

export interface LengthsSpec {
  readonly measured: 'finished' | 'cut' | 'to-floor';
  readonly offFloor?: number;
  readonly hemWidthAt?: number;
  readonly at: Readonly<Record<string, number>>;
  /** Sewn edge of the bodice to the floor, by station, where `at` holds other lengths: what a bustle lifts from. */
  readonly toFloor?: Readonly<Record<string, number>>;
  /** What she had on when these were measured, where it differs from what the gown is made for. */
  readonly measuredIn?: MeasuredInSpec;
  /** What she will wear. */
  readonly wornIn?: { readonly heel: number; readonly notes?: string };
  readonly notes?: string;
}

/** What is absent was as the spec has it now. */
export interface MeasuredInSpec {
  /** Height of the heel, mm. */
  readonly heel?: number;
  /** How far the edge that was measured from lay below the level waist, by station; 0 where not named. */
  readonly dropBelowWaist?: Readonly<Record<string, number>>;
  readonly petticoat?: PetticoatSpec | 'none';
  readonly notes?: string;
}

export interface TrainSpec {
  readonly onFloor?: number;
  readonly begins: string;
  /** Station where the train is longest and where it has risen again, on a gown whose two sides differ. */
  readonly full?: string;
  readonly ends?: string;
  readonly shape: 'round' | 'pointed' | 'square';
  readonly notes?: string;
}

export type HemFinish = 'turned' | 'faced' | 'bagged' | 'rolled' | 'raw';

export interface LayerSpec {
  readonly name: string;
  readonly cloth: string;
  readonly hem: HemFinish;
  readonly shorter: number;
  readonly cutSmallerAcross: number;
  readonly cutSmallerAlong: number;
  readonly allowances: Allowances;
  /** Only these gores; all when absent. */
  readonly gores?: readonly string[];
  readonly edging?: string;
  /** The whole layer gathered or pleated to the waist. */
  readonly fullness?: FullnessSpec;
  /** How the layer's seams are sewn; pressed open when absent. */
  readonly seams?: 'pressed-open' | 'french';
  /** A stretch of seam left open to turn a bagged hem through, its upper end `from` below the waist seam, mm. */
  readonly gap?: { readonly at: string; readonly length: number; readonly from?: number };
  readonly notes?: string;
}

export interface SewnAsOneSpec {
  readonly waist?: readonly (readonly string[])[];
  readonly closure?: readonly string[];
  readonly notes?: string;
}

/** Money is kept as the decimal text written in the spec, never as a binary float. */
export type Money = string;

export interface ClothSpec {
  readonly width: number;
  /** One selvedge's width; both sides are taken off. */
  readonly selvedge: number;
  readonly oneWay: boolean;
  readonly fold: 'any' | 'single' | 'lengthwise' | 'crosswise';
  /** g/m². */
  readonly weight?: number;
  readonly shrinkage: number;
  readonly price?: Money;
  /** Length of the step that the shop sells by, mm, and what one price is for, mm (1000 or 914.4). */
  readonly soldBy?: number;
  readonly pricedPer: number;
  readonly minimum?: number;
  readonly endLoss: number;
  readonly safety: number;
  readonly repeatDown?: number;
  readonly repeatAcross?: number;
  readonly used?: number;
  /** `satin`, `crepe`, `net` …: decides how much surplus a hem takes. */
  readonly weave?: string;
  readonly stretch?: boolean;
  /** Stitch length that the scrap test settled on, mm. */
  readonly stitch?: number;
  readonly supplier?: string;
  readonly colour?: string;
  readonly dyeLot?: string;
  readonly notes?: string;
}

export interface PetticoatSpec {
  readonly measured: 'along' | 'vertical';
  readonly ease: number;
  readonly girths: readonly { readonly down: number; readonly girth: number }[];
  readonly hoop?: number;
  readonly hoopOffFloor?: number;
  readonly notes?: string;
}

export interface ClosureSpec {
  readonly kind: 'zip' | 'lacing' | 'hooks';
  readonly at: string;
  /** Below the waist seam, mm. */
  readonly starts: number;
  readonly opening?: number;
  readonly hip?: number;
  readonly shoulders?: number;
  readonly entry?: 'steps-in' | 'over-the-head';
  readonly side?: 'left' | 'right';
  /** What the bodice does above this opening: sewn shut, a finished edge, or laced. */
  readonly beside?: 'sewn' | 'finished' | 'laced';
  /** What finishes the skirt's edges there. */
  readonly finish?: 'placket' | 'facing' | 'hook';
  readonly notes?: string;
}

export interface EdgingSpec {
  readonly name: string;
  readonly depth?: number;
  readonly repeat?: number;
  readonly from: 'bought-in' | 'own-edges';
  readonly cloth?: string;
  readonly start?: string;
  /** For `pricedPer` mm of it. */
  readonly price?: Money;
  readonly pricedPer?: number;
  readonly braid?: number;
  /** From the low points of its scallops to the high points, mm. */
  readonly scallop?: number;
  readonly soldBy?: number;
  readonly notes?: string;
}

/** A strip sewn along an edge of one layer: horsehair braid, binding, stay tape. */
export interface TrimSpec {
  readonly kind: 'horsehair' | 'binding' | 'stay-tape';
  readonly layer: string;
  /** `hem`, `waist`, or a station. */
  readonly along: string;
  readonly width?: number;
  /** For `pricedPer` mm of it. */
  readonly price?: Money;
  readonly soldBy?: number;
  readonly pricedPer?: number;
  readonly supplier?: string;
  readonly colour?: string;
  readonly dyeLot?: string;
  readonly notes?: string;
}

export interface BustleSpec {
  readonly kind: 'over' | 'under';
  readonly points?: readonly { readonly seam: string; readonly anchor: number }[];
  readonly clearance: number;
  /** How far a loop hangs below its pick-up, mm. */
  readonly loop?: number;
  /** A heavy train: seven to nine points are advised in place of three to five. */
  readonly heavy?: boolean;
  readonly notes?: string;
}

/** What was pinned at one fitting; applied in order, each on what the one before left. */
export interface FittingSpec {
  readonly date: string;
  readonly layer?: string;
  /** Pinned on this side of her only. */
  readonly side?: 'left' | 'right';
  /** How far the edge goes up, by station, mm; negative is down. `all-round` for every station that is not named. */
  readonly hem?: Readonly<Record<string, number>>;
  readonly waist?: Readonly<Record<string, number>>;
  readonly seams?: readonly {
    readonly seam: string;
    /** Below the waist seam, along the seam. */
    readonly from: number;
    readonly to: number;
    /** On each side of the seam; negative lets out. */
    readonly takeIn: number;
    readonly side?: 'left' | 'right' | 'both';
  }[];
  /** Pins at the hem: how far along it from a station towards the back, and how far up. */
  readonly levelled?: readonly { readonly from: string; readonly along: number; readonly up: number }[];
  readonly notes?: string;
}

export interface LabourSpec {
  readonly rate?: Money;
  readonly hours?: string;
  readonly tasks?: Readonly<Record<string, string>>;
  /** Hours per metre sewn, for work whose hours are not given as a task. */
  readonly perMetre?: Readonly<Partial<Record<'seams' | 'waist' | 'hems' | 'edging', string>>>;
  readonly overhead: number;
  readonly margin: number;
  readonly tax: number;
  readonly rounding?: Money;
  readonly deposit: number;
  readonly stages?: Readonly<Record<string, number>>;
  readonly fittingsIncluded?: number;
  readonly expires?: string;
  readonly actual?: { readonly hours?: string; readonly spent?: Money };
  /** What the client has paid so far. */
  readonly paid?: Money;
  readonly notes?: string;
}

export interface NotionSpec {
  readonly name: string;
  readonly count?: number;
  readonly length?: number;
  /** For one of `count`, or for `pricedPer` mm of `length`. */
  readonly price?: Money;
  readonly pricedPer?: number;
  readonly supplier?: string;
  readonly colour?: string;
  readonly dyeLot?: string;
  readonly notes?: string;
}

export interface DatesSpec {
  readonly event?: string;
  /** Days before the event, by milestone, in place of the usual ones. */
  readonly before?: Readonly<Record<string, number>>;
  readonly notes?: string;
}

export interface PaperSpec {
  readonly size?: string;
  readonly measured?: { readonly across: number; readonly down: number };
  /** What the printer leaves white at each edge, mm. */
  readonly margin: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly lap: number;
  readonly notes?: string;
}

/** The place of a value, or of the nearest section around it that has one. */
export function placeOf(spec: Spec, ...path: (string | number)[]): Span {
  for (let length = path.length; length >= 0; length--) {
    const place = spec.places.get(path.slice(0, length).join('.'));
    if (place !== undefined) return place;
  }
  throw new Error('a spec has at least a place of its own');
}
