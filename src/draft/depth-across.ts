import type { EdgeProfile } from './edge-profiles.ts';
import { integrateAlong } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';

/** Halvings of a gore's way: 2⁻⁴⁰ of it is far below any tolerance. */
const HALVINGS = 40;

/** Where an edge crosses the line down a gore at a share of its width from its first side edge, 0 … 1. */
export function crossingAt(
  frame: GoreFrame,
  profile: EdgeProfile,
  gore: number,
  share: number,
): {
  /** Below the level waist, mm. */ readonly depth: number /** Part of the way across, 0 … 1. */;
  readonly part: number;
} {
  const [from, to] = [profile.ways[gore]!, profile.ways[gore + 1]!];
  const passed = (way: number): number =>
    integrateAlong(profile, (at) => 1 / frame.widthAt(profile.valueAt(at)), from, way);
  const wanted = share * passed(to);
  let [low, high] = [from, to];
  for (let i = 0; i < HALVINGS && share > 0 && share < 1; i++) {
    const middle = (low + high) / 2;
    if (passed(middle) < wanted) low = middle;
    else high = middle;
  }
  const way = share <= 0 ? from : share >= 1 ? to : (low + high) / 2;
  return { depth: profile.valueAt(way), part: (way - from) / (to - from) };
}
