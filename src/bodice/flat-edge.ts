import { acrossFrame } from '../draft/across-frame.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { LEVEL } from '../geometry/tolerances.ts';

/** How far inside a stretch its slopes are taken, mm: at a point they differ on its two sides. */
const INSIDE = 1e-6;

/**
 * An edge across one panel: the level line where it is level, else one smooth curve on the flat, which leaves and
 * reaches the seams at the edge's height and slope. Followed level by level it would take over every turn of her
 * girths, and a free edge would wave where the bust turns.
 */
export function flatEdge(frame: GoreFrame, profile: EdgeProfile, panel: number): readonly Curve[] {
  const [from, to] = [profile.ways[panel]!, profile.ways[panel + 1]!];
  const [start, end] = [profile.valueAt(from), profile.valueAt(to)];
  const [first, last] = [profile.slopeAt(from + INSIDE), profile.slopeAt(to - INSIDE)];
  const isLevel = Math.max(Math.abs(first), Math.abs(last), Math.abs(end - start)) < LEVEL;
  if (isLevel) return acrossFrame(frame, profile, from, to);
  const third = (to - from) / 3;
  const [a, b] = [frame.pointAt(start, 0), frame.pointAt(end, 1)];
  const [out, into] = [directionAt(frame, start, 0, first), directionAt(frame, end, 1, last)];
  return [
    {
      kind: 'cubic',
      from: a,
      control1: { x: a.x + out.x * third, y: a.y + out.y * third },
      control2: { x: b.x - into.x * third, y: b.y - into.y * third },
      to: b,
    },
  ];
}

/** How the edge moves at a seam, a millimetre across: along the level, and down by its slope. */
function directionAt(frame: GoreFrame, s: number, f: 0 | 1, slope: number): Point {
  const down = frame.downAt(s, f);
  const sin = Math.sin(down);
  const cos = Math.cos(down);
  return { x: cos + slope * sin, y: -sin + slope * cos };
}
