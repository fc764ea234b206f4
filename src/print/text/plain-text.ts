import { isWinAnsi } from './win-ansi.ts';

/**
 * Text from a spec made safe to set on one line: line ends and tabs become spaces (a no-break space stays); control characters, marks that
 * turn the direction of what follows, and characters that XML forbids go; a lone surrogate becomes U+FFFD.
 */
export function plainText(text: string): string {
  // Nearly all text is, and needs none of it.
  if (isWinAnsi(text)) return text;
  return text
    .replace(/[^\S\u00a0]/gu, ' ')
    .replace(/\p{Cs}/gu, REPLACEMENT)
    .replace(UNPRINTABLE, '')
    .normalize('NFC');
}

/** Stands for a character that cannot be shown. */
export const REPLACEMENT = '\ufffd';

/** Controls, direction overrides and isolates, invisible separators, the byte order mark, and non-characters. */
const UNPRINTABLE =
  /[\p{Cc}\p{Noncharacter_Code_Point}\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]/gu;

/** Text as it goes into a file: where lines are broken is settled, and a reader searches for plain spaces. */
export function writtenText(text: string): string {
  return plainText(text).replaceAll(NO_BREAK, ' ');
}

export const NO_BREAK = '\u00a0';
