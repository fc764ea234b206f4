import { error, listed } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of one value or key, whatever gown it belongs to. `key` is the key that the value stands at. */

export const unknownKey = error(
  'unknown-key',
  (key: string, section: string, near: string | undefined, keys: readonly string[]) => ({
    message: `${quoted(key)} is no key ${section}${near === undefined ? '' : `; the nearest is ${quoted(near)}`}.`,
    why: 'What stands here would be left out of the gown.',
    hint:
      near === undefined
        ? `The keys here are ${listed(keys)}.`
        : `Write ${quoted(near)}, or take the line out.`,
  }),
);

export const notDrafted = error('not-drafted', (key: string, instead: string) => ({
  message: `${quoted(key)} is not drafted under that name.`,
  why: 'What stands here would be left out of the gown.',
  hint: instead,
}));

export const missingKey = error('missing-key', (key: string, section: string, expected: string) => ({
  message: `${quoted(key)} is missing ${section}.`,
  why: 'The gown cannot be drafted without it, and a guess could spoil cloth.',
  hint: `Add ${quoted(`${key}:`)} with ${expected}.`,
}));

export const wrongKind = error('wrong-kind', (key: string, found: string, expected: string) => ({
  message: `${quoted(key)} is ${found} where ${expected} should stand.`,
  why: 'It cannot be understood, and a guess could spoil cloth.',
  hint:
    expected === 'a section' ? 'Write its keys below it, set in, each with a value.' : `Write ${expected}.`,
}));

export const tooManyItems = error('too-many-items', (key: string, count: number, most: number) => ({
  message: `${quoted(key)} is a list of ${count} where at most ${most} can stand.`,
  why: 'So long a list is a slip of the hand, and would keep you waiting for minutes.',
  hint: 'Look whether a part of it was pasted several times; what one gown cannot hold goes into a second spec.',
}));

export const emptyValue = error('empty-value', (key: string, expected: string) => ({
  message: `Nothing stands after ${quoted(`${key}:`)}.`,
  why: 'A measure may have been forgotten.',
  hint: `Write ${expected} here, or take the line out.`,
}));

export const notALength = error('not-a-length', (key: string, text: string) => ({
  message: `${quoted(text)} is no length, which ${quoted(key)} should be.`,
  why: 'A wrong measure is cut into cloth.',
  hint: `Write a number in the file's units, or with its own: \`98cm\`, \`980mm\`, \`38in\`, \`5/8in\`, \`1 5/8 in\`${commaHint(text)}.`,
}));

export const unknownUnit = error(
  'unknown-unit',
  (unit: string, units: readonly string[], near: string | undefined) => ({
    message: `${quoted(unit)} is no unit of length.`,
    why: 'A wrong unit makes a piece that is many times too large or too small.',
    hint:
      near === undefined
        ? `Write one of ${listed(units)}.`
        : `Write ${quoted(near)}, or another of ${listed(units)}.`,
  }),
);

export const notAnAngle = error('not-an-angle', (key: string, text: string) => ({
  message: `${quoted(text)} is no angle, which ${quoted(key)} should be.`,
  why: 'The flare decides how full the skirt is.',
  hint: 'Write degrees, such as `17deg`, or give the width at the hem as `hem` instead.',
}));

export const notAShare = error('not-a-share', (key: string, text: string) => ({
  message: `${quoted(text)} is no percentage, which ${quoted(key)} should be.`,
  why: 'A share misread changes every piece or price that it is taken of.',
  hint: 'Write a percentage, such as `3%`, or a part of one, such as `0.03`.',
}));

export const notAWeight = error('not-a-weight', (key: string, text: string) => ({
  message: `${quoted(text)} is no weight of cloth, which ${quoted(key)} should be.`,
  why: 'The gown would be heavier or lighter than the papers say.',
  hint: 'Write grams per square metre, such as 210, or ounces, such as `6oz/yd2`.',
}));

export const notADecimal = error('not-a-decimal', (key: string, text: string, expected: string) => ({
  message: `${quoted(text)} is not ${expected.split(',')[0]}, which ${quoted(key)} should be.`,
  why: 'The quote is reckoned from it, exact to the last penny.',
  hint: `Write ${expected}, with a point and up to four decimals, no sign, and no currency${commaHint(text)}.`,
}));

export const notACount = error('not-a-count', (key: string, text: string, least: number, most: number) => ({
  message: `${quoted(text)} is no whole number between ${least} and ${most}, which ${quoted(key)} should be.`,
  why: 'It counts things.',
  hint: 'Write a whole number, without a unit.',
}));

export const notTimes = error('not-a-number-of-times', (key: string, text: string) => ({
  message: `${quoted(text)} is no number of times, which ${quoted(key)} should be.`,
  why: 'It says how many times its sewn width the cloth is.',
  hint: 'Write a number such as 2.5.',
}));

export const notADate = error('not-a-date', (key: string, text: string) => ({
  message: `${quoted(text)} is no day of the calendar, which ${quoted(key)} should be.`,
  why: 'The calendar is worked back from it.',
  hint: 'Write year-month-day, such as 2027-05-01.',
}));

export const notAFlag = error('not-a-flag', (key: string, text: string) => ({
  message: `${quoted(text)} is neither true nor false, which ${quoted(key)} should be.`,
  why: 'In YAML `yes` and `no` are plain words.',
  hint: /^(y|yes|on)$/i.test(text)
    ? 'Write true.'
    : /^(n|no|off)$/i.test(text)
      ? 'Write false.'
      : 'Write true or false.',
}));

export const notOneOf = error(
  'not-one-of',
  (key: string, text: string, words: readonly string[], near: string | undefined) => ({
    message: `${quoted(text)} is nothing that ${quoted(key)} can be${near === undefined ? '' : `; the nearest is ${quoted(near)}`}.`,
    why: 'What was meant cannot be told.',
    hint: words.length === 1 ? `Write ${words[0]}.` : `Write one of ${listed(words)}.`,
  }),
);

export const notOfForm = error('not-of-form', (key: string, text: string, expected: string) => ({
  message: `${quoted(text)} is not ${expected}, which ${quoted(key)} should be.`,
  why: 'What was meant cannot be told.',
  hint: `Write ${expected}.`,
}));

export const negative = error('negative-measure', (key: string, text: string, what: string) => ({
  message: `${quoted(key)} is ${quoted(text)}, and ${what} cannot be below nought.`,
  why: 'The piece would turn inside out.',
  hint: 'Take the minus away, or measure again.',
}));

export const outOfBounds = error(
  'measure-out-of-bounds',
  (key: string, text: string, what: string, least: string, most: string) => ({
    message: `${quoted(key)} is ${quoted(text)}, and ${what} lies between ${least} and ${most}.`,
    why: 'A slipped decimal point or unit makes a piece that fits nobody.',
    hint: "Look at the decimal point and the unit; a bare number is in the file's `units`.",
  }),
);

export const emptyText = error('empty-text', (key: string) => ({
  message: `${quoted(key)} is empty text.`,
  why: 'It is printed, or other lines refer to it.',
  hint: 'Write it out, or take the line out.',
}));

export const tooLong = error('text-too-long', (key: string, longest: number) => ({
  message: `${quoted(key)} is longer than ${longest} characters.`,
  why: 'It is printed on pieces and papers, where it would run over the lines.',
  hint: 'Shorten it, and put the rest into `notes`.',
}));

export const manyProblems = error('many-problems', (left: number) => ({
  message: `${left} more problems are not shown.`,
  why: 'Most of them follow from those above.',
  hint: 'Mend those first, then run again.',
}));

function commaHint(text: string): string {
  return /\d,\d/.test(text) ? '; with a point, not a comma' : '';
}
