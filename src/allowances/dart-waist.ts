import type { Piece } from '../draft/piece.ts';
import { isFrontLeft } from '../draft/piece-sides.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { endOf, pointAt, startOf, tangentAt } from '../geometry/evaluate.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { add, along, cross, distance, leftOf, scaled, subtract, unit } from '../geometry/point.ts';
import { FIT } from '../geometry/tolerances.ts';
import type { TopFullness } from './top-fullness.ts';

/** One dart opened out on a piece: its two legs from its point up to the waist seam, and the seam on both sides of it. */
export interface OpenDart {
  readonly name: string;
  readonly point: Point;
  /** Upper ends of the legs as drawn. */
  readonly left: Point;
  readonly right: Point;
  /** To which side it is folded, as drawn. */
  readonly folds: 'left' | 'right';
  /** Angle between the legs, radians. */
  readonly angle: number;
  /** From the seam half-way to the dart before it, up to the left leg; and from the right leg on. */
  readonly before: readonly Curve[];
  readonly after: readonly Curve[];
}

/** Rounds at most in which the legs' distance is put right; each gains a digit or two. */
const ROUNDS = 12;

/**
 * The waist seam of a piece with its darts, from the left. Closed, its legs one on the other, a dart's two stretches of
 * the seam run straight through: each is lifted towards its leg, by the square of the way there, until they do. The legs
 * lie as far apart as leaves just the sewn top between all the darts.
 */
export function dartedWaist(piece: Piece, { rule, cut, sewn }: TopFullness): OpenDart[] {
  const darts = [...(rule.darts ?? [])].sort((a, b) => a.at - b.at);
  const frontLeft = isFrontLeft(piece);
  const drawn = darts.map((dart) => ({
    ...dart,
    at: frontLeft ? dart.at : 1 - dart.at,
    folds: (dart.towards === 'front') === frontLeft ? ('left' as const) : ('right' as const),
  }));
  const inOrder = frontLeft ? drawn : drawn.reverse();
  const run = piece.edges[0]!.curves;
  const all = inOrder.reduce((sum, { takesIn }) => sum + takesIn, 0);
  const taken = inOrder.map(({ takesIn }) => (takesIn * (cut - sewn)) / all);
  const middles = inOrder.map(
    ({ at }, i) => at * sewn + taken.slice(0, i).reduce((sum, own) => sum + own, 0) + taken[i]! / 2,
  );
  const bounds = [0, ...middles.slice(1).map((middle, i) => (middle + middles[i]!) / 2), cut];
  return inOrder.map(({ name, length, folds }, i) =>
    openDart(run, {
      name,
      length,
      folds,
      taken: taken[i]!,
      middle: middles[i]!,
      from: bounds[i]!,
      to: bounds[i + 1]!,
    }),
  );
}

/** What the darts take in that lie nearer to a side of the piece than so much of its sewn top, mm. */
export function takenBeside(
  piece: Piece,
  { rule, cut, sewn }: TopFullness,
  side: 'left' | 'right',
  length: number,
): number {
  const { darts = [] } = rule;
  const all = darts.reduce((sum, { takesIn }) => sum + takesIn, 0);
  const fromFront = (side === 'left') === isFrontLeft(piece);
  return darts
    .filter(({ at }) => (fromFront ? at : 1 - at) * sewn < length)
    .reduce((sum, { takesIn }) => sum + (takesIn * (cut - sewn)) / all, 0);
}

interface Asked {
  readonly name: string;
  readonly length: number;
  readonly folds: OpenDart['folds'];
  readonly taken: number;
  /** Along the waist edge as it is drawn without the dart. */
  readonly middle: number;
  readonly from: number;
  readonly to: number;
}

function openDart(run: readonly Curve[], asked: Asked): OpenDart {
  const wanted = asked.to - asked.from - asked.taken;
  let apart = asked.taken;
  let dart = lifted(run, asked, apart);
  for (let round = 0; round < ROUNDS; round++) {
    const missed = lengthOfRun(dart.before) + lengthOfRun(dart.after) - wanted;
    if (Math.abs(missed) < FIT / 100) break;
    apart += missed;
    dart = lifted(run, asked, apart);
  }
  return dart;
}

/** A place of the run: its point and its direction. */
function placeOf(run: readonly Curve[], way: number): { readonly at: Point; readonly along: Point } {
  const { curve, t } = placeOnRun(run, way);
  return { at: pointAt(curve, t), along: tangentAt(curve, t) };
}

function lifted(
  run: readonly Curve[],
  { name, length, folds, middle, from, to }: Asked,
  apart: number,
): OpenDart {
  const centre = placeOf(run, middle);
  const point = along(centre.at, leftOf(centre.along), -length);
  const [ends, starts] = [middle - apart / 2, middle + apart / 2];
  const [left, right] = [placeOf(run, ends), placeOf(run, starts)];
  const [up, other] = [left, right].map(({ at }) => unit(subtract(at, point))) as [Point, Point];
  const angle = Math.atan2(cross(up, other), up.x * other.x + up.y * other.y);
  const turned = turnedBy(right.along, -angle);
  const [near, far] = [ends - from, to - starts];
  const [r1, r2] = [distance(point, left.at), distance(point, right.at)];
  // Of the closed waist both directions are to be one; they change evenly with the leg's length.
  const byLeft = (2 / near) * cross(up, turned);
  const byRight = (-2 / far) * cross(left.along, up);
  const leg = (byLeft * r1 + byRight * r2 - cross(left.along, turned)) / (byLeft + byRight);
  const before = stretch(run, from, ends, up, leg - r1, 'end');
  const after = stretch(run, starts, to, other, leg - r2, 'start');
  return {
    name,
    folds,
    point,
    left: endOf(before[before.length - 1]!),
    right: startOf(after[0]!),
    angle,
    before,
    after,
  };
}

/** A stretch of the run lifted by so much at one of its ends, by nothing at the other. */
function stretch(
  run: readonly Curve[],
  from: number,
  to: number,
  way: Point,
  by: number,
  at: 'start' | 'end',
): Curve[] {
  const share = (place: number): number => (at === 'end' ? place - from : to - place) / (to - from);
  const sign = at === 'end' ? 1 : -1;
  const curve = {
    pointAt: (place: number): Point => along(placeOf(run, place).at, way, by * share(place) ** 2),
    derivativeAt: (place: number): Point =>
      add(placeOf(run, place).along, scaled(way, (sign * 2 * by * share(place)) / (to - from))),
  };
  return fitCubics(curve, from, to, FIT);
}

function turnedBy({ x, y }: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: cos * x - sin * y, y: sin * x + cos * y };
}
