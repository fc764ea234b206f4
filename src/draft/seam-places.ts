import type { Point } from '../geometry/curve.ts';
import { bulgeFor, levelReach } from './gore-level.ts';
import type { WidthDown } from './width-down.ts';

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

/** Slant distance between two computed places of the seam, mm. Larger blurs a hip; smaller only costs time. */
export const STEP = 8;
/** The steepest that a seam may run away from the grain: beyond it, a level can no longer meet it squarely. */
const STEEPEST = 0.985;

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
export function seamPlaces(width: WidthDown, count: number, axis: Axis): readonly Point[] | undefined {
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
export function anglesAt(places: readonly Point[]): number[] {
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
