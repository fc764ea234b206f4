import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/draft/part.ts';
import { biasBlock } from '../../src/finishing/binding-parts.ts';
import { openingParts } from '../../src/finishing/opening-parts.ts';
import { waistParts } from '../../src/finishing/waist-parts.ts';
import { endOf, startOf } from '../../src/geometry/evaluate.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';

/** Pieces that are given by their size, from sections made by hand: each figure another, mm. Nothing is drafted. */

const layer = { name: 'own', cloth: { name: 'calico', width: 1400, selvedge: 10 } };
const place = () => ({ start: 0, end: 0 });
const edgesOf = ({ piece }: Part) =>
  Object.fromEntries(piece.edges.map(({ name, curves }) => [name, lengthOfRun(curves)]));
const near = (figures: Readonly<Record<string, number>>) =>
  Object.fromEntries(Object.entries(figures).map(([name, own]) => [name, expect.closeTo(own, 6)]));

const NONE = { slits: [], pockets: [], loops: [], tiers: [] };
/** Two seams of one name where her sides differ, and another longer than both. */
const drafts = {
  gown: {
    gown: {
      stations: [
        { name: 'centre-front' },
        { name: 'side/back', side: 'left' },
        { name: 'centre-back' },
        { name: 'side/back', side: 'right' },
      ],
    },
    lengths: [990, 1010, 1750, 1040],
  },
  // Nothing of it bends: what lies along its edges is a strip.
  layers: [{ draft: { gown: { round: 'mirrored', stations: [] }, pieces: [] } }],
};
const opened = (gown: object) => openingParts({ ...NONE, ...gown } as never, drafts as never);

describe('what finishes a closure', () => {
  const closure = (finish: string, rest: object = {}) => ({
    closure: {
      piece: { layer, width: 31 },
      starts: 24,
      opening: 230,
      finish,
      place,
      station: { name: 'x/y' },
      ...rest,
    },
  });

  it.each([
    // Down one edge and up the other, folded over both: 2 × (24 + 230) by 2 × 31.
    ['placket', 1, { 'sewn-edge': 508, 'long-edge': 508, 'upper-end': 62, 'lower-end': 62 }],
    // 20 below the opening, folded lengthwise.
    ['guard', 1, { 'sewn-edge': 274, 'long-edge': 274, 'upper-end': 62, 'lower-end': 62 }],
    // 25 below, one for each edge.
    ['facing', 2, { 'sewn-edge': 279, 'inner-edge': 279, 'upper-end': 31, 'lower-end': 31 }],
  ])('a %s: %s, by its size', (finish, copies, edges) => {
    const [part, ...more] = opened(closure(finish));
    expect(more).toEqual([]);
    expect(edgesOf(part!)).toEqual(near(edges));
    expect([part!.piece.copies, part!.piece.part, part!.piece.layers]).toEqual([copies, finish, ['own']]);
    // The sewn edge lies at the left, and the thread along it.
    expect(startOf(part!.piece.edges[3]!.curves[0]!).x).toBeLessThan(
      startOf(part!.piece.edges[1]!.curves[0]!).x,
    );
    expect(part!.piece.grain.from.x).toBeCloseTo(part!.piece.grain.to.x, 9);
  });

  it('a facing is marked where the opening ends', () => {
    expect(opened(closure('facing'))[0]!.notches.get('sewn-edge')).toEqual([254]);
    expect(opened(closure('guard'))[0]!.notches.size).toBe(0);
  });

  it('says to the papers how long the opening is, and which seam', () => {
    expect(opened(closure('placket'))[0]!.of).toEqual({ kind: 'placket', width: 31, opening: 254 });
    expect(opened(closure('guard'))[0]!.of).toEqual({ kind: 'guard', width: 31 });
    expect(opened(closure('facing'))[0]!.of).toEqual({ kind: 'opening-facing', at: 'x/y' });
    expect(opened(closure('hook'))).toEqual([]);
    expect(opened(closure('guard', { opening: undefined }))).toEqual([]);
  });
});

describe('slits, pockets, loops and yokes', () => {
  const slit = { seam: 'side/back', copies: 2, place, facing: { depth: 41, layer }, stayLayer: layer };

  it('a slit’s facings reach 20 above it, one for each edge; its stay is a square', () => {
    const stations = [{ name: 'side/back' }];
    const [facing, stay] = opened({ slits: [{ ...slit, aboveHem: 310, stations }] });
    expect(edgesOf(facing!)).toEqual(
      near({ 'upper-end': 41, 'inner-edge': 330, 'lower-end': 41, 'sewn-edge': 330 }),
    );
    expect(facing!.piece.copies).toBe(4);
    expect(facing!.notches.get('sewn-edge')).toEqual([20]);
    expect(edgesOf(stay!)).toEqual(
      near({ 'upper-end': 50, 'long-edge': 50, 'lower-end': 50, 'sewn-edge': 50 }),
    );
    expect(stay!.piece.copies).toBe(2);
    // From the waist: what is left of the longer of her two seams, or of the one that it is in. 1040 − 700, 1010 − 700.
    const from = (own: object[]) =>
      edgesOf(opened({ slits: [{ ...slit, belowWaist: 700, stations: own }] })[0]!)['sewn-edge'];
    expect(from(stations)).toBeCloseTo(360, 6);
    expect(from([{ name: 'side/back', side: 'left' }])).toBeCloseTo(330, 6);
    expect(opened({ slits: [{ ...slit, belowWaist: 1040, stations }] })).toEqual([]);
    expect(opened({ slits: [{ ...slit, aboveHem: 310, stations: [{ name: 'no/such' }] }] })).toEqual([]);
  });

  it('a bag is marked where its seam is open; both sides of her have one each', () => {
    const pocket = { layer, copies: 1, opening: 151, depth: 280, width: 172, seam: 'side/back', place };
    const [one, ...none] = opened({ pockets: [pocket] });
    expect(none).toEqual([]);
    expect([one!.piece.gore, one!.piece.cut]).toEqual(['own', 'pair']);
    // 25 above the opening; the lower corner is a quarter round of 0.45 of the width.
    expect(one!.notches.get('seam-edge')).toEqual([25, 176]);
    const round = 0.45 * 172;
    expect(edgesOf(one!)).toEqual(
      near({
        top: 172,
        'bag-edge': 305 - round + (Math.PI / 2) * round,
        bottom: 172 - round,
        'seam-edge': 305,
      }),
    );
    // Its outline closes, each edge from where the last one ends; its thread runs down the middle.
    const corners = one!.piece.edges.map(({ curves }) => [startOf(curves[0]!), endOf(curves.at(-1)!)]);
    for (const [i, [from]] of corners.entries()) {
      const [, before] = corners[(i + 3) % 4]!;
      expect([from!.x, from!.y]).toEqual([before!.x, before!.y].map((own) => expect.closeTo(own, 9)));
    }
    expect([one!.piece.grain.from.x, one!.piece.grain.to.x]).toEqual([86, 86]);
    expect([one!.piece.frontEdge, one!.piece.backEdge]).toEqual(['seam-edge', 'bag-edge']);
    expect(opened({ pockets: [{ ...pocket, copies: 2 }] }).map(({ piece }) => piece.gore)).toEqual([
      'own-front',
      'own-back',
    ]);
  });

  it('a wrap’s ties are two strips, twice as wide as they are sewn', () => {
    const [ties] = opened({ wrap: { ties: { length: 905, width: 24, layer }, place } });
    expect(edgesOf(ties!)).toEqual(
      near({ 'upper-end': 48, 'long-edge': 905, 'lower-end': 48, 'sewn-edge': 905 }),
    );
    expect([ties!.piece.copies, ties!.piece.part, ties!.of]).toEqual([
      2,
      'tie',
      { kind: 'ties', length: 905, width: 24 },
    ]);
    expect(opened({ wrap: { place } })).toEqual([]);
  });

  it('loops are one strip, and a yoke is as long as it goes round', () => {
    const [loops] = opened({ loops: [{ layer, count: 13, length: 47, width: 6, place }] });
    expect(edgesOf(loops!)).toEqual(
      near({ 'upper-end': 12, 'long-edge': 611, 'lower-end': 12, 'sewn-edge': 611 }),
    );
    expect(loops!.of).toEqual({ kind: 'loops', count: 13, length: 47, width: 6 });
    const [yoke] = opened({ tiers: [{ name: 'net', yoke: 961, yokeDepth: 203, yokeLayer: layer, place }] });
    expect(edgesOf(yoke!)).toEqual(
      near({ top: 961, bottom: 961, 'left-join': 203, 'right-join': 203 }) as never,
    );
    expect(yoke!.of).toEqual({ kind: 'yoke', of: 'net', round: 961 });
    expect(opened({ tiers: [{ name: 'net', yoke: 961, place }] })).toEqual([]);
  });
});

describe('a block for a bias strip', () => {
  it.each([
    // 40 × 2500 is 316.2²: a square of 320, across which a strip is 452.5 long: six of them, five joins.
    [2500, 40, 1000, { along: 320, across: 320 }, 5],
    // As many square millimetres exactly as a whole square: 300², 424.3 a strip.
    [2250, 40, 300, { along: 300, across: 300 }, 5],
    // Too wide for the cloth: 250 of its 257 across, 400 along, and a strip across is 353.6 long.
    [2500, 40, 257, { along: 400, across: 250 }, 7],
    // One strip is enough.
    [400, 250, 1000, { along: 320, across: 320 }, 0],
  ])('%s mm of %s wide, at most %s across', (length, width, widest, block, joins) => {
    const made = biasBlock(length, width, widest);
    expect(made.block).toEqual(block);
    expect(made.strip).toEqual({ width, length, joins, area: length * width });
    expect(block.along * block.across).toBeGreaterThanOrEqual(length * width);
  });
});

describe('a waistband', () => {
  const gown = {
    round: 'mirrored',
    waistSeam: 740,
    stations: ['centre-front', 'front/side', 'side/back', 'centre-back'].map((name) => ({ name })),
    gores: [{ top: 101 }, { top: 122 }, { top: 147 }],
  };
  const waist = { finish: 'band', layer, width: 36, overlap: 33, place };
  const bandOf = (own: object, lines: object = {}) => {
    const parts = waistParts({ ...gown, ...lines, waist: { ...waist, ...own } } as never, []);
    return (parts as readonly Part[])[0]!;
  };

  it('straight: as long as the waist and its overlap, twice as wide as it is worn', () => {
    const band = bandOf({});
    expect(edgesOf(band)).toEqual(near({ end: 72, 'inside-edge': 773, 'overlap-end': 72, waist: 773 }));
    const [fold] = band.marks!;
    expect(fold!.name).toBe('fold');
    expect(lengthOfRun(fold!.curves)).toBe(773);
    // Half way between its long edges.
    const [left, right] = [band.piece.edges[3]!, band.piece.edges[1]!].map(
      ({ curves }) => startOf(curves[0]!).x,
    );
    expect(startOf(fold!.curves[0]!).x).toBeCloseTo((left! + right!) / 2, 9);
  });

  it('marked where the seams meet it, from the centre back round and to the overlap', () => {
    // 147, 122 and 101 up her one side, and down again.
    const places = [
      ['side/back', 147],
      ['front/side', 269],
      ['centre-front', 370],
      ['front/side', 471],
      ['side/back', 593],
    ].map(([name, at]) => ({ name, at }));
    const band = bandOf({});
    expect(band.of).toEqual({ kind: 'waistband', width: 36, sewn: 740, overlap: 33, shaped: false, places });
    expect(band.notches.get('waist')).toEqual([147, 269, 370, 471, 593, 740]);
    expect(bandOf({ overlap: 0 }).notches.get('waist')).toEqual([147, 269, 370, 471, 593]);
  });

  it('from the opening, wherever that is; all the way round each seam once', () => {
    const closure = { station: { name: 'front/side' } };
    const atSide = bandOf({}, { closure }).notches.get('waist');
    // From 101: 223, 370, 517, 639 and 740 less it.
    expect(atSide).toEqual([122, 269, 416, 538, 639, 740]);
    const ring = {
      round: 'ring',
      stations: [...gown.stations, { name: 'centre-front' }],
      gores: [101, 122, 147, 370].map((top) => ({ top })),
    };
    // From 370 on: 370 to the front again, and on by 101 and 122.
    expect(bandOf({}, ring).notches.get('waist')).toEqual([370, 471, 593, 740]);
  });

  it('of a wrap: its line is met twice, half of what lies over from either end, and the rest between', () => {
    const wrapped = { at: 'side/back', overlap: 44 };
    const band = bandOf({ overlap: 9 }, { wrapped });
    // From 223 round: 147, 294, 416, 517 and 618 on, each 22 later.
    const places = [
      ['side/back', 22],
      ['centre-back', 169],
      ['side/back', 316],
      ['front/side', 438],
      ['centre-front', 539],
      ['front/side', 640],
      ['side/back', 762],
    ].map(([name, at]) => ({ name, at }));
    expect(band.of).toMatchObject({ sewn: 740, overlap: 44, places });
    expect(band.notches.get('waist')).toEqual(places.map(({ at }) => at));
    expect(edgesOf(band)).toMatchObject(near({ waist: 784 }));
  });

  it('shaped: a sector of a ring, outside and inside, as long at its edges as they lie on her', () => {
    const band = bandOf({ upper: 704 });
    // (740 − 704) over 36: both edges with the overlap are arcs of that sector.
    expect(edgesOf(band)).toEqual(near({ 'inside-edge': 737, waist: 773, end: 36, 'overlap-end': 36 }));
    expect([band.piece.copies, band.marks]).toEqual([2, []]);
    expect([band.piece.frontEdge, band.piece.backEdge]).toEqual(['end', 'overlap-end']);
    const { from, to } = band.piece.grain;
    expect([from.x, to.x]).toEqual([expect.closeTo(0, 6), expect.closeTo(0, 6)]);
    expect(from.y).toBeLessThan(to.y);
    expect([from.y, to.y].every((own) => own > -5 && own < 45)).toBe(true);
    expect(band.of).toMatchObject({ shaped: true });
  });

  it('a stay is bought', () => {
    expect(waistParts({ ...gown, waist: { ...waist, layer: undefined } } as never, [])).toEqual([]);
  });
});
