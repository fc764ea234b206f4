import type { CutPiece } from '../../draft/piece.ts';
import type { Curve, Point } from '../../geometry/curve.ts';
import type { Edge } from '../../geometry/edge.ts';
import { startOf } from '../../geometry/evaluate.ts';
import { reversedRun } from '../../geometry/split.ts';
import { reflected } from '../../geometry/transform.ts';

/** Which side of a drawn half its fold is on. */
export function foldSide({ piece }: CutPiece): 'front' | 'back' | undefined {
  if (piece.cut !== 'on-fold') return undefined;
  return piece.frontEdge === 'fold' ? 'front' : 'back';
}

/** Where the fold of a drawn half runs: x, mm. */
export function foldAt(half: CutPiece): number {
  return startOf(foldEdge(half).curves[0]!).x;
}

/** A piece as it lies in a single layer of cloth: one on the fold opened out, any other as it is. */
export function wholeOutline(cut: CutPiece): Curve[] {
  if (foldSide(cut) === undefined) return cut.cutEdges.flatMap((edge) => edge.curves);
  const edges = cut.cutEdges;
  const fold = edges.indexOf(foldEdge(cut));
  const half = [...edges.slice(fold + 1), ...edges.slice(0, fold)].flatMap((edge) => edge.curves);
  return [...half, ...reversedRun(half.map((curve) => acrossFold(curve, foldAt(cut))))];
}

/** The mirror image of a curve in the fold. */
export function acrossFold(curve: Curve, x: number): Curve {
  const onFold: Point = { x, y: 0 };
  return reflected(curve, onFold, { x: 0, y: 1 });
}

function foldEdge(half: CutPiece): Edge {
  const edge = half.cutEdges.find(({ name }) => name === 'fold');
  if (edge === undefined) throw new Error(`gore ${half.gore} is on the fold and has no edge of that name`);
  return edge;
}
