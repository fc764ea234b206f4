import { hermiteProfile, type Profile } from '../geometry/hermite-profile.ts';
import { monotoneSlopes } from '../geometry/monotone-slopes.ts';
import type { HemKnot } from './alterations.ts';

/** What a hem is changed by over the way round: the knots of its own side, and what lies beyond both its ends. */
export interface BendSides {
  readonly own: readonly HemKnot[];
  /** Of the other side of a mirrored gown; the own ones again where both are altered alike. */
  readonly other: readonly HemKnot[];
  /** On a ring the knots come round again instead. */
  readonly closed: boolean;
}

/**
 * How far up the hem goes, smooth through every knot and rising only where they rise. At a centre it runs on into the
 * other side, so that the sewn hem has no corner there.
 * @param ways way round at each station
 */
export function hemBend(sides: BendSides, ways: readonly number[]): Profile {
  const end = ways[ways.length - 1]!;
  const placed = (knots: readonly HemKnot[]) =>
    knots.map(({ place, up }) => ({ way: wayAt(ways, place), up }));
  const own = placed(sides.own);
  const beyond = sides.closed
    ? [-end, end].flatMap((round) => own.map(({ way, up }) => ({ way: way + round, up })))
    : placed(sides.other).flatMap(({ way, up }) => [
        { way: -way, up },
        { way: 2 * end - way, up },
      ]);
  const knots = sorted([...own, ...beyond]);
  const x = knots.map(({ way }) => way);
  const y = knots.map(({ up }) => up);
  if (x.length < 2) return { joins: [], valueAt: () => y[0] ?? 0, slopeAt: () => 0 };
  return hermiteProfile(x, y, monotoneSlopes(x, y, 'free', 'free'));
}

function wayAt(ways: readonly number[], place: number): number {
  if (Number.isInteger(place)) return ways[place]!;
  const gore = Math.floor(place);
  return ways[gore]! + (place - gore) * (ways[gore + 1]! - ways[gore]!);
}

/** Nearer to each other than this two knots are one, mm: a hem cannot bend within it. */
const ONE_KNOT = 1;

/** In order; of knots at one place the first given stays. */
function sorted(knots: readonly { way: number; up: number }[]): { way: number; up: number }[] {
  const kept: { way: number; up: number }[] = [];
  for (const knot of knots) if (kept.every(({ way }) => Math.abs(way - knot.way) > ONE_KNOT)) kept.push(knot);
  return kept.sort((a, b) => a.way - b.way);
}

/** Joins nearer than this are one, mm: a stretch of hem so short has no direction. */
const CRUMB = 1e-6;

/** `base` less every bend: depths fall where the hem goes up. */
export function bent(base: Profile, bends: readonly Profile[]): Profile {
  if (bends.length === 0) return base;
  const joins = [...base.joins, ...bends.flatMap((bend) => bend.joins)].sort((a, b) => a - b);
  return {
    joins: joins.filter((join, i) => i === 0 || join - joins[i - 1]! > CRUMB),
    valueAt: (way) => bends.reduce((depth, bend) => depth - bend.valueAt(way), base.valueAt(way)),
    slopeAt: (way) => bends.reduce((slope, bend) => slope - bend.slopeAt(way), base.slopeAt(way)),
  };
}
