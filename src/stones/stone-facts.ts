import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import type { Stones } from '../gown/parts.ts';
import { countOf, type StonesOfPiece, stonesOfGown } from './set-stones.ts';

/** Pieces in a gross (from memory: twelve dozen). */
export const GROSS = 144;

/** One set of stones, counted. mm and grams. */
export interface StoneFacts {
  readonly stones: Stones;
  readonly pieces: readonly StonesOfPiece[];
  /** In the whole gown. */
  readonly count: number;
  /** Whole ones to buy. */
  readonly gross: number;
  readonly grams: number | undefined;
}

export function stoneFacts(gown: Gown, drafts: LayerDrafts): StoneFacts[] {
  const set = stonesOfGown(gown, drafts);
  return gown.stones.flatMap((own) => {
    const pieces = set.get(own);
    if (pieces === undefined) return [];
    const count = countOf(pieces);
    const { gramsPer1000 } = own;
    return [
      {
        stones: own,
        pieces,
        count,
        gross: Math.ceil(count / GROSS),
        grams: gramsPer1000 === undefined ? undefined : (count * gramsPer1000) / 1000,
      },
    ];
  });
}
