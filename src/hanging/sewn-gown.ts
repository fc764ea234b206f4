import type { GownDraft } from '../draft/draft-gown.ts';
import type { Petticoat } from '../gown/sections.ts';
import type { Station } from '../gown/station.ts';
import type { GirthBelow, TiersUnder } from './figure.ts';
import type { GorePleating } from './gore-folds.ts';
import type { FlounceToHang } from './gown-panels.ts';
import type { GodetToHang } from './placed-panels.ts';
import type { Body, Closing, SewnCloth } from './sewn-cloth.ts';
import type { SpacePoint } from './space-point.ts';

/** What is asked of a drafted gown to hang it. mm. */
export interface GownToHang {
  readonly draft: GownDraft;
  readonly petticoat?: Petticoat;
  readonly waist: number;
  readonly hip?: number;
  /** Of her body, below the waist. */
  readonly girths: readonly GirthBelow[];
  /** Worn under it, one over the other. */
  readonly tiers: readonly (TiersUnder & { readonly bendingLength: number })[];
  /** By station: from the sewn edge to the floor, along the cloth; undefined where nobody knows. */
  readonly floors: readonly (number | undefined)[];
  readonly heel: number;
  readonly bendingLength: number;
  readonly shearLength: number;
  readonly godets: readonly GodetToHang[];
  /** Sewn to the hem. */
  readonly flounce?: FlounceToHang;
  /** By gore: pleated rather than gathered. */
  readonly pleated: readonly boolean[];
  /** By gore: pleats that are hung fold by fold. */
  readonly pleating: readonly (GorePleating | undefined)[];
}

/** A gown sewn together and put on, before it falls. */
export interface GownHung {
  readonly cloth: SewnCloth;
  /** Where each column is sewn on: pleats lie over and under that. */
  readonly edge: readonly SpacePoint[];
  readonly body: Body;
  readonly closing: Closing;
  /** The last of a ring is the first again. */
  readonly stations: readonly HungStation[];
  /** In their order, without the godets between. */
  readonly gores: readonly HungGore[];
  /** Every seam once for each side that it lies on, as columns all the way round. */
  readonly seams: readonly HungSeam[];
  /** Rows along which strips are sewn together. */
  readonly joins: readonly number[];
  readonly waistHeight: number;
  /** Nobody measured how high the waist lies above the floor. */
  readonly assumedFloor: boolean;
}

export interface HungStation extends Pick<Station, 'name' | 'side'> {
  readonly column: number;
}

/** A gore's first column, and the columns of cloth across it. */
export interface HungGore extends Pick<Station, 'name' | 'side'> {
  readonly first: number;
  readonly across: number;
}

export interface HungSeam {
  /** The station that it stands at. */
  readonly station: number;
  readonly column: number;
  /** Below the sewn edge, mm: a godet's second seam begins at its point. */
  readonly from?: number;
  /** The cloth runs on here in one: a station, and no seam. */
  readonly onFold?: boolean;
}
