import type { Allowances, LayerSpec } from './spec.ts';

/** The body and what is drafted over it above the waist, as the spec has them; lengths in mm, angles in radians. */

/** Over what she wears under the gown. */
export interface BodySpec {
  readonly girths: readonly BodyGirthSpec[];
  readonly bustPointsApart?: number;
  /** For the drawings only. */
  readonly height?: number;
  readonly wearer: 'adult' | 'child';
  readonly notes?: string;
}

/** One level, at its height along the body from the waist: `above` or `below` it, neither at the waist itself. */
export interface BodyGirthSpec {
  readonly at: string;
  readonly above?: number;
  readonly below?: number;
  readonly girth: number;
  /** Over the front, side seam to side seam. */
  readonly front?: number;
  /** Over her left half, centre to centre, where her halves differ. */
  readonly left?: number;
  readonly notes?: string;
}

/** A bodice drafted from her measures. */
export interface BodiceDraftSpec {
  readonly panels: readonly BodicePanelSpec[];
  readonly sideSeam?: string;
  /** By level: what she is laced in, all round; negative is ease. */
  readonly reduce: Readonly<Record<string, number>>;
  /** By station, above the waist. */
  readonly upperEdge: Readonly<Record<string, number>>;
  /** Stations where the upper edge may come to a point. */
  readonly upperPoint: readonly string[];
  readonly upperFinish: 'bound' | 'faced' | 'turned';
  readonly closing?: ClosingSpec;
  readonly bones?: BonesSpec;
  readonly layers: readonly BodiceLayerSpec[];
  /** By edge: `seam`, `waist`, `upper-edge`, or a station. */
  readonly allowances: Allowances;
  readonly notes?: string;
}

export interface BodicePanelSpec {
  readonly name: string;
  readonly onFold: boolean;
  /** By level, sewn; of the half where it lies on the fold. */
  readonly widths: Readonly<Record<string, number>>;
  readonly grain?: 'centre' | 'front-edge' | 'back-edge';
  readonly notes?: string;
}

export interface ClosingSpec {
  readonly kind: 'lacing' | 'zip' | 'hooks' | 'busk';
  readonly at: string;
  readonly side?: 'left' | 'right';
  /** Between the laced edges; one for all levels, or by level. */
  readonly gap?: number | Readonly<Record<string, number>>;
  /** Eyelet to eyelet. */
  readonly eyelets: number;
  /** From the laced edge to the middle of an eyelet. */
  readonly fromEdge: number;
  /** One more pair of eyelets at the waist. */
  readonly doubled: boolean;
  /** Width of the panel behind the lacing. */
  readonly modesty?: number;
  /** Lace that hangs free, both ends together. */
  readonly tails: number;
  readonly notes?: string;
}

export interface BonesSpec {
  readonly along: 'seams' | readonly string[];
  readonly also: readonly string[];
  readonly kind: 'spiral-steel' | 'flat-steel' | 'synthetic';
  readonly width: number;
  /** Clear of each sewn edge. */
  readonly clear: number;
  /** Steel is sold in lengths that go up by this. */
  readonly soldBy: number;
  readonly notes?: string;
}

export interface BodiceLayerSpec {
  readonly name: string;
  readonly cloth: string;
  readonly allowances: Allowances;
  /** Only these panels; all when absent. */
  readonly panels?: readonly string[];
  readonly notes?: string;
}

/** A strip from a station of the upper edge in front to one behind, on each side of her. */
export interface StrapSpec {
  readonly name: string;
  readonly cloth: string;
  readonly from: string;
  readonly to: string;
  /** Finished. */
  readonly length: number;
  readonly width: number;
  readonly notes?: string;
}

/** A cape or cape sleeve of one side; the other mirrors it. */
export interface CapeSpec {
  readonly name: string;
  /** Stations of the upper edge between which it is sewn on. */
  readonly from?: string;
  readonly to?: string;
  /** Length of the edge that it is sewn to, where no bodice is drafted. */
  readonly sewnTo?: number;
  /** What hangs free over the arm. */
  readonly overArm: number;
  /** One for all, or by station; `over-arm` names the middle of what hangs free. */
  readonly length: number | Readonly<Record<string, number>>;
  readonly angle?: number;
  readonly fullness?: number;
  readonly onFold: boolean;
  readonly layers: readonly LayerSpec[];
  readonly notes?: string;
}
