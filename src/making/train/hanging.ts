import type { GownDraft } from '../../draft/draft-gown.ts';
import { halves, runsRound } from '../../gown/lines.ts';

/** A place on the hanging cloth: the way round in radians from the centre front towards her left, and slant distance. */
export interface HungPoint {
  readonly turn: number;
  readonly slant: number;
}

/** A draft hung on a body of revolution: its girths as circles, its lengths along the slope. */
export interface Hanging {
  /** At a turn, `part` of the way down from the waist edge (0) to the hem (1). */
  readonly placeAt: (turn: number, part: number) => HungPoint;
  /** On a seam; `sign` 1 on the wearer's left. */
  readonly stationPlace: (station: number, part: number, sign: 1 | -1) => HungPoint;
  readonly radiusAt: (slant: number) => number;
  /** Straight down from the level waist, mm. */
  readonly heightAt: (slant: number) => number;
  readonly inFolds: boolean;
}

/** Steepest slope that cloth hangs at before it falls in folds, as change of radius for each mm of cloth. For drawing. */
const WIDEST_SLOPE = 0.6;

/** Slant distance between two levels of the worked-out outline, mm. */
const LEVEL = 10;

export function hangingOf(draft: GownDraft): Hanging {
  const copies = halves(draft.gown);
  const widths = (slant: number): number[] => draft.frames.map((frame) => Math.max(0, frame.widthAt(slant)));
  const girth = (slant: number): number => copies * widths(slant).reduce((sum, width) => sum + width, 0);
  const levels = outlineLevels(draft, girth);
  const waist = depthOver(draft, draft.waist, widths, girth);
  const hem = depthOver(draft, draft.hem, widths, girth);
  return {
    placeAt: (turn, part) => {
      const [top, bottom] = [waist(turn), hem(turn)];
      return { turn, slant: top + (bottom - top) * part };
    },
    stationPlace: (station, part, sign) => {
      const top = draft.gown.stations[station]!.drop;
      const slant = top + draft.lengths[station]! * part;
      const before = widths(slant)
        .slice(0, station)
        .reduce((sum, width) => sum + width, 0);
      return { turn: (sign * 2 * Math.PI * before) / girth(slant), slant };
    },
    radiusAt: (slant) => between(levels.radii, slant),
    heightAt: (slant) => between(levels.heights, slant),
    inFolds: levels.inFolds,
  };
}

/** Samples across one gore. */
const ACROSS_GORE = 10;

/** An edge's depth over the turn, interpolated between places found on every gore, its seams among them. */
function depthOver(
  draft: GownDraft,
  profile: GownDraft['waist'],
  widths: (slant: number) => readonly number[],
  girth: (slant: number) => number,
): (turn: number) => number {
  const places = draft.frames.flatMap((_, gore) =>
    Array.from({ length: ACROSS_GORE + 1 }, (_unused, k): HungPoint => {
      const part = k / ACROSS_GORE;
      const [from, to] = [profile.ways[gore]!, profile.ways[gore + 1]!];
      const slant = profile.valueAt(from + (to - from) * part);
      const own = widths(slant);
      const before = own.slice(0, gore).reduce((sum, width) => sum + width, 0);
      return { turn: (2 * Math.PI * (before + own[gore]! * part)) / girth(slant), slant };
    }),
  );
  return (turn) => {
    const round = ((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    const own = runsRound(draft.gown) ? round : Math.min(round, 2 * Math.PI - round);
    const next = Math.max(
      1,
      places.findIndex((place) => place.turn >= own - 1e-9),
    );
    const [a, b] = [places[next - 1]!, places[next]!];
    return b.turn === a.turn ? b.slant : a.slant + ((b.slant - a.slant) * (own - a.turn)) / (b.turn - a.turn);
  };
}

interface Levels {
  readonly radii: readonly number[];
  readonly heights: readonly number[];
  readonly inFolds: boolean;
}

function outlineLevels(draft: GownDraft, girth: (slant: number) => number): Levels {
  const bottom = Math.max(...draft.gown.stations.map((station, i) => station.drop + draft.lengths[i]!));
  const count = Math.ceil(bottom / LEVEL) + 1;
  const radii = [girth(0) / (2 * Math.PI)];
  const heights = [0];
  let inFolds = false;
  for (let i = 1; i <= count; i++) {
    const wanted = girth(i * LEVEL) / (2 * Math.PI) - radii[i - 1]!;
    const change = Math.max(-WIDEST_SLOPE * LEVEL, Math.min(WIDEST_SLOPE * LEVEL, wanted));
    if (wanted > change + 1e-6) inFolds = true;
    radii.push(radii[i - 1]! + change);
    heights.push(heights[i - 1]! + Math.sqrt(LEVEL * LEVEL - change * change));
  }
  return { radii, heights, inFolds };
}

function between(values: readonly number[], slant: number): number {
  const at = Math.max(0, slant / LEVEL);
  const index = Math.min(values.length - 2, Math.floor(at));
  return values[index]! + (values[index + 1]! - values[index]!) * (at - index);
}
