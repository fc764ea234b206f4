import type { GownDraft } from '../draft/draft-gown.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Piece } from '../draft/piece.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { reversedRun } from '../geometry/split.ts';
import { reflected, translated } from '../geometry/transform.ts';
import { twoHalves } from '../gown/two-halves.ts';
import { isSameOutline } from './same-outline.ts';

const ORIGIN: Point = { x: 0, y: 0 };
const DOWN: Point = { x: 0, y: 1 };

/**
 * A mirrored gown whose sides were altered differently, as a ring: the left half from the centre front to the centre
 * back, then the right half back again. Pieces that are alike on both sides stay a pair; the others are left and right,
 * and halves on a fold that differ are one whole piece.
 */
export function bothSides(left: GownDraft, right: GownDraft): GownDraft {
  const rightPieces = [...right.pieces].reverse().map((piece) => mirroredPiece(piece));
  const pieces = [...left.pieces.map((piece) => sided(piece, 'left')), ...rightPieces];
  return {
    gown: twoHalves(left.gown, right.gown),
    shape: left.shape,
    pieces,
    frames: [...left.frames, ...[...right.frames].reverse().map(mirroredFrame)],
    waist: ringProfile(left.waist, right.waist),
    hem: ringProfile(left.hem, right.hem),
    lengths: [...left.lengths, ...[...right.lengths].reverse().slice(1)],
    cutAs: cutAs(left, right, pieces),
  };
}

/** The ways of the right half counted on from the centre back. */
function ringProfile(left: EdgeProfile, right: EdgeProfile): EdgeProfile {
  const half = left.ways[left.ways.length - 1]!;
  const whole = half + right.ways[right.ways.length - 1]!;
  const back = (way: number): number => whole - way;
  return {
    joins: [...left.joins, ...right.joins.map(back)].sort((a, b) => a - b),
    ways: [...left.ways, ...[...right.ways].reverse().slice(1).map(back)],
    valueAt: (way) => (way <= half ? left.valueAt(way) : right.valueAt(back(way))),
    slopeAt: (way) => (way <= half ? left.slopeAt(way) : -right.slopeAt(back(way))),
  };
}

function mirroredFrame(frame: GoreFrame): GoreFrame {
  const mirror = ({ x, y }: Point): Point => ({ x: -x, y });
  const curves = (run: readonly Curve[]) => run.map((curve) => reflected(curve, ORIGIN, DOWN));
  return {
    widthAt: frame.widthAt,
    pointAt: (s, f) => mirror(frame.pointAt(s, 1 - f)),
    downAt: (s, f) => -frame.downAt(s, 1 - f),
    bySlant: (s, f) => mirror(frame.bySlant(s, 1 - f)),
    levelAt: (s) => reversedRun(curves(frame.levelAt(s))),
    sideFrom: (side, from, to) => curves(frame.sideFrom(side === 'front' ? 'back' : 'front', from, to)),
  };
}

function sided(piece: Piece, side: 'left' | 'right'): Piece {
  return { ...piece, side, ...(piece.cut === 'on-fold' ? {} : { cut: 'single' }) };
}

/** A piece of the left half as it is cut for the right. */
function mirroredPiece(piece: Piece): Piece {
  const { from, to } = piece.grain;
  return sided(
    {
      ...piece,
      edges: mirroredEdges(piece, ORIGIN),
      frontEdge: piece.backEdge,
      backEdge: piece.frontEdge,
      grain: { kind: 'line', from: { x: -from.x, y: from.y }, to: { x: -to.x, y: to.y } },
    },
    'right',
  );
}

/** Still waist, right side, hem, left side, clockwise as drawn. */
function mirroredEdges({ edges }: Piece, about: Point): Edge[] {
  const [waist, right, hem, left] = edges.map(({ name, curves }) => ({
    name,
    curves: reversedRun(curves.map((curve) => reflected(curve, about, DOWN))),
  }));
  return [waist!, left!, hem!, right!];
}

function cutAs(left: GownDraft, right: GownDraft, pieces: readonly Piece[]): NonNullable<GownDraft['cutAs']> {
  return left.pieces.flatMap((piece, gore) => {
    const other = pieces.length - 1 - gore;
    if (isSameOutline(piece, right.pieces[gore]!)) return [{ piece, gore }];
    if (piece.cut === 'on-fold') return [{ piece: unfolded(piece, right.pieces[gore]!), gore }];
    return [
      { piece: pieces[gore]!, gore },
      { piece: pieces[other]!, gore: other },
    ];
  });
}

/** Two halves that differ, joined along the fold that they would have had; the left one stays where it was. */
function unfolded(left: Piece, right: Piece): Piece {
  const [to, from] = [foldTop(left), foldTop(right)];
  const shift = { x: to.x - from.x, y: to.y - from.y };
  const other = mirroredEdges(right, from).map(({ name, curves }) => ({
    name,
    curves: curves.map((curve) => translated(curve, shift)),
  }));
  const [one, two] = left.frontEdge === 'fold' ? [other, left.edges] : [left.edges, other];
  return {
    ...left,
    edges: [
      { name: one[WAIST]!.name, curves: [...one[WAIST]!.curves, ...two[WAIST]!.curves] },
      two[RIGHT]!,
      { name: one[HEM]!.name, curves: [...two[HEM]!.curves, ...one[HEM]!.curves] },
      one[LEFT]!,
    ],
    frontEdge: one[LEFT]!.name,
    backEdge: two[RIGHT]!.name,
    cut: 'single',
    middle: left.frontEdge === 'fold' ? 'front' : 'back',
  };
}

/** Places of the edges in a piece. */
const [WAIST, RIGHT, HEM, LEFT] = [0, 1, 2, 3];

function foldTop({ edges }: Piece): Point {
  const fold = edges.find(({ name }) => name === 'fold')!.curves;
  const [from, to] = [startOf(fold[0]!), endOf(fold[fold.length - 1]!)];
  return from.y < to.y ? from : to;
}
