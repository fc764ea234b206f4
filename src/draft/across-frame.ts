import type { Curve, Point } from '../geometry/curve.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import type { Profile } from '../geometry/hermite-profile.ts';
import { FIT, LEVEL } from '../geometry/tolerances.ts';
import { integrateAlong } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';

/** Joins of a profile nearer than this to a side are the side, mm: a piece so short would have no direction. */
const APART = 0.05;

/** How far inside a stretch its slopes are taken, mm: nearer than any bend shows. */
const INSIDE = 1e-6;

type FittedLine = Parameters<typeof fitCubics>[0];

/** An edge that crosses the gore from its front to its back: an exact arc or line where level, cubics elsewhere. */
export function acrossFrame(frame: GoreFrame, profile: Profile, from: number, to: number): Curve[] {
  const stops = [from, ...profile.joins.filter((join) => join > from + APART && join < to - APART), to];
  const level = profile.valueAt(from);
  const isLevel = [...stops, ...stops.slice(1).map((stop, k) => (stop + stops[k]!) / 2)].every(
    (way) => Math.abs(profile.slopeAt(way)) < LEVEL && Math.abs(profile.valueAt(way) - level) < LEVEL,
  );
  if (isLevel) return [...frame.levelAt(level)];
  const passed = (way: number): number =>
    integrateAlong(profile, (at) => 1 / frame.widthAt(profile.valueAt(at)), from, way);
  // One where the widths have settled on the way; over a shaped gore the edge's own length decides, not its widths.
  const whole = passed(to);
  // A fit asks for the same places again: for the point and for the slope there, and for both halves of a stretch.
  const fractions = new Map<number, number>();
  const fractionAt = (way: number): number => {
    const known = fractions.get(way);
    if (known !== undefined) return known;
    const fraction = passed(way) / whole;
    fractions.set(way, fraction);
    return fraction;
  };
  const between = (start: number, end: number): FittedLine => ({
    pointAt: (way: number): Point => frame.pointAt(profile.valueAt(way), way === to ? 1 : fractionAt(way)),
    derivativeAt: (way: number): Point => {
      const depth = profile.valueAt(way);
      const fraction = way === to ? 1 : fractionAt(way);
      const down = frame.downAt(depth, fraction);
      const bySlant = frame.bySlant(depth, fraction);
      // At a point of the hem the slope is another on each side of it: this stretch's own counts.
      const slope = profile.slopeAt(Math.min(end - INSIDE, Math.max(start + INSIDE, way)));
      return {
        x: Math.cos(down) / whole + slope * bySlant.x,
        y: -Math.sin(down) / whole + slope * bySlant.y,
      };
    },
  });
  return stops.slice(1).flatMap((stop, k) => fitCubics(between(stops[k]!, stop), stops[k]!, stop, FIT));
}
