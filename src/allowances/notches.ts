import type { Notch, Piece } from '../draft/piece.ts';
import type { Line } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { along, leftOf, scaled } from '../geometry/point.ts';
import { reversedRun } from '../geometry/split.ts';

/** One balance mark per 40 to 50 cm of seam (common practice). */
const SPACING = 450;
/** Marks of different seams keep at least this apart, so that no wrong pair can match (textbook: 1.3 cm). */
export const APART = 13.5;
const APART_AT_BEST = 25;
/** First mark from the waist on the first seam. */
const FIRST = 120;
/** Between the two ticks of a double notch. */
const DOUBLE = 6;
/** A notch is no deeper than this, and leaves the seam line alone. */
const TICK = 6;

/** Distances from the waist at which each seam is marked: every seam its own, so that only true partners match. */
export function notchDistances(seamLengths: readonly number[]): number[][] {
  const count = seamLengths.length;
  const spacing = Math.max(SPACING, APART * count);
  const shortest = Math.min(...seamLengths);
  const room = Math.min(spacing, shortest * 0.6);
  const step = Math.min(APART_AT_BEST, room / count);
  const first = Math.min(FIRST, shortest * 0.2);
  return seamLengths.map((length, seam) => {
    const own = first + step * seam;
    const marks = [own];
    for (let next = own + spacing; next <= length - first; next += spacing) marks.push(next);
    return marks;
  });
}

/** Notches of one piece: single on its front edge, double on its back edge, from the cut line inwards. */
export function notchesOf(
  piece: Piece,
  distances: ReadonlyMap<string, readonly number[]>,
  widths: Readonly<Record<string, number>>,
): Notch[] {
  const [upper, back, lower, front] = piece.edges;
  // On the wearer's right of a gown that is drafted all round, the edge drawn first lies towards the back.
  const firstIsDouble = piece.side === 'right' || piece.middle === 'front';
  const secondIsDouble = piece.middle === undefined ? !firstIsDouble : firstIsDouble;
  const marked = (name: string, seam: Curves, outwards: 1 | -1, double: boolean): Notch[] =>
    (distances.get(name) ?? []).map((distance) => ({
      edge: name,
      distance,
      ticks: ticksAt(seam, distance, widths[name] ?? 0, outwards, double),
    }));
  const alongs = (...edges: readonly [Edge, 1 | -1][]): Notch[] =>
    edges
      .filter(([{ name }]) => name !== piece.frontEdge && name !== piece.backEdge)
      .flatMap(([{ name, curves }, outwards]) =>
        marked(name, outwards === 1 ? curves : reversedRun(curves), outwards, false),
      );
  return [
    ...marked(piece.frontEdge, reversedRun(front!.curves), -1, firstIsDouble),
    ...marked(piece.backEdge, back!.curves, 1, secondIsDouble),
    // Of a band, whose long edge is sewn to seams: across the piece from left to right.
    ...alongs([upper!, 1], [lower!, -1]),
  ];
}

type Curves = Piece['edges'][number]['curves'];

/**
 * @param seam the seam line from the waist down
 * @param outwards 1 where the piece lies on the right of that direction
 */
function ticksAt(seam: Curves, distance: number, width: number, outwards: 1 | -1, double: boolean): Line[] {
  const length = lengthOfRun(seam);
  return (double ? [-DOUBLE / 2, DOUBLE / 2] : [0]).map((away): Line => {
    const place = placeOnRun(seam, Math.min(length, Math.max(0, distance + away)));
    const point = pointAt(place.curve, place.t);
    const outward = scaled(leftOf(tangentAt(place.curve, place.t)), outwards);
    // Without an allowance the tick has to go into the piece; otherwise it stays clear of the seam line.
    const depth = width === 0 ? TICK / 2 : Math.min(TICK, width * 0.6);
    return { kind: 'line', from: along(point, outward, width), to: along(point, outward, width - depth) };
  });
}
