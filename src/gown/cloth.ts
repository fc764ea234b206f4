import type { ClothSpec, FullnessSpec } from '../gown-file/spec.ts';
import type { Placed } from './placed.ts';

export type { HemFinish, Money } from '../gown-file/spec.ts';

/** Cloth gathered or pleated to the edge that it is sewn to. */
export type Fullness = FullnessSpec;

export interface Cloth extends ClothSpec, Placed<['cloths', string]> {
  readonly name: string;
}
