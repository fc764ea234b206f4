import type { Arc, Cubic, Curve, Point } from './curve.ts';
import { subtract, unit } from './point.ts';

/** Point at parameter t, 0 at the start and 1 at the end. */
export function pointAt(curve: Curve, t: number): Point {
  switch (curve.kind) {
    case 'line':
      return {
        x: curve.from.x + (curve.to.x - curve.from.x) * t,
        y: curve.from.y + (curve.to.y - curve.from.y) * t,
      };
    case 'arc':
      return arcPoint(curve, curve.start + curve.sweep * t);
    case 'cubic':
      return cubicPoint(curve, t);
  }
}

/** Derivative by t, mm per unit of t. */
export function derivativeAt(curve: Curve, t: number): Point {
  switch (curve.kind) {
    case 'line':
      return subtract(curve.to, curve.from);
    case 'arc': {
      const angle = curve.start + curve.sweep * t;
      const speed = curve.radius * curve.sweep;
      return { x: -Math.sin(angle) * speed, y: Math.cos(angle) * speed };
    }
    case 'cubic': {
      const { from: a, control1: b, control2: c, to: d } = curve;
      const s = 1 - t;
      const u = 3 * s * s;
      const v = 6 * s * t;
      const w = 3 * t * t;
      return {
        x: u * (b.x - a.x) + v * (c.x - b.x) + w * (d.x - c.x),
        y: u * (b.y - a.y) + v * (c.y - b.y) + w * (d.y - c.y),
      };
    }
  }
}

/** Second derivative by t. */
export function secondDerivativeAt(curve: Curve, t: number): Point {
  switch (curve.kind) {
    case 'line':
      return { x: 0, y: 0 };
    case 'arc': {
      const angle = curve.start + curve.sweep * t;
      const size = curve.radius * curve.sweep * curve.sweep;
      return { x: -Math.cos(angle) * size, y: -Math.sin(angle) * size };
    }
    case 'cubic': {
      const { from: a, control1: b, control2: c, to: d } = curve;
      return {
        x: 6 * ((1 - t) * (c.x - 2 * b.x + a.x) + t * (d.x - 2 * c.x + b.x)),
        y: 6 * ((1 - t) * (c.y - 2 * b.y + a.y) + t * (d.y - 2 * c.y + b.y)),
      };
    }
  }
}

/** Unit direction of travel. */
export function tangentAt(curve: Curve, t: number): Point {
  return unit(derivativeAt(curve, t));
}

/** Signed curvature, 1/mm: positive where the curve turns clockwise as drawn. */
export function curvatureAt(curve: Curve, t: number): number {
  if (curve.kind === 'line') return 0;
  if (curve.kind === 'arc') return Math.sign(curve.sweep) / curve.radius;
  const first = derivativeAt(curve, t);
  const second = secondDerivativeAt(curve, t);
  const speed = Math.hypot(first.x, first.y);
  return speed === 0 ? 0 : (first.x * second.y - first.y * second.x) / speed ** 3;
}

export function startOf(curve: Curve): Point {
  return curve.kind === 'arc' ? arcPoint(curve, curve.start) : curve.from;
}

export function endOf(curve: Curve): Point {
  return curve.kind === 'arc' ? arcPoint(curve, curve.start + curve.sweep) : curve.to;
}

function arcPoint(arc: Arc, angle: number): Point {
  return { x: arc.centre.x + arc.radius * Math.cos(angle), y: arc.centre.y + arc.radius * Math.sin(angle) };
}

function cubicPoint(cubic: Cubic, t: number): Point {
  const s = 1 - t;
  const a = s * s * s;
  const b = 3 * s * s * t;
  const c = 3 * s * t * t;
  const d = t * t * t;
  return {
    x: a * cubic.from.x + b * cubic.control1.x + c * cubic.control2.x + d * cubic.to.x,
    y: a * cubic.from.y + b * cubic.control1.y + c * cubic.control2.y + d * cubic.to.y,
  };
}
