import type { Profile } from '../geometry/hermite-profile.ts';
import type { Train } from '../gown/lines.ts';

/** How far out the train is, 0 where it begins to 1 at the centre back, and its slope, over t from 0 to 1. */
export interface Shape {
  readonly valueAt: (t: number) => number;
  readonly slopeAt: (t: number) => number;
}

const ROUND: Shape = { valueAt: (t) => t * t * (3 - 2 * t), slopeAt: (t) => 6 * t * (1 - t) };
const POINTED: Shape = { valueAt: (t) => t * t, slopeAt: (t) => 2 * t };
/** Where the square train has reached its full length. */
const SQUARE_REACHED = 0.6;
const SQUARE: Shape = {
  valueAt: (t) => ROUND.valueAt(Math.min(1, t / SQUARE_REACHED)),
  slopeAt: (t) => (t >= SQUARE_REACHED ? 0 : ROUND.slopeAt(t / SQUARE_REACHED) / SQUARE_REACHED),
};
const SHAPES: Readonly<Record<Train['shape'], Shape>> = { round: ROUND, pointed: POINTED, square: SQUARE };

/** Where on the way the train begins, is full and has ended; without an end the full train is the gown's centre back. */
export interface TrainWays {
  readonly begins: number;
  readonly full: number;
  readonly ends?: number;
}

/** `base + before + (full − before)·s`, with s the train's shape over the way. */
export function withTrain(
  base: Profile,
  shape: Train['shape'],
  ways: TrainWays,
  rise: { readonly before: number; readonly full: number },
): Profile {
  const reached = shape === 'square' ? [ways.begins + SQUARE_REACHED * (ways.full - ways.begins)] : [];
  const fallen =
    shape === 'square' && ways.ends !== undefined
      ? [ways.ends - SQUARE_REACHED * (ways.ends - ways.full)]
      : [];
  const joins = [...base.joins, ways.begins, ways.full, ...(ways.ends === undefined ? [] : [ways.ends])];
  return {
    joins: [...joins, ...reached, ...fallen].sort((a, b) => a - b),
    valueAt: (way) =>
      base.valueAt(way) + rise.before + (rise.full - rise.before) * trainShare(shape, ways, way),
    slopeAt: (way) => base.slopeAt(way) + (rise.full - rise.before) * trainSlope(shape, ways, way),
  };
}

/** The train's share of its full length at a place of the way, 0 to 1. */
export function trainShare(shape: Train['shape'], ways: TrainWays, way: number): number {
  const [t] = placeInTrain(ways, way);
  return SHAPES[shape].valueAt(Math.min(1, Math.max(0, t)));
}

function trainSlope(shape: Train['shape'], ways: TrainWays, way: number): number {
  const [t, span] = placeInTrain(ways, way);
  return t <= 0 || t > 1 ? 0 : SHAPES[shape].slopeAt(t) / span;
}

/** How far into the train a place lies, and the signed way from none to full on that side. */
function placeInTrain({ begins, full, ends }: TrainWays, way: number): [number, number] {
  if (way > full && ends !== undefined) return [(ends - way) / (ends - full), full - ends];
  return [(way - begins) / (full - begins), full - begins];
}
