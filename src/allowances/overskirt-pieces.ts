import type { CutPiece } from '../draft/piece.ts';
import type { Edge } from '../geometry/edge.ts';
import { overskirtEdge } from '../gown/overskirt-as-gown.ts';

/** The pieces of an overskirt that was drafted as a gown, its outer edge under its own name again. */
export function overskirtPieces(pieces: readonly CutPiece[]): CutPiece[] {
  const renamed = (edges: readonly Edge[]): Edge[] =>
    edges.map((edge) => ({ ...edge, name: overskirtEdge(edge.name) }));
  return pieces.map((cut) => ({
    ...cut,
    piece: {
      ...cut.piece,
      edges: renamed(cut.piece.edges),
      frontEdge: overskirtEdge(cut.piece.frontEdge),
    },
    cutEdges: renamed(cut.cutEdges),
    // A free edge is sewn to nothing: it has no partner to match.
    notches: cut.notches.filter((notch) => overskirtEdge(notch.edge) === notch.edge),
    allowances: Object.fromEntries(
      Object.entries(cut.allowances).map(([edge, width]) => [overskirtEdge(edge), width]),
    ),
  }));
}
