import type { Gore } from '../measure/gore.ts';
import type { MeasuredGown, MeasuredLayer } from '../measure/gown.ts';
import { type CurvePath, distanceTo, samplesOf } from '../measure/path.ts';
import { distance, dot, minus } from '../measure/segment.ts';

/** Marks that a pair of hands can still bring together, mm. */
const MATCH = 0.1;
/** Notches of different seams stand at least this far apart where they could be confused, mm (textbook). */
const APART = 13;
/** Ends of a tick against the cut line, mm. */
const ON_LINE = 0.05;

interface Mark {
  readonly way: number;
  readonly ticks: number;
}

/** Notches meet on both sides of a seam, tell seams apart and stay in the allowance. */
export function notchUntruths(gown: MeasuredGown): string[] {
  return gown.layers.flatMap((layer) => [
    ...pairUntruths(gown, layer),
    ...confusions(gown, layer),
    ...tickUntruths(gown, layer),
  ]);
}

function pairUntruths({ facts }: MeasuredGown, { layer, gores }: MeasuredLayer): string[] {
  const found: string[] = [];
  const last = facts.gores.length;
  for (let i = facts.closed ? 0 : 1; i < last; i++) {
    const before = (i + last - 1) % last;
    const [ahead, behind] = [gores[before], gores[i]];
    if (ahead === undefined || behind === undefined) continue;
    const station = facts.stations[i]!.name;
    const [a, b] = [marksOf(ahead, 'back', station), marksOf(behind, 'front', station)];
    const where = `${layer.name}, ${station}`;
    if (a.length === 0) found.push(`${where}: no notch`);
    if (a.length !== b.length) found.push(`${where}: ${a.length} notches against ${b.length}`);
    for (const [k, mark] of a.entries()) {
      const partner = b[k];
      if (partner !== undefined && Math.abs(mark.way - partner.way) > MATCH) {
        found.push(`${where}: a notch at ${mark.way.toFixed(3)} against ${partner.way.toFixed(3)} mm`);
      }
    }
    if (ahead.back.length < 100) continue;
    // Double towards the back: on the wearer's right that is the edge that the ring comes to first.
    const [onAhead, onBehind] = [facts.gores[before]!.onRight ? 1 : 2, facts.gores[i]!.onRight ? 2 : 1];
    if (a.some((mark) => mark.ticks !== onAhead))
      found.push(`${where}: not all ${onAhead} ticks on ${ahead.piece.gore}`);
    if (b.some((mark) => mark.ticks !== onBehind))
      found.push(`${where}: not all ${onBehind} ticks on ${behind.piece.gore}`);
  }
  return found;
}

/** Two seams whose notches all come together when they are laid side by side. */
function confusions({ facts }: MeasuredGown, { layer, gores }: MeasuredLayer): string[] {
  const seams = facts.stations.slice(1, facts.closed ? undefined : -1).flatMap(({ name }, k) => {
    const gore = gores[k];
    return gore === undefined ? [] : [{ name, marks: marksOf(gore, 'back', name) }];
  });
  const found: string[] = [];
  for (const [i, a] of seams.entries()) {
    for (const b of seams.slice(i + 1)) {
      if (a.marks.length !== b.marks.length) continue;
      const apart = Math.max(...a.marks.map((mark, k) => Math.abs(mark.way - b.marks[k]!.way)));
      if (apart < APART - MATCH)
        found.push(
          `${layer.name}: ${a.name} can be taken for ${b.name}: notches ${apart.toFixed(1)} mm apart`,
        );
    }
  }
  return found;
}

function tickUntruths({ facts }: MeasuredGown, { layer, gores }: MeasuredLayer): string[] {
  return gores.flatMap((gore) => {
    if (gore === undefined) return [];
    const { cut, notches, gore: name } = gore.piece;
    return notches.flatMap(({ edge, ticks }) =>
      ticks.flatMap((tick) => {
        const off = Math.min(distanceTo(cut, tick.from), distanceTo(cut, tick.to));
        const width =
          edge === 'hem'
            ? layer.allowance('hem') + (facts.gores.find((g) => g.name === name)?.roughCut ?? 0)
            : layer.allowance(edge);
        const found: string[] = [];
        if (off > ON_LINE)
          found.push(
            `${layer.name}, ${name}: a notch at ${edge} begins ${off.toFixed(3)} mm off the cut line`,
          );
        if (tick.length > width + ON_LINE)
          found.push(
            `${layer.name}, ${name}: a notch at ${edge} of ${tick.length.toFixed(2)} mm crosses its allowance of ${width}`,
          );
        return found;
      }),
    );
  });
}

/** Notches of one edge from the waist seam down, each at the mean of its ticks. */
export function marksOf(gore: Gore, side: 'front' | 'back', edge: string): Mark[] {
  return gore.piece.notches
    .filter((notch) => notch.edge === edge)
    .map(({ ticks }) => ({
      way: ticks.reduce((sum, tick) => sum + wayAlong(gore[side], tick), 0) / ticks.length,
      ticks: ticks.length,
    }))
    .sort((a, b) => a.way - b.way);
}

/** Where a tick, drawn on, meets the seam line: its nearest point there. */
function wayAlong(seam: CurvePath, tick: CurvePath): number {
  if (distance(tick.from, tick.to) === 0) throw new Error('a notch of no length');
  const samples = samplesOf(seam, 2);
  const ways = [tick.from, tick.to].map((end) => {
    const best = samples.reduce((a, b) => (distance(a.point, end) < distance(b.point, end) ? a : b));
    return best.distance + dot(minus(end, best.point), best.direction);
  });
  return (ways[0]! + ways[1]!) / 2;
}
