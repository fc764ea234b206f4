import type { Diagnostic, Span } from './diagnostic.ts';
import { listed, problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of one value or key, whatever gown it belongs to. `key` is the key that the value stands at. */

export const unknownKey = (
  span: Span,
  key: string,
  section: string,
  near: string | undefined,
  keys: readonly string[],
): Diagnostic => ({
  ...problem('unknown-key', span),
  message: `${quoted(key)} is no key ${section}${near === undefined ? '' : `; the nearest is ${quoted(near)}`}`,
  why: 'what stands here would be left out of the gown',
  hint:
    near === undefined ? `the keys here are ${listed(keys)}` : `write ${quoted(near)}, or take the line out`,
});

export const missingKey = (span: Span, key: string, section: string, expected: string): Diagnostic => ({
  ...problem('missing-key', span),
  message: `${quoted(key)} is missing ${section}`,
  why: 'the gown cannot be drafted without it, and a guess could spoil cloth',
  hint: `add ${quoted(`${key}:`)} with ${expected}`,
});

export const wrongKind = (span: Span, key: string, found: string, expected: string): Diagnostic => ({
  ...problem('wrong-kind', span),
  message: `${quoted(key)} is ${found} where ${expected} should stand`,
  why: 'it cannot be understood, and a guess could spoil cloth',
  hint: expected === 'a section' ? 'write its keys below it, set in, each with a value' : `write ${expected}`,
});

export const tooManyItems = (span: Span, key: string, count: number, most: number): Diagnostic => ({
  ...problem('too-many-items', span),
  message: `${quoted(key)} is a list of ${count} where at most ${most} can stand`,
  why: 'so long a list is a slip of the hand, and would keep you waiting for minutes',
  hint: 'look whether a part of it was pasted several times; what one gown cannot hold goes into a second spec',
});

export const emptyValue = (span: Span, key: string, expected: string): Diagnostic => ({
  ...problem('empty-value', span),
  message: `nothing stands after ${quoted(`${key}:`)}`,
  why: 'a measure may have been forgotten',
  hint: `write ${expected} here, or take the line out`,
});

export const notALength = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-a-length', span),
  message: `${quoted(text)} is no length, which ${quoted(key)} should be`,
  why: 'a wrong measure is cut into cloth',
  hint: `write a number in the file's units, or with its own: 98cm, 980mm, 38in, 5/8in, 1 5/8 in${commaHint(text)}`,
});

export const unknownUnit = (
  span: Span,
  unit: string,
  units: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('unknown-unit', span),
  message: `${quoted(unit)} is no unit of length`,
  why: 'a wrong unit makes a piece that is many times too large or too small',
  hint:
    near === undefined
      ? `write one of ${listed(units)}`
      : `write ${quoted(near)}, or another of ${listed(units)}`,
});

export const notAnAngle = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-an-angle', span),
  message: `${quoted(text)} is no angle, which ${quoted(key)} should be`,
  why: 'the flare decides how full the skirt is',
  hint: 'write degrees, such as 17deg, or give the width at the hem as `hem` instead',
});

export const notAShare = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-a-share', span),
  message: `${quoted(text)} is no percentage, which ${quoted(key)} should be`,
  why: 'a share misread changes every piece or price that it is taken of',
  hint: 'write a percentage, such as 3%, or a part of one, such as 0.03',
});

export const notAWeight = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-a-weight', span),
  message: `${quoted(text)} is no weight of cloth, which ${quoted(key)} should be`,
  why: 'the gown would be heavier or lighter than the papers say',
  hint: 'write grams per square metre, such as 210, or ounces, such as 6oz/yd2',
});

export const notADecimal = (span: Span, key: string, text: string, expected: string): Diagnostic => ({
  ...problem('not-a-decimal', span),
  message: `${quoted(text)} is not ${expected.split(',')[0]}, which ${quoted(key)} should be`,
  why: 'the quote is reckoned from it, exact to the last penny',
  hint: `write ${expected}, with a point and up to four decimals, no sign, and no currency${commaHint(text)}`,
});

export const notACount = (
  span: Span,
  key: string,
  text: string,
  least: number,
  most: number,
): Diagnostic => ({
  ...problem('not-a-count', span),
  message: `${quoted(text)} is no whole number between ${least} and ${most}, which ${quoted(key)} should be`,
  why: 'it counts things',
  hint: 'write a whole number, without a unit',
});

export const notTimes = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-a-number-of-times', span),
  message: `${quoted(text)} is no number of times, which ${quoted(key)} should be`,
  why: 'it says how many times its sewn width the cloth is',
  hint: 'write a number such as 2.5',
});

export const notADate = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-a-date', span),
  message: `${quoted(text)} is no day of the calendar, which ${quoted(key)} should be`,
  why: 'the calendar is worked back from it',
  hint: 'write year-month-day, such as 2027-05-01',
});

export const notAFlag = (span: Span, key: string, text: string): Diagnostic => ({
  ...problem('not-a-flag', span),
  message: `${quoted(text)} is neither true nor false, which ${quoted(key)} should be`,
  why: 'in YAML `yes` and `no` are plain words',
  hint: /^(y|yes|on)$/i.test(text)
    ? 'write true'
    : /^(n|no|off)$/i.test(text)
      ? 'write false'
      : 'write true or false',
});

export const notOneOf = (
  span: Span,
  key: string,
  text: string,
  words: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('not-one-of', span),
  message: `${quoted(text)} is nothing that ${quoted(key)} can be${near === undefined ? '' : `; the nearest is ${quoted(near)}`}`,
  why: 'what was meant cannot be told',
  hint: words.length === 1 ? `write ${words[0]}` : `write one of ${listed(words)}`,
});

export const notOfForm = (span: Span, key: string, text: string, expected: string): Diagnostic => ({
  ...problem('not-of-form', span),
  message: `${quoted(text)} is not ${expected}, which ${quoted(key)} should be`,
  why: 'what was meant cannot be told',
  hint: `write ${expected}`,
});

export const negative = (span: Span, key: string, text: string, what: string): Diagnostic => ({
  ...problem('negative-measure', span),
  message: `${quoted(key)} is ${quoted(text)}, and ${what} cannot be below nought`,
  why: 'the piece would turn inside out',
  hint: 'take the minus away, or measure again',
});

export const outOfBounds = (
  span: Span,
  key: string,
  text: string,
  what: string,
  least: string,
  most: string,
): Diagnostic => ({
  ...problem('measure-out-of-bounds', span),
  message: `${quoted(key)} is ${quoted(text)}, and ${what} lies between ${least} and ${most}`,
  why: 'a slipped decimal point or unit makes a piece that fits nobody',
  hint: "look at the decimal point and the unit; a bare number is in the file's `units`",
});

export const emptyText = (span: Span, key: string): Diagnostic => ({
  ...problem('empty-text', span),
  message: `${quoted(key)} is empty text`,
  why: 'it is printed, or other lines refer to it',
  hint: 'write it out, or take the line out',
});

export const tooLong = (span: Span, key: string, longest: number): Diagnostic => ({
  ...problem('text-too-long', span),
  message: `${quoted(key)} is longer than ${longest} characters`,
  why: 'it is printed on pieces and papers, where it would run over the lines',
  hint: 'shorten it, and put the rest into `notes`',
});

export const manyProblems = (span: Span, left: number): Diagnostic => ({
  ...problem('many-problems', span),
  message: `${left} more problems are not shown`,
  why: 'most of them follow from those above',
  hint: 'mend those first, then run again',
});

function commaHint(text: string): string {
  return /\d,\d/.test(text) ? '; with a point, not a comma' : '';
}
