import type { Point } from '../geometry/curve.ts';
import { bulgeFor, levelReach } from './gore-level.ts';
import { leastSquares, type Row } from './least-squares.ts';
import { angleStretches, type Stretch, seamOf } from './seam-angles.ts';
import type { WidthDown } from './width-down.ts';

/**
 * What stands beside the seam: `edge`, an edge or a fold that keeps its true length because somebody measured it, the
 * levels bulging a little to reach both; or `middle`, only the middle of a gore, and every level is a circle, square to
 * both seams.
 */
export type Axis = 'edge' | 'middle';

/** A place of the seam: how far down, where it lies, and which way it runs there, angle from the axis, radians. */
export interface SeamPlace extends Point {
  readonly s: number;
  readonly angle: number;
}

/** The steepest that a seam may run away from the grain: beyond it, a level can no longer meet it squarely. */
const STEEPEST = Math.asin(0.985);

/** Stretches that the seam is computed in, at least. More follow a hip more closely; fewer cost less time. */
const STRETCHES = 72;

/**
 * What is worth what, as shares of how far down the gore goes, a metre in round numbers: a level that is stated may miss
 * its width by a micrometre or two, one between two of those by a twentieth of a millimetre, and from one stretch to
 * the next the seam may bend by a thousandth of a millimetre's inverse more or less. Flat cloth cannot keep all widths,
 * both lengths and every corner of the girths' curve: what it keeps is a seam without waves.
 */
const STATED_MISS = 1e-6;
const MISS_BETWEEN = 5e-5;
const UNEVENNESS = 1;

/** Rounds at most, and the change of an angle at which they have settled, radians. */
const ROUNDS = 24;
const SETTLED = 1e-10;

/**
 * Places of the seam from the level waist down: at true width along the levels, at true length from place to place, and
 * every level square to the seam as it comes out. The levels turn with the seam, and the seam goes where they reach: the
 * angles at all places are found together, by Gauss and Newton's method of least squares.
 * @param length how far down it is wanted, mm
 * @returns undefined where the width grows faster than a seam can follow
 */
export function seamPlaces(width: WidthDown, length: number, axis: Axis): readonly SeamPlace[] | undefined {
  const s = downTo(length, width.levels);
  const widths = s.map((at) => width.valueAt(at));
  const slopes = s.map((at) => width.slopeAt(at));
  if (widths.some((own) => !(own > 0)) || slopes.some((turn) => Math.abs(turn) > STEEPEST)) return undefined;
  const weights = s.map((at) => 1 / (length * (width.levels.includes(at) ? STATED_MISS : MISS_BETWEEN)));
  let angles: readonly number[] = slopes;
  for (let round = 0; round < ROUNDS; round++) {
    const places = laidOut(s, angles, widths[0]!);
    const misses = places.places.slice(1).map((place, i) => missAt(place, s[i + 1]!, widths[i + 1]!, axis));
    const rows = [
      ...misses.map((miss, i) =>
        widthRow(miss, places.stretches, i + 1, widths[0]!, angles[0]!, weights[i + 1]!),
      ),
      ...evenRows(s, angles, length / UNEVENNESS),
    ];
    const change = leastSquares(rows, angles.length);
    angles = angles.map((angle, i) => angle + change[i]!);
    if (!angles.every((angle) => Math.abs(angle) < STEEPEST)) return undefined;
    if (Math.max(...change.map(Math.abs)) < SETTLED) break;
  }
  return laidOut(s, angles, widths[0]!).places;
}

/** Slant distances of the places: the stated levels, and evenly between them. */
function downTo(length: number, levels: readonly number[]): number[] {
  const stops = [0, ...levels.filter((level) => level > 0 && level < length), length];
  return [
    0,
    ...stops.slice(1).flatMap((stop, i) => {
      const from = stops[i]!;
      const count = Math.max(1, Math.round((STRETCHES * (stop - from)) / length));
      return Array.from({ length: count }, (_, k) =>
        k === count - 1 ? stop : from + ((stop - from) * (k + 1)) / count,
      );
    }),
  ];
}

/** The seam with these angles. The level waist is a circle, on either kind of axis. */
function laidOut(
  s: readonly number[],
  angles: readonly number[],
  waist: number,
): { readonly places: readonly SeamPlace[]; readonly stretches: readonly Stretch[] } {
  const { across, rise } = levelReach({ turn: angles[0]!, bulge: 0 });
  const stretches = angleStretches(s, angles);
  const points = seamOf({ x: waist * across, y: -waist * rise }, stretches);
  return { places: points.map((point, i) => ({ ...point, s: s[i]!, angle: angles[i]! })), stretches };
}

/** By how much a level misses its width, mm, and how that changes with where the seam is and with its angle. */
interface Miss {
  readonly by: number;
  readonly byX: number;
  readonly byY: number;
  readonly byAngle: number;
}

function missAt({ x, y, angle }: SeamPlace, s: number, width: number, axis: Axis): Miss {
  const slope = (s - y) / x;
  const bulge = axis === 'middle' ? 0 : bulgeFor(angle, slope, 0);
  const { across, acrossBy, acrossByTurn, riseBy, riseByTurn } = levelReach({ turn: angle, bulge });
  const by = x / across - width;
  const perAcross = -x / across ** 2;
  if (axis === 'middle') return { by, byX: 1 / across, byY: 0, byAngle: perAcross * acrossByTurn };
  // The bulge keeps rise = slope × across as the place and the angle change.
  const keeps = riseBy - slope * acrossBy;
  const bulgeByAngle = -(riseByTurn - slope * acrossByTurn) / keeps;
  const bulgeBySlope = across / keeps;
  return {
    by,
    byX: 1 / across + perAcross * acrossBy * bulgeBySlope * (-slope / x),
    byY: perAcross * acrossBy * bulgeBySlope * (-1 / x),
    byAngle: perAcross * (acrossByTurn + acrossBy * bulgeByAngle),
  };
}

/** One width: its miss, and how it changes with every angle from the waist down to its own. */
function widthRow(
  miss: Miss,
  stretches: readonly Stretch[],
  place: number,
  waist: number,
  first: number,
  weight: number,
): Row {
  const by = new Array<number>(place + 1).fill(0);
  for (const [i, { first: upper, last: lower }] of stretches.slice(0, place).entries()) {
    by[i]! += miss.byX * upper.x + miss.byY * upper.y;
    by[i + 1]! += miss.byX * lower.x + miss.byY * lower.y;
  }
  const { acrossByTurn, riseByTurn } = levelReach({ turn: first, bulge: 0 });
  by[0]! += waist * (miss.byX * acrossByTurn - miss.byY * riseByTurn);
  by[place]! += miss.byAngle;
  return { from: 0, by: by.map((own) => own * weight), miss: miss.by * weight };
}

/** How much more the seam bends in one stretch than in the one before. */
function evenRows(s: readonly number[], angles: readonly number[], weight: number): Row[] {
  return angles.slice(2).map((_, i) => {
    const [upper, lower] = [s[i + 1]! - s[i]!, s[i + 2]! - s[i + 1]!];
    const by = [weight / upper, -weight / upper - weight / lower, weight / lower];
    return { from: i, by, miss: by.reduce((sum, own, k) => sum + own * angles[i + k]!, 0) };
  });
}
