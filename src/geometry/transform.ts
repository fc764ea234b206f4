import type { Curve, Point } from './curve.ts';
import { dot, subtract, unit } from './point.ts';

/** A map of the plane that keeps angles: rotation by `angle` (clockwise as drawn), then a shift; `mirror` flips x first. */
export interface Placement {
  readonly mirror: boolean;
  /** Radians. */
  readonly angle: number;
  readonly shift: Point;
}

export function placedPoint(placement: Placement, point: Point): Point {
  const cos = Math.cos(placement.angle);
  const sin = Math.sin(placement.angle);
  const x = placement.mirror ? -point.x : point.x;
  return { x: cos * x - sin * point.y + placement.shift.x, y: sin * x + cos * point.y + placement.shift.y };
}

/** A curve under a placement; arcs stay arcs. */
export function placed(placement: Placement, curve: Curve): Curve {
  if (curve.kind === 'arc') {
    return {
      kind: 'arc',
      centre: placedPoint(placement, curve.centre),
      radius: curve.radius,
      start: (placement.mirror ? Math.PI - curve.start : curve.start) + placement.angle,
      sweep: placement.mirror ? -curve.sweep : curve.sweep,
    };
  }
  return mapped(curve, (point) => placedPoint(placement, point));
}

export function translated(curve: Curve, shift: Point): Curve {
  if (curve.kind === 'arc') {
    return { ...curve, centre: { x: curve.centre.x + shift.x, y: curve.centre.y + shift.y } };
  }
  return mapped(curve, (point) => ({ x: point.x + shift.x, y: point.y + shift.y }));
}

export function rotated(curve: Curve, angle: number): Curve {
  return placed({ mirror: false, angle, shift: { x: 0, y: 0 } }, curve);
}

/** Reflected in the line through `origin` along `direction` (any length but zero). */
export function reflectedPoint(point: Point, origin: Point, direction: Point): Point {
  const axis = unit(direction);
  const from = subtract(point, origin);
  const onAxis = dot(from, axis);
  return {
    x: origin.x + 2 * onAxis * axis.x - from.x,
    y: origin.y + 2 * onAxis * axis.y - from.y,
  };
}

export function reflected(curve: Curve, origin: Point, direction: Point): Curve {
  if (curve.kind === 'arc') {
    const axisAngle = Math.atan2(direction.y, direction.x);
    return {
      kind: 'arc',
      centre: reflectedPoint(curve.centre, origin, direction),
      radius: curve.radius,
      start: 2 * axisAngle - curve.start,
      sweep: -curve.sweep,
    };
  }
  return mapped(curve, (point) => reflectedPoint(point, origin, direction));
}

function mapped(curve: Exclude<Curve, { kind: 'arc' }>, move: (point: Point) => Point): Curve {
  if (curve.kind === 'line') return { kind: 'line', from: move(curve.from), to: move(curve.to) };
  return {
    kind: 'cubic',
    from: move(curve.from),
    control1: move(curve.control1),
    control2: move(curve.control2),
    to: move(curve.to),
  };
}

/** Made larger or smaller about the origin; arcs stay arcs. @param factor > 0 */
export function enlarged(curve: Curve, factor: number): Curve {
  if (curve.kind === 'arc') {
    const centre = { x: curve.centre.x * factor, y: curve.centre.y * factor };
    return { ...curve, centre, radius: curve.radius * factor };
  }
  return mapped(curve, (point) => ({ x: point.x * factor, y: point.y * factor }));
}
