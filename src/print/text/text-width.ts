import { DEJAVU, DEJAVU_RANGES, HELVETICA, HELVETICA_BOLD } from './font-widths.ts';
import { plainText } from './plain-text.ts';
import { winAnsiCode } from './win-ansi.ts';

/**
 * Width of a text on one line, in the unit of `size` (the em). Text that the standard fonts can show is set in
 * Helvetica, any other text whole in DejaVu Sans: the same choice as the PDF writer makes. Characters outside the
 * tables count as the sign for a missing one, which is wider than nearly all of them.
 */
export function textWidth(text: string, size: number, bold = false): number {
  const thousandths = helveticaWidth(text, bold) ?? helveticaWidth(plainText(text), bold);
  return (thousandths ?? dejaVuWidth(plainText(text))) * (size / 1000);
}

/**
 * Undefined where Helvetica cannot show a text: by far the most it can, and pages are wrapped by trying many widths. What
 * it can show needs no cleaning.
 */
function helveticaWidth(text: string, bold: boolean): number | undefined {
  const widths = bold ? HELVETICA_WIDTHS.bold : HELVETICA_WIDTHS.plain;
  let thousandths = 0;
  for (let index = 0; index < text.length; index++) {
    const unit = text.charCodeAt(index);
    const code = unit >= 0x20 && unit <= 0x7e ? unit : winAnsiCode(unit);
    if (code === undefined) return undefined;
    thousandths += widths[code - 0x20]!;
  }
  return thousandths;
}

function dejaVuWidth(text: string): number {
  let thousandths = 0;
  for (const character of text) thousandths += dejaVuWidthOf(character.codePointAt(0)!);
  return thousandths;
}

function dejaVuWidthOf(codePoint: number): number {
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
