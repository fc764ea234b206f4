import { type EdgeProfile, integrateAlong, settledProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { hermiteProfile, type Profile } from '../geometry/hermite-profile.ts';

/** An edge before a fitting, and what the fitting makes of it. */
export interface KeptEdge {
  readonly edge: EdgeProfile;
  readonly frames: { readonly before: readonly GoreFrame[]; readonly after: readonly GoreFrame[] };
  /** @param ways way round at each station */
  readonly altered: (kept: Profile, ways: readonly number[]) => Profile;
}

/**
 * A hem or a waist edge drawn again over altered gores: every station keeps the depth and the slope that it had, and a
 * gore that nobody pinned the very line, whatever its neighbours have come to measure.
 */
export function keptEdge({ edge, frames, altered }: KeptEdge): EdgeProfile | undefined {
  const { ways } = edge;
  return settledProfile(
    ways.slice(1).map((way, i) => way - ways[i]!),
    (now) => altered(respaced(edge, now), now),
    spanOf(frames.after),
    frames.before.map((_, i) => spanOf(frames.before)(edge, i, ways[i]!, ways[i + 1]!)),
  );
}

/** Whole gores that a stretch of an edge spans, 1 where it runs from side to side. */
function spanOf(frames: readonly GoreFrame[]) {
  return (profile: Profile, gore: number, from: number, to: number): number =>
    integrateAlong(profile, (way) => 1 / frames[gore]!.widthAt(profile.valueAt(way)), from, to);
}

/** How much more slowly than on the whole a gore's line may be run through at a seam, as a multiple; up to 3 it never runs back. */
const UNEVEN = 2.5;

/** The same depths over other ways: at every station one step of the new way is one of the old, between them it makes up for the difference. */
function respaced(edge: EdgeProfile, now: readonly number[]): Profile {
  const old = edge.ways;
  const ratios = now.slice(1).map((way, i) => (old[i + 1]! - old[i]!) / (way - now[i]!));
  const paces = now.map((_, i) =>
    Math.min(1, ...[ratios[i - 1], ratios[i]].map((ratio) => UNEVEN * (ratio ?? 1))),
  );
  const was = hermiteProfile(now, old, paces);
  const placeOf = (join: number): number => {
    const i = Math.max(
      0,
      Math.min(
        now.length - 2,
        old.findLastIndex((way) => way <= join),
      ),
    );
    let [low, high] = [now[i]!, now[i + 1]!];
    if (join <= old[i]!) return low;
    if (join >= old[i + 1]!) return high;
    for (let step = 0; step < 60; step++) {
      const middle = (low + high) / 2;
      if (was.valueAt(middle) < join) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return {
    joins: edge.joins.map(placeOf),
    valueAt: (way) => edge.valueAt(was.valueAt(way)),
    slopeAt: (way) => edge.slopeAt(was.valueAt(way)) * was.slopeAt(way),
  };
}
