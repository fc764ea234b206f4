import type { Point } from './curve.ts';

export function add(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

export function subtract(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function scaled(a: Point, factor: number): Point {
  return { x: a.x * factor, y: a.y * factor };
}

/** `a + factor·b`. */
export function along(a: Point, b: Point, factor: number): Point {
  return { x: a.x + b.x * factor, y: a.y + b.y * factor };
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/** z of the cross product; positive where `b` lies clockwise (as drawn, y down) of `a`. */
export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Unit vector; the zero vector stays zero. */
export function unit(a: Point): Point {
  const size = Math.hypot(a.x, a.y);
  return size === 0 ? a : { x: a.x / size, y: a.y / size };
}

/** Turned a quarter to the left of the direction of travel as drawn: outwards on a clockwise outline. */
export function leftOf(a: Point): Point {
  return { x: a.y, y: -a.x };
}

export function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** Angle between two directions, 0 to π. */
export function angleBetween(a: Point, b: Point): number {
  return Math.abs(Math.atan2(cross(a, b), dot(a, b)));
}
