import type { HalfBodice } from '../../src/bodice/draft-half.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';

/** A measurer of its own: it knows outlines alone, and walks along them in small steps. */

/** Steps to a curve. */
const FINE = 400;

export function walked(curves: readonly Curve[]): {
  readonly points: readonly Point[];
  readonly length: number;
} {
  const points = curves.flatMap((curve, i) =>
    Array.from({ length: FINE + (i === 0 ? 1 : 0) }, (_, k) =>
      pointAt(curve, (k + (i === 0 ? 0 : 1)) / FINE),
    ),
  );
  let length = 0;
  for (let i = 1; i < points.length; i++) length += away(points[i - 1]!, points[i]!);
  return { points, length };
}

/** The place `down` mm along a walked line, and which way the line runs there. */
export function placeAlong(points: readonly Point[], down: number): { point: Point; angle: number } {
  let left = down;
  for (let i = 1; i < points.length; i++) {
    const step = away(points[i - 1]!, points[i]!);
    if (left <= step || i === points.length - 1) {
      const [a, b] = [points[i - 1]!, points[i]!];
      const t = left / step;
      return {
        point: { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t },
        angle: Math.atan2(b.x - a.x, b.y - a.y),
      };
    }
    left -= step;
  }
  throw new Error('nothing to walk along');
}

/**
 * Length of the line that leaves one seam squarely and meets the other squarely, bending as evenly as it can: a circle
 * where both lie alike, else one whose bend changes evenly.
 */
export function squareAcross(
  from: { point: Point; angle: number },
  to: { point: Point; angle: number },
): number {
  const rise = Math.atan2(from.point.y - to.point.y, to.point.x - from.point.x);
  const reach = (bulge: number): Point => {
    let x = 0;
    let y = 0;
    for (let k = 0; k < FINE; k++) {
      const part = (k + 0.5) / FINE;
      const angle = from.angle + (to.angle - from.angle) * part + bulge * part * (1 - part);
      x += Math.cos(angle) / FINE;
      y += Math.sin(angle) / FINE;
    }
    return { x, y };
  };
  let [low, high] = [-6, 6];
  for (let halving = 0; halving < 50; halving++) {
    const bulge = (low + high) / 2;
    const { x, y } = reach(bulge);
    if (Math.atan2(y, x) < rise) low = bulge;
    else high = bulge;
  }
  const { x, y } = reach((low + high) / 2);
  return away(from.point, to.point) / Math.hypot(x, y);
}

/** Sides of a panel, each walked from the upper edge down. */
export function sidesOf(
  half: HalfBodice,
  panel: number,
): { front: readonly Point[]; back: readonly Point[] } {
  const [, back, , front] = half.pieces[panel]!.edges;
  return { front: [...walked(front!.curves).points].reverse(), back: walked(back!.curves).points };
}

/** Width of a panel at a height above the waist, when its upper edge meets its sides at the given heights. */
export function widthAbove(
  half: HalfBodice,
  panel: number,
  above: number,
  upper: readonly [number, number],
): number {
  const { front, back } = sidesOf(half, panel);
  return squareAcross(placeAlong(front, upper[0] - above), placeAlong(back, upper[1] - above));
}

/** Angle inside a panel at each corner, by chords a thousandth of a millimetre long: upper front, upper back, lower back, lower front. */
export function cornersOf(half: HalfBodice, panel: number): readonly number[] {
  const edges = half.pieces[panel]!.edges;
  return [3, 0, 1, 2].map((i) => {
    const before = edges[i]!.curves;
    const after = edges[(i + 1) % 4]!.curves;
    const corner = pointAt(after[0]!, 0);
    const back = pointAt(before[before.length - 1]!, 1 - 1e-5);
    const on = pointAt(after[0]!, 1e-5);
    const a = { x: back.x - corner.x, y: back.y - corner.y };
    const b = { x: on.x - corner.x, y: on.y - corner.y };
    return Math.acos((a.x * b.x + a.y * b.y) / (Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y)));
  });
}

function away(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
