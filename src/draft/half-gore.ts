import type { Cubic, Curve, Point } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { FIT } from '../geometry/tolerances.ts';
import { type Level, levelAngle, levelPoint, levelTo } from './gore-level.ts';
import { type Axis, anglesAt, STEP, seamPlaces } from './seam-places.ts';
import type { WidthDown } from './width-down.ts';

/** One half of a gore shaped over a body, laid flat: a straight axis on the grain, and the seam beside it. See `Axis`. */
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

/**
 * @param width of the half, along the level
 * @param length how far down the seam is wanted, mm
 * @returns undefined where the width grows faster than a seam can follow
 */
export function halfGore(width: WidthDown, length: number, axis: Axis): HalfGore | undefined {
  const seam = seamPlaces(width, Math.ceil(length / STEP) + 1, axis);
  if (seam === undefined) return undefined;
  const pieces = smoothSeam(seam);
  const place = (s: number): SeamPlace => placeOnSeam(pieces, s);
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

interface SeamPlace {
  readonly piece: Cubic;
  readonly t: number;
}

function placeOnSeam(pieces: readonly Cubic[], s: number): SeamPlace {
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
