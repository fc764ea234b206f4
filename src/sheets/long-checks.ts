import type { CutPiece } from '../draft/piece.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { distance } from '../geometry/point.ts';
import type { LaidPiece } from './laid-piece.ts';

/** A long measure to take on the taped pattern before anything is cut. */
export interface LongCheck {
  /** Index of the piece. */
  readonly piece: number;
  /** `fold`, a seam's name, or `hem`. */
  readonly edge: string;
  /** Along the seam line from the waist seam to the hem line, or straight from corner to corner of the hem line. */
  readonly along: 'seam' | 'chord';
  /** mm. */
  readonly length: number;
}

/**
 * The measures that show an error which adds up over many sheets: down the front edge of the first piece, down the
 * back edge of each gore, and straight across the widest hem. Only the longest piece of a gore is asked for.
 */
export function longChecks(pieces: readonly LaidPiece[], most = 7): LongCheck[] {
  const longest = longestOfEachGore(pieces);
  const down = longest.map((piece) => edgeCheck(piece, pieces[piece]!.cutPiece, 'back'));
  const first = longest.slice(0, 1).map((piece) => edgeCheck(piece, pieces[piece]!.cutPiece, 'front'));
  const across = longest.map((piece) => hemChord(piece, pieces[piece]!.cutPiece));
  const widest = across.sort((a, b) => b.length - a.length).slice(0, 1);
  return [...first, ...widest, ...down].slice(0, most);
}

function longestOfEachGore(pieces: readonly LaidPiece[]): number[] {
  const best = new Map<string, { index: number; length: number }>();
  for (const [index, { cutPiece }] of pieces.entries()) {
    const length = edgeCheck(index, cutPiece, 'back').length;
    const known = best.get(cutPiece.gore);
    if (known === undefined || length > known.length) best.set(cutPiece.gore, { index, length });
  }
  return [...best.values()].map(({ index }) => index);
}

function edgeCheck(piece: number, cutPiece: CutPiece, side: 'front' | 'back'): LongCheck {
  const index = side === 'front' ? 3 : 1;
  const edge = cutPiece.piece.edges[index]!;
  return { piece, edge: edge.name, along: 'seam', length: lengthOfRun(edge.curves) };
}

function hemChord(piece: number, cutPiece: CutPiece): LongCheck {
  const { name, curves } = cutPiece.piece.edges[2]!;
  return { piece, edge: name, along: 'chord', length: distance(startOf(curves[0]!), endOf(curves.at(-1)!)) };
}
