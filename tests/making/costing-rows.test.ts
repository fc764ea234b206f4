import { describe, expect, it } from 'vitest';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { beside, printedLines, rowsUnder } from '../print/page-rows.ts';
import { example, made } from './made.ts';
import { inputOf } from './paper-input.ts';

/** Costing, record and quote, row by row, against sums by hand: every line to the penny, half up, then the next. */
const LAYS = [
  { cloth: 'cupro', layers: ['lining'], length: 4310, buy: 4500 },
  { cloth: 'crepe', layers: ['shell'], length: 4630, buy: 4700 },
  { cloth: 'organza', layers: ['organza'], length: 5100, buy: 5500 },
];

const text = example('lantern')
  .replace('  overhead: 10%\n', '  overhead: 10%\n  margin: 15%\n  tax: 20%\n  rounding: 5\n  paid: 500\n')
  .replace('  deposit: 50%\n', '  deposit: 50%\n  actual: {hours: 47.5, spent: 352.20}\n')
  .replace('    price: 24.50\n', '    price: 24.50\n    used: 4.4m\n');
const input = inputOf(made(text, LAYS));
const job = printedLines(jobSheet(input).pages);
const client = printedLines(clientPages(input).pages);

describe('the costing', () => {
  const rows = rowsUnder(job, ['what', 'how much', 'at', 'amount']);

  it('each line: how much of it, at what, and what that comes to', () => {
    expect(rows.slice(0, 10)).toEqual([
      ['cupro', '4.5 m', '7.90 a metre', '35.55'],
      ['crepe', '4.7 m', '24.50 a metre', '115.15'],
      ['organza', '5.5 m', '19.00 a metre', '104.50'],
      ['galloon', '5.2 m', '11.20 a metre', '58.24'],
      ['horsehair braid, shell’s hem', '6 m', '3.40 a metre', '20.40'],
      ['stay tape, shell’s waist', '1 m', '0.60 a metre', '0.60'],
      ['concealed zip 25 cm', '1', '2.80 each', '2.80'],
      ['petersham', '0.8 m', '1.90 a metre', '1.52'],
      ['hooks and eyes for the bustle', '5', '0.35 each', '1.75'],
      ['making', '41 h', '23.00 an hour', '943.00'],
    ]);
  });

  it('what they come to together, and what is added', () => {
    expect(rows.slice(10, 19).map(([name, , , amount]) => [name, amount])).toEqual([
      ['materials and notions', '340.51'],
      ['work', '943.00'],
      // 10 % of 1283.51
      ['overhead, 10 % of both', '128.35'],
      ['cost', '1411.86'],
      // 15 % of 1411.86 is 211.779; 1623.64 goes up to the next five.
      ['margin, 15 % of cost', '211.78'],
      ['rounding', '1.36'],
      ['price before tax', '1625.00'],
      ['tax, 20 %', '325.00'],
      ['price', 'GBP 1950.00'],
    ]);
  });
});

describe('work by the metre', () => {
  it('every seam of every layer, as often as it is there; the waist once', () => {
    const own = example('lantern').replace('  hours: 41\n', '  per-metre: {seams: 0.5, waist: 1}\n');
    const rows = rowsUnder(printedLines(jobSheet(inputOf(made(own, LAYS))).pages), [
      'what',
      'how much',
      'at',
      'amount',
    ]);
    // 2 × (103 + 106 + 112 + 139) + 176 = 10.96 m in two layers, and 2 cm less for each of nine in the lining.
    expect(rows).toContainEqual(['seams', '16.35 h', '23.00 an hour', '376.05']);
    expect(rows).toContainEqual(['waist', '0.74 h', '23.00 an hour', '17.02']);
  });
});

describe('work that is not priced', () => {
  it.each([
    ['hours without a rate', '  rate: 23.00\n'],
    ['a rate without hours', '  hours: 41\n'],
  ])('%s: materials alone, and overhead on them', (_, left) => {
    const own = printedLines(jobSheet(inputOf(made(example('lantern').replace(left, ''), LAYS))).pages);
    const rows = rowsUnder(own, ['what', 'how much', 'at', 'amount']);
    const amounts = new Map(rows.map(([name, , , amount]) => [name, amount]));
    expect(rows.some(([, , at]) => at!.endsWith('an hour'))).toBe(false);
    expect(amounts.get('work')).toBe('0.00');
    // 10 % of 340.51
    expect(amounts.get('overhead, 10 % of both')).toBe('34.05');
    expect(amounts.get('price')).toBe('GBP 374.56');
  });
});

describe('planned and actual', () => {
  it('what was meant, what it came to, and the difference', () => {
    expect(rowsUnder(job, ['what', 'planned', 'actual', 'difference']).slice(0, 3)).toEqual([
      ['hours', '41', '47.5', '6.5'],
      ['crepe, length', '4.70 m', '4.40 m', '-0.30 m'],
      ['materials', '340.51', '352.20', '11.69'],
    ]);
  });

  it.each([
    // 352.20 + 47.5 × 23 = 1444.70; + 10 % = 1589.17; + 15 % = 1827.55; by fives 1830; + 20 %
    ['Price by what it came to', 'GBP 2196.00'],
    ['paid so far', 'GBP 500.00'],
    ['balance to invoice on the price agreed', 'GBP 1450.00'],
    ['balance by what it came to', 'GBP 1696.00'],
  ])('%s: %s', (label, amount) => expect(beside(job, label)).toEqual([amount]));
});

describe('the quote', () => {
  it.each([
    ['price before tax', 'GBP 1625.00'],
    ['tax, 20 %', 'GBP 325.00'],
    ['price', 'GBP 1950.00'],
    ['deposit, with the order', '50 % | GBP 975.00'],
    ['on the second fitting', '25 % | GBP 487.50'],
    ['on delivery', '25 % | GBP 487.50'],
  ])('%s: %s', (label, amount) => expect(beside(client, label)).toEqual([amount]));

  it('leaves the balance to the end where there is a deposit alone', () => {
    const plain = text
      .replace('  stages: {on the second fitting: 25%, on delivery: 25%}\n', '')
      .replace('deposit: 50%', 'deposit: 37.5%');
    const own = printedLines(clientPages(inputOf(made(plain, LAYS))).pages);
    // 37.5 % of 1950, and what that leaves
    expect(beside(own, 'deposit, with the order')).toEqual(['37.5 % | GBP 731.25']);
    expect(beside(own, 'balance, on delivery')).toEqual(['62.5 % | GBP 1218.75']);
  });
});
