import { expect, it } from 'vitest';
import { visualRuns } from '../../src/print/text/text-direction.ts';
import { wrapText } from '../../src/print/text/wrap-text.ts';

const LENGTH = 100_000;

it('a word of 100 kB is broken into lines that hold all of it, none wider than it may be', () => {
  const word = 'abcdefghij'.repeat(LENGTH / 10);
  const lines = wrapText(word, 100, 10);
  expect(lines.join('')).toBe(word);
  // Every line but the last is as full as the next letter allows: all are of nearly one length.
  const lengths = lines.slice(0, -1).map(({ length }) => length);
  expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThan(4);
});

it('closing brackets behind a right-to-left word are given back to the line, all but those opened in it', () => {
  const text = `א(ב)${')'.repeat(LENGTH)}`;
  const runs = visualRuns(text);
  expect(runs.map(({ text: run }) => run.length)).toEqual([4, LENGTH]);
  expect(runs.map(({ rightToLeft }) => rightToLeft)).toEqual([true, false]);
});
