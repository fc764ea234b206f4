import type { EndSlope } from '../geometry/monotone-slopes.ts';
import type { GownLines } from '../gown/lines.ts';
import { runsRound } from '../gown/lines.ts';
import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from './edge-profiles.ts';

/**
 * The sewn edge of the bodice, as depth below the level waist over the way round: smooth through every station, and
 * each gore's stretch of it exactly as long as that gore's top.
 */
export function waistProfile(gown: GownLines): EdgeProfile | undefined {
  const tops = gown.gores.map((gore) => gore.top);
  const depths = gown.stations.map((station) => station.drop);
  const end = (station: number): EndSlope => (gown.pointedAt === station ? 'free' : 0);
  const ends = [end(0), end(gown.gores.length)] as const;
  return settledProfile(
    tops,
    (ways) => profileThrough(ways, { depths, ends, closed: runsRound(gown) }),
    (profile, _gore, from, to) =>
      integrateAlong(profile, (way) => Math.hypot(1, profile.slopeAt(way)), from, to),
    tops,
  );
}
