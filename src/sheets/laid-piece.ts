import type { CutPiece } from '../draft/piece.ts';
import type { Line } from '../geometry/curve.ts';

/** A piece moved (and turned by quarters) to where the sheets show it. */
export interface LaidPiece {
  readonly cutPiece: CutPiece;
  /** Clockwise as drawn, degrees. */
  readonly turned: 0 | 90 | 180 | 270;
  /** The part of the grain line that is drawn: on sheets that are printed anyway, where there are any. */
  readonly grain: Line;
  /** Index of the longer piece of the same gore that it lies on: they differ at the hem only. */
  readonly liesOn?: number;
}
