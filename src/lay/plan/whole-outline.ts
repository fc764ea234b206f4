import type { CutPiece } from '../../draft/piece.ts';
import { unfolded } from '../../draft/unfolded.ts';
import type { Curve } from '../../geometry/curve.ts';

/** Which side of a drawn half its fold is on. */
export function foldSide({ piece }: CutPiece): 'front' | 'back' | undefined {
  if (piece.cut !== 'on-fold') return undefined;
  return piece.frontEdge === 'fold' ? 'front' : 'back';
}

/** Where the fold of a drawn half runs: x, mm. */
export function foldAt({ gore, cutEdges }: CutPiece): number {
  const whole = unfolded(cutEdges);
  if (whole === undefined) throw new Error(`gore ${gore} is on the fold and has no edge of that name`);
  return whole.foldAt;
}

/** A piece as it lies in a single layer of cloth: one on the fold opened out, any other as it is. */
export function wholeOutline(cut: CutPiece): Curve[] {
  const whole = foldSide(cut) === undefined ? undefined : unfolded(cut.cutEdges);
  const edges = whole === undefined ? cut.cutEdges : [...whole.half, ...whole.other];
  return edges.flatMap(({ curves }) => curves);
}
