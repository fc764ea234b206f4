import type { CutPiece } from '../../draft/piece.ts';
import { areaInside } from '../../geometry/area.ts';
import type { Edge } from '../../geometry/edge.ts';
import type { Layer } from '../../gown/layer.ts';
import type { StoneFacts } from '../../stones/stone-facts.ts';
import { type LayerWeight, layerWeight, weightInAll } from './weight.ts';

export interface WeightFacts {
  readonly layers: readonly LayerWeight[];
  /** Set by hand, in grams; undefined where what they weigh was not given. */
  readonly stones: readonly { readonly name: string; readonly grams: number | undefined }[];
  /** Grams; undefined while the weight of any cloth or of any stones is missing. */
  readonly inAll: number | undefined;
}

/**
 * Weight of every layer that has pieces, flounces and strips among them, by the area of all their copies, and of the
 * stones on them.
 */
export function weightFacts(
  allLayers: readonly Layer[],
  cutPieces: readonly CutPiece[],
  set: readonly StoneFacts[],
): WeightFacts {
  const layers = allLayers.map((layer) => {
    const own = cutPieces.filter((piece) => piece.layers.includes(layer.name));
    const area = (edgesOf: (piece: CutPiece) => readonly Edge[]): number =>
      own.reduce((sum, piece) => sum + copiesOf(piece) * areaOf(edgesOf(piece)), 0);
    return layerWeight(
      {
        name: layer.name,
        netArea: area(({ piece }) => piece.edges),
        cutArea: area(({ cutEdges }) => cutEdges),
      },
      layer.cloth,
    );
  });
  const stones = set.map(({ stones: { name }, grams }) => ({ name, grams }));
  let inAll = weightInAll(layers);
  for (const { grams } of stones)
    inAll = inAll === undefined || grams === undefined ? undefined : inAll + grams;
  return { layers, stones, inAll };
}

/** How often an outline's area is in the layer: a piece on the fold is drawn as its half. */
export function copiesOf({ piece }: CutPiece): number {
  return piece.cut === 'single' ? (piece.copies ?? 1) : 2;
}

function areaOf(edges: readonly Edge[]): number {
  return areaInside(edges.flatMap((edge) => edge.curves));
}
