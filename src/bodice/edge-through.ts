import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Profile } from '../geometry/hermite-profile.ts';

/**
 * An edge of the bodice as slant distance below the level waist over the way round: smooth through every station but
 * its points, and level at the centres unless they are points.
 * @param depths by station; undefined where it is filled in
 * @param points stations at which it may come to a point; each has a depth
 */
export function edgeThrough(
  frames: readonly GoreFrame[],
  depths: readonly (number | undefined)[],
  points: readonly number[],
): EdgeProfile | undefined {
  const at = depths.find((depth) => depth !== undefined) ?? 0;
  return settledProfile(
    frames.map((frame) => frame.widthAt(at)),
    (ways) => pointedProfile(ways, depths, points),
    (profile, panel, from, to) =>
      integrateAlong(profile, (way) => 1 / frames[panel]!.widthAt(profile.valueAt(way)), from, to),
    frames.map(() => 1),
  );
}

/** One smooth stretch from point to point, each its own. */
function pointedProfile(
  ways: readonly number[],
  depths: readonly (number | undefined)[],
  points: readonly number[],
): Profile {
  const last = ways.length - 1;
  const ends = [...new Set([0, ...points, last])].sort((a, b) => a - b);
  const stretches = ends.slice(1).map((to, i) => {
    const from = ends[i]!;
    const slope = (station: number) => (points.includes(station) ? ('free' as const) : 0);
    return {
      until: ways[to]!,
      profile: profileThrough(ways.slice(from, to + 1), {
        depths: depths.slice(from, to + 1),
        ends: [slope(from), slope(to)],
        closed: false,
      }),
    };
  });
  const over = (way: number): Profile =>
    (stretches.find(({ until }) => way <= until) ?? stretches[stretches.length - 1]!).profile;
  return {
    joins: [...new Set(stretches.flatMap(({ profile }) => profile.joins))],
    valueAt: (way) => over(way).valueAt(way),
    slopeAt: (way) => over(way).slopeAt(way),
  };
}
