import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { quoted } from './safe-text.ts';

/** Whole sentences; figures as text, in the units of the spec. */
export type Words = Pick<Diagnostic, 'message' | 'why' | 'hint' | 'table'>;

/** Every finding is made here. Where its level and code are always the same, `error`, `warning` and `note` do it. */
export function finding(code: string, level: Level, span: Span, words: Words): Diagnostic {
  return { code, level, span, ...words };
}

export const error = always('error');
export const warning = always('warning');
export const note = always('note');

function always(level: Level) {
  return <Figures extends readonly unknown[]>(code: string, words: (...figures: Figures) => Words) =>
    (span: Span, ...figures: Figures): Diagnostic =>
      finding(code, level, span, words(...figures));
}

/** The end of a sentence about a name that is not there. */
export function nearestIs(near: string | undefined): string {
  return near === undefined ? '' : `; the nearest is ${quoted(near)}`;
}

/** Names for a hint, no more of them than a person reads. */
export function listed(words: readonly string[]): string {
  const shown = words
    .slice(0, MOST_LISTED)
    .map((word) => (word.length > 140 ? `${word.slice(0, 140)}…` : word));
  return shown.join(', ') + (words.length > MOST_LISTED ? ' and others' : '');
}

const MOST_LISTED = 40;
