import { cutOfHalves } from '../draft/halves-apart.ts';
import type { Piece } from '../draft/piece.ts';
import type { BodiceFault } from './bodice-fault.ts';
import type { BodiceMeasures } from './bodice-measures.ts';
import { draftHalf, type HalfBodice } from './draft-half.ts';

/** A bodice drafted from her measures. */
export interface BodiceDraft {
  readonly measures: BodiceMeasures;
  readonly left: HalfBodice;
  /** Drawn as the left one is; the left one itself where her halves are alike. */
  readonly right: HalfBodice;
  /** What is cut, from the centre front round: pairs, or left and right where her halves differ. */
  readonly pieces: readonly Piece[];
}

export type BodiceDrafted = BodiceDraft | { readonly faults: readonly BodiceFault[] };

export function draftBodice(measures: BodiceMeasures): BodiceDrafted {
  const left = draftHalf(measures, 'left');
  if ('faults' in left) return left;
  const right = halvesDiffer(measures) ? draftHalf(measures, 'right') : left;
  if ('faults' in right) return right;
  return { measures, left, right, pieces: piecesOf(left, right) };
}

export function piecesOf(left: HalfBodice, right: HalfBodice): readonly Piece[] {
  return left.pieces.flatMap((piece, i) => cutOfHalves(piece, right.pieces[i]!));
}

function halvesDiffer({ girths, lacings }: BodiceMeasures): boolean {
  return (
    girths.some(({ left, girth }) => left !== undefined && left !== girth / 2) ||
    lacings.some(({ side }) => side !== undefined)
  );
}
