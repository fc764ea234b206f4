import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { APART } from './notches.ts';

type Distances = ReadonlyMap<string, readonly number[]>;

/**
 * Where the seams of a facing are marked: as the seams of what it faces are, as far as it reaches up or down them, so
 * that mark lies on mark when it is laid on; half way where they have none there.
 */
export function facingMarks(
  part: Part,
  layers: readonly LayerDraft[],
  marked: (own: LayerDraft) => Distances,
): Distances {
  const { of, piece, notches } = part;
  if (of.kind !== 'hem-facing' && of.kind !== 'waist-facing') return notches;
  const faces = of.kind === 'hem-facing' ? of.faces : layers[layers.length - 1]!.layer.name;
  const own = layers.find(({ layer }) => layer.name === faces);
  if (own === undefined) return notches;
  const { gown, lengths } = own.draft;
  const distances = marked(own);
  return new Map(
    [...notches].map(([name, halfWay]): [string, readonly number[]] => {
      const station = gown.stations.findIndex((one) => one.name === name);
      const edge = piece.edges.find((one) => one.name === name);
      if (station < 0 || edge === undefined) return [name, halfWay];
      const high = lengthOfRun(edge.curves);
      const above = of.kind === 'hem-facing' ? lengths[station]! - high : 0;
      const there = (distances.get(name) ?? [])
        .map((distance) => distance - above)
        .filter((distance) => distance > APART && distance < high - APART);
      return [name, there.length === 0 ? halfWay : there];
    }),
  );
}
