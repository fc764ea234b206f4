import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidth } from '../../src/print/text/text-width.ts';
import { fitText, wrapText } from '../../src/print/text/wrap-text.ts';
import { evenly } from '../evenly.ts';

test('every line fits, and the lines hold the whole text', () => {
  const words = fc.array(fc.stringMatching(/^[A-Za-zα-ω0-9/()-]{1,30}$/), { maxLength: 12 });
  fc.assert(
    fc.property(words, evenly(12, 120), (list, width) => {
      const text = list.join(' ');
      const lines = wrapText(text, width, 3.6);
      for (const line of lines) expect(textWidth(line, 3.6)).toBeLessThanOrEqual(width + 1e-5);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    }),
    { numRuns: 200, seed: 7 },
  );
});

test('breaks at spaces before it breaks a word', () => {
  const width = textWidth('side-front, side', 4);
  expect(wrapText('side-front, side and back', width, 4)).toEqual(['side-front, side', 'and back']);
});

test('a lead in front narrows the first line only', () => {
  expect(wrapText('aaaa bbbb cccc', textWidth('aaaa bbbb', 4), 4, false, textWidth('aaaa', 4))).toEqual([
    'aaaa',
    'bbbb cccc',
  ]);
});

test('keeps line ends, and an empty text is one empty line', () => {
  expect(wrapText('one\ntwo', 100, 4)).toEqual(['one', 'two']);
  expect(wrapText('', 100, 4)).toEqual(['']);
});

test('a name of 300 characters is shrunk as far as it may be, then cut short', () => {
  const name = 'Lantern '.repeat(40);
  const fitted = fitText(name, 100, 4, 3);
  expect(fitted.size).toBe(3);
  expect(fitted.text.endsWith('…')).toBe(true);
  expect(textWidth(fitted.text, fitted.size)).toBeLessThanOrEqual(100);
  expect(fitText('Lantern', 100, 4, 3)).toEqual({ text: 'Lantern', size: 4 });
});
