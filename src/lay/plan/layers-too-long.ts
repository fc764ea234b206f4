import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { areaInside } from '../../geometry/area.ts';
import { layTooLong } from './lay-problems.ts';
import type { GownToLay, LayerOnCloth } from './layer-to-lay.ts';

/** Length of one layer's cloth, mm, that no gown takes and no table holds: several whole bolts. */
export const LONGEST_LAY = 200_000;

/** Layers whose pieces, however well they lay, take more cloth than any gown does. */
export function layersTooLong(gown: GownToLay, say: (mm: number) => string): Diagnostic[] {
  return gown.layers.flatMap((layer) => {
    const least = leastLength(gown, layer);
    if (least <= LONGEST_LAY) return [];
    return [layTooLong(layer.span, { layer: layer.layer, cloth: layer.cloth, least: say(least) })];
  });
}

/** The pieces' area over the width between the selvedges, mm. */
function leastLength({ pieces }: GownToLay, { layer, facts }: LayerOnCloth): number {
  const area = pieces
    .filter(({ layers }) => layers.includes(layer))
    .reduce((sum, { piece, cutEdges }) => {
      // A piece on the fold is drawn as its half.
      const times = piece.cut === 'single' ? (piece.copies ?? 1) : 2;
      return sum + times * areaInside(cutEdges.flatMap(({ curves }) => curves));
    }, 0);
  return area / Math.max(1, facts.usable);
}
