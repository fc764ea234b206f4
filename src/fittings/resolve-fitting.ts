import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { integrateAlong } from '../draft/edge-profiles.ts';
import { lengthText } from '../spec/length-in-units.ts';
import { type FittingSpec, placeOf, type Spec } from '../spec/spec.ts';
import type { Alterations, HemKnot, SeamTake, SideAlterations } from './alterations.ts';
import * as problems from './fitting-problems.ts';

type Side = 'left' | 'right';

/** One fitting of a spec, and the drafts of both sides as the fittings before it left them. */
export interface PinnedFitting {
  readonly spec: Spec;
  readonly index: number;
  readonly drafts: Readonly<Record<Side, GownDraft>>;
}

/** What one fitting alters on either side, on top of what was altered before. */
export function resolveFitting(
  pinned: PinnedFitting,
  before: Alterations,
): { readonly alterations: Alterations; readonly diagnostics: readonly Diagnostic[] } {
  const { spec, index, drafts } = pinned;
  const fitting = spec.fittings![index]!;
  const diagnostics: Diagnostic[] = [...sideFaults(pinned), ...overlapFaults(pinned)];
  const sideOf = (side: Side): SideAlterations => {
    const own = resolveSide(pinned, side, before[side]);
    diagnostics.push(
      ...own.diagnostics.filter((found) => !diagnostics.some((other) => isSame(found, other))),
    );
    return own.alterations;
  };
  const left = sideOf('left');
  const alike = before.left === before.right && drafts.left === drafts.right && isForBoth(fitting);
  return { alterations: { left, right: alike ? left : sideOf('right') }, diagnostics };
}

function isSame(a: Diagnostic, b: Diagnostic): boolean {
  return a.code === b.code && a.span.start === b.span.start;
}

/** Whether nothing of a fitting was pinned on one side only. */
export function isForBoth({ side, seams = [] }: FittingSpec): boolean {
  return side === undefined && seams.every((seam) => (seam.side ?? 'both') === 'both');
}

function resolveSide(
  pinned: PinnedFitting,
  side: Side,
  before: SideAlterations,
): { alterations: SideAlterations; diagnostics: Diagnostic[] } {
  const { spec, index, drafts } = pinned;
  const fitting = spec.fittings![index]!;
  const draft = drafts[side];
  const diagnostics: Diagnostic[] = [];
  const applies = fitting.side === undefined || fitting.side === side;
  const knots = applies ? hemKnots(pinned, draft, diagnostics) : hemAtRest(pinned, draft);
  const stations = stationsOf(draft);
  const waist = stations.map((name, i) => before.waist[i]! + (applies ? upAt(fitting.waist, name) : 0));
  const seams = stations.map((name, i) => {
    const takes = (fitting.seams ?? []).flatMap((seam, j) => {
      const where = seam.side ?? fitting.side ?? 'both';
      if (seam.seam !== name || (where !== 'both' && where !== side)) return [];
      return seamTake(pinned, draft, i, j, diagnostics);
    });
    return takes.length === 0 ? before.seams[i]! : [...before.seams[i]!, ...takes];
  });
  // A ring's last station is its first again.
  if (draft.gown.closed) {
    waist[waist.length - 1] = waist[0]!;
    seams[seams.length - 1] = seams[0]!;
  }
  return { alterations: { hems: [...before.hems, knots], waist, seams }, diagnostics };
}

function stationsOf(draft: GownDraft): string[] {
  return draft.gown.stations.map(({ name }) => name);
}

/** Word for a whole edge, in place of its stations one by one. */
export const ALL_ROUND = 'all-round';

function upAt(edge: Readonly<Record<string, number>> | undefined, station: string): number {
  return edge?.[station] ?? edge?.[ALL_ROUND] ?? 0;
}

/** Pins at the hem stand this far apart, mm (textbook): an altered stretch runs out over as much. */
const PIN_SPACING = 75;
/** Two pins nearer than this stand at one place, mm. */
const ONE_PLACE = 5;
/** Heights that a pin may be read off by, mm. */
const ONE_HEIGHT = 1;

function hemKnots(pinned: PinnedFitting, draft: GownDraft, diagnostics: Diagnostic[]): HemKnot[] {
  const { spec, index } = pinned;
  const { hem = {}, levelled = [] } = spec.fittings![index]!;
  if (Object.keys(hem).length === 0 && levelled.length === 0) return [];
  const count = draft.gown.gores.length;
  const atStation = (i: number): HemKnot => ({ place: i, up: upAt(hem, draft.gown.stations[i]!.name) });
  const named = draft.gown.stations.flatMap(({ name }, i) =>
    levelled.length === 0 || hem[name] !== undefined ? [atStation(i)] : [],
  );
  const pins = levelled.flatMap(({ from, along, up }, j) => {
    const station = stationsOf(draft).indexOf(from);
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
  const knots = draft.gown.closed ? named.filter(({ place }) => place < count) : named;
  return [...first, ...knots, ...runOut];
}

/** The side of her on which the hem was not pinned: it stays, and at the centres runs into what was pinned beyond. */
function hemAtRest({ spec, index }: PinnedFitting, draft: GownDraft): HemKnot[] {
  const { hem = {}, levelled = [] } = spec.fittings![index]!;
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
  { spec, index }: PinnedFitting,
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
      placeOf(spec, 'fittings', index, 'levelled', j, 'up'),
      `at ${name}`,
      lengthText(pin.up, spec.units),
      lengthText(other.up, spec.units),
      placeOf(spec, 'fittings', index, 'hem', name),
    ),
  ];
}

function pastEnd({ spec, index }: PinnedFitting, draft: GownDraft, station: number, j: number): Diagnostic {
  const { from, along } = spec.fittings![index]!.levelled![j]!;
  const { ways } = draft.hem;
  const length = hemBetween(draft, ways[station]!, ways[ways.length - 1]!);
  return problems.levelledPastEnd(
    placeOf(spec, 'fittings', index, 'levelled', j, 'along'),
    from,
    lengthText(along, spec.units),
    lengthText(length, spec.units),
    placeOf(spec, 'lengths', 'at'),
  );
}

function hemBetween({ hem }: GownDraft, from: number, to: number): number {
  return integrateAlong(hem, (way) => Math.hypot(1, hem.slopeAt(way)), from, to);
}

/** A pin at the very end may be read off so much too far, mm. */
const READ_OFF = 10;

/** Way round at a distance along the hem from a station towards the back; past the end undefined, or round a ring. */
function wayAlong(draft: GownDraft, station: number, along: number): number | undefined {
  const { ways } = draft.hem;
  const end = ways[ways.length - 1]!;
  const left = hemBetween(draft, ways[station]!, end);
  if (along > left) {
    if (draft.gown.closed) return wayAlong(draft, 0, along - left);
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

/** Nearer to the waist or the hem than this a stretch reaches it, mm. */
const REACHES = 3;

function seamTake(
  { spec, index }: PinnedFitting,
  draft: GownDraft,
  station: number,
  j: number,
  diagnostics: Diagnostic[],
): SeamTake[] {
  const { seam, from, to, takeIn } = spec.fittings![index]!.seams![j]!;
  const length = draft.lengths[station]!;
  const say = (mm: number): string => lengthText(mm, spec.units);
  if (to > length + READ_OFF) {
    const other = placeOf(spec, 'lengths', 'at', seam);
    const own = placeOf(spec, 'fittings', index, 'seams', j, 'to');
    diagnostics.push(problems.fittingBelowHem(own, seam, say(to), say(length), other));
    return [];
  }
  const allowance = spec.allowances[seam] ?? spec.allowances.seam;
  if (allowance !== undefined && -takeIn > allowance) {
    const own = placeOf(spec, 'fittings', index, 'seams', j, 'take-in');
    const key = spec.allowances[seam] === undefined ? 'seam' : seam;
    const other = placeOf(spec, 'allowances', key);
    diagnostics.push(problems.letOutPastAllowance(own, seam, say(-takeIn), say(allowance), other));
  }
  const waist = draft.waist.valueAt(draft.waist.ways[station]!);
  const open = { above: from <= REACHES, below: to >= length - REACHES };
  return [{ from: waist + from, to: waist + Math.min(to, length), amount: takeIn, open }];
}

function sideFaults({ spec, index, drafts }: PinnedFitting): Diagnostic[] {
  const { side, seams = [], hem = {}, waist = {} } = spec.fittings![index]!;
  const sides = [
    ...(side === undefined ? [] : [{ side, path: ['side'] as const }]),
    ...seams.flatMap((seam, j) =>
      seam.side === 'left' || seam.side === 'right'
        ? [{ side: seam.side, path: ['seams', j, 'side'] as const }]
        : [],
    ),
  ];
  if (drafts.left.gown.closed) {
    const other = placeOf(spec, 'symmetry');
    return sides.map((one) =>
      problems.sideOfRing(placeOf(spec, 'fittings', index, ...one.path), one.side, other),
    );
  }
  if (side === undefined) return [];
  const other = placeOf(spec, 'fittings', index, 'side');
  return [...CENTRES, ALL_ROUND].flatMap((name) =>
    (['hem', 'waist'] as const)
      .filter((edge) => ({ hem, waist })[edge][name] !== undefined)
      .map((edge) =>
        problems.centreOnOneSide(placeOf(spec, 'fittings', index, edge, name), name, side, other),
      ),
  );
}

const CENTRES = ['centre-front', 'centre-back'];

function overlapFaults({ spec, index }: PinnedFitting): Diagnostic[] {
  const { seams = [] } = spec.fittings![index]!;
  return seams.flatMap((seam, j) => {
    const k = seams.findIndex(
      (other, i) =>
        i < j &&
        other.seam === seam.seam &&
        other.from < seam.to &&
        seam.from < other.to &&
        ((other.side ?? 'both') === 'both' || (seam.side ?? 'both') === 'both' || other.side === seam.side),
    );
    if (k < 0) return [];
    const own = placeOf(spec, 'fittings', index, 'seams', j, 'from');
    return [problems.fittingOverlaps(own, seam.seam, placeOf(spec, 'fittings', index, 'seams', k, 'from'))];
  });
}
