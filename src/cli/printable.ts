/**
 * Text that came from a file name or a spec, made safe for a terminal and for one line: control characters and
 * marks that turn the reading direction are written as `\u{…}`, so that no name can move the cursor, hide itself
 * or forge a second message.
 */
export function printable(text: string): string {
  return text.replace(UNSAFE, (char) => `\\u{${(char.codePointAt(0) ?? 0).toString(16)}}`);
}

/** The same for text of several lines: its own line ends stay. */
export function printableLines(text: string): string {
  return text.split('\n').map(printable).join('\n');
}

// Controls, direction marks and overrides, line separators, lone surrogates (which no terminal can show).
const UNSAFE = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]|\p{Cs}/gu;
