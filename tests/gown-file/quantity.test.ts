import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleOf, lengthOf, parseQuantity, shareOf, weightOf } from '../../src/gown-file/quantity.ts';

/** 1 in = 25.4 mm and 1 yd = 0.9144 m, both exact by definition (international yard, 1959). */
const LENGTHS: readonly (readonly [string, string, number])[] = [
  ['98', 'cm', 980],
  ['98', 'mm', 98],
  ['98', 'in', 2489.2],
  ['98cm', 'in', 980],
  ['980mm', 'cm', 980],
  ['38in', 'cm', 965.2],
  ['5/8in', 'cm', 15.875],
  ['1 5/8 in', 'cm', 41.275],
  ['1 5/8in', 'cm', 41.275],
  ['1-5/8in', 'cm', 41.275],
  ['1⅝in', 'cm', 41.275],
  ['1 ⅝ in', 'cm', 41.275],
  ['½in', 'cm', 12.7],
  ['1 5/8', 'in', 41.275],
  ['26 1/2', 'in', 673.1],
  ['0.1m', 'in', 100],
  ['1/8yd', 'cm', 114.3],
  ['1yd', 'cm', 914.4],
  ['1ft', 'cm', 304.8],
  ['2.5 CM', 'in', 25],
  ['  8.6  cm ', 'in', 86],
  ['.5cm', 'in', 5],
  ['5.', 'cm', 50],
  ['+3', 'cm', 30],
  ['-1.5', 'cm', -15],
  ['−1.5', 'cm', -15],
  ['-1 1/2in', 'cm', -38.1],
  ['0', 'cm', 0],
  ['-0', 'cm', 0],
  ['1e1', 'mm', 10],
  ['12e-1', 'mm', 1.2],
  ['9"', 'cm', 228.6],
];

describe('lengths', () => {
  it.each(LENGTHS)('%s in a file in %s is %d mm', (text, units, millimetres) => {
    expect(lengthOf(parseQuantity(text)!, units)).toBe(millimetres);
  });

  it.each([
    '',
    'wide',
    '1,5',
    '1 2',
    '1/0',
    '5/8/9',
    '1.2.3',
    '--1',
    '1 5/8 5',
    '/8',
    '0x10',
    '.nan',
    '.inf',
    'cm',
    '1 000',
    '5 c m',
    '⅝⅝',
  ])('%j is none', (text) => {
    const quantity = parseQuantity(text);
    expect(quantity === undefined ? undefined : lengthOf(quantity, 'cm')).toBeUndefined();
  });

  it.each(['3%', '17deg', '3kg', '4 cmm', '6px'])('%j has no unit of length', (text) => {
    expect(lengthOf(parseQuantity(text)!, 'cm')).toBeUndefined();
  });

  it('are the same number in whichever unit they are written', () => {
    const tenths = fc.integer({ min: 1, max: 100_000 });
    fc.assert(
      fc.property(tenths, (n) => {
        const millimetres = lengthOf(parseQuantity(`${n / 10}mm`)!, 'in');
        expect(lengthOf(parseQuantity(`${n}e-2cm`)!, 'in')).toBe(millimetres);
        expect(lengthOf(parseQuantity(`${n / 10}`)!, 'mm')).toBe(millimetres);
        expect(lengthOf(parseQuantity(`${n}/10`)!, 'mm')).toBe(millimetres);
        expect(lengthOf(parseQuantity(`${n * 254}e-3cm`)!, 'mm')).toBe(
          lengthOf(parseQuantity(`${n}/10 in`)!, 'mm'),
        );
      }),
    );
  });

  it('agree with whole and fraction added by hand', () => {
    const part = fc.record({
      whole: fc.nat(99),
      over: fc.integer({ min: 1, max: 63 }),
      under: fc.constantFrom(2, 4, 8, 16, 32, 64),
    });
    fc.assert(
      fc.property(part, ({ whole, over, under }) => {
        const read = lengthOf(parseQuantity(`${whole} ${over}/${under}in`)!, 'cm')!;
        // Sixty-fourths of an inch are exact in binary until the multiplication.
        expect(read).toBeCloseTo((whole + over / under) * 25.4, 9);
      }),
    );
  });

  it('never throw and never read text as not-a-number', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom('', 'cm', 'in', '%', ' 1/2 in'), (text, unit) => {
        const quantity = parseQuantity(text + unit);
        if (quantity !== undefined)
          expect(Number.isNaN(quantity.numerator / quantity.denominator)).toBe(false);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('angles, shares and weights', () => {
  it.each([
    ['17deg', (17 * Math.PI) / 180],
    ['17', (17 * Math.PI) / 180],
    ['10.5 °', (10.5 * Math.PI) / 180],
    ['0.3rad', 0.3],
    ['-4deg', (-4 * Math.PI) / 180],
    ['360deg', 2 * Math.PI],
  ])('%s is %d radians', (text, radians) => expect(angleOf(parseQuantity(text)!)).toBeCloseTo(radians, 15));

  it.each(['17cm', '3%'])('%s is no angle', (text) => expect(angleOf(parseQuantity(text)!)).toBeUndefined());

  it.each([
    ['3%', 0.03],
    ['0.03', 0.03],
    ['1/8', 0.125],
    ['12.5%', 0.125],
    ['0', 0],
  ])('%s is a share of %d', (text, share) => expect(shareOf(parseQuantity(text)!)).toBe(share));

  it.each(['3cm', '3 percent'])('%s is no share', (text) =>
    expect(shareOf(parseQuantity(text)!)).toBeUndefined(),
  );

  // 1 oz = 28.349523125 g by definition, so 1 oz/yd² = 33.9057475 g/m².
  it.each([
    ['210', 210],
    ['210 g/m2', 210],
    ['70gsm', 70],
    ['1oz/yd2', 33.9057475],
  ])('%s is %d g/m²', (text, grams) => expect(weightOf(parseQuantity(text)!)).toBeCloseTo(grams, 6));
});
