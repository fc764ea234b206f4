import { isDay } from '../../dates/civil-date.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/value-problems.ts';
import type { ValueKind } from '../../diagnostics/value-text.ts';
import { nearest } from '../nearest.ts';
import type { WrittenScalar } from '../written.ts';
import { leaf } from './leaf.ts';

/** Free text, printed somewhere. A number is text as well: it keeps its noughts. */
export function text(longest = 200, kind: 'text' | 'notes' = 'text') {
  return leaf(kind, { type: ['string', 'number'] }, 'text', (written) => textWithin(written, longest));
}

/** Text of any length that a maker writes to herself. */
export const notes = () => text(20_000, 'notes');

/** A word that names a gore, a layer or a cloth, here or where it is referred to. */
export function name() {
  return leaf('text', { type: 'string', pattern: '^[A-Za-z0-9-]+$' }, 'a name', (written) =>
    textWithin(written, 60),
  );
}

/** A station, or the name of an edge: `side-front/side`, `centre-back`. */
export const station = () =>
  leaf('text', { type: 'string' }, 'a station, such as centre-back or side-front/side', (written) =>
    textWithin(written, 130),
  );

/** A calendar day, kept as text. */
export function date() {
  return leaf('date', { type: 'string', format: 'date' }, 'a date, such as 2027-05-01', (written) => {
    const day = written.text.trim();
    return isDay(day) && day >= FIRST_DAY
      ? { value: day }
      : problems.notADate(written.span, written.label, written.text);
  });
}

const FIRST_DAY = '1900-01-01';

export function flag() {
  return leaf('flag', { type: 'boolean' }, 'true or false', (written) =>
    written.kind === 'flag'
      ? { value: written.text === 'true' }
      : problems.notAFlag(written.span, written.label, written.text),
  );
}

/** One of a few words. */
export function oneOf<const Word extends string>(...words: readonly Word[]) {
  return meaning<Word>('text', Object.fromEntries(words.map((word) => [word, word])));
}

/** One of a few words, each read as what it means. */
export function meaning<T>(kind: ValueKind, meanings: Readonly<Record<string, T>>) {
  const words = Object.keys(meanings);
  return leaf(
    kind,
    { enum: words },
    words.length === 1 ? words.join() : `one of ${words.join(', ')}`,
    (written) => {
      const found = words.find((word) => word === written.text.trim());
      return found === undefined
        ? problems.notOneOf(written.span, written.label, written.text, words, nearest(written.text, words))
        : { value: meanings[found]! };
    },
  );
}

/** Text of a form that a pattern gives. */
export function matching(pattern: RegExp, expected: string) {
  return leaf('text', { type: 'string', pattern: pattern.source }, expected, (written) =>
    pattern.test(written.text.trim())
      ? { value: written.text.trim() }
      : problems.notOfForm(written.span, written.label, written.text, expected),
  );
}

function textWithin(written: WrittenScalar, longest: number): { value: string } | Diagnostic {
  const value = written.text.trim();
  if (value === '') return problems.emptyText(written.span, written.label);
  return value.length <= longest ? { value } : problems.tooLong(written.span, written.label, longest);
}
