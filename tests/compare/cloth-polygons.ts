import { Clipper, ClipType, EndType, FillRule, JoinType, type Path64, type Paths64 } from 'clipper2-ts';
import type { Curve } from '../../src/geometry/curve.ts';
import { at, type Place } from '../fittings/sampled.ts';

/** Outlines as another library sees them: whole units of a tenth of a micrometre, curves sampled by their own formulas. */
const UNITS_PER_MM = 10_000;

export function polygonOf(curves: readonly Curve[], shift: Place = { x: 0, y: 0 }): Path64 {
  return curves.flatMap((curve) =>
    samples(curve).map(({ x, y }) => ({
      x: Math.round((x + shift.x) * UNITS_PER_MM),
      y: Math.round((y + shift.y) * UNITS_PER_MM),
    })),
  );
}

/** Both halves of an outline drawn against a fold at x, as one. */
export function unfolded(half: Path64, foldAt: number): Paths64 {
  const axis = Math.round(foldAt * UNITS_PER_MM);
  const other = half.map(({ x, y }) => ({ x: 2 * axis - x, y })).reverse();
  return Clipper.booleanOp(ClipType.Union, [half, other], null, FillRule.NonZero);
}

/** Whether an outline grown by so many mm holds another. */
export function holds(holder: Paths64, held: Paths64, slack: number): boolean {
  return fits(held, slack === 0 ? holder : grown(holder, slack));
}

/** How far one outline has to grow before it holds another, mm, to a thousandth; 0 where it does already. */
export function growthToHold(holder: Paths64, held: Paths64, most = 100): number {
  if (fits(held, holder)) return 0;
  let [low, high] = [0, most];
  while (high - low > 0.001) {
    const middle = (low + high) / 2;
    if (fits(held, grown(holder, middle))) high = middle;
    else low = middle;
  }
  return high;
}

/** How far an outline can shrink and still hold another, mm. */
export function spareAround(holder: Paths64, held: Paths64, most = 100): number {
  let [low, high] = [0, most];
  while (high - low > 0.001) {
    const middle = (low + high) / 2;
    if (fits(held, grown(holder, -middle))) low = middle;
    else high = middle;
  }
  return low;
}

function fits(held: Paths64, holder: Paths64): boolean {
  const outside = Clipper.booleanOp(ClipType.Difference, held, holder, FillRule.NonZero);
  // Slivers of rounding: less than 0.5 µm along two metres.
  return Math.abs(Clipper.areaPaths(outside)) / UNITS_PER_MM ** 2 < 0.001;
}

function grown(paths: Paths64, by: number): Paths64 {
  return Clipper.inflatePaths(paths, by * UNITS_PER_MM, JoinType.Round, EndType.Polygon, 2, 50);
}

/** Chords lie within two micrometres of the skirts' curves. */
function samples(curve: Curve): Place[] {
  const count = curve.kind === 'line' ? 1 : 100;
  return Array.from({ length: count }, (_, i) => at(curve, i / count));
}
