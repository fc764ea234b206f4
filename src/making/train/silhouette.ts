import type { GownDraft } from '../../draft/draft-gown.ts';
import type { Point } from '../../geometry/curve.ts';
import { runsRound } from '../../gown/lines.ts';
import { isSame } from '../../gown/station.ts';
import type { ClosureFacts } from '../closure/closure-facts.ts';
import type { Skirt } from '../skirt.ts';
import { type Hanging, type HungPoint, hangingOf } from './hanging.ts';

/** A line of a view, in mm of the hanging gown: x to the right, y down from the level waist. */
export type ViewLine = readonly Point[];

/** The gown seen from one side. */
export interface View {
  /** Waist edge and hem, from left to right. */
  readonly waist: ViewLine;
  readonly hem: ViewLine;
  /** Left and right outlines, downwards. */
  readonly outlines: readonly ViewLine[];
  readonly seams: readonly { readonly name: string; readonly line: ViewLine }[];
  /** Finished length at each station that is seen, and where its line ends; one side of a mirrored gown only. */
  readonly lengths: readonly { readonly at: Point; readonly length: number }[];
  readonly opening: ViewLine | undefined;
}

/** The gown as it hangs, at true proportion: its girths as circles, its lengths along the cone. */
export interface Silhouette {
  readonly front: View;
  readonly back: View;
  /** From the wearer's left, its front to the left; undefined where the floor is not known. */
  readonly side: SideView | undefined;
  /** The cloth is fuller than a cone can hang: drawn narrower, it falls in folds. */
  readonly inFolds: boolean;
}

export interface SideView {
  readonly front: ViewLine;
  readonly back: ViewLine;
  readonly waist: ViewLine;
  readonly floor: number;
  /** The hem from above, the body's middle at 0, 0 and the front upwards; closed. */
  readonly footprint: ViewLine;
}

export function silhouetteOf(draft: GownDraft, skirt: Skirt, closure: ClosureFacts | undefined): Silhouette {
  const hanging = hangingOf(draft);
  return {
    front: viewOf(hanging, draft, skirt, closure, 'front'),
    back: viewOf(hanging, draft, skirt, closure, 'back'),
    side: sideOf(hanging, skirt),
    inFolds: hanging.inFolds,
  };
}

/** A line nearer to the outline than this, as the cosine of its turn, is not drawn apart from it. */
const EDGE_ON = 0.05;

/** Steps across half the gown, and down a line. */
const ACROSS = 48;
const DOWN = 24;

function viewOf(
  hanging: Hanging,
  draft: GownDraft,
  skirt: Skirt,
  closure: ClosureFacts | undefined,
  from: 'front' | 'back',
): View {
  const facing = from === 'front' ? 0 : Math.PI;
  const turns = Array.from({ length: ACROSS + 1 }, (_, i) => facing + Math.PI * (i / ACROSS - 0.5));
  const placeAt = (turn: number, part: number): Point => seen(hanging, hanging.placeAt(turn, part), facing);
  const outline = (turn: number): ViewLine => downwards((part) => placeAt(turn, part));
  const ends = stationTurns(draft).flatMap(({ index, sign }) => {
    const station = skirt.stations[index]!;
    if (Math.cos(hanging.stationPlace(index, 1, sign).turn - facing) < EDGE_ON) return [];
    const line = downwards((part) => seen(hanging, hanging.stationPlace(index, part, sign), facing));
    return [{ station, sign, line }];
  });
  return {
    waist: turns.map((turn) => placeAt(turn, 0)),
    hem: turns.map((turn) => placeAt(turn, 1)),
    outlines: [outline(turns[0]!), outline(turns[ACROSS]!)],
    seams: ends
      .filter(({ station }) => station.seams > 0)
      .map(({ station, line }) => ({ name: station.name, line })),
    lengths: ends
      .filter(({ sign }) => runsRound(draft.gown) || sign === 1)
      .map(({ station, line }) => ({ at: line[line.length - 1]!, length: station.finished })),
    opening: openingLine(hanging, draft, closure, facing),
  };
}

/** Every seam once for each side of the wearer that it lies on; the wearer's left has positive turns. */
function stationTurns(draft: GownDraft): { index: number; sign: 1 | -1 }[] {
  const last = draft.gown.stations.length - 1;
  return draft.gown.stations.flatMap((_, index): { index: number; sign: 1 | -1 }[] => {
    if (runsRound(draft.gown)) return index === last ? [] : [{ index, sign: 1 }];
    if (index === 0 || index === last) return [{ index, sign: 1 }];
    return [
      { index, sign: 1 },
      { index, sign: -1 },
    ];
  });
}

function openingLine(
  hanging: Hanging,
  draft: GownDraft,
  closure: ClosureFacts | undefined,
  facing: number,
): ViewLine | undefined {
  if (closure?.stops === undefined) return undefined;
  const index = draft.gown.stations.findIndex((station) => isSame(station, closure.station));
  const sign = closure.side === 'right' && !runsRound(draft.gown) ? -1 : 1;
  const length = draft.lengths[index]!;
  const at = (below: number): HungPoint => hanging.stationPlace(index, below / length, sign);
  if (Math.cos(at(closure.stops).turn - facing) < EDGE_ON) return undefined;
  const { starts, stops } = closure;
  return downwards((part) => seen(hanging, at(starts + (stops - starts) * part), facing));
}

function downwards(at: (part: number) => Point): ViewLine {
  return Array.from({ length: DOWN + 1 }, (_, i) => at(i / DOWN));
}

/** From the front the wearer's left is to the right; from the back it is to the left. */
function seen(hanging: Hanging, place: HungPoint, facing: number): Point {
  return {
    x: hanging.radiusAt(place.slant) * Math.sin(place.turn - facing),
    y: hanging.heightAt(place.slant),
  };
}

function sideOf(hanging: Hanging, skirt: Skirt): SideView | undefined {
  const back = skirt.stations.find((station) => station.name === 'centre-back');
  const floorSlant = back?.floor === undefined ? undefined : back.drop + back.floor.length;
  if (floorSlant === undefined) return undefined;
  const floor = hanging.heightAt(floorSlant);
  const reach = (slant: number): number =>
    slant <= floorSlant ? hanging.radiusAt(slant) : hanging.radiusAt(floorSlant) + slant - floorSlant;
  const from = (turn: number, part: number): Point => {
    const { slant } = hanging.placeAt(turn, part);
    return { x: -reach(slant) * Math.cos(turn), y: Math.min(floor, hanging.heightAt(slant)) };
  };
  const turns = Array.from({ length: ACROSS + 1 }, (_, i) => (Math.PI * i) / ACROSS);
  const round = Array.from({ length: 2 * ACROSS }, (_, i) => (Math.PI * i) / ACROSS);
  return {
    front: downwards((part) => from(0, part)),
    back: downwardsPast(hanging, floorSlant, (part) => from(Math.PI, part)),
    waist: turns.map((turn) => from(turn, 0)),
    floor,
    footprint: round.map((turn) => {
      const distance = reach(hanging.placeAt(turn, 1).slant);
      return { x: distance * Math.sin(turn), y: -distance * Math.cos(turn) };
    }),
  };
}

/** With a point where the cloth meets the floor, so that the line has its corner there. */
function downwardsPast(hanging: Hanging, floorSlant: number, at: (part: number) => Point): ViewLine {
  const top = hanging.placeAt(Math.PI, 0).slant;
  const bottom = hanging.placeAt(Math.PI, 1).slant;
  const corner = (floorSlant - top) / (bottom - top);
  const parts = Array.from({ length: DOWN + 1 }, (_, i) => i / DOWN);
  const all = corner > 0 && corner < 1 ? [...parts, corner].sort((a, b) => a - b) : parts;
  return all.map(at);
}
