import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { quoted } from './safe-text.ts';

/** What every problem begins with. */
export function problem(
  code: string,
  span: Span,
  level: Level = 'error',
): Pick<Diagnostic, 'code' | 'level' | 'span'> {
  return { code, level, span };
}

/** The end of a message about a name that is not there. */
export function nearestIs(near: string | undefined): string {
  return near === undefined ? '' : `; the nearest is ${quoted(near)}`;
}

/** Names for a hint, no more of them than a person reads. */
export function listed(words: readonly string[]): string {
  const shown = words
    .slice(0, MOST_LISTED)
    .map((word) => (word.length > 140 ? `${word.slice(0, 140)}…` : word));
  return shown.join(', ') + (words.length > MOST_LISTED ? ', …' : '');
}

const MOST_LISTED = 40;
