import type { MeasuredGown, MeasuredLayer } from '../measure/gown.ts';
import { marksOf } from './notches.ts';

/** Marks of an opening, read off ticks that stand square to a seam that may bend, mm. */
const MATCH = 0.6;
const LENGTH = 0.1;

/** A waist of its own is as long as the skirt's and what overlaps; slits and pockets are marked on both edges of their seam. */
export function openingUntruths(gown: MeasuredGown): string[] {
  const { facts, report, layers } = gown;
  const found: string[] = [];
  const { finishing = [] } = report;
  if (facts.band !== undefined) {
    const long = finishing.find(({ part }) => part === 'waistband')?.edges.waist ?? Number.NaN;
    if (!(Math.abs(long - facts.waistSeam - facts.band.overlap) <= LENGTH))
      found.push(`a band of ${long} mm for a waist of ${facts.waistSeam} and ${facts.band.overlap}`);
  }
  for (const { seam, aboveHem, facing } of facts.slits) {
    const own = layers.flatMap((layer) => marked(gown, layer, seam, (long) => long - aboveHem));
    found.push(...own);
    const strips = finishing.filter(({ layer }) => layer.startsWith('slit-facing'));
    const sides = strips.reduce((sum, { copies }) => sum + copies, 0);
    if (facing && sides !== 4) found.push(`${sides} facings for a slit on both sides of her`);
  }
  for (const { seam, belowWaist, opening } of facts.pockets)
    for (const down of [belowWaist, belowWaist + opening])
      found.push(...layers.flatMap((layer) => marked(gown, layer, seam, () => down)));
  return found;
}

/** @param down from the waist seam, where the gown's own seam is so long */
function marked(
  { facts }: MeasuredGown,
  { layer, gores }: MeasuredLayer,
  seam: string,
  down: (long: number) => number,
): string[] {
  const station = facts.stations.findIndex(({ name }) => name === seam);
  const edges = [
    { gore: gores[station - 1], side: 'back' as const },
    { gore: gores[station], side: 'front' as const },
  ];
  return edges.flatMap(({ gore, side }) => {
    if (gore === undefined) return [];
    const wanted = down(gore[side].length + layer.shorter);
    const ways = marksOf(gore, side, seam).map(({ way }) => way);
    return ways.some((way) => Math.abs(way - wanted) <= MATCH)
      ? []
      : [`${layer.name}, ${seam}: nothing marked ${wanted.toFixed(1)} mm down the ${gore.piece.gore}`];
  });
}
