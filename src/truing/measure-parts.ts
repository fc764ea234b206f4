import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Spec } from '../gown-file/spec.ts';
import { backCorners, type Corners, frontCorners } from './measure-gown.ts';

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
export function measurePart(spec: Spec, drafts: LayerDrafts, { piece, layer }: Part): PartMeasures {
  const [left, right] = [frontCorners(piece), backCorners(piece)];
  const godet = spec.godets?.find(({ name }) => name === piece.gore);
  const draft = drafts.layers.find((own) => own.layer.name === layer.name)?.draft;
  if (godet === undefined || draft === undefined) return worst([[left, right]], 0);
  const { pieces, gown } = draft;
  const names = gown.stations.slice(0, gown.closed ? -1 : undefined).map(({ name }) => name);
  const station = names.findIndex(
    (name, i) => name === godet.seam && (piece.side === undefined || gown.gores[i]?.side === piece.side),
  );
  const last = pieces.length;
  const before = pieces[station - 1] ?? (gown.closed ? pieces[last - 1] : undefined);
  const after = pieces[station];
  // At a centre of a mirrored gown the gore on the other side is the mirror image.
  const ahead = before === undefined ? frontCorners(after!) : backCorners(before);
  const behind = after === undefined ? backCorners(before!) : frontCorners(after);
  return worst(
    [
      [ahead, left],
      [right, behind],
    ],
    godet.from,
  );
}

/** @param above how much farther up the seam goes than the part, mm */
function worst(seams: readonly (readonly [Corners, Corners])[], above: number): PartMeasures {
  const differences = seams.map(([a, b]) => Math.abs(Math.abs(a.length - b.length) - above));
  const sums = seams.map(([a, b]) => a.hem + b.hem);
  return {
    difference: Math.max(...differences),
    hemAngle: sums.reduce((far, sum) => (Math.abs(sum - Math.PI) > Math.abs(far - Math.PI) ? sum : far)),
  };
}
