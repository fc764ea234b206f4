import { roughBoundsOf } from './bounds.ts';
import type { Curve, Point } from './curve.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { flattened } from './flatten.ts';
import { cross, distance, subtract } from './point.ts';
import { JOIN } from './tolerances.ts';

export interface Crossing {
  /** Parameters on the two curves. */
  readonly t: number;
  readonly u: number;
  readonly point: Point;
}

/** Chord height of the first search; crossings closer together than this may be taken for one. */
const SEARCH = 0.05;

/**
 * Where two curves cross (touching from one side does not count): found on chords, then made exact by Newton's method.
 * A chord's end lies up to `SEARCH` off its curve, so chords count a little beyond their ends; what then settles
 * beyond the end of a curve is no crossing of it, and is found on the curve that follows.
 */
export function crossingsOf(a: Curve, b: Curve): Crossing[] {
  if (areApart(a, b)) return [];
  const left = flattened(a, SEARCH);
  const right = flattened(b, SEARCH);
  const slacks = right.slice(1).map((end, j) => BEYOND / distance(right[j]!, end));
  const found: Crossing[] = [];
  for (let i = 1; i < left.length; i++) {
    const slackOfA = BEYOND / distance(left[i - 1]!, left[i]!);
    for (let j = 1; j < right.length; j++) {
      const hit = chordsCross(left[i - 1]!, left[i]!, right[j - 1]!, right[j]!, slackOfA, slacks[j - 1]!);
      if (hit === undefined) continue;
      const t = (i - 1 + hit[0]) / (left.length - 1);
      const u = (j - 1 + hit[1]) / (right.length - 1);
      const crossing = refined(a, b, t, u);
      if (crossing !== undefined && !found.some((known) => isOne(known, crossing))) found.push(crossing);
    }
  }
  return found;
}

/** Whether no point of one curve can be a point of the other: what encloses them does not meet. */
function areApart(a: Curve, b: Curve): boolean {
  const one = roughBoundsOf(a);
  const other = roughBoundsOf(b);
  return (
    one.right + JOIN < other.left ||
    other.right + JOIN < one.left ||
    one.bottom + JOIN < other.top ||
    other.bottom + JOIN < one.top
  );
}

/** How far beyond its ends a chord still counts, mm: a chord height, drawn out by curves that cross at a slant. */
const BEYOND = 10 * SEARCH;
/** Parameters this near are one: two lines that meet end to end are meant to meet, whatever the last digit says. */
const TOUCHING = 1e-9;

function isOne(a: Crossing, b: Crossing): boolean {
  return Math.abs(a.t - b.t) <= TOUCHING && Math.abs(a.u - b.u) <= TOUCHING;
}

/** Fractions along two chords where they cross; the slacks are how far beyond their ends they may. */
export function chordsCross(
  a: Point,
  b: Point,
  c: Point,
  d: Point,
  slackOfFirst = 0,
  slackOfSecond = 0,
): [number, number] | undefined {
  // Written out, as outlines ask it for every two of their chords.
  const abX = b.x - a.x;
  const abY = b.y - a.y;
  const cdX = d.x - c.x;
  const cdY = d.y - c.y;
  const area = abX * cdY - abY * cdX;
  if (area === 0) return undefined;
  const acX = c.x - a.x;
  const acY = c.y - a.y;
  const t = (acX * cdY - acY * cdX) / area;
  if (!(t >= -slackOfFirst && t <= 1 + slackOfFirst)) return undefined;
  const u = (acX * abY - acY * abX) / area;
  return u >= -slackOfSecond && u <= 1 + slackOfSecond ? [t, u] : undefined;
}

/** Undefined where it settles nowhere, or beyond the end of a curve. */
function refined(a: Curve, b: Curve, startT: number, startU: number): Crossing | undefined {
  let t = startT;
  let u = startU;
  for (let step = 0; step < 12; step++) {
    const gap = subtract(pointAt(b, u), pointAt(a, t));
    const da = derivativeAt(a, t);
    const db = derivativeAt(b, u);
    const area = cross(da, db);
    if (area === 0) break;
    t += cross(gap, db) / area;
    u += cross(gap, da) / area;
  }
  if (!isOnCurve(t) || !isOnCurve(u)) return undefined;
  t = Math.min(1, Math.max(0, t));
  u = Math.min(1, Math.max(0, u));
  const point = pointAt(a, t);
  return distance(point, pointAt(b, u)) <= JOIN ? { t, u, point } : undefined;
}

function isOnCurve(t: number): boolean {
  return t >= -TOUCHING && t <= 1 + TOUCHING;
}
