import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineAndColumn } from '../../../src/diagnostics/place.ts';
import { readSpec } from '../../../src/gown-file/read-spec.ts';
import { gowns, specText } from '../../properties/gowns.ts';
import { SEED } from '../../seed.ts';

const ROOT = join(import.meta.dirname, '../../..');
const FINDINGS = join(ROOT, 'src/diagnostics');
const PROBLEMS = readdirSync(FINDINGS)
  .filter((file) => file.endsWith('slip-problems.ts'))
  .map((file) => readFileSync(join(FINDINGS, file), 'utf8'))
  .join('');
const CODES = new Set([...PROBLEMS.matchAll(/'((?:[a-z]+-)+[a-z]+)'/g)].map(([, code]) => code!));

function slipsIn(text: string): string[] {
  return readSpec({ name: 'gown.yaml', text })
    .diagnostics.filter(({ code }) => CODES.has(code))
    .map(({ code, level, span, message }) => `${lineAndColumn(span).line} ${level}[${code}] ${message}`);
}

describe('nothing is said of', () => {
  const files = ['examples', 'templates'].flatMap((folder) =>
    readdirSync(join(ROOT, folder))
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => `${folder}/${file}`),
  );
  it.each(files)('%s', (file) => expect(slipsIn(readFileSync(join(ROOT, file), 'utf8'))).toEqual([]));

  // Two tapes in one workroom.
  it.each(files)('%s, seams of 5/8 in', (file) => {
    const text = readFileSync(join(ROOT, file), 'utf8');
    expect(slipsIn(text.replace(/\b1\.5\b/g, '5/8in'))).toEqual([]);
  });

  it('the codes are found', () => expect(CODES.size).toBeGreaterThan(20));
});

describe('gowns drawn at random', () => {
  it('get no warning: however odd, they can be cut', () => {
    fc.assert(
      fc.property(gowns, (gown) => {
        const loud = slipsIn(specText(gown)).filter((line) => !/^\d+ note/.test(line));
        expect(loud).toEqual([]);
      }),
      { numRuns: 300, seed: SEED },
    );
  });
});

/** Sane gowns of other kinds than the templates', from books and practice. */
const OTHERS: Readonly<Record<string, string>> = {
  // I. Rosenfeld, The Practical Designer, 1911, lesson 84.
  'a stout figure, its front longer than its back': `
bodice: {waist-seam: 40}
gores:
  - {name: front, on-fold: true, half-top: 6, half-hem: 14}
  - {name: side, top: 8, hem: 18}
  - {name: back, top: 6, hem: 16}
lengths: {hem-width-at: 40, at: {centre-front: 44, front/side: 42, side/back: 40, centre-back: 39}}
`,
  // E. A. Bennett, The Perfect Dressmaking System, 1914, p. 13.
  'five gores of 1914': `
bodice: {waist-seam: 25, drop-below-waist: {centre-front: 1.5, front/side: 1, side/back: 0.5}}
gores:
  - {name: front, on-fold: true, half-top: 2.5, half-hem: 5}
  - {name: side, top: 5, hem: 17.75}
  - {name: back, top: 5, hem: 17.75}
lengths: {hem-width-at: 39.5, at: {centre-front: 38, front/side: 38.5, side/back: 39, centre-back: 39.5}}
`,
  // Common practice: tea length, a child's, a court train of two yards, a bell that widens to the back.
  "a child's": `
bodice: {waist-seam: 22}
gores: [{name: front, top: 5.5, hem: 15}, {name: back, top: 5.5, hem: 16}]
lengths: {hem-width-at: 20, at: {centre-front: 20, centre-back: 20}}
`,
  'a court train': `
bodice: {waist-seam: 28}
gores:
  - {name: front, top: 4, hem: 12}
  - {name: side, top: 4, hem: 14}
  - {name: back, top: 6, hem: 26}
lengths: {measured: to-floor, off-floor: 1, hem-width-at: 41, at: {centre-front: 42, centre-back: 43}}
train: {on-floor: 72, begins: front/side}
`,
};

describe('gowns of other kinds pass in silence', () => {
  it.each(Object.entries(OTHERS))('%s', (_, text) => {
    const spec = `format: 1
gown: Trial
units: in
${text}
allowances: {seam: 5/8, waist: 5/8, hem: 1}
layers: [{name: shell, cloth: shell, hem: turned}]
cloths: {shell: {width: 54, selvedge: 1/2}}
`;
    expect(slipsIn(spec)).toEqual([]);
  });
});
