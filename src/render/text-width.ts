import { DEJAVU, DEJAVU_RANGES, HELVETICA, HELVETICA_BOLD } from './font-widths.ts';
import { plainText } from './plain-text.ts';
import { isWinAnsi, winAnsiCode } from './win-ansi.ts';

/**
 * Width of a text on one line, in the unit of `size` (the em). Text that the standard fonts can show is set in
 * Helvetica, any other text whole in DejaVu Sans: the same choice as the PDF writer makes. Characters outside the
 * tables count as the sign for a missing one, which is wider than nearly all of them.
 */
export function textWidth(text: string, size: number, bold = false): number {
  const shown = plainText(text);
  const widthOf = isWinAnsi(shown) ? helveticaWidth : dejaVuWidth;
  let thousandths = 0;
  for (const character of shown) thousandths += widthOf(character.codePointAt(0)!, bold);
  return (thousandths * size) / 1000;
}

/** Height of capitals, and how far a line reaches below its baseline, as fractions of the em; true of both fonts. */
export const CAP_HEIGHT = 0.73;
export const DESCENT = 0.24;

function helveticaWidth(codePoint: number, bold: boolean): number {
  return widthInTable(bold ? HELVETICA_BOLD : HELVETICA, winAnsiCode(codePoint)! - 0x20);
}

function dejaVuWidth(codePoint: number): number {
  let index = 0;
  for (const [first, last] of DEJAVU_RANGES) {
    if (codePoint >= first && codePoint <= last) {
      const width = widthInTable(DEJAVU, index + codePoint - first);
      return width === 0 ? UNKNOWN_WIDTH : width;
    }
    index += last - first + 1;
  }
  return UNKNOWN_WIDTH;
}

/** DejaVu Sans's sign for a character it lacks, rounded up. */
const UNKNOWN_WIDTH = 1030;

function widthInTable(table: string, index: number): number {
  return Number.parseInt(table.slice(2 * index, 2 * index + 2), 36);
}
