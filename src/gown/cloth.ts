import type { ClothSpec, FullnessSpec } from '../gown-file/spec.ts';
import type { Placed } from './placed.ts';

export type { HemFinish } from '../gown-file/spec.ts';

/** Cloth gathered, pleated or darted to the edge that it is sewn to. */
export interface Fullness extends Omit<FullnessSpec, 'by'> {
  readonly by: FullnessSpec['by'] | 'darts';
  readonly darts?: readonly Dart[];
}

/** One dart at the waist. mm. */
export interface Dart {
  readonly name: string;
  /** Along the gore's sewn top from its front edge, 0 … 1. */
  readonly at: number;
  /** By which it shortens the waist seam. */
  readonly takesIn: number;
  readonly length: number;
  /** Which way it is folded. */
  readonly towards: 'front' | 'back';
}

export interface Cloth extends ClothSpec, Placed<['cloths', string]> {
  readonly name: string;
}
