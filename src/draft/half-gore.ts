import type { Cubic, Curve, Point } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { FIT, SEAM_FIT } from '../geometry/tolerances.ts';
import { type GoreLevel, levelAngle, levelPoint, levelTo } from './gore-level.ts';
import { type Axis, type SeamPlace, seamPlaces } from './seam-places.ts';
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
  const seam = seamPlaces(width, length, axis);
  if (seam === undefined) return undefined;
  const pieces = smoothSeam(seam);
  const place = placesOn(seam, pieces);
  // One place is asked for its point, its direction and its movement in turn.
  let last: (GoreLevel & { readonly s: number }) | undefined;
  const levelOf = (s: number): GoreLevel => {
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
    seamFrom: (from, to) => partOfSeam(place, from, to),
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

/** One smooth line through the places, a cubic a stretch, as long as the stretch and with its direction at both ends. */
function smoothSeam(places: readonly SeamPlace[]): Curve[] {
  const [first, last] = [places[0]!, places[places.length - 1]!];
  return [
    straightFrom(ahead(first, -1), first),
    ...places.slice(1).map((to, i): Cubic => {
      const from = places[i]!;
      // Of an arc: a third of its length where it is straight, a little more where it bends.
      const bend = (to.angle - from.angle) / 4;
      const third = ((to.s - from.s) / 3) * (Math.abs(bend) < 1e-4 ? 1 : Math.tan(bend) / bend);
      return {
        kind: 'cubic',
        from: { x: from.x, y: from.y },
        control1: ahead(from, third),
        control2: ahead(to, -third),
        to: { x: to.x, y: to.y },
      };
    }),
    straightFrom(last, ahead(last, 1)),
  ];
}

/** So far on from a place, straight, mm. */
function ahead({ x, y, angle }: SeamPlace, by: number): Point {
  return { x: x + Math.sin(angle) * by, y: y + Math.cos(angle) * by };
}

function straightFrom(from: Point, to: Point): Curve {
  return { kind: 'line', from: { x: from.x, y: from.y }, to: { x: to.x, y: to.y } };
}

interface PlaceOnCurve {
  readonly piece: Curve;
  readonly t: number;
}

/** The place on the seam at a slant distance; above the level waist and below the last place the seam runs on straight. */
function placesOn(places: readonly SeamPlace[], pieces: readonly Curve[]): (s: number) => PlaceOnCurve {
  const last = places.length - 1;
  return (s) => {
    if (s <= 0) return { piece: pieces[0]!, t: 1 + s };
    let [low, high] = [0, last];
    if (s >= places[last]!.s) return { piece: pieces[last + 1]!, t: s - places[last]!.s };
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (places[middle]!.s <= s) low = middle;
      else high = middle;
    }
    return { piece: pieces[low + 1]!, t: (s - places[low]!.s) / (places[high]!.s - places[low]!.s) };
  };
}

/** The seam in as few cubics as hold the line. */
function partOfSeam(place: (s: number) => PlaceOnCurve, from: number, to: number): Curve[] {
  const curve = {
    pointAt: (s: number): Point => {
      const { piece, t } = place(s);
      return pointAt(piece, t);
    },
    derivativeAt: (s: number): Point => {
      const { piece, t } = place(s);
      return tangentAt(piece, t);
    },
  };
  return fitCubics(curve, from, to, SEAM_FIT);
}
