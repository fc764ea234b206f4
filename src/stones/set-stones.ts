import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import type { Piece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import type { Stones } from '../gown/parts.ts';
import { type Lying, outlineOf, patchesOfLayer } from './patches-of-layer.ts';
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

/** Every set of a gown. What is set one by one lies first, then the larger ones: the others keep off what lies there already. */
export function stonesOfGown(
  { stones, pleats }: Gown,
  { layers }: LayerDrafts,
): Map<Stones, readonly StonesOfPiece[]> {
  const set = new Map<Stones, readonly StonesOfPiece[]>();
  const rank = ({ perDm2, size = 0 }: Stones) => (perDm2 === undefined ? Number.POSITIVE_INFINITY : size);
  const inOrder = [...stones].sort((a, b) => (rank(a) === rank(b) ? 0 : rank(b) - rank(a)));
  for (const own of inOrder) {
    const layer = layers.find((one) => one.layer.name === own.layer.name);
    if (layer !== undefined) set.set(own, stonesSet(own, layer, pleats, lyingOn(own.layer, set)));
  }
  return set;
}

/** What lies on a layer so far, large enough to lie under another: beads find room between beads. */
function lyingOn(layer: Layer, set: ReadonlyMap<Stones, readonly StonesOfPiece[]>): Lying[] {
  return [...set].flatMap(([{ layer: on, size = 0 }, pieces]) =>
    on.name !== layer.name || size < MOTIF
      ? []
      : pieces.flatMap(({ index, stones }) => stones.map((at) => ({ index, at, size }))),
  );
}

/** From so wide on it is a motif, mm: drawn as its outline, and nothing else is set under it. */
export const MOTIF = 8;

function stonesSet(
  stones: Stones,
  layer: LayerDraft,
  pleats: Gown['pleats'],
  lying: readonly Lying[],
): StonesOfPiece[] {
  const { draft } = layer;
  const times = draft.gown.round === 'mirrored' ? 2 : 1;
  const of = (piece: Piece, index: number) => ({ gore: piece.gore, side: piece.side, index, times });
  if (stones.perDm2 !== undefined) {
    const patches = patchesOfLayer(stones, layer, pleats, lying);
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
