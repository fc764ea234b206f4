import type { CutPiece } from '../draft/piece.ts';
import type { Edge } from '../geometry/edge.ts';
import { overskirtEdge } from '../gown/overskirt-as-gown.ts';
import type { OverskirtSpec } from '../gown-file/spec.ts';

/** The pieces of an overskirt that was drafted as a gown, its free edges under their own names again. */
export function overskirtPieces(overskirt: OverskirtSpec, pieces: readonly CutPiece[]): CutPiece[] {
  const nameOf = (edge: string): string => overskirtEdge(overskirt, edge);
  const renamed = (edges: readonly Edge[]): Edge[] =>
    edges.map((edge) => ({ ...edge, name: nameOf(edge.name) }));
  return pieces.map((cut) => ({
    ...cut,
    piece: {
      ...cut.piece,
      edges: renamed(cut.piece.edges),
      frontEdge: nameOf(cut.piece.frontEdge),
      backEdge: nameOf(cut.piece.backEdge),
    },
    cutEdges: renamed(cut.cutEdges),
    // A free edge is sewn to nothing: it has no partner to match.
    notches: cut.notches.filter((notch) => nameOf(notch.edge) === notch.edge),
    allowances: Object.fromEntries(
      Object.entries(cut.allowances).map(([edge, width]) => [nameOf(edge), width]),
    ),
  }));
}
