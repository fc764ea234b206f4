import { withEscapes } from '../diagnostics/safe-text.ts';

/** What a script reads, and perhaps a person on a terminal: indented, and without anything that moves the cursor. */
export function jsonText(value: unknown): string {
  return `${withEscapes(JSON.stringify(value, null, 2))}\n`;
}
