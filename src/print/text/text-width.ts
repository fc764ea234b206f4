import { DEJAVU, DEJAVU_RANGES, HELVETICA, HELVETICA_BOLD } from './font-widths.ts';
import { plainText } from './plain-text.ts';
import { isWinAnsi, winAnsiCode } from './win-ansi.ts';

/**
 * Width of a text on one line, in the unit of `size` (the em). Text that the standard fonts can show is set in
 * Helvetica, any other text whole in DejaVu Sans: the same choice as the PDF writer makes. Characters outside the
 * tables count as the sign for a missing one, which is wider than nearly all of them.
 */
export function textWidth(text: string, size: number, bold = false): number {
  const plain = asciiWidth(text, bold);
  if (plain !== undefined) return plain * (size / 1000);
  const shown = plainText(text);
  const widthOf = isWinAnsi(shown) ? helveticaWidth : dejaVuWidth;
  let thousandths = 0;
  for (const character of shown) thousandths += widthOf(character.codePointAt(0)!, bold);
  return thousandths * (size / 1000);
}

/**
 * Of a text in ASCII, undefined of any other: by far the most text is, and pages are wrapped by trying many widths; it
 * needs neither cleaning nor a choice.
 */
function asciiWidth(text: string, bold: boolean): number | undefined {
  const widths = bold ? HELVETICA_WIDTHS.bold : HELVETICA_WIDTHS.plain;
  let thousandths = 0;
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    if (code < 0x20 || code > 0x7e) return undefined;
    thousandths += widths[code - 0x20]!;
  }
  return thousandths;
}

function helveticaWidth(codePoint: number, bold: boolean): number {
  return (bold ? HELVETICA_WIDTHS.bold : HELVETICA_WIDTHS.plain)[winAnsiCode(codePoint)! - 0x20]!;
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

const HELVETICA_WIDTHS = { plain: decoded(HELVETICA), bold: decoded(HELVETICA_BOLD) };

function decoded(table: string): Uint16Array {
  return Uint16Array.from({ length: table.length / 2 }, (_, index) => widthInTable(table, index));
}
