import type { Piece } from '../draft/piece.ts';
import { chordOf, type DrawnSide, isFrontLeft, sideDown, sidesAt } from '../draft/piece-sides.ts';
import type { Line, Point } from '../geometry/curve.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { along, leftOf, subtract, unit } from '../geometry/point.ts';
import { pointOnRun } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import type { Layer } from '../gown/layer.ts';
import type { Pleat } from '../gown/parts.ts';
import { takenBeside } from './dart-waist.ts';
import type { TopFullness } from './top-fullness.ts';

/**
 * One fold of a pleat on a piece as it is sewn: the line that its outer edge lies on, and on which side of that line
 * the cloth that it takes lies underneath. A knife pleat is one fold. Two of a box pleat turn their backs to each other,
 * their inner edges meeting behind the face; two of an inverted pleat face each other.
 */
export interface PleatFold {
  readonly pleat: Pleat;
  /** From the waist seam to the hem. */
  readonly line: Line;
  readonly under: 'left' | 'right';
}

export function pleatsOfLayer(pleats: readonly Pleat[], { name }: Pick<Layer, 'name'>): readonly Pleat[] {
  return pleats.filter(({ layers }) => layers.includes(name));
}

/** Every fold of a piece, in the order in which they are opened out: from the right, so that each leaves those after it in place. */
export function pleatFolds(pleats: readonly Pleat[], piece: Piece, full?: TopFullness): PleatFold[] {
  const folds = pleats.filter(({ kind }) => kind !== 'kick').flatMap((pleat) => foldsOf(pleat, piece, full));
  return folds.sort(
    (a, b) => b.line.from.x - a.line.from.x || (a.under === b.under ? 0 : a.under === 'right' ? -1 : 1),
  );
}

function foldsOf(pleat: Pleat, piece: Piece, full: TopFullness | undefined): PleatFold[] {
  if (pleat.fromSeam !== undefined) {
    if (pleat.gore !== piece.gore) return [];
    return sidesAt(piece, pleat.at).flatMap((side) =>
      inside(pleat, piece, lineBeside(pleat, piece, side, full)),
    );
  }
  const middle = middleLine(piece);
  if (middle !== undefined && pleat.at === `centre-${piece.middle}`) return inside(pleat, piece, middle);
  return sidesAt(piece, pleat.at).flatMap((side) => atSide(pleat, piece, side));
}

/** Folds whose line has the gore's cloth on both sides of it. */
function inside(pleat: Pleat, piece: Piece, line: Line): PleatFold[] {
  const { kind, foldDepth } = pleat;
  if (kind === 'inverted') return (['right', 'left'] as const).map((under) => ({ pleat, line, under }));
  if (kind === 'box')
    return [
      { pleat, line: movedRight(line, foldDepth), under: 'left' },
      { pleat, line: movedRight(line, -foldDepth), under: 'right' },
    ];
  const pointsRight = (pleat.towards === 'front') !== isFrontLeft(piece);
  return [{ pleat, line, under: pointsRight ? 'left' : 'right' }];
}

/** At a seam each gore has half of the pleat; a knife pleat is all on the gore whose edge lies on top. */
function atSide(pleat: Pleat, piece: Piece, side: DrawnSide): PleatFold[] {
  const line = chordOf(piece, side);
  const inwards: DrawnSide = side === 'right' ? 'left' : 'right';
  if (pleat.kind === 'box') {
    const by = side === 'right' ? -pleat.foldDepth : pleat.foldDepth;
    return [{ pleat, line: movedRight(line, by), under: side }];
  }
  if (pleat.kind === 'knife' && !liesOnTop(pleat, piece, side)) return [];
  return [{ pleat, line, under: inwards }];
}

/** The outer fold points towards the other gore. */
function liesOnTop({ towards }: Pleat, piece: Piece, side: DrawnSide): boolean {
  const isInFront = (side === 'right') === isFrontLeft(piece);
  return isInFront === (towards !== 'front');
}

/** A piece that would lie on the fold if its halves were alike: down its middle. */
function middleLine(piece: Piece): Line | undefined {
  if (piece.middle === undefined) return undefined;
  const { x } = piece.grain.from;
  return { kind: 'line', from: { x, y: heightAt(piece, 0, x) }, to: { x, y: heightAt(piece, 2, x) } };
}

function heightAt(piece: Piece, edge: 0 | 2, x: number): number {
  const { curves } = piece.edges[edge]!;
  const places = Array.from({ length: 64 * curves.length + 1 }, (_, i) => pointOnRun(curves, i / 64));
  return places.reduce((best, point) => (Math.abs(point.x - x) < Math.abs(best.x - x) ? point : best)).y;
}

/**
 * So far along the waist seam from a side, as it is sewn, past what darts take in; and down the gore there, between the
 * ways that its two sides run.
 */
function lineBeside(
  { fromSeam = 0 }: Pleat,
  piece: Piece,
  side: DrawnSide,
  full: TopFullness | undefined,
): Line {
  const away = fromSeam + (full?.rule.by === 'darts' ? takenBeside(piece, full, side, fromSeam) : 0);
  const waist = side === 'left' ? piece.edges[0]!.curves : reversedRun(piece.edges[0]!.curves);
  const { curve, t } = placeOnRun(waist, away);
  const from = pointAt(curve, t);
  const share = Math.min(1, away / lengthOfRun(waist));
  const [own, other] = [side, side === 'left' ? ('right' as const) : ('left' as const)].map((edge) => {
    const chord = chordOf(piece, edge);
    return Math.atan2(chord.to.x - chord.from.x, chord.to.y - chord.from.y);
  }) as [number, number];
  const angle = own + (other - own) * share;
  const reach = lengthOfRun(sideDown(piece, side));
  return {
    kind: 'line',
    from,
    to: along(from, { x: Math.sin(angle), y: Math.cos(angle) }, reach),
  };
}

function movedRight({ from, to }: Line, by: number): Line {
  const right = leftOf(unit(subtract(to, from)));
  const moved = (point: Point): Point => along(point, right, by);
  return { kind: 'line', from: moved(from), to: moved(to) };
}
