import type { Curve, Point } from './curve.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { flattened } from './flatten.ts';
import { cross, subtract } from './point.ts';

export interface Crossing {
  /** Parameters on the two curves. */
  readonly t: number;
  readonly u: number;
  readonly point: Point;
}

/** Chord height of the first search; crossings closer together than this may be taken for one. */
const SEARCH = 0.05;

/** Where two curves cross (touching from one side does not count): found on chords, then made exact by Newton's method. */
export function crossingsOf(a: Curve, b: Curve): Crossing[] {
  const left = flattened(a, SEARCH);
  const right = flattened(b, SEARCH);
  const found: Crossing[] = [];
  for (let i = 1; i < left.length; i++) {
    for (let j = 1; j < right.length; j++) {
      const hit = chordsCross(left[i - 1]!, left[i]!, right[j - 1]!, right[j]!, TOUCHING);
      if (hit === undefined) continue;
      const t = (i - 1 + hit[0]) / (left.length - 1);
      const u = (j - 1 + hit[1]) / (right.length - 1);
      found.push(refined(a, b, t, u));
    }
  }
  return found;
}

/**
 * How far beyond its end, as a share of its length, a chord still counts: two lines that meet end to end are meant to
 * meet, whatever the last digit says.
 */
const TOUCHING = 1e-9;

/** Fractions along two chords where they cross; `slack` is how far beyond their ends they may. */
export function chordsCross(a: Point, b: Point, c: Point, d: Point, slack = 0): [number, number] | undefined {
  const ab = subtract(b, a);
  const cd = subtract(d, c);
  const area = cross(ab, cd);
  if (area === 0) return undefined;
  const ac = subtract(c, a);
  const t = cross(ac, cd) / area;
  const u = cross(ac, ab) / area;
  const within = (at: number): boolean => at >= -slack && at <= 1 + slack;
  return within(t) && within(u) ? [t, u] : undefined;
}

function refined(a: Curve, b: Curve, startT: number, startU: number): Crossing {
  let t = startT;
  let u = startU;
  for (let step = 0; step < 8; step++) {
    const gap = subtract(pointAt(b, u), pointAt(a, t));
    const da = derivativeAt(a, t);
    const db = derivativeAt(b, u);
    const area = cross(da, db);
    if (area === 0) break;
    t = Math.min(1, Math.max(0, t + cross(gap, db) / area));
    u = Math.min(1, Math.max(0, u + cross(gap, da) / area));
  }
  return { t, u, point: pointAt(a, t) };
}
