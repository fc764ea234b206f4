import type { Profile } from '../geometry/hermite-profile.ts';
import type { Train } from '../gown/gown.ts';

/** How far out the train is, 0 where it begins to 1 at the centre back, and its slope, over t from 0 to 1. */
export interface Shape {
  readonly valueAt: (t: number) => number;
  readonly slopeAt: (t: number) => number;
}

const ROUND: Shape = { valueAt: (t) => t * t * (3 - 2 * t), slopeAt: (t) => 6 * t * (1 - t) };
const POINTED: Shape = { valueAt: (t) => t * t, slopeAt: (t) => 2 * t };
/** Where the square train has reached its full length. */
const SQUARE_REACHED = 0.6;
const SQUARE: Shape = {
  valueAt: (t) => ROUND.valueAt(Math.min(1, t / SQUARE_REACHED)),
  slopeAt: (t) => (t >= SQUARE_REACHED ? 0 : ROUND.slopeAt(t / SQUARE_REACHED) / SQUARE_REACHED),
};
const SHAPES: Readonly<Record<Train['shape'], Shape>> = { round: ROUND, pointed: POINTED, square: SQUARE };

/** `base + rise·s`, with s the train's shape between two places of the way. */
export function withTrain(
  base: Profile,
  shape: Train['shape'],
  from: number,
  to: number,
  riseAt: { readonly before: number; readonly full: number },
): Profile {
  const s = SHAPES[shape];
  const t = (way: number): number => Math.min(1, Math.max(0, (way - from) / (to - from)));
  const rise = riseAt.full - riseAt.before;
  const joins = [...base.joins, from, ...(shape === 'square' ? [from + SQUARE_REACHED * (to - from)] : [])];
  return {
    joins: joins.sort((a, b) => a - b),
    valueAt: (way) => base.valueAt(way) + riseAt.before + rise * s.valueAt(t(way)),
    slopeAt: (way) =>
      base.slopeAt(way) + (way <= from || way > to ? 0 : (rise * s.slopeAt(t(way))) / (to - from)),
  };
}

/** The shape's share at t. */
export function trainShare(shape: Train['shape'], t: number): number {
  return SHAPES[shape].valueAt(t);
}
