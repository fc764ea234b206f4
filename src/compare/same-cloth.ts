import type { ClothSpec } from '../gown-file/spec.ts';

/**
 * Whether a piece cut from one cloth is still of the cloth that the other names. What a cloth is called, costs or is
 * bought by makes no difference; what it is does.
 */
export function sameCloth(old: ClothSpec | undefined, now: ClothSpec | undefined): boolean {
  if (old === undefined || now === undefined) return old === now;
  return WHAT_IT_IS.every((key) => old[key] === undefined || now[key] === undefined || old[key] === now[key]);
}

/** A fact that only one of the two gives says nothing against the other. */
const WHAT_IT_IS = ['weight', 'weave', 'colour', 'stretch', 'dyeLot'] as const;
