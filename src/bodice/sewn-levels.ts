import type { BodiceFault, HalfPart } from './bodice-fault.ts';
import { type BodiceMeasures, type BodyGirth, bodiceStations, type LacingGap } from './bodice-measures.ts';

/** One level of one half, as it is sewn: reduced, and less what the lacing leaves open. */
export interface SewnLevel {
  readonly at: string;
  readonly above: number;
  /** The whole half. */
  readonly half: number;
  /** Of that, in front of the side seam, where the body's front is known. */
  readonly front?: number;
}

/**
 * Half of each level = (girth − reduction)/2 less the lacing's part. The reduction is taken from front and back alike,
 * in proportion; a gap from the part that it lies in.
 * @param side of her; the halves differ only where one side alone is laced
 */
export function sewnLevels(
  measures: BodiceMeasures,
  side: 'left' | 'right',
): { readonly levels: readonly SewnLevel[]; readonly faults: readonly BodiceFault[] } {
  const faults: BodiceFault[] = [];
  const levels = measures.girths.map((level, i): SewnLevel => {
    const by = measures.reduce[level.at] ?? 0;
    const kept = (level.girth - by) / level.girth;
    if (!(kept > 0)) {
      faults.push({
        code: 'reduced-to-nothing',
        place: ['bodice', 'draft', 'reduce', level.at],
        level: level.at,
        body: level.girth,
        by,
      });
    }
    const open = openOf(measures, level, side);
    const own = ownHalf(level, side);
    const half = own * kept - open.front - open.back;
    const front =
      level.front === undefined ? undefined : level.front * (own / level.girth) * kept - open.front;
    const tight = (part: HalfPart, left: number): void => {
      if (kept > 0 && !(left > 0))
        faults.push({ code: 'gap-takes-all', place: ['body', 'girths', i], level: level.at, part, left });
    };
    if (front === undefined) tight('half', half);
    else {
      tight('front-part', front);
      tight('back-part', half - front);
    }
    return { at: level.at, above: level.above, half, ...(front === undefined ? {} : { front }) };
  });
  return { levels, faults };
}

/** Over one half of the body, mm. */
function ownHalf({ girth, left }: BodyGirth, side: 'left' | 'right'): number {
  const lefts = left ?? girth / 2;
  return side === 'left' ? lefts : girth - lefts;
}

/** What this half leaves open at a level, in its front and its back part. */
function openOf(
  { lacings, panels, sideSeam }: BodiceMeasures,
  level: BodyGirth,
  side: 'left' | 'right',
): { readonly front: number; readonly back: number } {
  const stations = bodiceStations(panels);
  const last = stations.length - 1;
  const parts = sideSeam === undefined ? last : stations.indexOf(sideSeam);
  let front = 0;
  let back = 0;
  for (const lacing of lacings) {
    const station = stations.indexOf(lacing.at);
    const gap = gapAt(lacing, level.at);
    // A gap at a centre is shared by the halves; one at another seam is this half's alone.
    if (station === 0) front += gap / 2;
    else if (station === last) back += gap / 2;
    else if (lacing.side !== undefined && lacing.side !== side) continue;
    else if (station < parts) front += gap;
    else if (station > parts) back += gap;
    else {
      front += gap / 2;
      back += gap / 2;
    }
  }
  return { front, back };
}

export function gapAt({ gap }: Pick<LacingGap, 'gap'>, level: string): number {
  return typeof gap === 'number' ? gap : (gap[level] ?? 0);
}

/** All that is laced open at a level, round the whole body. */
export function gapRound({ lacings, panels }: BodiceMeasures, level: string): number {
  const stations = bodiceStations(panels);
  return lacings.reduce((sum, lacing) => {
    const isCentre = stations.indexOf(lacing.at) === 0 || stations.indexOf(lacing.at) === stations.length - 1;
    return sum + gapAt(lacing, level) * (isCentre || lacing.side !== undefined ? 1 : 2);
  }, 0);
}
