import type { CutPiece } from '../draft/piece.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { type Region, regionOf } from '../geometry/region.ts';
import { reversedRun } from '../geometry/split.ts';
import { reflected } from '../geometry/transform.ts';

/** What lies on the table once a piece is cut, or what of it a new piece may use. */
export interface Cloth {
  readonly region: Region;
  /** x of the fold that the piece was cut on, where it lies unfolded; it runs along the grain. */
  readonly foldAt?: number;
}

/**
 * The cloth of a piece as another piece can use it: unfolded for one that is cut whole, and one half of it only for
 * each piece of a pair.
 */
export function clothOf({ cutEdges }: CutPiece, user: CutPiece): Cloth {
  const fold = cutEdges.findIndex((edge) => edge.name === 'fold');
  const plain = cutEdges.map(({ curves }, edge) => ({ curves, edge }));
  if (fold < 0 || user.piece.cut === 'pair') return { region: regionOf(plain) };
  const half = [1, 2, 3].map((step) => plain[(fold + step) % plain.length]!);
  const last = half[2]!.curves;
  const foot = endOf(last[last.length - 1]!);
  const mirror = (curve: Curve): Curve => reflected(curve, foot, DOWN);
  const other = half.map(({ curves, edge }) => ({ curves: reversedRun(curves.map(mirror)), edge })).reverse();
  return { region: regionOf([...half, ...other]), foldAt: startOf(half[0]!.curves[0]!).x };
}

const DOWN: Point = { x: 0, y: 1 };

/** A piece drawn for the wearer's right as it would be for her left, and the other way round. */
export function mirroredPiece(cutPiece: CutPiece): CutPiece {
  const { piece } = cutPiece;
  return {
    ...cutPiece,
    cutEdges: mirroredEdges(cutPiece.cutEdges),
    piece: {
      ...piece,
      edges: mirroredEdges(piece.edges),
      frontEdge: piece.backEdge,
      backEdge: piece.frontEdge,
    },
  };
}

function mirroredEdges(edges: readonly Edge[]): Edge[] {
  const [waist, right, hem, left] = edges.map(({ name, curves }) => ({
    name,
    curves: reversedRun(curves.map((curve) => reflected(curve, { x: 0, y: 0 }, DOWN))),
  }));
  return [waist!, left!, hem!, right!];
}
