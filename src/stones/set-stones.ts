import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Piece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import type { Stones } from '../gown/parts.ts';
import { outlineOf, patchesOfLayer } from './patches-of-layer.ts';
import { placedStones } from './placed-stones.ts';
import { scattered } from './scatter.ts';

/** Stones of one piece as it is drafted: the wearer's left, or half of one on the fold. mm. */
export interface StonesOfPiece {
  readonly gore: string;
  readonly side: Piece['side'];
  /** Which of the draft's pieces. */
  readonly index: number;
  /** Outline as points, closed, and where each stone is set. */
  readonly outline: readonly Point[];
  readonly stones: readonly Point[];
  /** How often the drafted piece is there, in the whole gown. */
  readonly times: number;
  /** Of its stones those that lie on a fold: there once. */
  readonly once: number;
}

/** Sets them one by one, or scatters them over the pieces of their layer; the same gown gives the same stones. */
export function stonesSet(stones: Stones, layer: LayerDraft): StonesOfPiece[] {
  const { draft } = layer;
  const times = draft.gown.round === 'mirrored' ? 2 : 1;
  const of = (piece: Piece, index: number) => ({ gore: piece.gore, side: piece.side, index, times });
  if (stones.perDm2 !== undefined) {
    const patches = patchesOfLayer(stones, layer);
    const apart = stones.apart === undefined ? 0 : stones.apart + (stones.size ?? 0);
    const set = scattered(patches, SEED, apart);
    return patches.map(({ piece, index, outline }, i) => ({
      ...of(piece, index),
      outline,
      stones: set[i]!,
      once: 0,
    }));
  }
  const placed = placedStones(stones, layer);
  return draft.pieces.flatMap((piece, index) => {
    if (!layer.layer.gores.includes(piece.gore)) return [];
    const own = placed.filter((stone) => stone.index === index);
    const once = own.filter((stone) => stone.once).length;
    return [{ ...of(piece, index), outline: outlineOf(piece), stones: own.map(({ at }) => at), once }];
  });
}

/** Any other would do as well. */
const SEED = 1;

/** In the whole gown. */
export function countOf(pieces: readonly StonesOfPiece[]): number {
  return pieces.reduce((sum, { stones, times, once }) => sum + times * (stones.length - once) + once, 0);
}
