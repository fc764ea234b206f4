import type { Curve, Point } from './curve.ts';
import { endOf, pointAt, startOf } from './evaluate.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Exact bounding box of curves, mm. Throws on an empty list: nothing has no box. */
export function boundsOfCurves(curves: readonly Curve[]): Box {
  if (curves.length === 0) throw new RangeError('no curves to bound');
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const curve of curves) {
    for (const point of extremesOf(curve)) {
      left = Math.min(left, point.x);
      right = Math.max(right, point.x);
      top = Math.min(top, point.y);
      bottom = Math.max(bottom, point.y);
    }
  }
  return { left, top, right, bottom };
}

/** A box that a curve does not leave, mm, found without looking for its extremes: that of its control points, or of its whole circle. */
export function roughBoundsOf(curve: Curve): Box {
  if (curve.kind === 'arc') {
    const { centre, radius } = curve;
    return {
      left: centre.x - radius,
      top: centre.y - radius,
      right: centre.x + radius,
      bottom: centre.y + radius,
    };
  }
  const { from, to } = curve;
  const [a, b] = curve.kind === 'line' ? [from, to] : [curve.control1, curve.control2];
  return {
    left: Math.min(from.x, a.x, b.x, to.x),
    top: Math.min(from.y, a.y, b.y, to.y),
    right: Math.max(from.x, a.x, b.x, to.x),
    bottom: Math.max(from.y, a.y, b.y, to.y),
  };
}

/** Ends, and every point where a curve runs along an axis. */
export function extremesOf(curve: Curve): Point[] {
  const points = [startOf(curve), endOf(curve)];
  if (curve.kind === 'arc') {
    const low = Math.min(curve.start, curve.start + curve.sweep);
    const high = Math.max(curve.start, curve.start + curve.sweep);
    for (let quarter = Math.ceil(low / (Math.PI / 2)); (quarter * Math.PI) / 2 <= high; quarter++) {
      points.push(pointAt(curve, ((quarter * Math.PI) / 2 - curve.start) / curve.sweep));
    }
  }
  if (curve.kind === 'cubic') {
    for (const axis of ['x', 'y'] as const) {
      const a = curve.from[axis];
      const b = curve.control1[axis];
      const c = curve.control2[axis];
      const d = curve.to[axis];
      for (const t of rootsOfQuadratic(d - 3 * c + 3 * b - a, 2 * (c - 2 * b + a), b - a)) {
        if (t > 0 && t < 1) points.push(pointAt(curve, t));
      }
    }
  }
  return points;
}

/** Real roots of ax² + bx + c, by the form that does not cancel. */
export function rootsOfQuadratic(a: number, b: number, c: number): number[] {
  if (Math.abs(a) < 1e-14 * (Math.abs(b) + Math.abs(c))) return b === 0 ? [] : [-c / b];
  const discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return [];
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant));
  return q === 0 ? [0] : [q / a, c / q];
}
