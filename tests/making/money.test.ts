import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decimalText,
  fractionOfNumber,
  fractionOfText,
  minus,
  over,
  plus,
  times,
} from '../../src/money/fraction.ts';
import {
  amountText,
  less,
  minorDigits,
  moneyOf,
  moneyOfText,
  moneyText,
  roundedToStep,
  shareOf,
  sumOf,
} from '../../src/money/money.ts';

const Exact = Decimal.clone({ precision: 60, rounding: Decimal.ROUND_HALF_UP });
const decimal = fc
  .tuple(fc.bigInt(-9_999_999n, 9_999_999n), fc.integer({ min: 0, max: 6 }))
  .map(([digits, places]) => new Exact(digits.toString()).div(new Exact(10).pow(places)).toFixed(places));

describe('fractions, against decimal.js', () => {
  it('adds, takes away and multiplies exactly', () => {
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        const [x, y] = [fractionOfText(a), fractionOfText(b)];
        expect(decimalText(plus(x, y), 12)).toBe(sameZero(new Exact(a).plus(b).toFixed(12)));
        expect(decimalText(minus(x, y), 12)).toBe(sameZero(new Exact(a).minus(b).toFixed(12)));
        expect(decimalText(times(x, y), 12)).toBe(sameZero(new Exact(a).times(b).toFixed(12)));
      }),
    );
  });

  it('divides, and rounds a half away from zero', () => {
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        fc.pre(!new Exact(b).isZero());
        const ours = decimalText(over(fractionOfText(a), fractionOfText(b)), 2);
        expect(ours).toBe(sameZero(new Exact(a).div(b).toFixed(2)));
      }),
    );
    expect(decimalText(fractionOfText('0.125'), 2)).toBe('0.13');
    expect(decimalText(fractionOfText('-0.125'), 2)).toBe('-0.13');
  });

  it('takes numbers that a binary float only comes near to as they were written', () => {
    expect(decimalText(times(fractionOfNumber(0.1), fractionOfNumber(3)), 20)).toBe(`0.3${'0'.repeat(19)}`);
    expect(decimalText(fractionOfNumber(914.4 / 8), 6)).toBe('114.300000');
    expect(() => fractionOfNumber(Number.NaN)).toThrow(RangeError);
  });

  it('refuses what is not a plain decimal', () => {
    for (const text of ['', '.', '-', '1e3', '1,5', '0x10', '12 GBP', 'NaN', '1.2.3']) {
      expect(() => fractionOfText(text), text).toThrow(RangeError);
    }
  });
});

describe('money', () => {
  it('keeps the decimals that ISO 4217 gives a currency', () => {
    expect([minorDigits('GBP'), minorDigits('JPY'), minorDigits('KWD'), minorDigits(undefined)]).toEqual([
      2, 0, 3, 2,
    ]);
    expect(moneyText(moneyOfText('1234.5', 'GBP'))).toBe('GBP 1234.50');
    expect(moneyText(moneyOfText('1234.5', 'JPY'))).toBe('JPY 1235');
    expect(moneyText(moneyOfText('1.0005', 'KWD'))).toBe('KWD 1.001');
    expect(moneyText(moneyOfText('7', undefined))).toBe('7.00');
  });

  it('rounds a cloth line as decimal.js does', () => {
    fc.assert(
      fc.property(decimal, decimal, fc.constantFrom('GBP', 'JPY', 'KWD'), (price, quantity, currency) => {
        const ours = amountText(moneyOf(times(fractionOfText(price), fractionOfText(quantity)), currency));
        expect(ours).toBe(sameZero(new Exact(price).times(quantity).toFixed(minorDigits(currency))));
      }),
    );
  });

  it('rounds to a step, takes shares and keeps sums whole', () => {
    const total = moneyOfText('1962.50', 'GBP');
    expect(amountText(roundedToStep(total, moneyOfText('5', 'GBP')))).toBe('1965.00');
    expect(amountText(roundedToStep(total, moneyOfText('0', 'GBP')))).toBe('1962.50');
    const third = shareOf(total, over(fractionOfText('1'), fractionOfText('3')));
    expect(amountText(third)).toBe('654.17');
    expect(amountText(sumOf([third, third, less(less(total, third), third)], 'GBP'))).toBe('1962.50');
  });
});

/** decimal.js writes minus zero; a quote does not. */
function sameZero(text: string): string {
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}

describe('the smallest unit of a currency', () => {
  const BY_DIGITS = {
    0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
    2: 'EUR GBP USD CHF SEK INR',
    3: 'BHD JOD KWD LYD OMR TND',
    4: 'CLF UYW',
  };
  it.each(Object.entries(BY_DIGITS))(
    'has %s digits, as the platform knows them too (CLDR, ISO 4217)',
    (digits, codes) => {
      for (const currency of codes.split(' ')) {
        const platform = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
        expect(platform.maximumFractionDigits, currency).toBe(Number(digits));
        expect(minorDigits(currency), currency).toBe(Number(digits));
      }
    },
  );

  it('is a thousandth of an Iraqi dinar by ISO 4217, though none is paid', () =>
    expect(minorDigits('IQD')).toBe(3));
});
