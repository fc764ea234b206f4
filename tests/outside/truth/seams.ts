import { innerAngle } from '../measure/gore.ts';
import type { MeasuredGown, MeasuredLayer } from '../measure/gown.ts';

/** Sewn edges agree within this, mm (design, section 3, "Truth"). */
const SEAM = 0.1;
/** Hem and waist angles at a seam add to half a turn within this, degrees (the same). */
const ANGLE = 0.1;

/** Both sides of each seam are one length, and hem and waist run straight through it. */
export function seamUntruths(gown: MeasuredGown): string[] {
  return gown.layers.flatMap((layer) =>
    gown.facts.stations.flatMap((_, i) => stationUntruths(gown, layer, i)),
  );
}

function stationUntruths(gown: MeasuredGown, { layer, gores }: MeasuredLayer, i: number): string[] {
  const { facts } = gown;
  const station = facts.stations[i]!.name;
  const last = facts.gores.length;
  const ring = facts.closed;
  if (ring && i === last) return [];
  const ahead = i > 0 ? gores[i - 1] : ring ? gores[last - 1] : gores[0];
  const behind = i === last ? gores[last - 1] : gores[i];
  if (ahead === undefined || behind === undefined) return [];
  const aheadSide = i === 0 && !ring ? 'front' : 'back';
  const behindSide = i === last ? 'back' : 'front';
  const found: string[] = [];
  const where = `${layer.name}, ${station}`;
  const [a, b] = [ahead[aheadSide].length, behind[behindSide].length];
  if (!(Math.abs(a - b) <= SEAM)) found.push(`${where}: seam ${a.toFixed(3)} against ${b.toFixed(3)} mm`);
  for (const edge of ['waist', 'hem'] as const) {
    if (mayPoint(gown, station, edge)) continue;
    const sum = innerAngle(ahead, edge, aheadSide) + innerAngle(behind, edge, behindSide);
    if (!(Math.abs(sum - 180) <= ANGLE)) found.push(`${where}: ${edge} angles add to ${sum.toFixed(3)}°`);
  }
  return found;
}

/** A bodice may come to a point at a centre, and a pointed train ends in one. */
function mayPoint({ facts }: MeasuredGown, station: string, edge: 'waist' | 'hem'): boolean {
  if (edge === 'waist') return facts.point === station;
  if (facts.train?.shape !== 'pointed') return false;
  return station === facts.stations[facts.train.full]!.name;
}
