import type { Profile } from '../geometry/hermite-profile.ts';
import type { EndSlope } from '../geometry/monotone-slopes.ts';
import type { LayerShape } from '../gown/layer.ts';
import type { GownLines, Train } from '../gown/lines.ts';
import { runsRound } from '../gown/lines.ts';
import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { type TrainWays, trainShare, withTrain } from './train-shape.ts';

/**
 * The hem, as slant distance below the level waist over the way round measured across the grain. Every gore's
 * stretch of it spans the gore from side to side, and at each seam the slope is one number for both gores.
 * @param altered what fittings make of it, for given ways
 */
export function hemProfile(
  gown: GownLines,
  frames: readonly GoreFrame[],
  shape: LayerShape,
  altered: (hem: Profile, ways: readonly number[]) => Profile = (hem) => hem,
): EdgeProfile | undefined {
  const scale = 1 - shape.smallerAlong;
  const over = (ways: readonly number[]): Profile =>
    altered(layered(gownHem(gown, ways), scale, shape.shorter), ways);
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
  return handSetTrain(depths, train, ways, through);
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
 * named the hem is the shape itself.
 */
function handSetTrain(
  depths: readonly (number | undefined)[],
  train: Train,
  ways: readonly number[],
  through: (knots: readonly (number | undefined)[], last?: EndSlope) => Profile,
): Profile {
  const { begins, full, shape } = train;
  const ends = train.ends ?? full;
  const start =
    depths[begins] ?? depths.slice(0, begins).findLast((depth) => depth !== undefined) ?? depths[0]!;
  const rise = (depths[full] ?? start) - start;
  const places = trainWays(train, ways);
  const inside = (i: number): boolean => i > begins && i < ends && i !== full;
  if (!depths.some((depth, i) => depth !== undefined && inside(i))) {
    const base = through(depths.map((depth, i) => (i < begins || i > ends ? depth : start)));
    return withTrain(base, shape, places, { before: 0, full: rise });
  }
  const knots = depths.map((depth, i) => {
    if (i < begins || i > ends) return depth;
    return i === begins ? start : (depth ?? start + rise * trainShare(shape, places, ways[i]!));
  });
  return through(knots, shape === 'pointed' && train.ends === undefined ? 'free' : 0);
}
