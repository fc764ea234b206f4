import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, pointAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { along, dot, leftOf, scaled, subtract, unit } from '../geometry/point.ts';
import { partOfRun, positionAt, positionWhere } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import { placed, placedPoint } from '../geometry/transform.ts';
import type { Pleat } from '../gown/parts.ts';
import type { CutPiece, Piece } from './piece.ts';
import { type DrawnSide, isFrontLeft, sideDown, sidesAt } from './piece-sides.ts';
import { arrowFrom, PLEAT_MARKS } from './pleat-marks.ts';

/** A piece with what its kick pleats add at its seams, and their lines. */
export interface WithKicks {
  readonly piece: Piece;
  readonly marks: CutPiece['marks'];
}

/**
 * At the lower end of a seam both gores have cloth beyond it, as deep as the fold: the hem there is the mirror image of
 * the front gore's hem, on both, so that folded to either side it lies level and the two outer edges are one length. The
 * seam turns out to it at half a right angle, so that it does not pull at a corner.
 */
export function withKicks(piece: Piece, pleats: readonly Pleat[], others: readonly Piece[]): WithKicks {
  return pleats
    .filter(({ kind }) => kind === 'kick')
    .reduce(
      (own: WithKicks, pleat) =>
        sidesAt(piece, pleat.at).reduce((with_, side) => withKick(with_, pleat, side, others), own),
      { piece, marks: [] },
    );
}

/** The lower end of a side: where it meets the hem, which way it runs there, and which way is out of the piece. */
interface Foot {
  readonly at: Point;
  readonly down: Point;
  readonly out: Point;
}

function footOf(piece: Piece, side: DrawnSide, height: number): Foot {
  const run = sideDown(piece, side);
  const at = endOf(run[run.length - 1]!);
  const { curve, t } = placeOnRun(run, lengthOfRun(run) - height);
  const down = unit(subtract(at, pointAt(curve, t)));
  const right = leftOf(down);
  return { at, down, out: side === 'right' ? right : scaled(right, -1) };
}

function withKick(
  { piece, marks }: WithKicks,
  { at, aboveHem = 0, foldDepth }: Pleat,
  side: DrawnSide,
  others: readonly Piece[],
): WithKicks {
  const foot = footOf(piece, side, aboveHem);
  const top = along(foot.at, foot.down, -aboveHem);
  const corner = along(along(top, foot.out, foldDepth), foot.down, foldDepth);
  const hemBeyond = hemOfFront(piece, side, at, others, foldDepth, aboveHem).map((curve) =>
    ontoFoot(curve, foot),
  );
  const outerEnd = endOf(hemBeyond[hemBeyond.length - 1]!);
  const own = sideDown(piece, side);
  const upper = partOfRun(own, 0, positionAt(own, lengthOfRun(own) - aboveHem));
  const seam: Curve[] = [...upper, straight(top, corner), straight(corner, outerEnd)];
  const edges = piece.edges.map((edge, i): Edge => {
    if (i === 2) {
      const { curves } = edge;
      const beyond = side === 'right' ? reversedRun(hemBeyond) : hemBeyond;
      return { ...edge, curves: side === 'right' ? [...beyond, ...curves] : [...curves, ...beyond] };
    }
    if (i !== (side === 'right' ? 1 : 3)) return edge;
    return { ...edge, curves: side === 'right' ? seam : reversedRun(seam) };
  });
  const arrowAt = along(foot.at, foot.down, -Math.min(60, aboveHem / 3));
  return {
    piece: { ...piece, edges },
    marks: [
      ...marks,
      { name: PLEAT_MARKS.fold, curves: [straight(top, foot.at)] },
      {
        name: PLEAT_MARKS.arrow,
        curves: arrowFrom(along(arrowAt, foot.out, foldDepth), arrowAt, foot.down),
      },
    ],
  };
}

/** The front gore's hem from the seam inwards for the depth of the fold, in a frame of its own: out along x, down along y. */
function hemOfFront(
  piece: Piece,
  side: DrawnSide,
  station: string,
  others: readonly Piece[],
  depth: number,
  height: number,
): Curve[] {
  const isInFront = (one: Piece, drawn: DrawnSide): boolean => (drawn === 'right') === isFrontLeft(one);
  const found = isInFront(piece, side)
    ? undefined
    : others.flatMap((one) =>
        sidesAt(one, station)
          .filter((drawn) => isInFront(one, drawn))
          .map((drawn) => ({ piece: one, side: drawn })),
      )[0];
  const front = found ?? { piece, side };
  const foot = footOf(front.piece, front.side, height);
  const { curves } = front.piece.edges[2]!;
  const inwards = front.side === 'right' ? curves : reversedRun(curves);
  const end = positionWhere(inwards, (point) => -dot(subtract(point, foot.at), foot.out), depth);
  return partOfRun(inwards, 0, end).map((curve) => intoFrame(curve, foot));
}

/** Inwards becomes outwards: the mirror image in the seam. */
function intoFrame(curve: Curve, { at, down, out }: Foot): Curve {
  const angle = -Math.atan2(-out.y, -out.x);
  const mirror = isMirrored(scaled(out, -1), down);
  const turn = { mirror: false, angle, shift: { x: 0, y: 0 } };
  const shift = scaled(placedPoint(turn, at), -1);
  const own = placed({ ...turn, shift }, curve);
  return mirror ? placed({ mirror: true, angle: Math.PI, shift: { x: 0, y: 0 } }, own) : own;
}

function ontoFoot(curve: Curve, { at, down, out }: Foot): Curve {
  const own = isMirrored(out, down)
    ? placed({ mirror: true, angle: Math.PI, shift: { x: 0, y: 0 } }, curve)
    : curve;
  return placed({ mirror: false, angle: Math.atan2(out.y, out.x), shift: at }, own);
}

/** Whether `down` lies to the other side of `out` than y does of x. */
function isMirrored(out: Point, down: Point): boolean {
  return out.x * down.y - out.y * down.x < 0;
}

function straight(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}
