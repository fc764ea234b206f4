import { DEJAVU, DEJAVU_RANGES, HELVETICA, HELVETICA_BOLD } from './font-widths.ts';
import { plainText } from './plain-text.ts';
import { isWinAnsi, winAnsiCode } from './win-ansi.ts';

/**
 * Width of a text on one line, in the unit of `size` (the em). Text that the standard fonts can show is set in
 * Helvetica, any other text whole in DejaVu Sans: the same choice as the PDF writer makes. Characters outside the
 * tables count as the sign for a missing one, which is wider than nearly all of them.
 */
export function textWidth(text: string, size: number, bold = false): number {
  if (ASCII.test(text)) return asciiWidth(text, bold) * (size / 1000);
  const shown = plainText(text);
  const widthOf = isWinAnsi(shown) ? helveticaWidth : dejaVuWidth;
  let thousandths = 0;
  for (const character of shown) thousandths += widthOf(character.codePointAt(0)!, bold);
  return thousandths * (size / 1000);
}

/** By far the most text, and pages are wrapped by trying many widths: these need neither cleaning nor a choice. */
const ASCII = /^[\x20-\x7e]*$/;

function asciiWidth(text: string, bold: boolean): number {
  const widths = bold ? HELVETICA_WIDTHS.bold : HELVETICA_WIDTHS.plain;
  let thousandths = 0;
  for (let index = 0; index < text.length; index++) thousandths += widths[text.charCodeAt(index) - 0x20]!;
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
