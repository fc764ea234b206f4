import type { Piece } from '../../src/draft/piece.ts';
import type { Curve } from '../../src/geometry/curve.ts';

/** Lines read by their own formulas and measured by brute force: nothing of the geometry under test. */
export type Place = { readonly x: number; readonly y: number };

export function edgeOf(piece: Piece, name: string): readonly Curve[] {
  const edge = piece.edges.find((one) => one.name === name);
  if (edge === undefined) throw new Error(`no edge ${name} in ${piece.gore}`);
  return edge.curves;
}

/** Points along a run, `each` to a curve. */
export function sampled(run: readonly Curve[], each = 400): Place[] {
  return run.flatMap((curve, i) =>
    Array.from({ length: each + (i === run.length - 1 ? 1 : 0) }, (_, k) => at(curve, k / each)),
  );
}

export function lengthOf(points: readonly Place[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++) sum += away(points[i]!, points[i - 1]!);
  return sum;
}

/** The point so far along a line of points. */
export function along(points: readonly Place[], distance: number): Place {
  let left = distance;
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1]!, points[i]!];
    const own = away(from, to);
    if (left <= own)
      return { x: from.x + ((to.x - from.x) * left) / own, y: from.y + ((to.y - from.y) * left) / own };
    left -= own;
  }
  return points[points.length - 1]!;
}

/** Least distance from a point to a line of points; pieces that lie wholly farther to one side are not measured. */
export function distanceTo(points: readonly Place[], { x, y }: Place): number {
  let least = Infinity;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!;
    const b = points[i]!;
    if (Math.min(a.x, b.x) - x > least || x - Math.max(a.x, b.x) > least) continue;
    if (Math.min(a.y, b.y) - y > least || y - Math.max(a.y, b.y) > least) continue;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const size = dx * dx + dy * dy;
    const part = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / size));
    least = Math.min(least, Math.hypot(a.x + dx * part - x, a.y + dy * part - y));
  }
  return least;
}

/** Angle inside a piece at the end of one edge and the start of the next, degrees, from chords of a hundredth of a mm. */
export function cornerAngle(before: readonly Curve[], after: readonly Curve[]): number {
  const [last, first] = [before[before.length - 1]!, after[0]!];
  const corner = at(last, 1);
  const into = towards(corner, at(last, 1 - 1e-5));
  const out = towards(corner, at(first, 1e-5));
  return (Math.acos(into.x * out.x + into.y * out.y) * 180) / Math.PI;
}

export function away(a: Place, b: Place): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function towards(from: Place, to: Place): Place {
  const size = away(from, to);
  return { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
}

/** The point of a curve at a share of its parameter. */
export function at(curve: Curve, t: number): Place {
  if (curve.kind === 'arc') {
    const angle = curve.start + curve.sweep * t;
    return {
      x: curve.centre.x + curve.radius * Math.cos(angle),
      y: curve.centre.y + curve.radius * Math.sin(angle),
    };
  }
  const s = 1 - t;
  const { from, to } = curve;
  if (curve.kind === 'line') return { x: from.x * s + to.x * t, y: from.y * s + to.y * t };
  const { control1, control2 } = curve;
  const [a, b, c, d] = [s ** 3, 3 * s * s * t, 3 * s * t * t, t ** 3];
  return {
    x: a * from.x + b * control1.x + c * control2.x + d * to.x,
    y: a * from.y + b * control1.y + c * control2.y + d * to.y,
  };
}
