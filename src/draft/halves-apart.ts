import type { Point } from '../geometry/curve.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { translated } from '../geometry/transform.ts';
import type { Piece } from './piece.ts';
import { isSameOutline } from './same-outline.ts';
import { outlineAcross } from './unfolded.ts';

/**
 * What is cut for a piece of the left half and its like on the right, both drawn as the left: the pair that they are
 * where they are alike, one whole piece where they are halves on a fold, else a left one and a right one.
 */
export function cutOfHalves(left: Piece, right: Piece): Piece[] {
  if (isSameOutline(left, right)) return [left];
  if (left.cut === 'on-fold') return [unfolded(left, right)];
  return [sided(left, 'left'), mirroredPiece(right)];
}

export function sided(piece: Piece, side: 'left' | 'right'): Piece {
  return { ...piece, side, ...(piece.cut === 'on-fold' ? {} : { cut: 'single' }) };
}

/** A piece of the left half as it is cut for the right. */
export function mirroredPiece(piece: Piece): Piece {
  const { from, to } = piece.grain;
  return sided(
    {
      ...piece,
      edges: outlineAcross(piece.edges, 0),
      frontEdge: piece.backEdge,
      backEdge: piece.frontEdge,
      grain: { kind: 'line', from: { x: -from.x, y: from.y }, to: { x: -to.x, y: to.y } },
    },
    'right',
  );
}

/** A half on the fold opened out, to be cut in one piece. */
export function wholeOf(half: Piece): Piece {
  return unfolded(half, half);
}

/** Two halves, joined along the fold that they would have had; the left one stays where it was. */
function unfolded(left: Piece, right: Piece): Piece {
  const [to, from] = [foldTop(left), foldTop(right)];
  const shift = { x: to.x - from.x, y: to.y - from.y };
  const other = outlineAcross(right.edges, from.x).map(({ name, curves }) => ({
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
