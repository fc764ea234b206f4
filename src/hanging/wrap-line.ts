import type { LayerDraft } from '../draft/draft-layers.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Gown } from '../gown/gown.ts';
import type { GownHung } from './sewn-gown.ts';

/** A line down the hung cloth from a column at the waist to another at the hem, with parts of columns. */
export interface SlantedLine {
  readonly top: number;
  readonly foot: number;
  /** The station where it is seen in place of a seam: nothing is sewn there. */
  readonly station: number;
}

/**
 * Where the upper edge of a wrap shows. The skirt hangs shut, so the edge is a line on the gore that it covers: as far past
 * the middle of the wrap as half of the overlap, of that gore’s top and of its hem.
 */
export function wrapLine(
  { wrap }: Pick<Gown, 'wrap'>,
  { draft }: LayerDraft,
  sewn: Pick<GownHung, 'stations' | 'gores'>,
): SlantedLine | undefined {
  const at = sewn.stations.findIndex(({ name }) => name === wrap?.at);
  const column = sewn.stations[at]?.column;
  if (wrap === undefined || column === undefined) return undefined;
  const mirrored = draft.gown.round === 'mirrored';
  const drawn = sewn.gores[sewn.gores.length - 1]!;
  const half = drawn.first + drawn.across;
  const all = mirrored ? 2 * half : half;
  // In front her left lies where columns grow; behind her it is the other way round.
  const isInFront = column < all / 4 || column > (3 * all) / 4;
  const grows = (wrap.over === 'right') === isInFront;
  const covered = mirrored
    ? Math.min(at, draft.pieces.length - 1)
    : (at + (grows ? 0 : -1) + draft.pieces.length) % draft.pieces.length;
  const gore = sewn.gores[covered];
  const piece = draft.pieces[covered];
  if (gore === undefined || piece === undefined) return undefined;
  const [top, hem] = [0, 2].map((edge) => lengthOfRun(piece.edges[edge]!.curves)) as [number, number];
  const shares = [wrap.overlap / 2 / top, wrap.overlapAtHem / 2 / hem];
  const [a, b] = shares.map((share) => (column + (grows ? 1 : -1) * share * gore.across + all) % all);
  return { top: a!, foot: b!, station: at };
}
