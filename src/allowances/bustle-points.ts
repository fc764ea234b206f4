import type { BustleMarked, CutPiece, Piece } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
import { startOf } from '../geometry/evaluate.ts';
import { oval } from '../geometry/oval.ts';
import { JOIN } from '../geometry/tolerances.ts';
import { bustlePlace } from '../gown/bustle-place.ts';

export const BUSTLE_MARKS = { anchor: 'bustle-anchor', pickUp: 'bustle-pick-up' } as const;

/** Half the width of a ring or a cross, mm: seen on a sheet, and no larger than what is sewn there. */
const HALF = 4;

/**
 * A ring where a point is anchored, a cross where the cloth is picked up. Of what stands on a fold the half that lies on
 * the piece.
 */
export function bustleMarks(points: readonly BustleMarked[], { edges }: Piece): CutPiece['marks'] {
  const onFold = (at: Point): Half | undefined =>
    edges.flatMap(({ name, curves }, i): Half[] =>
      name === 'fold' && Math.abs(startOf(curves[0]!).x - at.x) < JOIN ? [i === 1 ? 'left' : 'right'] : [],
    )[0];
  return points.flatMap(({ at: [anchor, pickUp] }) => [
    { name: BUSTLE_MARKS.anchor, curves: ringAt(anchor, onFold(anchor)) },
    ...crossAt(pickUp, onFold(pickUp)).map((line) => ({ name: BUSTLE_MARKS.pickUp, curves: [line] })),
  ]);
}

type Half = 'left' | 'right';

function ringAt(at: Point, half: Half | undefined): Curve[] {
  const [leftTop, topRight, rightBottom, bottomLeft] = oval(at, HALF, HALF);
  if (half === undefined) return [leftTop!, topRight!, rightBottom!, bottomLeft!];
  return half === 'right' ? [topRight!, rightBottom!] : [bottomLeft!, leftTop!];
}

function crossAt({ x, y }: Point, half: Half | undefined): Line[] {
  const [left, right] = [half === 'right' ? 0 : -HALF, half === 'left' ? 0 : HALF];
  return [1, -1].map((side) => ({
    kind: 'line',
    from: { x: x + left, y: y + side * left },
    to: { x: x + right, y: y + side * right },
  }));
}

/** Each place once: a seam that both side edges of a piece are, or a half that is cut whole, has it twice. */
export function bustleRemarks(points: readonly BustleMarked[]): PieceRemark[] {
  const seen = points.filter((point, i) => points.findIndex((one) => isAt(one, point)) === i);
  if (seen.length === 0) return [];
  return [
    {
      kind: 'bustle',
      layer: seen[0]!.layer,
      points: seen.map((point) => ({
        place: bustlePlace(point),
        anchor: point.anchor,
        pickUp: point.pickUp,
      })),
    },
  ];
}

function isAt(a: BustleMarked, b: BustleMarked): boolean {
  return a.seam === b.seam && a.across === b.across && a.anchor === b.anchor;
}
