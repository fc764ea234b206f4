import { REPLACEMENT, writtenText } from '../text/plain-text.ts';
import { visualRuns } from '../text/text-direction.ts';
import { textWidth } from '../text/text-width.ts';
import { isWinAnsi, winAnsiCode } from '../text/win-ansi.ts';
import type { EncodedText } from './pdf-content.ts';

/** Resource names of the two standard fonts and the embedded one. */
export const FONT_NAMES = { plain: 'F1', bold: 'F2', embedded: 'F3' } as const;

/** A font that is embedded, as far as setting text needs it. */
export interface EmbeddedFont {
  readonly has: (codePoint: number) => boolean;
  /** The operand of `Tj` for one run; right-to-left runs come out in the order of the paper. */
  readonly operand: (run: string) => string;
  /** Ems. */
  readonly width: (run: string) => number;
}

export interface TextEncoder {
  readonly encode: (text: string, bold: boolean) => EncodedText;
  /** Characters that no font has, so far. */
  readonly missing: () => readonly string[];
}

/**
 * Text for content streams: in Helvetica where WinAnsi has every character, else whole in the embedded font. Without
 * one, or where it has no such glyph, a replacement is drawn and the character is kept for the report.
 */
export function textEncoder(embedded: EmbeddedFont | undefined): TextEncoder {
  const missing = new Set<string>();
  const shown = (character: string, has: (codePoint: number) => boolean, replacement: string): string => {
    if (has(character.codePointAt(0)!)) return character;
    missing.add(character);
    return replacement;
  };
  const encode = (text: string, bold: boolean): EncodedText => {
    const plain = writtenText(text);
    if (embedded === undefined || isWinAnsi(plain)) {
      const known = isWinAnsi(plain)
        ? plain
        : [...plain]
            .map((character) => shown(character, (code) => winAnsiCode(code) !== undefined, '?'))
            .join('');
      return winAnsiText(known, bold);
    }
    const known = [...plain].map((character) => shown(character, embedded.has, REPLACEMENT)).join('');
    const runs = visualRuns(known).map((run) => run.text);
    return {
      font: FONT_NAMES.embedded,
      strings: runs.map(embedded.operand),
      width: runs.reduce((sum, run) => sum + embedded.width(run), 0),
      thicken: bold,
    };
  };
  return { encode, missing: () => [...missing].sort() };
}

function winAnsiText(text: string, bold: boolean): EncodedText {
  return {
    font: bold ? FONT_NAMES.bold : FONT_NAMES.plain,
    strings: text === '' ? [] : [`(${text.replace(/[()\\]|[^\x20-\x7e]/g, literalByte)})`],
    width: textWidth(text, 1, bold),
    thicken: false,
  };
}

/** A character within a literal string: ASCII as it is, the rest as octal escapes, so that a stream stays ASCII. */
function literalByte(character: string): string {
  const code = winAnsiCode(character.codePointAt(0)!)!;
  if (character === '(' || character === ')' || character === '\\') return `\\${character}`;
  return code < 0x7f ? character : `\\${code.toString(8)}`;
}
