import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountText } from '../../src/money/money.ts';
import { quoteReport } from '../../src/money/quote-report.ts';
import { notInPrice, quoteText } from '../../src/print/papers/quote-text.ts';
import { english } from '../../src/words/english.ts';
import { example, made, skirt } from './made.ts';

const Exact = Decimal.clone({ precision: 60, rounding: Decimal.ROUND_HALF_UP });

const LAYS = [
  { cloth: 'cupro', layers: ['lining'], length: 4310, buy: 4500 },
  { cloth: 'crepe', layers: ['shell'], length: 4630, buy: 4700 },
  { cloth: 'organza', layers: ['organza'], length: 5100, buy: 5500 },
];

describe('a worked example, by decimal.js', () => {
  const { facts, gown } = made(example('lantern'), LAYS);
  const report = quoteReport(gown.gown, facts.pricing)!;
  const line = (...factors: (string | number)[]): Decimal =>
    factors.reduce<Decimal>((product, factor) => product.times(factor), new Exact(1)).toDecimalPlaces(2);

  it('prices every line from the length bought, then overhead and stages', () => {
    const lines = [
      line('4.5', '7.90'),
      line('4.7', '24.50'),
      line('5.5', '19.00'),
      line('5.2', '11.20'),
      line(6, '3.40'),
      line(1, '0.60'),
      line(1, '2.80'),
      line('0.8', '1.90'),
      line(5, '0.35'),
      line(41, '23.00'),
    ];
    expect(report.lines.map((own) => own.amount)).toEqual(lines.map((own) => own.toFixed(2)));
    const making = lines.reduce((sum, own) => sum.plus(own));
    const overhead = making.times('0.1').toDecimalPlaces(2);
    const total = making.plus(overhead);
    expect(report).toMatchObject({ overhead: overhead.toFixed(2), total: total.toFixed(2), currency: 'GBP' });
    const half = total.div(2).toDecimalPlaces(2);
    const quarter = total.div(4).toDecimalPlaces(2);
    expect(report.stages.map((stage) => stage.amount)).toEqual([
      half.toFixed(2),
      quarter.toFixed(2),
      total.minus(half).minus(quarter).toFixed(2),
    ]);
  });

  it('says to the client the price and when it falls due, and nothing of margins', () => {
    const text = quoteText(gown.gown, facts.pricing, english('cm'));
    expect(text).toContain(`GBP ${report.total}`);
    expect(text).toContain('3 fittings');
    expect(text).toContain('31 March 2027');
    for (const hidden of [report.overhead, report.labour, 'overhead', 'margin', '23.00']) {
      expect(text).not.toContain(hidden);
    }
  });
});

describe('any prices', () => {
  const money = fc
    .tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 2 }))
    .map(([digits, places]) => new Exact(digits).div(new Exact(10).pow(places)).toFixed(places));
  const percent = fc.integer({ min: 0, max: 4000 }).map((hundredths) => (hundredths / 100).toFixed(2));

  it('agree with decimal.js to the last digit, in yen, pounds and dinars', () => {
    fc.assert(
      fc.property(
        money,
        money,
        percent,
        percent,
        percent,
        fc.constantFrom(['JPY', 0] as const, ['GBP', 2] as const, ['KWD', 3] as const),
        (rate, price, overhead, margin, tax, [currency, places]) => {
          const text = skirt({
            more: [
              `currency: ${currency}`,
              `labour: {rate: ${rate}, hours: 7.25, overhead: ${overhead}%, margin: ${margin}%, tax: ${tax}%, deposit: 30%}`,
              `notions: [{name: buttons, count: 3, price: ${price}}]`,
            ].join('\n'),
          });
          const { facts, gown } = made(text);
          const rounded = (value: Decimal): Decimal => value.toDecimalPlaces(places);
          const share = (value: Decimal, percentage: string): Decimal =>
            rounded(value.times(percentage).div(100));
          const making = rounded(new Exact(price).times(3)).plus(rounded(new Exact(rate).times('7.25')));
          const cost = making.plus(share(making, overhead));
          const net = cost.plus(share(cost, margin));
          const total = net.plus(share(net, tax));
          const report = quoteReport(gown.gown, facts.pricing);
          expect(report?.total).toBe(total.toFixed(places));
          const stages = facts.pricing.quote!.stages.map((stage) => new Exact(amountText(stage.amount)));
          expect(stages.reduce((sum, own) => sum.plus(own)).toFixed(places)).toBe(total.toFixed(places));
          expect(stages[0]!.toFixed(places)).toBe(share(total, '30').toFixed(places));
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('hours', () => {
  const hoursOf = (labour: string): string[] => {
    const { facts, gown } = made(skirt({ more: `currency: EUR\nlabour: {rate: 10, ${labour}}` }));
    const lines = quoteReport(gown.gown, facts.pricing)?.lines ?? [];
    return lines.map((own) => `${own.name} ${own.hours}`);
  };

  it('are the tasks, with what they leave of the whole as other work', () => {
    expect(hoursOf('hours: 12')).toEqual(['making 12']);
    expect(hoursOf('hours: 12, tasks: {cutting: 2.5, sewing: 8}')).toEqual([
      'cutting 2.5',
      'sewing 8',
      'other 1.5',
    ]);
  });

  it('come from the lengths sewn where a rate per metre is given', () => {
    // 1 h a metre round a waist seam of 72 cm is 0.72 h.
    expect(hoursOf('per-metre: {waist: 1}')).toEqual(['waist 0.72']);
    expect(hoursOf('tasks: {waist: 2}, per-metre: {waist: 1}')).toEqual(['waist 2']);
  });
});

describe('rounding, and what it came to', () => {
  it('rounds the price before tax to the maker’s step', () => {
    const more = 'currency: EUR\nlabour: {rate: 33, hours: 7, rounding: 5, tax: 20%}';
    const { facts, gown } = made(skirt({ more }));
    // 231 → 230, 20 % of it 46.
    expect(quoteReport(gown.gown, facts.pricing)).toMatchObject({
      rounding: '-1.00',
      net: '230.00',
      tax: '46.00',
      total: '276.00',
    });
  });

  it('puts planned beside actual and leaves a balance', () => {
    const more = 'currency: EUR\nlabour: {rate: 20, hours: 10, actual: {hours: 12.5, spent: 80}, paid: 90}';
    const { facts, gown } = made(skirt({ more }));
    expect(quoteReport(gown.gown, facts.pricing)?.actual).toEqual({
      paid: '90.00',
      balance: '110.00',
      revisedTotal: '330.00',
    });
  });
});

describe('a spec without prices', () => {
  it('has no quote, and names what is missing where there is one', () => {
    const plain = made(skirt());
    expect(plain.facts.pricing.quote).toBeUndefined();
    const words = english('cm');
    expect(quoteText(plain.gown.gown, plain.facts.pricing, words)).toContain('nothing to quote');
    const half = made(skirt({ more: 'notions: [{name: buttons, count: 3, price: 1}]\ncurrency: EUR' }));
    expect(notInPrice(half.facts.pricing, words)).toEqual(['crepe', 'making']);
  });
});
