import type { Profile } from '../geometry/hermite-profile.ts';
import { integrate } from '../geometry/integrate.ts';
import { JOIN } from '../geometry/tolerances.ts';
import type { GownLines } from '../gown/lines.ts';
import type { EdgeProfile } from './edge-profiles.ts';

/** The sewn edge of a gown, and the way round on it at which an overskirt ends. */
export interface EdgeUnder {
  readonly edge: EdgeProfile;
  readonly end: number;
}

/**
 * An overskirt laid on the very edge that it is sewn to: from its end forwards each gore takes as much of the edge as
 * its top is long, and its stations lie as deep as the edge does there.
 */
export function onSewnEdge<Lines extends GownLines>(overskirt: Lines, { edge, end }: EdgeUnder): Lines {
  if (isLevel(edge)) return overskirt;
  const under = goingOn(edge);
  const ways = [end];
  for (const { top } of [...overskirt.gores].reverse()) ways.unshift(wayBefore(under, ways[0]!, top));
  const [start] = ways as [number, ...number[]];
  return {
    ...overskirt,
    stations: overskirt.stations.map((station, i) => ({ ...station, drop: under.valueAt(ways[i]!) })),
    edge: {
      joins: under.joins.map((join) => join - start),
      ways: ways.map((way) => way - start),
      valueAt: (way) => under.valueAt(way + start),
      slopeAt: (way) => under.slopeAt(way + start),
    },
  };
}

function isLevel(edge: EdgeProfile): boolean {
  const depth = edge.valueAt(0);
  return edge.ways.every((way) => edge.valueAt(way) === depth);
}

/** In front of the centre front the edge is the mirror image. */
function goingOn(edge: EdgeProfile): Profile {
  return {
    joins: [...edge.joins.map((join) => -join).reverse(), ...edge.joins],
    valueAt: (way) => edge.valueAt(Math.abs(way)),
    slopeAt: (way) => Math.sign(way) * edge.slopeAt(Math.abs(way)),
  };
}

/** Rounds at most in which the way back along the edge settles. */
const ROUNDS = 60;

/** The way from which it is so far along the edge to another: a way is no longer than the edge over it. */
function wayBefore(edge: Profile, to: number, length: number): number {
  const lengthFrom = (from: number): number => {
    const stops = [from, ...edge.joins.filter((join) => join > from && join < to), to];
    const along = (way: number): number => Math.hypot(1, edge.slopeAt(way));
    return stops.slice(1).reduce((sum, stop, i) => sum + integrate(along, stops[i]!, stop, 2), 0);
  };
  let from = to - length;
  for (let round = 0; round < ROUNDS; round++) {
    const missed = lengthFrom(from) - length;
    if (Math.abs(missed) < JOIN / 100) break;
    from += missed / Math.hypot(1, edge.slopeAt(from));
  }
  return from;
}
