import type { Paper } from './paper.ts';

/** What the printer leaves white, mm. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The part of each sheet that shows pattern; `left` and `bottom` from the page's lower left corner, mm on paper.
 * Sheets are trimmed at the left and at the top of the frame and laid on the neighbour's right and lower margin,
 * which `lap` makes wider than what the printer leaves white.
 */
export interface SheetFrame {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  /** Width of the printed strip at the right. */
  readonly right: number;
  /** Height of the printed strip below; it carries the sheet's name, so there is always one. */
  readonly below: number;
}

export function sheetFrame(paper: Paper, margins: Margins, lap: number): SheetFrame {
  const below = Math.max(lap, NAME_STRIP);
  return {
    left: margins.left,
    bottom: margins.bottom + below,
    width: paper.width - margins.left - margins.right - lap,
    height: paper.height - margins.top - margins.bottom - below,
    right: lap,
    below,
  };
}

/** mm; two lines of text below the strokes that cross the join. */
const NAME_STRIP = 9;
