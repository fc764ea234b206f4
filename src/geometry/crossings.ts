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
  const left = flattened(a, SEARCH);
  const right = flattened(b, SEARCH);
  const found: Crossing[] = [];
  for (let i = 1; i < left.length; i++) {
    const slackOfA = BEYOND / distance(left[i - 1]!, left[i]!);
    for (let j = 1; j < right.length; j++) {
      const slackOfB = BEYOND / distance(right[j - 1]!, right[j]!);
      const hit = chordsCross(left[i - 1]!, left[i]!, right[j - 1]!, right[j]!, slackOfA, slackOfB);
      if (hit === undefined) continue;
      const t = (i - 1 + hit[0]) / (left.length - 1);
      const u = (j - 1 + hit[1]) / (right.length - 1);
      const crossing = refined(a, b, t, u);
      if (crossing !== undefined && !found.some((known) => isOne(known, crossing))) found.push(crossing);
    }
  }
  return found;
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
  const ab = subtract(b, a);
  const cd = subtract(d, c);
  const area = cross(ab, cd);
  if (area === 0) return undefined;
  const ac = subtract(c, a);
  const t = cross(ac, cd) / area;
  const u = cross(ac, ab) / area;
  const isWithin = (at: number, slack: number): boolean => at >= -slack && at <= 1 + slack;
  return isWithin(t, slackOfFirst) && isWithin(u, slackOfSecond) ? [t, u] : undefined;
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
