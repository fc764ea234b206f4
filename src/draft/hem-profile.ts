import type { Profile } from '../geometry/hermite-profile.ts';
import type { EndSlope } from '../geometry/monotone-slopes.ts';
import type { Gown, LayerShape, Train } from '../gown/gown.ts';
import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { trainShare, withTrain } from './train-shape.ts';

/**
 * The hem, as slant distance below the level waist over the way round measured across the grain. Every gore's
 * stretch of it spans the gore from side to side, and at each seam the slope is one number for both gores.
 */
export function hemProfile(
  gown: Gown,
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
function gownHem(gown: Gown, ways: readonly number[]): Profile {
  const depths = gown.stations.map(({ drop, length }) => (length === undefined ? undefined : drop + length));
  const { train, closed, lengths } = gown;
  const through = (knots: readonly (number | undefined)[], last: EndSlope = 0): Profile =>
    profileThrough(ways, { depths: knots, ends: [0, last], closed });
  const end = ways[ways.length - 1]!;
  if (lengths.measured === 'to-floor') {
    const before = -lengths.offFloor;
    if (train === undefined) return raised(through(depths), before);
    return withTrain(through(depths), train.shape, ways[train.begins]!, end, { before, full: train.onFloor });
  }
  if (train === undefined) return through(depths);
  return handSetTrain(depths, train, ways, through);
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
  const last = depths.length - 1;
  const begins =
    depths[train.begins] ?? depths.slice(0, train.begins).findLast((depth) => depth !== undefined)!;
  const rise = depths[last]! - begins;
  const named = depths.slice(train.begins + 1, last).some((depth) => depth !== undefined);
  const from = ways[train.begins]!;
  const to = ways[last]!;
  if (!named) {
    const base = through(depths.map((depth, i) => (i < train.begins ? depth : begins)));
    return withTrain(base, train.shape, from, to, { before: 0, full: rise });
  }
  const knots = depths.map((depth, i) => {
    if (i < train.begins) return depth;
    return i === train.begins
      ? begins
      : (depth ?? begins + rise * trainShare(train.shape, (ways[i]! - from) / (to - from)));
  });
  return through(knots, train.shape === 'pointed' ? 'free' : 0);
}
