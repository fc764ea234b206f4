import type { Cubic, Curve, Point } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { integrate } from '../geometry/integrate.ts';
import { FIT } from '../geometry/tolerances.ts';

/** A width as it changes down the gore: mm, and mm per mm. */
export interface WidthDown {
  readonly valueAt: (s: number) => number;
  readonly slopeAt: (s: number) => number;
}

/**
 * One half of a gore shaped over a body, laid flat: a straight axis on the grain, and the seam beside it.
 *
 * Over a body that is no cone no flat piece keeps every length. What is sewn and measured is kept: the seam has its
 * true length from level to level, every level has its true width, and every level leaves the axis and meets the seam
 * squarely. Over a cone the axis has its true length as well, and the half gore is exactly its sector. Over another
 * body either the axis is an edge or a fold, and has its true length because somebody measured it, the levels bulging
 * a little to reach both; or it is only the middle of a gore, and every level is a circle, square to both seams.
 */
export type Axis = 'edge' | 'middle';

/** See `Axis`. */
export interface HalfGore {
  readonly seamAt: (s: number) => Point;
  /** The seam from one slant distance to another, downwards. */
  readonly seamFrom: (from: number, to: number) => Curve[];
  /** A place on the level at s, `part` of the way from the axis to the seam. */
  readonly pointAt: (s: number, part: number) => Point;
  /** Angle of "down" there from the axis, radians. */
  readonly downAt: (s: number, part: number) => number;
  readonly levelAt: (s: number) => Curve[];
}

/** Slant distance between two computed places of the seam, mm. Larger blurs a hip; smaller only costs time. */
const STEP = 8;
/** The steepest that a seam may run away from the grain: beyond it, a level can no longer meet it squarely. */
const STEEPEST = 0.985;

/**
 * @param width of the half, along the level
 * @param length how far down the seam is wanted, mm
 * @returns undefined where the width grows faster than a seam can follow
 */
export function halfGore(width: WidthDown, length: number, axis: Axis): HalfGore | undefined {
  const seam = seamPlaces(width, Math.ceil(length / STEP) + 1, axis);
  if (seam === undefined) return undefined;
  const pieces = smoothSeam(seam);
  const place = (s: number): Place => placeOnSeam(pieces, s);
  // One place is asked for its point, its direction and its movement in turn.
  let last: (Level & { readonly s: number }) | undefined;
  const levelOf = (s: number): Level => {
    if (last?.s === s) return last;
    const { piece, t } = place(s);
    const end = pointAt(piece, t);
    const along = tangentAt(piece, t);
    last = { s, ...levelTo(axis === 'edge' ? s : undefined, end, Math.atan2(along.x, along.y)) };
    return last;
  };
  return {
    seamAt: (s) => {
      const { piece, t } = place(s);
      return pointAt(piece, t);
    },
    seamFrom: (from, to) => partOfSeam(pieces, from, to),
    pointAt: (s, part) => levelPoint(levelOf(s), part),
    downAt: (s, part) => levelAngle(levelOf(s), part),
    levelAt: (s) => {
      const level = levelOf(s);
      const curve = {
        pointAt: (part: number) => levelPoint(level, part),
        derivativeAt: (part: number) => {
          const angle = levelAngle(level, part);
          return { x: level.length * Math.cos(angle), y: -level.length * Math.sin(angle) };
        },
      };
      return fitCubics(curve, 0, 1, FIT);
    },
  };
}

/**
 * A level line: leaves the axis squarely at (0, `from`), and its direction turns by `turn`·τ + `bulge`·τ(1 − τ) over
 * its length. A circle where `bulge` is 0.
 */
interface Level {
  readonly from: number;
  readonly length: number;
  readonly turn: number;
  readonly bulge: number;
}

function levelAngle(level: Pick<Level, 'turn' | 'bulge'>, part: number): number {
  return level.turn * part + level.bulge * part * (1 - part);
}

function levelPoint(level: Level, part: number): Point {
  const x = integrate((at) => Math.cos(levelAngle(level, at)), 0, part, 1);
  const rise = integrate((at) => Math.sin(levelAngle(level, at)), 0, part, 1);
  return { x: level.length * x, y: level.from - level.length * rise };
}

/**
 * The level that meets the seam squarely at `end`, where the seam runs at angle `turn`: from a place on the axis, or
 * from wherever the circle begins.
 */
function levelTo(from: number | undefined, end: Point, turn: number): Level {
  const bulge = from === undefined ? 0 : bulgeFor(turn, (from - end.y) / end.x, 0);
  const { across, rise } = levelReach({ turn, bulge });
  const length = end.x / across;
  return { from: from ?? end.y + length * rise, length, turn, bulge };
}

/** The bulge for which a level of this turn rises by `slope` times its reach: Newton, from a guess. */
function bulgeFor(turn: number, slope: number, guess: number): number {
  let bulge = guess;
  for (let step = 0; step < 12; step++) {
    const { across, rise, acrossBy, riseBy } = levelReach({ turn, bulge });
    const change = (rise - slope * across) / (riseBy - slope * acrossBy);
    bulge -= change;
    if (Math.abs(change) < 1e-13) break;
  }
  return bulge;
}

/** Nodes and weights of the eight-point Gauss-Legendre rule on 0…1. */
const NODES = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363].flatMap(
  (node) => [(1 - node) / 2, (1 + node) / 2],
);
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763].flatMap(
  (weight) => [weight / 2, weight / 2],
);

/** How far a level of length 1 reaches across and rises, and how they change with its bulge and its turn. */
function levelReach(level: Pick<Level, 'turn' | 'bulge'>): {
  readonly across: number;
  readonly rise: number;
  readonly acrossBy: number;
  readonly riseBy: number;
  readonly acrossByTurn: number;
} {
  let across = 0;
  let rise = 0;
  let acrossBy = 0;
  let riseBy = 0;
  let acrossByTurn = 0;
  for (const [i, part] of NODES.entries()) {
    const angle = levelAngle(level, part);
    const cos = WEIGHTS[i]! * Math.cos(angle);
    const sin = WEIGHTS[i]! * Math.sin(angle);
    const lever = part * (1 - part);
    across += cos;
    rise += sin;
    acrossBy -= sin * lever;
    acrossByTurn -= sin * part;
    riseBy += cos * lever;
  }
  return { across, rise, acrossBy, riseBy, acrossByTurn };
}

/** Rounds in which levels and seam come near each other in small steps; and at most in which they settle in whole ones. */
const NEARING = 24;
const SETTLING = 12;
/** Turns and bulges that change less than this have settled, radians: a ten-millionth of a millimetre at the hem. */
const SETTLED = 1e-10;

/** Widths that miss by less than this are settled, mm: far below what shears follow. */
const SETTLED_WIDTH = 0.02;
/** How much more sharply than after the small steps a seam may bend between two places. */
const AS_CALM = 1.25;

/** How every level turns and bulges. */
interface Levels {
  readonly turns: readonly number[];
  readonly bulges: readonly number[];
}

/**
 * Places of the seam every STEP down: at true width along the level, each a true STEP from the one before, and every
 * level square to the seam as it comes out. Over a bend the seam runs off a little from where the width alone would
 * send it, which turns the levels, which move the seam. Small steps bring the two near each other, whole ones together.
 */
function seamPlaces(width: WidthDown, count: number, axis: Axis): readonly Point[] | undefined {
  const s = Array.from({ length: count + 1 }, (_, i) => i * STEP);
  const widths = s.map((at) => width.valueAt(at));
  const slopes = s.map((at) => width.slopeAt(at));
  if (widths.some((own) => !(own > 0)) || slopes.some((turn) => Math.abs(turn) > Math.asin(STEEPEST)))
    return undefined;
  const bulged = (places: readonly Point[], { turns, bulges }: Levels): readonly number[] =>
    axis === 'middle'
      ? bulges
      : places.map((point, i) => bulgeFor(turns[i]!, (s[i]! - point.y) / point.x, bulges[i]!));
  /** The most that a level misses its width by, square to the seam as it runs, mm. */
  const missOf = (places: readonly Point[], { bulges }: Levels): number =>
    anglesAt(places).reduce((most, turn, i) => {
      const bulge = axis === 'middle' ? 0 : bulgeFor(turn, (s[i]! - places[i]!.y) / places[i]!.x, bulges[i]!);
      return Math.max(most, Math.abs(places[i]!.x / levelReach({ turn, bulge }).across - widths[i]!));
    }, 0);
  let levels: Levels = { turns: slopes, bulges: s.map(() => 0) };
  let places: readonly Point[] = [];
  for (let round = 0; round < NEARING; round++) {
    const nearer = placesAt(straightReaches(widths, levels), levels.turns, widths[0]!);
    if (nearer === undefined) return undefined;
    places = nearer;
    const angles = anglesAt(places);
    const turns = levels.turns.map((turn, i) => turn + (angles[i]! - turn) * stepTowards(widths[i]!, turn));
    const next = { turns, bulges: bulged(places, { ...levels, turns }) };
    const change = changeOf(levels, next);
    levels = next;
    if (change < SETTLED) return places;
  }
  const calm = sharpestBend(levels.turns) * AS_CALM;
  let missed = missOf(places, levels);
  for (let round = 0; round < SETTLING && missed > SETTLED_WIDTH; round++) {
    const settled = placesAt(squaredReaches(widths, levels), levels.turns, widths[0]!);
    // Where whole steps lead away again or make the seam wave, what the small ones found is good enough.
    if (settled === undefined) break;
    const turns = anglesAt(settled).map((angle, i) => (i === 0 || i === count ? levels.turns[i]! : angle));
    const next = { turns, bulges: bulged(settled, { ...levels, turns }) };
    const miss = missOf(settled, next);
    if (!(miss < missed) || sharpestBend(turns) > calm) break;
    [places, levels, missed] = [settled, next, miss];
  }
  return places;
}

function changeOf(before: Levels, after: Levels): number {
  return Math.max(farthest(before.turns, after.turns), farthest(before.bulges, after.bulges));
}

/** The most that the seam turns from one place to the next, radians. */
function sharpestBend(turns: readonly number[]): number {
  return farthest(turns.slice(0, -1), turns.slice(1));
}

function farthest(before: readonly number[], after: readonly number[]): number {
  return after.reduce((most, value, i) => Math.max(most, Math.abs(value - before[i]!)), 0);
}

function straightReaches(widths: readonly number[], { turns, bulges }: Levels): number[] {
  return widths.map((own, i) => own * levelReach({ turn: turns[i]!, bulge: bulges[i]! }).across);
}

/**
 * How far each level reaches across, x = width × across(turn), where the turn is that of the seam through its
 * neighbours, sin turn = (x₊ − x₋)/2 STEP: linear about the turns so far, one equation a level, solved from the waist
 * down (Thomas algorithm).
 */
function squaredReaches(widths: readonly number[], { turns, bulges }: Levels): number[] {
  const last = widths.length - 1;
  const upper: number[] = [];
  const right: number[] = [];
  for (let i = 0; i <= last; i++) {
    const turn = turns[i]!;
    const { across, acrossByTurn } = levelReach({ turn, bulge: bulges[i]! });
    const pull = i === 0 || i === last ? 0 : (widths[i]! * acrossByTurn) / Math.cos(turn);
    const beside = pull / (2 * STEP);
    const pivot = 1 - beside * (upper[i - 1] ?? 0);
    upper.push(-beside / pivot);
    right.push((widths[i]! * across - pull * Math.sin(turn) - beside * (right[i - 1] ?? 0)) / pivot);
  }
  const x = new Array<number>(last + 1).fill(0);
  for (let i = last; i >= 0; i--) x[i] = right[i]! - upper[i]! * (x[i + 1] ?? 0);
  return x;
}

/**
 * Part of the way to the squared level that one round goes. A turned level moves the seam, and the seam's places turn
 * the level again, the more the wider it is: whole steps would make the seam wave from place to place.
 */
function stepTowards(width: number, turn: number): number {
  const echo = (width * turn) / (3 * STEP);
  return Math.min(0.5, 1 / (1 + echo * echo));
}

function placesAt(x: readonly number[], turns: readonly number[], waist: number): Point[] | undefined {
  const firstRise = waist * levelReach({ turn: turns[0]!, bulge: 0 }).rise;
  const places = [{ x: x[0]!, y: -firstRise }];
  for (let i = 1; i < x.length; i++) {
    const across = x[i]! - x[i - 1]!;
    if (!(Math.abs(across) <= STEP * STEEPEST)) return undefined;
    places.push({ x: x[i]!, y: places[i - 1]!.y + downOver(across, turns[i]! - turns[i - 1]!) });
  }
  return places;
}

/** Which way a smooth seam through the places runs at each, from both neighbours; angle from the axis, radians. */
function anglesAt(places: readonly Point[]): number[] {
  const last = places.length - 1;
  const chord = (i: number): number =>
    Math.atan2(places[i + 1]!.x - places[i]!.x, places[i + 1]!.y - places[i]!.y);
  return places.map((_, i) => {
    if (i === 0) return chord(0) - (chord(1) - chord(0)) / 2;
    if (i === last) return chord(last - 1) + (chord(last - 1) - chord(last - 2)) / 2;
    return (chord(i - 1) + chord(i)) / 2;
  });
}

/** How far a stretch of seam runs down, whose length is STEP and which bends by `bend`: its chord is a little shorter. */
function downOver(across: number, bend: number): number {
  const chord = STEP * (1 - (bend * bend) / 24);
  return Math.sqrt(chord * chord - across * across);
}

/** One smooth line through the places, a cubic a step, its direction at each place taken from both neighbours. */
function smoothSeam(places: readonly Point[]): Cubic[] {
  const angles = anglesAt(places);
  return places.slice(1).map((to, i): Cubic => {
    const from = places[i]!;
    const third = STEP / 3;
    return {
      kind: 'cubic',
      from,
      control1: { x: from.x + Math.sin(angles[i]!) * third, y: from.y + Math.cos(angles[i]!) * third },
      control2: { x: to.x - Math.sin(angles[i + 1]!) * third, y: to.y - Math.cos(angles[i + 1]!) * third },
      to,
    };
  });
}

interface Place {
  readonly piece: Cubic;
  readonly t: number;
}

function placeOnSeam(pieces: readonly Cubic[], s: number): Place {
  const i = Math.min(pieces.length - 1, Math.max(0, Math.floor(s / STEP)));
  return { piece: pieces[i]!, t: s / STEP - i };
}

/** The seam in as few cubics as hold the line. */
function partOfSeam(pieces: readonly Cubic[], from: number, to: number): Curve[] {
  const curve = {
    pointAt: (s: number): Point => {
      const { piece, t } = placeOnSeam(pieces, s);
      return pointAt(piece, t);
    },
    derivativeAt: (s: number): Point => {
      const { piece, t } = placeOnSeam(pieces, s);
      return tangentAt(piece, t);
    },
  };
  return fitCubics(curve, from, to, FIT);
}
