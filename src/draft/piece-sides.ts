import type { Curve, Line } from '../geometry/curve.ts';
import { endOf, pointAt, startOf } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { dot, leftOf, subtract, unit } from '../geometry/point.ts';
import { reversedRun } from '../geometry/split.ts';
import type { Piece } from './piece.ts';

export type DrawnSide = 'left' | 'right';

/** Places of a piece's sides among its edges. */
const SIDES = { right: 1, left: 3 } as const;

/** Whether the front of her lies at the left of a piece as it is drawn: not so on her right side. */
export function isFrontLeft({ side }: Pick<Piece, 'side'>): boolean {
  return side !== 'right';
}

/** The drawn sides of a piece that lie at a station, be it a seam or the fold of the cloth. */
export function sidesAt(piece: Piece, station: string): DrawnSide[] {
  return (['right', 'left'] as const).filter((side) => {
    const { name } = piece.edges[SIDES[side]]!;
    return name === station || (name === 'fold' && station === centreOfFold(piece));
  });
}

/** The centre at which a piece lies on the fold. */
export function centreOfFold({ frontEdge }: Pick<Piece, 'frontEdge'>): string {
  return frontEdge === 'fold' ? 'centre-front' : 'centre-back';
}

/** A side from the waist down. */
export function sideDown(piece: Piece, side: DrawnSide): readonly Curve[] {
  const { curves } = piece.edges[SIDES[side]]!;
  return side === 'right' ? curves : reversedRun(curves);
}

/** The straight line from the top of a side to its hem. */
export function chordOf(piece: Piece, side: DrawnSide): Line {
  const run = sideDown(piece, side);
  return { kind: 'line', from: startOf(run[0]!), to: endOf(run[run.length - 1]!) };
}

/** Farthest that a side lies from the straight line between its ends, mm. */
export function bendOf(piece: Piece, side: DrawnSide, from = 0): number {
  const run = sideDown(piece, side);
  const whole = lengthOfRun(run);
  const points = Array.from({ length: 41 }, (_, i) => {
    const { curve, t } = placeOnRun(run, from + ((whole - from) * i) / 40);
    return pointAt(curve, t);
  });
  const [first, last] = [points[0]!, points[40]!];
  const out = leftOf(unit(subtract(last, first)));
  return Math.max(...points.map((point) => Math.abs(dot(subtract(point, first), out))));
}
