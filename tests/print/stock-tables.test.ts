import { describe, expect, it } from 'vitest';
import { stockBlocks } from '../../src/print/papers/stock-blocks.ts';
import { asPrinted, handMade, tablesOf } from './hand-made-facts.ts';

/** Weight, thread and what to have at hand, from facts made by hand: mm, mm², grams. */

const WEIGHT = {
  layers: [
    { layer: 'lining', cloth: 'cupro', netArea: 2_110_000, cutArea: 2_340_000, withAllowances: 164 },
    { layer: 'shell', cloth: 'velvet', netArea: 3_450_000, cutArea: 3_780_000, withAllowances: 1234 },
    { layer: 'net', cloth: 'tulle', netArea: 4_010_000, cutArea: 4_560_000 },
  ],
  stones: [
    { name: 'beads', grams: 41.4 },
    { name: 'drops', grams: undefined },
  ],
};
const THREAD = [
  { layer: 'shell', need: { sewn: 1, needle: 2, bobbin: 3, toBuy: 71_400 } },
  { layer: 'lining', need: { sewn: 4, needle: 5, bobbin: 6, toBuy: 52_001 } },
];

const stock = (units: 'cm' | 'in', own: object = {}) =>
  stockBlocks(handMade(units, { workroom: { weight: WEIGHT, thread: THREAD, threadRatio: 2.5, ...own } }));

describe('weight and thread', () => {
  it('by layer, then what is set by hand; no sum while a weight is wanting', () => {
    expect(asPrinted(tablesOf(stock('cm'))[0]!)).toEqual([
      ['<<>>>>'],
      ['layer', 'cloth', 'sewn area', 'cut area', 'weight', 'thread to buy'],
      ['lining', 'cupro', '2.11 m²', '2.34 m²', '164 g', '53 m'],
      ['shell', 'velvet', '3.45 m²', '3.78 m²', '1.23 kg', '72 m'],
      ['net', 'tulle', '4.01 m²', '4.56 m²', '', ''],
      ['beads', '', '', '', '41 g', ''],
      ['drops', '', '', '', '', ''],
    ]);
  });

  it('in yards and pounds, and the sum below', () => {
    const [table] = tablesOf(stock('in', { weight: { ...WEIGHT, stones: [], inAll: 1439 } }));
    // 914.4² mm² a square yard, 28.3495 g an ounce, 16 a pound.
    expect(table!.rows).toEqual([
      ['lining', 'cupro', '2.52 yd²', '2.80 yd²', '5.8 oz', '57 yd'],
      ['shell', 'velvet', '4.13 yd²', '4.52 yd²', '2.72 lb', '79 yd'],
      ['net', 'tulle', '4.80 yd²', '5.45 yd²', '', ''],
      ['in all', '', '', '', '3.17 lb', ''],
    ]);
    expect(table!.boldRows).toEqual([3]);
  });
});

describe('what to have at hand', () => {
  const said = (notion: object, units: 'cm' | 'in' = 'cm') =>
    stock(units, { notions: [notion] }).flatMap((block) => (block.kind === 'item' ? [block.text] : []));
  const strip = { kind: 'stay-tape', width: 12, buy: 1010, layer: 'shell', along: 'side/back' };

  it.each([
    [
      { kind: 'given', notion: { name: 'hooks', count: 7, colour: 'black', supplier: 'S-4' } },
      'hooks, 7 (black, S-4)',
    ],
    [
      { kind: 'given', notion: { name: 'cord', length: 1234, notes: ' wash it ' } },
      'cord, 123.4 cm. wash it',
    ],
    [{ kind: 'given', notion: { name: 'thimble' } }, 'thimble'],
    [{ kind: 'bones', material: 'spiral-steel', length: 235, count: 6 }, 'spiral steel, 23.5 cm: 6'],
    [{ kind: 'bones', material: 'synthetic', length: 2350, count: 6 }, 'synthetic bone, 235 cm in all'],
    [{ kind: 'casing', width: 9, length: 3210 }, 'bone casing for bones 0.9 cm wide, 321 cm'],
    [{ kind: 'eyelets', count: 34 }, 'eyelets, 34, and some to try'],
    [{ kind: 'lace', length: 4560 }, 'lace, 456 cm'],
    [{ kind: 'waist-tape', length: 790 }, 'waist tape, 79 cm'],
    [{ kind: 'busk', length: 301 }, 'busk, no longer than 30.1 cm'],
    [{ kind: 'bodice-zip', length: 311 }, 'zip for the bodice, 31.1 cm of it above the waist seam'],
    [{ kind: 'through-zip', length: 521 }, 'zip through bodice and skirt, 52.1 cm from the upper edge down'],
    [{ kind: 'bodice-hooks', length: 331 }, 'hook-and-eye tape for the bodice, 33.1 cm'],
    [{ kind: 'upper-binding', length: 951 }, 'binding for the upper edge, 95.1 cm'],
    [{ kind: 'zip', stock: 250, shortenTo: 231 }, 'zip 25 cm, to be shortened to 23.1 cm'],
    [{ kind: 'zip', stock: 250, shortenTo: 250 }, 'zip 25 cm'],
    [{ kind: 'hook-above-zip' }, 'hook and bar, 1, above the zip'],
    [{ kind: 'hooks', opening: 221 }, 'hooks and eyes or bars for the opening of 22.1 cm, or a tape of them'],
    [{ kind: 'petersham', length: 801 }, 'petersham for the waist stay, 80.1 cm'],
    [{ kind: 'strip', strip }, 'stay tape 1.2 cm wide, 101 cm: the shell’s side/back seam'],
    [
      { kind: 'strip', strip: { ...strip, width: undefined, along: 'hem' } },
      'stay tape, 101 cm: the shell’s hem',
    ],
    [
      { kind: 'bustle-points', over: true, number: 5, tape: 201 },
      '5 hooks or buttons and 20.1 cm of loop for the bustle',
    ],
    [{ kind: 'bustle-points', over: false, number: 5, tape: 201 }, '5 pairs of ribbon for the bustle'],
    [
      { kind: 'thread', layer: 'shell', cloth: 'velvet', length: 71_400 },
      'thread for the velvet, about 72 m',
    ],
  ])('%j: %s', (notion, text) => expect(said(notion)).toEqual([text]));

  it('in inches', () => {
    // 9.843, 9.094 and 78.1 yd
    expect(said({ kind: 'zip', stock: 250, shortenTo: 231 }, 'in')).toEqual([
      'zip 9 13/16 in, to be shortened to 9 1/8 in',
    ]);
    expect(said({ kind: 'thread', cloth: 'velvet', length: 71_400 }, 'in')).toEqual([
      'thread for the velvet, about 79 yd',
    ]);
  });
});
