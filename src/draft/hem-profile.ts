import type { Profile } from '../geometry/hermite-profile.ts';
import type { EndSlope } from '../geometry/monotone-slopes.ts';
import type { LayerShape } from '../gown/layer.ts';
import type { GownLines, Train } from '../gown/lines.ts';
import { runsRound } from '../gown/lines.ts';
import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { handSetShape, type TrainRise, type TrainWays, trainShare, withTrain } from './train-shape.ts';

/**
 * The hem, as slant distance below the level waist over the way round measured across the grain. Every gore's
 * stretch of it spans the gore from side to side, and at each seam the slope is one number for both gores.
 */
export function hemProfile(
  gown: GownLines,
  frames: readonly GoreFrame[],
  shape: LayerShape,
): EdgeProfile | undefined {
  const scale = 1 - shape.smallerAlong;
  const over = (ways: readonly number[]): Profile => layered(gownHem(gown, ways), scale, shape.shorter);
  const wholes = frames.map(() => 1);
  const guess = frames.map((frame) => frame.widthAt(scale * (gown.stations[0]!.length ?? 0)));
  return settledProfile(
    guess,
    over,
    (profile, gore, from, to) =>
      integrateAlong(profile, (way) => 1 / frames[gore]!.widthAt(profile.valueAt(way)), from, to),
    wholes,
  );
}

function layered(profile: Profile, scale: number, shorter: number): Profile {
  if (scale === 1 && shorter === 0) return profile;
  return {
    joins: profile.joins,
    valueAt: (way) => profile.valueAt(way) * scale - shorter,
    slopeAt: (way) => profile.slopeAt(way) * scale,
  };
}

/** The gown's own hem, before what a layer takes off. */
function gownHem(gown: GownLines, ways: readonly number[]): Profile {
  const depths = gown.stations.map(({ drop, length }) => (length === undefined ? undefined : drop + length));
  const { train, lengths } = gown;
  const through = (knots: readonly (number | undefined)[], last: EndSlope = 0): Profile =>
    profileThrough(ways, { depths: knots, ends: [0, last], closed: runsRound(gown) });
  if (lengths.measured === 'to-floor') {
    const before = -lengths.offFloor;
    if (train === undefined) return raised(through(depths), before);
    return withTrain(through(depths), train.shape, trainWays(train, ways), { before, full: train.onFloor });
  }
  if (train === undefined) return through(depths);
  const around = (own: readonly number[], knots: readonly (number | undefined)[]): Profile =>
    profileThrough(own, { depths: knots, ends: [0, 0], closed: runsRound(gown) });
  return handSetTrain(depths, train, ways, through, around);
}

function trainWays(train: Train, ways: readonly number[]): TrainWays {
  return {
    begins: ways[train.begins]!,
    full: ways[train.full]!,
    ...(train.ends === undefined ? {} : { ends: ways[train.ends]! }),
  };
}

function raised(profile: Profile, by: number): Profile {
  return { ...profile, valueAt: (way) => profile.valueAt(way) + by };
}

/**
 * Finished lengths: a station named inside the train is final, and those not named follow the shape. Where none is
 * named the hem is the shape itself, which rises on either side from the length that the skirt has there.
 */
function handSetTrain(
  depths: readonly (number | undefined)[],
  train: Train,
  ways: readonly number[],
  through: (knots: readonly (number | undefined)[], last?: EndSlope) => Profile,
  around: (ways: readonly number[], knots: readonly (number | undefined)[]) => Profile,
): Profile {
  const { begins, full, shape } = train;
  const ends = train.ends ?? full;
  const before =
    depths[begins] ?? depths.slice(0, begins).findLast((depth) => depth !== undefined) ?? depths[0]!;
  const after = depths[ends] ?? depths.slice(ends).find((depth) => depth !== undefined) ?? before;
  const longest = depths[full] ?? before;
  const places = trainWays(train, ways);
  const rise = { before, longest, after: train.ends === undefined ? before : after };
  const inside = (i: number): boolean => i > begins && i < ends && i !== full;
  if (!depths.some((depth, i) => depth !== undefined && inside(i))) {
    const rest = around(...besideTrain(depths, train, ways, rise));
    return handSetShape(rest, shape, places, rise);
  }
  const knots = depths.map((depth, i) => {
    if (i < begins || i > ends) return depth;
    if (i === begins) return before;
    if (i === ends && train.ends !== undefined) return after;
    const foot = i <= full ? before : rise.after;
    return depth ?? foot + (longest - foot) * trainShare(shape, places, ways[i]!);
  });
  return through(knots, shape === 'pointed' && train.ends === undefined ? 'free' : 0);
}

/** The skirt beside the train, level where the train begins and where it has ended. */
function besideTrain(
  depths: readonly (number | undefined)[],
  train: Train,
  ways: readonly number[],
  { before, after }: TrainRise,
): [number[], (number | undefined)[]] {
  const { begins, full } = train;
  const flat = (ways[begins]! + ways[full]!) / 2;
  const front = [...ways.slice(0, begins + 1), flat];
  const frontDepths = [...depths.slice(0, begins), before, before];
  if (train.ends === undefined) return [front, frontDepths];
  const backFlat = (ways[full]! + ways[train.ends]!) / 2;
  return [
    [...front, backFlat, ...ways.slice(train.ends)],
    [...frontDepths, after, after, ...depths.slice(train.ends + 1)],
  ];
}
