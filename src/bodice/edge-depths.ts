import type { BodiceFault } from './bodice-fault.ts';
import type { BodiceMeasures } from './bodice-measures.ts';
import type { Reach } from './panel-frames.ts';

export interface EdgeDepths {
  readonly upper: readonly (number | undefined)[];
  readonly lower: readonly number[];
}

/** Slant distances below the level waist, by station; the lower edge lies at the waist where nothing is said. */
export function edgeDepths(
  { upperEdge, lowerEdge }: BodiceMeasures,
  stations: readonly string[],
): EdgeDepths {
  return {
    upper: stations.map((name) => {
      const above = upperEdge.above[name];
      return above === undefined ? undefined : -above;
    }),
    lower: stations.map((name) => 0 - (lowerEdge.above[name] ?? 0)),
  };
}

export function reachOf({ upper, lower }: EdgeDepths): Reach {
  const highest = Math.min(...upper.map((depth) => depth ?? Number.POSITIVE_INFINITY));
  return { top: -highest, bottom: -Math.max(...lower) };
}

/** Below the lowest girth nothing says how wide she is; a body widens there. */
export function beyondGirths(
  girths: BodiceMeasures['girths'],
  stations: readonly string[],
  { lower }: EdgeDepths,
): BodiceFault[] {
  const lowest = girths.reduce((low, level) => (level.above < low.above ? level : low));
  return stations.flatMap((station, i): BodiceFault[] => {
    if (lower[i]! <= -lowest.above + WITHIN_GIRTHS) return [];
    return [
      {
        code: 'no-girth-so-low',
        place: ['bodice', 'drop-below-waist', station],
        station,
        below: lower[i]!,
        lowest: lowest.at,
        at: -lowest.above,
      },
    ];
  });
}

/** An edge may run this far below the lowest girth, mm: rounding of inches, not cloth. */
const WITHIN_GIRTHS = 0.5;
