import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { foldNotSeam } from '../diagnostics/station-problems.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { HemKnot, SeamTake } from '../fittings/alterations.ts';
import { overlaps } from '../fittings/fitting-faults.ts';
import { besideWaist, bodiceFittingPastEdge, centreOnOneSide } from '../fittings/fitting-problems.ts';
import { ALL_ROUND, upAt } from '../fittings/pinned-fitting.ts';
import { READ_OFF } from '../fittings/pinned-hem.ts';
import { letOutTooFar, REACHES } from '../fittings/pinned-seam.ts';
import { unsmooth } from '../fittings/unsmooth.ts';
import type { AskedBodice, BodiceFitting } from '../gown/above-waist.ts';
import type { Side } from '../gown/station.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './bodice-measures.ts';
import type { HalfBodice } from './draft-half.ts';

/** What was pinned on one side of her, by all fittings so far. */
export interface HalfTakes {
  /** By station, on each side of its seam; slant distances below the level waist. */
  readonly seams: readonly (readonly SeamTake[])[];
  /** How far the upper edge goes up, a list of knots a fitting. */
  readonly upper: readonly (readonly HemKnot[])[];
}

export const nothingPinned = (stations: number): HalfTakes => ({
  seams: Array.from({ length: stations }, () => []),
  upper: [],
});

/** @param half as the fittings before left it */
export function halfTakes(
  asked: AskedBodice,
  fitting: BodiceFitting,
  side: Side,
  half: HalfBodice,
  before: HalfTakes,
  diagnostics: Diagnostic[],
): HalfTakes {
  const applies = fitting.side === undefined || fitting.side === side;
  const { upperEdge, seams = [] } = fitting;
  const knots = half.stations.map((name, place) => ({ place, up: applies ? upAt(upperEdge, name) : 0 }));
  return {
    upper: upperEdge === undefined ? before.upper : [...before.upper, knots],
    seams: half.stations.map((name, station) => {
      const takes = seams.flatMap((seam, j) => {
        const where = seam.side ?? fitting.side ?? 'both';
        if (seam.seam !== name || (where !== 'both' && where !== side)) return [];
        return seamTake(asked, fitting, j, half, station, diagnostics);
      });
      return [...before.seams[station]!, ...takes];
    }),
  };
}

/** A stretch as it was pinned, its ends counted downwards. */
function seamTake(
  asked: AskedBodice,
  fitting: BodiceFitting,
  j: number,
  half: HalfBodice,
  station: number,
  diagnostics: Diagnostic[],
): SeamTake[] {
  const own = fitting.seams![j]!;
  const { from, to, takeIn, seam } = own;
  const say = (mm: number): string => tapeText(mm, asked.units);
  const sayPlace = (mm: number): string => besideWaist(mm, say);
  const span = fitting.place('seams', j, 'take-in');
  if (isFold(half, station)) {
    diagnostics.push(foldNotSeam(fitting.place('seams', j, 'seam'), seam));
    return [];
  }
  const [top, bottom] = [-depthOf(half.upper, station), -depthOf(half.lower, station)];
  for (const [key, edge, past, at] of [
    ['to', 'upper-edge', to - top, top],
    ['from', 'waist-seam', bottom - from, bottom],
  ] as const) {
    if (past <= READ_OFF) continue;
    const own = sayPlace({ from, to }[key]);
    diagnostics.push(bodiceFittingPastEdge(fitting.place('seams', j, key), seam, own, edge, sayPlace(at)));
    return [];
  }
  const open = { above: to >= top - REACHES, below: from <= bottom + REACHES };
  diagnostics.push(
    ...unsmooth(own, fitting.seams!, {
      reaches: { from: open.below, to: open.above },
      length: to - from,
      words: { from: { beyond: 'below', edge: 'waist-seam' }, to: { beyond: 'above', edge: 'upper-edge' } },
      sayPlace,
      say,
      span,
    }),
    ...letOutTooFar(own, asked.layers, say, span),
  );
  const amounts = typeof takeIn === 'number' ? { amount: takeIn } : { amount: takeIn[1], until: takeIn[0] };
  return [{ from: -Math.min(to, top), to: -Math.max(from, bottom), ...amounts, open }];
}

function depthOf({ ways, valueAt }: HalfBodice['upper'], station: number): number {
  return valueAt(ways[station]!);
}

function isFold({ pieces }: HalfBodice, station: number): boolean {
  return pieces[station]?.frontEdge === 'fold' || pieces[station - 1]?.backEdge === 'fold';
}

/** What cannot be, whatever the draft: a centre moved on one side, one stretch pinned twice. */
export function pinnedFaults(fitting: BodiceFitting): Diagnostic[] {
  const { side, seams = [], upperEdge = {} } = fitting;
  const twice = overlaps(seams, (j) => fitting.place('seams', j, 'from'));
  if (side === undefined) return twice;
  const centres = [CENTRE_FRONT, CENTRE_BACK, ALL_ROUND].filter((name) => upperEdge[name] !== undefined);
  return [
    ...twice,
    ...centres.map((name) =>
      centreOnOneSide(fitting.place('upper-edge', name), name, side, fitting.place('upper-edge')),
    ),
  ];
}
