import type { Span } from '../diagnostics/diagnostic.ts';
import type { Cloth, Fullness, HemFinish } from './cloth.ts';
import type { Placed } from './placed.ts';

/** One layer of the gown: the gores that it has, cut from one cloth. mm. */
export interface Layer extends Placed<['layers', number]> {
  readonly name: string;
  readonly cloth: Cloth;
  readonly hem: HemFinish;
  readonly shape: LayerShape;
  /** The whole layer gathered or pleated to the waist. */
  readonly fullness?: Fullness;
  readonly allowances: LayerAllowances;
  /** Names of the gores that it has. */
  readonly gores: readonly string[];
  /** Whether the gown's edging goes round its hem, by the edging's name. */
  readonly edging?: string;
  /** Folded away above its hem: its lines are those of the layer with them let out. */
  readonly tucks?: GrowthTucks;
  /** On the bias: 45° on the thread, her two halves mirrored about it. */
  readonly grain?: 'bias';
  readonly seams: 'pressed-open' | 'french';
  /** A stretch of seam left open to turn a bagged hem through, its upper end `from` below the waist seam. */
  readonly gap?: { readonly at: string; readonly length: number; readonly from?: number };
  readonly notes?: string;
  /** Shaped to its hem and turned inside it. */
  readonly facing?: Facing;
}

/** A facing is cut as a layer of its own. mm. */
export interface Facing {
  readonly depth: number;
  readonly layer: Layer;
  readonly place: () => Span;
}

/** Horizontal folds, all mm as sewn. */
export interface GrowthTucks {
  readonly count: number;
  /** From fold to stitching. */
  readonly width: number;
  /** From the hem to the stitching of the lowest, and from there to the next. */
  readonly aboveHem: number;
  readonly apart: number;
}

/** Cloth that a layer's growth tucks take up, along the cloth, mm. */
export function tuckedUp({ tucks }: Pick<Layer, 'tucks'>): number {
  return tucks === undefined ? 0 : 2 * tucks.count * tucks.width;
}

/** By how much a layer's hem hangs higher than the gown's, its tucks sewn, mm. */
export function hangsShorter(layer: Pick<Layer, 'tucks' | 'shape'>): number {
  return layer.shape.shorter + tuckedUp(layer);
}

/** How one layer's seam lines differ from the gown's. */
export interface LayerShape {
  /** Hem higher by this, mm. */
  readonly shorter: number;
  /** Fractions taken off, for cloth that stretches. */
  readonly smallerAcross: number;
  readonly smallerAlong: number;
  readonly fullness?: Pick<Fullness, 'ratio' | 'where'>;
}

/** The layer's own lines are the gown's. */
export const PLAIN: LayerShape = { shorter: 0, smallerAcross: 0, smallerAlong: 0 };

/** Cloth beyond a seam line, mm, and where the file says so. */
export interface Allowance {
  readonly width: number;
  readonly place: Span;
  /** The layer asks for it, and not the gown. */
  readonly ofLayer?: true;
}

/** What a layer has beyond each edge, the layer's own before the gown's. */
export interface LayerAllowances {
  readonly waist: Allowance;
  readonly hem: Allowance;
  readonly seam: Allowance;
  /** By station, where it differs from `seam`. */
  readonly named: Readonly<Record<string, Allowance>>;
}

/** The one rule for what is left beyond an edge: `waist`, `hem`, `fold`, or the station of a seam. mm. */
export function allowanceAt({ allowances }: Pick<Layer, 'allowances'>, edge: string): number {
  return edge === 'fold' ? 0 : allowanceFor(allowances, edge).width;
}

/** The same with its place. */
export function allowanceFor(allowances: LayerAllowances, edge: string): Allowance {
  if (edge === 'waist' || edge === 'hem') return allowances[edge];
  return allowances.named[edge] ?? allowances.seam;
}

export function hasGore({ gores }: Pick<Layer, 'gores'>, gore: { readonly name: string }): boolean {
  return gores.includes(gore.name);
}
