import type { FlounceToHang } from './gown-panels.ts';
import type { Body, SewnCloth } from './sewn-cloth.ts';

/** What is sewn to the skirt or the bodice and hangs over it: plain numbers. */
export type PartToHang = FlounceOver | ClothOver;

/** A flounce above the hem: where it is sewn on shows when the skirt hangs. */
export interface FlounceOver extends FlounceToHang {
  readonly is: 'flounce';
  readonly name: string;
  /** Above the sewn hem, along the cloth, mm. */
  readonly aboveHem: number;
  readonly bendingLength: number;
  readonly shearLength: number;
}

/** Cloth whose upper edge is held: an overskirt, a cape. */
export interface ClothOver {
  readonly is: 'cloth';
  readonly name: string;
  readonly cloth: SewnCloth;
  /** What it hangs over; the skirt as it hangs where that is not said. */
  readonly over?: Body;
  /** Her other side has its image. */
  readonly image: boolean;
  /** Columns at which its panels are sewn together. */
  readonly seams: readonly number[];
}
