import type { CutPiece, PartOfGown } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import type { BustlePlace } from '../gown/bustle-place.ts';

/** A corner to chalk: `down` from the top, `across` from the grain line, to the right positive. mm, rounded. */
export interface ChalkCorner {
  /** Capitals on the cut line, small letters on the seam line. */
  readonly letter: string;
  readonly down: number;
  readonly across: number;
}

/** A corner, and the line that it lies on. */
export interface ChalkLetteredCorner extends ChalkCorner {
  readonly line: 'cut' | 'seam';
}

/** One stretch of an outline between two corners. */
export interface ChalkStretch {
  readonly line: 'cut' | 'seam';
  readonly edge: string;
  readonly from: ChalkCorner;
  readonly to: ChalkCorner;
  /** Points between the corners, in order, each either on a level of the table or an ordinate from the chord. */
  readonly points: readonly ChalkPoint[];
}

export type ChalkPoint = ChalkLevelPoint | ChalkOrdinate;

/** Where an edge crosses a level. mm. */
export interface ChalkLevelPoint {
  readonly kind: 'level';
  readonly down: number;
  readonly across: number;
}

/** Square off the chord between the stretch's corners. mm. */
export interface ChalkOrdinate {
  readonly kind: 'ordinate';
  /** Along the chord from the stretch's first corner. */
  readonly along: number;
  /** Away from the piece; negative goes into it. */
  readonly out: number;
}

/** An edge that can be swung with a tape: its centre and radius. mm. */
export interface ChalkSwing {
  readonly line: 'cut' | 'seam';
  readonly edge: string;
  readonly radius: number;
  /** Negative down lies above the piece. */
  readonly down: number;
  readonly across: number;
}

/** Between two seam-line corners, to check that the chalked piece is square. mm. */
export interface ChalkDiagonal {
  readonly from: string;
  readonly to: string;
  readonly length: number;
}

/** A straight line to mark inside the piece, such as a fold. mm. */
export interface ChalkInner {
  readonly name: string;
  readonly from: Omit<ChalkCorner, 'letter'>;
  readonly to: Omit<ChalkCorner, 'letter'>;
}

/** A point of the bustle to mark on it. mm. */
export interface ChalkBustle {
  readonly layer: string;
  readonly place: BustlePlace;
  readonly anchor: Omit<ChalkCorner, 'letter'>;
  readonly pickUp: Omit<ChalkCorner, 'letter'>;
}

/** One level of a table: distances from the grain line at cut left, seam left, seam right, cut right. mm. */
export interface ChalkLevel {
  readonly down: number;
  /** A side that a level crosses more than once has all its distances in one cell. */
  readonly cells: readonly (readonly number[])[];
}

/** One piece as figures, to chalk straight on the cloth. */
export interface ChalkTable {
  readonly gore: string;
  /** What it belongs to, where it is no part of the skirt. */
  readonly part?: PartOfGown;
  readonly layers: readonly string[];
  readonly cut: CutPiece['piece']['cut'];
  /** Its length lies at 45° to the thread: what stands for the grain line here is the bias. */
  readonly bias?: true;
  /** Of a piece that is cut singly; 1 where it is not given. */
  readonly copies?: number;
  /** Names of the edges at the left and at the right. */
  readonly frontEdge: string;
  readonly backEdge: string;
  readonly side?: 'left' | 'right';
  readonly every: number;
  /** Figures are rounded to this, mm. */
  readonly step: number;
  /** Cut line first, each clockwise from the front end of the waist. */
  readonly stretches: readonly ChalkStretch[];
  readonly corners: readonly ChalkLetteredCorner[];
  /** Every level from the top, with its place in each column. */
  readonly levels: readonly ChalkLevel[];
  /** Columns of a level that this piece has: beside a fold there is only one side to measure, seam line first. */
  readonly columns: readonly number[];
  /** The same as plain points to draw, across and down. */
  readonly lines: { readonly cut: readonly Point[]; readonly seam: readonly Point[] };
  readonly swings: readonly ChalkSwing[];
  readonly diagonals: readonly ChalkDiagonal[];
  readonly inner: readonly ChalkInner[];
  readonly bustle: readonly ChalkBustle[];
}
