import { hermiteProfile, type Profile } from '../geometry/hermite-profile.ts';
import { integrate } from '../geometry/integrate.ts';
import { type EndSlope, monotoneSlopes } from '../geometry/monotone-slopes.ts';
import { SETTLED } from '../geometry/tolerances.ts';

/** A level line of the gown: how far below the level waist an edge lies, over the way round measured across the grain. */
export interface EdgeProfile extends Profile {
  /** Way at each station, from 0; one more than the gores. */
  readonly ways: readonly number[];
}

export interface Knots {
  /** Depth at each station; undefined where it is to be filled in. */
  readonly depths: readonly (number | undefined)[];
  readonly ends: readonly [EndSlope, EndSlope];
  /** Closed ring: slopes at the two ends are one. */
  readonly closed: boolean;
}

/** A smooth profile through the knots that are known, filled in over the way between them. */
export function profileThrough(ways: readonly number[], knots: Knots): Profile {
  const known = knots.depths.flatMap((depth, i) => (depth === undefined ? [] : [{ way: ways[i]!, depth }]));
  const x = known.map((knot) => knot.way);
  const y = known.map((knot) => knot.depth);
  if (y.every((depth) => depth === y[0])) return levelProfile(y[0]!, ways[0]!, ways[ways.length - 1]!);
  return hermiteProfile(x, y, knots.closed ? closedSlopes(x, y) : monotoneSlopes(x, y, ...knots.ends));
}

function levelProfile(depth: number, from: number, to: number): Profile {
  return { joins: [from, to], valueAt: () => depth, slopeAt: () => 0 };
}

/** A ring that is not level has a highest station; there the slope is 0, so the ring may be opened there. */
function closedSlopes(x: readonly number[], y: readonly number[]): number[] {
  const n = x.length - 1;
  const round = x[n]! - x[0]!;
  const top = y.slice(0, n).reduce((best, depth, i) => (depth < y[best]! ? i : best), 0);
  const order = Array.from({ length: n + 1 }, (_, i) => top + i);
  const openX = order.map((i) => x[i % n]! + (i >= n ? round : 0));
  const openY = order.map((i) => y[i % n]!);
  const slopes = monotoneSlopes(openX, openY, 0, 0);
  return x.map((_, i) => slopes[(i - top + n) % n]!);
}

/**
 * Finds the ways (the gores' widths across the grain along an edge) at which every gore's measure comes out right.
 * @param profileOver the edge's profile for given ways
 * @param measure what a gore measures for given ways, e.g. its sewn top; proportional to its way to first order
 * @param wanted what it should measure
 * @returns undefined where the widths do not settle
 */
export function settledProfile(
  first: readonly number[],
  profileOver: (ways: readonly number[]) => Profile,
  measure: (profile: Profile, gore: number, from: number, to: number) => number,
  wanted: readonly number[],
): EdgeProfile | undefined {
  let widths = [...first];
  for (let round = 0; round < 300; round++) {
    const ways = [0];
    for (const width of widths) ways.push(ways[ways.length - 1]! + width);
    const profile = profileOver(ways);
    let change = 0;
    widths = widths.map((width, gore) => {
      const factor = wanted[gore]! / measure(profile, gore, ways[gore]!, ways[gore + 1]!);
      change = Math.max(change, Math.abs(factor - 1));
      return width * factor;
    });
    if (!Number.isFinite(change)) return undefined;
    if (change < SETTLED) return { ...profile, ways };
  }
  return undefined;
}

/** How much faster than on the whole a gore's line may be run through at a seam, as a multiple; up to 3 it never runs back. */
const UNEVEN = 2.5;

/**
 * The same depths over other ways. At a seam the line is run through at the pace of that gore beside it which keeps
 * its way more nearly, so that a gore whose way stays keeps its very line.
 */
export function respaced(edge: EdgeProfile, now: readonly number[]): Profile {
  const old = edge.ways;
  const ratios = now.slice(1).map((way, i) => (old[i + 1]! - old[i]!) / (way - now[i]!));
  const paces = now.map((_, i) => {
    const [before, after] = [ratios[i - 1] ?? ratios[i]!, ratios[i] ?? ratios[i - 1]!];
    const pace = Math.abs(Math.log(before)) < Math.abs(Math.log(after)) ? before : after;
    return Math.min(pace, UNEVEN * before, UNEVEN * after);
  });
  const was = hermiteProfile(now, old, paces);
  const placeOf = (join: number): number => {
    const i = Math.max(
      0,
      Math.min(
        now.length - 2,
        old.findLastIndex((way) => way <= join),
      ),
    );
    let [low, high] = [now[i]!, now[i + 1]!];
    if (join <= old[i]!) return low;
    if (join >= old[i + 1]!) return high;
    for (let step = 0; step < 60; step++) {
      const middle = (low + high) / 2;
      if (was.valueAt(middle) < join) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return {
    joins: edge.joins.map(placeOf),
    valueAt: (way) => edge.valueAt(was.valueAt(way)),
    slopeAt: (way) => edge.slopeAt(was.valueAt(way)) * was.slopeAt(way),
  };
}

/** ∫ f over a stretch of the way, broken where the profile's pieces join. */
export function integrateAlong(
  profile: Profile,
  f: (way: number) => number,
  from: number,
  to: number,
): number {
  const inner = profile.joins.filter((join) => join > from && join < to);
  const stops = [from, ...inner, to];
  let sum = 0;
  for (let i = 1; i < stops.length; i++) sum += integrate(f, stops[i - 1]!, stops[i]!, 2);
  return sum;
}
