import { type EdgeProfile, integrateAlong, respaced, settledProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Profile } from '../geometry/hermite-profile.ts';
import type { HemKnot } from './alterations.ts';
import { bent, hemBend } from './hem-bend.ts';

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

/** Knots of every fitting along an edge, on its own side and on the other one of a mirrored gown. */
export interface EdgeBends {
  readonly own: readonly (readonly HemKnot[])[];
  readonly other: readonly (readonly HemKnot[])[];
  readonly closed: boolean;
}

/** The same, bent by what was pinned along it. */
export function bentEdge(
  { edge, frames }: Pick<KeptEdge, 'edge' | 'frames'>,
  { own, other, closed }: EdgeBends,
): EdgeProfile | undefined {
  return keptEdge({
    edge,
    frames,
    altered: (kept, ways) =>
      bent(
        kept,
        own.map((knots, i) => hemBend({ own: knots, other: other[i] ?? [], closed }, ways)),
      ),
  });
}

/** Whole gores that a stretch of an edge spans, 1 where it runs from side to side. */
function spanOf(frames: readonly GoreFrame[]) {
  return (profile: Profile, gore: number, from: number, to: number): number =>
    integrateAlong(profile, (way) => 1 / frames[gore]!.widthAt(profile.valueAt(way)), from, to);
}
