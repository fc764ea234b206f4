import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import { backCorners, frontCorners, type SideCorners } from '../draft/side-corners.ts';
import { goresAt, runsRound, stationsOnce } from '../gown/lines.ts';

/** What the seams of a part come to at worst. */
export interface PartMeasures {
  /** Between a side of it and what that is sewn to, mm. */
  readonly difference: number;
  /** The sum of the two angles at the hem farthest from π, radians. */
  readonly hemAngle: number;
}

/**
 * The sides of a strip or a flounce are sewn to each other; those of a godet to the seam below its point, whose hem
 * runs on through it.
 */
export function measurePart(drafts: LayerDrafts, { of, piece, layer }: Part): PartMeasures {
  const [left, right] = [frontCorners(piece), backCorners(piece)];
  const draft = drafts.layers.find((own) => own.layer.name === layer.name)?.draft;
  if (of.kind !== 'godet' || draft === undefined) return worst([[left, right]], 0);
  const { pieces, gown } = draft;
  const station = stationsOnce(gown).findIndex(
    ({ name, side }) => name === of.godet.seam && (piece.side === undefined || side === piece.side),
  );
  // At a centre of a mirrored gown the gore on the other side is the mirror image.
  const [before, after] = goresAt({ round: gown.round, gores: pieces }, station);
  const isRing = runsRound(gown);
  const ahead = !isRing && station === 0 ? frontCorners(after) : backCorners(before);
  const behind = !isRing && station === pieces.length ? backCorners(before) : frontCorners(after);
  return worst(
    [
      [ahead, left],
      [right, behind],
    ],
    of.godet.from,
  );
}

/** @param above how much farther up the seam goes than the part, mm */
function worst(seams: readonly (readonly [SideCorners, SideCorners])[], above: number): PartMeasures {
  const differences = seams.map(([a, b]) => Math.abs(Math.abs(a.length - b.length) - above));
  const sums = seams.map(([a, b]) => a.lower + b.lower);
  return {
    difference: Math.max(...differences),
    hemAngle: sums.reduce((far, sum) => (Math.abs(sum - Math.PI) > Math.abs(far - Math.PI) ? sum : far)),
  };
}
