import type { CutPiece } from '../draft/piece.ts';
import { outlineAcross, unfolded } from '../draft/unfolded.ts';
import { type Region, regionOf } from '../geometry/region.ts';

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
  const whole = user.piece.cut === 'pair' ? undefined : unfolded(cutEdges);
  const edges = whole === undefined ? cutEdges : [...whole.half, ...whole.other];
  const names = cutEdges.map(({ name }) => name);
  const region = regionOf(
    edges.map(({ name, curves }, i) => ({ curves, edge: whole === undefined ? i : names.indexOf(name) })),
  );
  return { region, ...(whole === undefined ? {} : { foldAt: whole.foldAt }) };
}

/** A piece drawn for the wearer's right as it would be for her left, and the other way round. */
export function mirroredPiece(cutPiece: CutPiece): CutPiece {
  const { piece } = cutPiece;
  return {
    ...cutPiece,
    cutEdges: outlineAcross(cutPiece.cutEdges, 0),
    piece: {
      ...piece,
      edges: outlineAcross(piece.edges, 0),
      frontEdge: piece.backEdge,
      backEdge: piece.frontEdge,
    },
  };
}
