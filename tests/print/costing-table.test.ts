import { describe, expect, it } from 'vitest';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { costingBlocks } from '../../src/print/papers/costing-blocks.ts';
import { quoteText } from '../../src/print/papers/quote-text.ts';
import { english } from '../../src/words/english.ts';
import { asPrinted, handMade, tablesOf } from './hand-made-facts.ts';
import { beside, printedLines } from './page-rows.ts';

/** The costing, the record and the quote from amounts made by hand: no two are alike, so that none passes for another. */

const pounds = (minor: number) => ({ minor: BigInt(minor), currency: 'GBP' });
const share = (percent: number) => ({ numerator: BigInt(percent), denominator: 100n });
const of = (numerator: number, denominator = 1) => ({
  numerator: BigInt(numerator),
  denominator: BigInt(denominator),
});

const QUOTE = {
  currency: 'GBP',
  lines: [
    { kind: 'cloth', name: 'crepe', length: 4750, price: of(49, 2), amount: pounds(11638) },
    {
      kind: 'cloth',
      name: 'velvet',
      length: 914.4 * 2.25,
      pricedPer: 914.4,
      price: of(31),
      amount: pounds(6975),
    },
    {
      kind: 'strip',
      name: 'binding side/back',
      strip: { kind: 'binding', layer: 'net', along: 'side/back' },
      length: 1500,
      price: of(3, 80),
      amount: pounds(6),
    },
    { kind: 'notion', name: 'hooks', count: 7, price: of(7, 20), amount: pounds(245) },
    { kind: 'notion', name: 'petersham', price: of(2), amount: pounds(200) },
    { kind: 'labour', name: 'seams', hours: of(25, 4), price: of(23), amount: pounds(14375) },
    { kind: 'labour', name: 'beading', hours: of(3), price: of(23), amount: pounds(6900) },
  ],
  materials: pounds(19064),
  labour: pounds(21275),
  overhead: pounds(4034),
  overheadShare: share(10),
  cost: pounds(44373),
  margin: pounds(6656),
  marginShare: share(15),
  rounding: pounds(-29),
  net: pounds(51000),
  tax: pounds(10200),
  taxShare: share(20),
  total: pounds(61200),
  stages: [
    { name: 'deposit', share: of(3, 8), amount: pounds(22950) },
    { name: 'second fitting', share: of(1, 4), amount: pounds(15300) },
    { name: 'balance', share: of(3, 8), amount: pounds(22951) },
  ],
};

const MATERIALS = { priced: [], withoutPrice: [], withoutLength: [] };
const pricing = (own: object = {}) => ({ quote: QUOTE, materials: MATERIALS, workCharged: true, ...own });
const input = (own: object = {}, rest: Record<string, unknown> = {}) =>
  handMade('cm', {
    workroom: {
      pricing: pricing(own),
      weight: { layers: [] },
      skirt: { stations: [], waist: 740, hem: 4010 },
      cautions: { client: [] },
    },
    gown: {
      name: 'Lantern',
      labour: { fittingsIncluded: 2, expires: '2027-03-09' },
      format: 1,
      content: '0',
    },
    ...rest,
  });

describe('the costing', () => {
  it('each line and each sum in its row', () => {
    expect(asPrinted(tablesOf(costingBlocks(input()))[0]!)).toEqual([
      ['<>>>'],
      ['what', 'how much', 'at', 'amount'],
      ['crepe', '4.75 m', '24.50 a metre', '116.38'],
      ['velvet', '2.25 yd', '31.00 a yard', '69.75'],
      ['binding, net’s side/back seam', '1.5 m', '0.0375 a metre', '0.06'],
      ['hooks', '7', '0.35 each', '2.45'],
      ['petersham', '1', '2.00 each', '2.00'],
      ['seams', '6.25 h', '23.00 an hour', '143.75'],
      ['beading', '3 h', '23.00 an hour', '69.00'],
      ['materials and notions', '', '', '190.64'],
      ['work', '', '', '212.75'],
      ['overhead, 10 % of both', '', '', '40.34'],
      ['cost', '', '', '443.73'],
      ['margin, 15 % of cost', '', '', '66.56'],
      ['rounding', '', '', '-0.29'],
      ['price before tax', '', '', '510.00'],
      ['tax, 20 %', '', '', '102.00'],
      ['price', '', '', 'GBP 612.00'],
    ]);
  });

  it('the price stands bold; what rounds to nothing is not told', () => {
    const [table] = tablesOf(costingBlocks(input({ quote: { ...QUOTE, rounding: pounds(0) } })));
    expect(table!.boldRows).toEqual([table!.rows.length - 1]);
    expect(table!.rows.map(([name]) => name)).not.toContain('rounding');
    expect(costingBlocks(input({ quote: undefined }))).toEqual([]);
  });

  it('says that lays were cut short, only where they were', () => {
    const said = (cutShort: boolean) =>
      costingBlocks(input({}, { cutShort })).filter(
        (block) => block.kind === 'paragraph' && block.text.startsWith('The lays were cut short'),
      );
    expect([said(true), said(false)].map(({ length }) => length)).toEqual([1, 0]);
  });
});

describe('planned and actual', () => {
  const record = {
    hours: { planned: of(41), actual: of(95, 2), more: of(13, 2) },
    cloths: [
      { cloth: 'crepe', bought: 4750, used: 4380 },
      { cloth: 'net', bought: undefined, used: 3210 },
    ],
    spent: { planned: pounds(19064), actual: pounds(20111), more: pounds(1047) },
    revised: { total: pounds(63300) },
    paid: pounds(25000),
    balance: pounds(36200),
    balanceRevised: pounds(38300),
  };

  it('what was meant, what it came to, the difference, and what is owed', () => {
    const [, first, second] = tablesOf(costingBlocks(input({ record }))).map(asPrinted);
    expect(first).toEqual([
      ['<>>>'],
      ['what', 'planned', 'actual', 'difference'],
      ['hours', '41', '47.5', '6.5'],
      ['crepe, length', '4.75 m', '4.38 m', '-0.37 m'],
      ['net, length', '', '3.21 m', ''],
      ['materials', '190.64', '201.11', '10.47'],
    ]);
    expect(second).toEqual([
      ['<>'],
      ['', ''],
      ['Price by what it came to', 'GBP 633.00'],
      ['paid so far', 'GBP 250.00'],
      ['balance to invoice on the price agreed', 'GBP 362.00'],
      ['balance by what it came to', 'GBP 383.00'],
    ]);
  });

  it('what is not kept is left out, and where nothing is there are lines to fill in', () => {
    const none = { planned: undefined, actual: undefined, more: undefined };
    const paid = { hours: none, cloths: [], spent: none, paid: pounds(500) };
    expect(
      tablesOf(costingBlocks(input({ record: paid })))
        .slice(1)
        .map(({ rows }) => rows),
    ).toEqual([[['paid so far', 'GBP 5.00']]]);
    const unplanned = { ...paid, hours: { actual: of(9) }, spent: { actual: pounds(77) }, paid: undefined };
    expect(
      tablesOf(costingBlocks(input({ record: unplanned })))
        .slice(1)
        .map(({ rows }) => rows),
    ).toEqual([
      [
        ['hours', '', '9', ''],
        ['materials', '', '0.77', ''],
      ],
    ]);
    expect(costingBlocks(input()).at(-1)).toEqual({ kind: 'lines', count: 6 });
    expect(costingBlocks(input({ record })).at(-1)!.kind).toBe('table');
  });
});

describe('the quote', () => {
  const lines = (own: object = {}) => printedLines(clientPages(input(own)).pages);

  it('on the client’s page: price, what falls due, until when', () => {
    const printed = lines();
    expect(beside(printed, 'price before tax')).toEqual(['GBP 510.00']);
    expect(beside(printed, 'tax, 20 %')).toEqual(['GBP 102.00']);
    expect(beside(printed, 'price')).toEqual(['GBP 612.00']);
    expect(beside(printed, 'deposit, with the order')).toEqual(['37.5 % | GBP 229.50']);
    expect(beside(printed, 'second fitting')).toEqual(['25 % | GBP 153.00']);
    expect(beside(printed, 'balance, on delivery')).toEqual(['37.5 % | GBP 229.51']);
    const said = printed.map((line) => line.map(({ text }) => text).join(' ')).join('\n');
    expect(said).toContain('This quote holds until 9 March 2027.');
    expect(said).toContain('and 2 fittings.');
    // Nothing of what the maker reckons.
    for (const own of ['443.73', '66.56', '40.34', '212.75', '190.64']) expect(said).not.toContain(own);
  });

  it('in a terminal the same, a line each', () => {
    const text = quoteText(input().gown, pricing() as never, english('cm'));
    const rows = text.split('\n').map((line) => line.trim().split(/ {2,}/));
    expect(rows.slice(2, 5)).toEqual([
      ['price before tax', 'GBP 510.00'],
      ['tax, 20 %', 'GBP 102.00'],
      ['price', 'GBP 612.00'],
    ]);
    expect(rows.slice(6, 10)).toEqual([
      ['When it falls due'],
      ['deposit, with the order (37.5 %)', 'GBP 229.50'],
      ['second fitting (25 %)', 'GBP 153.00'],
      ['balance, on delivery (37.5 %)', 'GBP 229.51'],
    ]);
    expect(rows.slice(11, 13)).toEqual([['This quote holds until 9 March 2027.'], ['']]);
    expect(text).toContain('\n- more than the 2 fittings included.\n');
  });

  it('untaxed and due at once: the price alone; what is wanting makes it a price so far', () => {
    const quote = { ...QUOTE, tax: pounds(0), stages: QUOTE.stages.slice(2) };
    const materials = { priced: [], withoutPrice: ['galloon'], withoutLength: ['net'] };
    const own = { quote, materials, workCharged: false };
    const text = quoteText(
      { ...input().gown, labour: undefined } as never,
      pricing(own) as never,
      english('cm'),
    );
    expect(text.split('\n').slice(2, 6)).toEqual([
      '  price so far  GBP 612.00',
      'Not in the price yet: galloon, net and making.',
      '',
      'What counts as a change',
    ]);
    const printed = lines(own);
    expect(beside(printed, 'price so far')).toEqual(['GBP 612.00']);
    expect(beside(printed, 'price before tax')).toEqual([]);
    expect(beside(printed, 'balance, on delivery')).toEqual([]);
    expect(quoteText(input().gown, pricing({ quote: undefined }) as never, english('cm'))).toContain(
      'nothing to quote',
    );
  });
});
