/**
 * Text that came from a spec or a file name, safe on a terminal: controls, marks that turn the reading direction,
 * line separators and lone surrogates are written as `\u{…}`, so that no name moves the cursor, hides itself or
 * forges a second message.
 */
export function safeText(text: string): string {
  return text.replace(UNSAFE, (char) => `\\u{${(char.codePointAt(0) ?? 0).toString(16)}}`);
}

/**
 * The same for a whole output of many lines: its line ends and tabs stay. Text that was made safe before comes out as
 * it went in.
 */
export function safeLines(text: string): string {
  return text.replace(UNSAFE, (char) => (char === '\n' || char === '\t' ? char : safeText(char)));
}

/**
 * JSON or YAML that is laid out already, made safe on a terminal: its own line ends and tabs stay, and what is unsafe is
 * escaped as both formats read it back. In YAML it must stand in double quotes.
 */
export function withEscapes(text: string): string {
  return text.replace(UNSAFE, (char) =>
    char === '\n' || char === '\t' ? char : `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** A value in a message: safe, in quotes, and never longer than a line bears. */
export function quoted(text: string): string {
  const characters = [...text.slice(0, 2 * LONGEST_QUOTE)];
  const cut = text.length > 2 * LONGEST_QUOTE || characters.length > LONGEST_QUOTE;
  return `\`${characters.slice(0, LONGEST_QUOTE).join('')}${cut ? '…' : ''}\``;
}

/** Names in a message: `a` and `b`. */
export function named(names: readonly string[]): string {
  return names.map(quoted).join(' and ');
}

/** Characters of a value that a message repeats. Longer drowns the message; shorter hides what was written. */
const LONGEST_QUOTE = 48;

const UNSAFE = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]|\p{Cs}/gu;
