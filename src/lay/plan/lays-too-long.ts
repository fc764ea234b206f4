import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { areaInside } from '../../geometry/area.ts';
import { layTooLong } from './lay-problems.ts';
import type { ClothToLay, GownToLay } from './lay-to-plan.ts';

/** Length of one cloth, mm, that no gown takes and no table holds: several whole bolts. */
export const LONGEST_LAY = 200_000;

/** Cloths of which more is cut, however well it lay, than any gown takes. */
export function laysTooLong(gown: GownToLay, say: (mm: number) => string): Diagnostic[] {
  return gown.lays.flatMap((lay) => {
    const least = leastLength(gown, lay);
    if (least <= LONGEST_LAY) return [];
    const layers = lay.layers.map(({ name }) => name);
    return [layTooLong(lay.span, { layers, cloth: lay.cloth, least: say(least) })];
  });
}

/** The pieces' area over the width between the selvedges, mm. */
function leastLength({ pieces }: GownToLay, { layers, facts }: ClothToLay): number {
  const area = pieces.reduce((sum, { piece, cutEdges, layers: own }) => {
    // A piece on the fold is drawn as its half.
    const times = piece.cut === 'single' ? (piece.copies ?? 1) : 2;
    const inLayers = layers.filter(({ name }) => own.includes(name)).length;
    return sum + inLayers * times * areaInside(cutEdges.flatMap(({ curves }) => curves));
  }, 0);
  return area / Math.max(1, facts.usable);
}
