import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { integrateAlong } from '../draft/edge-profiles.ts';
import { runsRound } from '../gown/lines.ts';
import type { HemKnot } from './alterations.ts';
import * as problems from './fitting-problems.ts';
import { ALL_ROUND, draftedStations, type PinnedFitting, upAt } from './pinned-fitting.ts';

/** Pins at the hem stand this far apart, mm (textbook): an altered stretch runs out over as much. */
const PIN_SPACING = 75;
/** Two pins nearer than this stand at one place, mm. */
const ONE_PLACE = 5;
/** Heights that a pin may be read off by, mm. */
const ONE_HEIGHT = 1;

/** The hem as it was pinned: at stations, and every few centimetres as it was levelled. */
export function hemKnots(pinned: PinnedFitting, draft: GownDraft, diagnostics: Diagnostic[]): HemKnot[] {
  const { fitting } = pinned;
  const { hem = {}, levelled = [] } = fitting;
  if (Object.keys(hem).length === 0 && levelled.length === 0) return [];
  const count = draft.gown.gores.length;
  const atStation = (i: number): HemKnot => ({ place: i, up: upAt(hem, draft.gown.stations[i]!.name) });
  const named = draft.gown.stations.flatMap(({ name }, i) =>
    levelled.length === 0 || hem[name] !== undefined ? [atStation(i)] : [],
  );
  const pins = levelled.flatMap(({ from, along, up }, j) => {
    const station = draftedStations(draft).indexOf(from);
    const way = wayAlong(draft, station, along);
    if (way === undefined) {
      diagnostics.push(pastEnd(pinned, draft, station, j));
      return [];
    }
    const pin = { place: placeAt(draft, way), up, way };
    diagnostics.push(...disagreement(pinned, draft, named, pin, j));
    return [pin];
  });
  const runOut = levelled.length === 0 ? [] : runningOut(draft, pins, hem[ALL_ROUND] ?? 0);
  const first = pins.map(({ place, up }) => ({ place, up }));
  const knots = runsRound(draft.gown) ? named.filter(({ place }) => place < count) : named;
  return [...first, ...knots, ...runOut];
}

/** The side of her on which the hem was not pinned: it stays, and at the centres runs into what was pinned beyond. */
export function hemAtRest({ fitting }: PinnedFitting, draft: GownDraft): HemKnot[] {
  const { hem = {}, levelled = [] } = fitting;
  if (Object.keys(hem).length === 0 && levelled.length === 0) return [];
  const { ways } = draft.hem;
  const [first, last] = [PIN_SPACING, ways[ways.length - 1]! - PIN_SPACING];
  return [first, ...ways.filter((way) => way > first && way < last), last].map((way) => ({
    place: placeAt(draft, way),
    up: 0,
  }));
}

/** Beyond its first and last pin a levelled stretch runs out to what the rest of the hem does. */
function runningOut(draft: GownDraft, pins: readonly { readonly way: number }[], rest: number): HemKnot[] {
  const { ways } = draft.hem;
  const end = ways[ways.length - 1]!;
  const all = pins.map(({ way }) => way);
  const [before, after] = [Math.min(...all) - PIN_SPACING, Math.max(...all) + PIN_SPACING];
  const inside = [...(before > 0 ? [before] : []), ...(after < end ? [after] : [])];
  return [
    ...inside.map((way) => ({ place: placeAt(draft, way), up: rest })),
    ...(before > PIN_SPACING ? [{ place: 0, up: rest }] : []),
    ...(after < end - PIN_SPACING ? [{ place: draft.gown.gores.length, up: rest }] : []),
  ];
}

function disagreement(
  { gown, fitting }: PinnedFitting,
  draft: GownDraft,
  named: readonly HemKnot[],
  pin: HemKnot & { readonly way: number },
  j: number,
): Diagnostic[] {
  const { ways } = draft.hem;
  const other = named.find(
    ({ place, up }) => Math.abs(ways[place]! - pin.way) < ONE_PLACE && Math.abs(up - pin.up) > ONE_HEIGHT,
  );
  if (other === undefined) return [];
  const name = draft.gown.stations[other.place]!.name;
  return [
    problems.fittingDisagrees(
      fitting.place('levelled', j, 'up'),
      `at ${name}`,
      lengthInUnits(pin.up, gown.units),
      lengthInUnits(other.up, gown.units),
      fitting.place('hem', name),
    ),
  ];
}

function pastEnd({ gown, fitting }: PinnedFitting, draft: GownDraft, station: number, j: number): Diagnostic {
  const { from, along } = fitting.levelled![j]!;
  const { ways } = draft.hem;
  const length = hemBetween(draft, ways[station]!, ways[ways.length - 1]!);
  return problems.levelledPastEnd(
    fitting.place('levelled', j, 'along'),
    from,
    lengthInUnits(along, gown.units),
    lengthInUnits(length, gown.units),
    gown.place('lengths', 'at'),
  );
}

function hemBetween({ hem }: GownDraft, from: number, to: number): number {
  return integrateAlong(hem, (way) => Math.hypot(1, hem.slopeAt(way)), from, to);
}

/** A pin at the very end may be read off so much too far, mm. */
export const READ_OFF = 10;

/** Way round at a distance along the hem from a station towards the back; past the end undefined, or round a ring. */
function wayAlong(draft: GownDraft, station: number, along: number): number | undefined {
  const { ways } = draft.hem;
  const end = ways[ways.length - 1]!;
  const left = hemBetween(draft, ways[station]!, end);
  if (along > left) {
    if (runsRound(draft.gown)) return wayAlong(draft, 0, along - left);
    return along > left + READ_OFF ? undefined : end;
  }
  let [low, high] = [ways[station]!, end];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (hemBetween(draft, ways[station]!, middle) < along) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A place so near to a station is the station, mm: two knots there would leave a crumb of hem between them. */
const AT_STATION = 0.01;

function placeAt({ hem: { ways } }: GownDraft, way: number): number {
  const station = ways.findIndex((at) => Math.abs(at - way) < AT_STATION);
  if (station >= 0) return station;
  const gore = ways.slice(1, -1).filter((start) => start <= way).length;
  return gore + (way - ways[gore]!) / (ways[gore + 1]! - ways[gore]!);
}
