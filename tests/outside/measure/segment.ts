import { Bezier } from 'bezier-js';

/**
 * The curves of an SVG path, read and measured without any of the drafting code: lines and arcs by their closed
 * forms, cubics by bezier-js (whose lengths and derivatives are exact) and dense sampling.
 */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A curve with a parameter from 0 to 1. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  at(t: number): Point;
  /** Unit tangent in the direction of travel. */
  direction(t: number): Point;
  /** Length of the derivative; a number where it is the same all along. */
  readonly speed: number | ((t: number) => number);
  /** Parameter steps that keep chords within `tolerance` of the curve. */
  steps(tolerance: number): number;
  /** Its share of the signed area of a closed path, mm². */
  area(): number;
}

export function lineSegment(from: Point, to: Point): Segment {
  const length = distance(from, to);
  const unit = length > 0 ? { x: (to.x - from.x) / length, y: (to.y - from.y) / length } : { x: 0, y: 0 };
  return {
    from,
    to,
    length,
    at: (t) => mix(from, to, t),
    direction: () => unit,
    speed: length,
    steps: () => 1,
    area: () => (from.x * to.y - to.x * from.y) / 2,
  };
}

/** Its length by bezier-js; points and derivatives by Bernstein's polynomials, which a test holds against bezier-js. */
export function cubicSegment(from: Point, control1: Point, control2: Point, to: Point): Segment {
  const [a, b, c, d] = [from, control1, control2, to];
  const bend = Math.max(secondDifference(a, b, c), secondDifference(b, c, d));
  const at = (t: number) => {
    const u = 1 - t;
    const [i, j, k, l] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    return { x: i * a.x + j * b.x + k * c.x + l * d.x, y: i * a.y + j * b.y + k * c.y + l * d.y };
  };
  const slope = (t: number) => {
    const u = 1 - t;
    const [i, j, k] = [3 * u * u, 6 * u * t, 3 * t * t];
    return {
      x: i * (b.x - a.x) + j * (c.x - b.x) + k * (d.x - c.x),
      y: i * (b.y - a.y) + j * (c.y - b.y) + k * (d.y - c.y),
    };
  };
  return {
    from,
    to,
    length: new Bezier(a, b, c, d).length(),
    at,
    direction: (t) => {
      const way = slope(t);
      if (Math.hypot(way.x, way.y) > 1e-9) return unitOf(way);
      return t < 0.5 ? unitOf(minus(at(t + 1e-4), at(t))) : unitOf(minus(at(t), at(t - 1e-4)));
    },
    speed: (t) => Math.hypot(slope(t).x, slope(t).y),
    steps: (tolerance) => Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * tolerance)))),
    area: () => gauss5((t) => cross(at(t), slope(t)) / 2),
  };
}

/** An arc as SVG writes it: from, radius, flags, to. A radius too small to reach grows, as the standard says. */
export function arcSegment(
  from: Point,
  givenRadius: number,
  large: boolean,
  clockwise: boolean,
  to: Point,
): Segment {
  const chord = distance(from, to);
  const radius = Math.max(givenRadius, chord / 2);
  const middle = mix(from, to, 0.5);
  const height = Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4));
  const side = large === clockwise ? -1 : 1;
  const centre = {
    x: middle.x - (side * height * (to.y - from.y)) / chord,
    y: middle.y + (side * height * (to.x - from.x)) / chord,
  };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const half = Math.asin(Math.min(1, chord / (2 * radius)));
  const sweep = (clockwise ? 1 : -1) * (large ? 2 * Math.PI - 2 * half : 2 * half);
  const at = (t: number) => ({
    x: centre.x + radius * Math.cos(start + sweep * t),
    y: centre.y + radius * Math.sin(start + sweep * t),
  });
  return {
    from,
    to,
    length: radius * Math.abs(sweep),
    at,
    direction: (t) => {
      const angle = start + sweep * t + (Math.sign(sweep) * Math.PI) / 2;
      return { x: Math.cos(angle), y: Math.sin(angle) };
    },
    speed: radius * Math.abs(sweep),
    steps: (tolerance) =>
      Math.max(1, Math.ceil(Math.abs(sweep) / (2 * Math.acos(Math.max(0, 1 - tolerance / radius))))),
    area: () => (radius * radius * (sweep - Math.sin(sweep)) + (from.x * to.y - to.x * from.y)) / 2,
  };
}

/** The integral from 0 to 1; exact for polynomials up to the ninth degree. */
export function gauss5(of: (t: number) => number, from = 0, to = 1): number {
  const half = (to - from) / 2;
  let sum = 0;
  for (const [node, weight] of GAUSS5) sum += weight * of(from + half * (1 + node));
  return sum * half;
}

const GAUSS5: readonly (readonly [number, number])[] = [
  [0, 128 / 225],
  [-Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
];

export const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const along = (from: Point, unit: Point, by: number): Point => ({
  x: from.x + unit.x * by,
  y: from.y + unit.y * by,
});
export const dot = (a: Point, b: Point) => a.x * b.x + a.y * b.y;
export const cross = (a: Point, b: Point) => a.x * b.y - a.y * b.x;
export const mix = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});
export const opposite = (a: Point): Point => ({ x: -a.x, y: -a.y });

export function unitOf(vector: Point): Point {
  const length = Math.hypot(vector.x, vector.y);
  return { x: vector.x / length, y: vector.y / length };
}

function secondDifference(a: Point, b: Point, c: Point): number {
  return Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
}
