import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fontkit from '@pdf-lib/fontkit';
import { PDFDocument, StandardFonts } from 'pdf-lib';
import { expect, test } from 'vitest';
import { DEJAVU_RANGES } from '../../src/print/text/font-widths.ts';
import { plainText } from '../../src/print/text/plain-text.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { isWinAnsi, winAnsiCode } from '../../src/print/text/win-ansi.ts';

const LATIN = 'Gown: “Lantern”, 41 ½ – Ünïcødé €, WAVE fjord 0123456789 (sew\\cut)';

test('widths of Latin text are those of the standard fonts', async () => {
  const document = await PDFDocument.create();
  for (const [name, bold] of [
    [StandardFonts.Helvetica, false],
    [StandardFonts.HelveticaBold, true],
  ] as const) {
    const font = await document.embedFont(name);
    for (const character of LATIN) {
      expect(textWidth(character, 10, bold)).toBeCloseTo(font.widthOfTextAtSize(character, 10), 6);
    }
  }
});

test('widths of other text are those of DejaVu Sans, read from the font itself', () => {
  const path = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
  const font = fontkit.create(readFileSync(path));
  const omega = textWidth('Ω', 1000);
  let compared = 0;
  for (const [first, last] of DEJAVU_RANGES) {
    for (let code = first; code <= last; code++) {
      const character = String.fromCodePoint(code);
      if (!font.hasGlyphForCodePoint(code) || character.normalize('NFC') !== character) continue;
      if (/[\s\p{Cc}]/u.test(character)) continue;
      const expected = (font.glyphForCodePoint(code).advanceWidth * 1000) / font.unitsPerEm;
      // Beside an Ω, so that the whole text is set in DejaVu Sans.
      expect(Math.abs(textWidth(`Ω${character}`, 1000) - omega - expected), character).toBeLessThan(0.51);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(500);
});

test('width grows with the size and does not depend on bold where the font has no bold', () => {
  expect(textWidth('hem', 7)).toBeCloseTo(7 * textWidth('hem', 1), 9);
  expect(textWidth('Ελένη', 5, true)).toBe(textWidth('Ελένη', 5));
});

test('the standard fonts show the letters of Windows-1252, each as it is, and no other', () => {
  // Encoding Standard (WHATWG), index of windows-1252, 0x80 to 0x9f; from memory.
  const high = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';
  const latin = Array.from({ length: 256 }, (_, code) => String.fromCharCode(code));
  const letters = new Set([...latin.filter((one) => !/\p{Cc}/u.test(one)), ...high]);
  expect(letters.size).toBe(218);
  for (let unit = 0; unit < 0x10000; unit++) {
    const letter = String.fromCharCode(unit);
    const isShown = letters.has(letter);
    if (isWinAnsi(`a${letter}`) !== isShown || (winAnsiCode(unit) !== undefined) !== isShown)
      expect.unreachable(`U+${unit.toString(16)}`);
    if (isShown) expect(plainText(letter)).toBe(letter);
  }
  expect(isWinAnsi('a\n')).toBe(false);
  expect(isWinAnsi('\u{1f457}')).toBe(false);
});
