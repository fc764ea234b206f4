import type { Placed } from './placed.ts';

export type Side = 'left' | 'right';

/**
 * A place on the waist where one gore ends and the next begins: a seam, or a fold of the cloth at a centre. mm.
 * Its name and its side together are its identity: see `isSame`.
 */
export interface Station extends Placed<['lengths', 'at', string]> {
  readonly name: string;
  /** Where each half of her has a station of this name. */
  readonly side?: Side;
  /** Seams of the whole skirt that it stands for: 2 off the centres of a mirrored gown, 0 on a fold. */
  readonly seams: 0 | 1 | 2;
  /** An end of an overskirt: finished by itself and sewn to nothing. */
  readonly free?: true;
  /** Sewn edge of the bodice below the level waist. */
  readonly drop: number;
  /** What the hem is drawn through, before any train: along the cloth from the sewn edge of the bodice. */
  readonly length?: number;
  /** Length as the file gives it; and the same over the petticoat and in the shoes that she will wear. */
  readonly given?: number;
  readonly asWorn?: number;
  /** Sewn edge of the bodice to the floor as measured, worn in the same way. */
  readonly toFloor?: number;
  /** Between where the train begins and where it ends. */
  readonly inTrain: boolean;
  /** What lies on the floor here, where the file says it: at the longest station of the train. */
  readonly onFloor?: number;
}

export function isSame(a: Pick<Station, 'name' | 'side'>, b: Pick<Station, 'name' | 'side'>): boolean {
  return a.name === b.name && a.side === b.side;
}
