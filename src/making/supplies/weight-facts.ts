import type { CutPiece } from '../../draft/piece.ts';
import { areaInside } from '../../geometry/area.ts';
import type { Edge } from '../../geometry/edge.ts';
import type { Layer } from '../../gown/layer.ts';
import { type LayerWeight, layerWeight, weightInAll } from './weight.ts';

export interface WeightFacts {
  readonly layers: readonly LayerWeight[];
  /** Grams; undefined while any cloth's weight is missing. */
  readonly inAll: number | undefined;
}

/** Weight of every layer that has pieces, flounces and strips among them, by the area of all their copies. */
export function weightFacts(allLayers: readonly Layer[], cutPieces: readonly CutPiece[]): WeightFacts {
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
  return { layers, inAll: weightInAll(layers) };
}

/** How often an outline's area is in the layer: a piece on the fold is drawn as its half. */
export function copiesOf({ piece }: CutPiece): number {
  return piece.cut === 'single' ? (piece.copies ?? 1) : 2;
}

function areaOf(edges: readonly Edge[]): number {
  return areaInside(edges.flatMap((edge) => edge.curves));
}
