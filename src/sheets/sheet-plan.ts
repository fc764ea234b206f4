import type { LineGap } from './gaps.ts';
import type { LaidPiece } from './laid-piece.ts';
import type { Paper } from './paper.ts';
import type { Margins, SheetFrame } from './sheet-frame.ts';
import type { Scale, SheetOptions } from './sheet-options.ts';

/** Pieces lying on a grid of sheets. The pattern's coordinates are those of `pattern.svg`: 0 0 at the grid's corner. */
export interface SheetPlan {
  readonly paper: Paper;
  readonly margins: Margins;
  readonly frame: SheetFrame;
  readonly scale: Scale;
  /** What was asked for. */
  readonly options: SheetOptions;
  /** In the order given: from the centre front round. */
  readonly pieces: readonly LaidPiece[];
  /** In the order of printing. */
  readonly sheets: readonly Sheet[];
  readonly rows: number;
  readonly columns: number;
  /** Straight stretches that are left out, where that was asked for. */
  readonly gaps: readonly LineGap[];
  /** Sheets if every piece lay on a grid of its own. */
  readonly gridPerPiece: number;
  /** Sheets that the pieces' area fills; blank sheets left out inside wide pieces may beat it. */
  readonly areaBound: number;
}

export interface Sheet {
  /** In the file, from 1; the first pages are instructions. */
  readonly page: number;
  /** From 0, down and across. */
  readonly row: number;
  readonly column: number;
  /** Row as a letter and column as a number, from A1: how the map and the arrows call it. */
  readonly label: string;
  /** The rectangle of the pattern that the frame shows, mm. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Where that frame lies on the page, mm from its lower left corner. */
  readonly left: number;
  readonly bottom: number;
  /** The page's own height, mm: a length of a roll ends where its pieces do. */
  readonly pageHeight: number;
  /** Indices of the pieces with a line on it. */
  readonly pieces: readonly number[];
  /** Labels of the printed sheets that it is taped to. */
  readonly neighbours: Neighbours;
}

export interface Neighbours {
  readonly left?: string;
  readonly right?: string;
  readonly above?: string;
  readonly below?: string;
}
