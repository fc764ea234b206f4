import { describe, expect, it } from 'vitest';
import { chalkTable } from '../../src/chalk/chalk-table.ts';
import type { Part } from '../../src/draft/part.ts';
import { usableWidth } from '../../src/draft/usable-width.ts';
import { waistParts } from '../../src/finishing/waist-parts.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { clothFacts } from '../../src/lay/plan/cloth-facts.ts';
import { hemFacts, isSatin } from '../../src/making/hem/hem-facts.ts';
import { prerequisiteOrder } from '../../src/making/order/prerequisite-order.ts';
import { notionsFor } from '../../src/making/supplies/notions.ts';
import { stripFacts } from '../../src/making/supplies/strip-facts.ts';
import { sectorPiece } from '../sheets/sector-piece.ts';

/** Facts of the workroom from sections made by hand, mm: copies, sides, which layer, which of several. */

const say = (mm: number) => `${mm}`;
const place = () => ({ start: 0, end: 0 });

describe('the width that a cloth gives', () => {
  it('is less a selvedge at either side, and less edging cut off both', () => {
    expect(usableWidth({ width: 1400, selvedge: 13 } as never)).toBe(1374);
    const cloth = {
      name: 'lace',
      width: 1400,
      selvedge: 13,
      oneWay: true,
      repeatDown: 120,
      repeatAcross: 90,
    };
    const edging = { from: 'own-edges', cloth: { name: 'lace' }, depth: 60 };
    expect(clothFacts(cloth as never, edging as never)).toEqual({
      width: 1400,
      selvedge: 13,
      edgingDepth: 60,
      usable: 1254,
      oneWay: true,
      repeatDown: 120,
      repeatAcross: 90,
    });
    expect(clothFacts(cloth as never, { ...edging, cloth: { name: 'net' } } as never).usable).toBe(1374);
    expect(clothFacts(cloth as never, { ...edging, from: 'bought-in' } as never).usable).toBe(1374);
    expect(clothFacts(cloth as never, undefined).edgingDepth).toBe(0);
  });
});

describe('strips', () => {
  const layer = (name: string, own: object = {}) => ({
    layer: { name, hem: 'turned', ...own },
    hem: 4000,
    waist: 740,
    flare: 2,
    seams: [
      { name: 'side/back', length: 1000, copies: 1 },
      { name: 'side/back', length: 1040, copies: 1 },
      { name: 'centre-back', length: 1100, copies: 1 },
    ],
  });
  const facts = (trims: object[], gown: object = {}) =>
    stripFacts({
      gown: { trims, layers: [], ...gown },
      skirt: { layers: [layer('lining'), layer('shell')] },
    } as never);
  const tape = { kind: 'stay-tape', layer: { name: 'shell' }, width: 12 };

  it('along seams: by the longer of two, bought for each', () => {
    const [own] = facts([{ ...tape, along: 'side/back' }]);
    expect([own!.copies, own!.length.length, own!.buy]).toEqual([2, 1040, 2080]);
    const [stepped] = facts([{ ...tape, along: 'side/back', soldBy: 500 }]);
    expect(stepped!.buy).toBe(2500);
    const [single] = facts([{ ...tape, along: 'centre-back', soldBy: 550 }]);
    expect([single!.copies, single!.buy]).toEqual([1, 1100]);
    expect(
      facts([
        { ...tape, along: 'no/such' },
        { ...tape, layer: { name: 'net' }, along: 'hem' },
      ]),
    ).toEqual([]);
  });

  it('the edging’s braid goes into the outermost hem that is faced or bagged, else into the edged layer’s', () => {
    const layers = (...hems: string[]) =>
      hems.map((hem, i) => ({
        name: ['lining', 'shell'][i],
        hem,
        ...(i === 0 ? { edging: 'galloon' } : {}),
      }));
    const braid = (...hems: string[]) =>
      facts([], { edging: { name: 'galloon', braid: 76 }, layers: layers(...hems) }).map(
        ({ kind, layer: own, along, width }) => [kind, own, along, width],
      );
    expect(braid('faced', 'bagged')).toEqual([['horsehair', 'shell', 'hem', 76]]);
    expect(braid('faced', 'raw')).toEqual([['horsehair', 'lining', 'hem', 76]]);
    expect(braid('raw', 'raw')).toEqual([['horsehair', 'lining', 'hem', 76]]);
    expect(facts([], { edging: { name: 'galloon' }, layers: layers('faced', 'faced') })).toEqual([]);
  });
});

describe('what a gown’s own figures ask to have at hand', () => {
  const gown = (own: object = {}) => ({
    notions: [],
    trims: [],
    slits: [],
    pockets: [],
    loops: [],
    tiers: [],
    capes: [],
    layers: [],
    overskirts: [],
    ...own,
  });
  const notions = (parts: object, own: object = {}) =>
    notionsFor(
      { gown: gown(own), skirt: { waist: 740 } } as never,
      { strips: [], thread: [], ...parts } as never,
    );

  it('loop for a bustle: twice its loop at every point, both sides counted', () => {
    const bustle = {
      kind: 'over',
      number: 5,
      loop: 20,
      points: [{ copies: 1 }, { copies: 2 }, { copies: 2 }],
    };
    expect(notions({ bustle })).toContainEqual({ kind: 'bustle-points', over: true, number: 5, tape: 200 });
    const listed = { notions: [{ name: 'hooks for the bustle' }] };
    expect(notions({ bustle }, listed).map(({ kind }) => kind)).not.toContain('bustle-points');
    expect(notions({ bustle: { ...bustle, number: 0, points: [] } }).map(({ kind }) => kind)).not.toContain(
      'bustle-points',
    );
  });

  it('a stay as long as the waist and its ends; a zip, and the hook above it', () => {
    const closure = { kind: 'zip', starts: 25, opening: 231, zip: { stock: 250, shortenBy: 19 } };
    expect(notions({ closure })).toEqual([
      { kind: 'zip', stock: 250, shortenTo: 231 },
      { kind: 'hook-above-zip' },
      { kind: 'petersham', length: 800 },
    ]);
    expect(notions({ closure: { ...closure, starts: 0 } }).map(({ kind }) => kind)).toEqual([
      'zip',
      'petersham',
    ]);
    const listed = { notions: [{ name: 'concealed zip' }, { name: 'hook and bar' }, { name: 'waist stay' }] };
    expect(notions({ closure }, listed).map(({ kind }) => kind)).toEqual(['given', 'given', 'given']);
    expect(notions({}, { waist: { finish: 'band' } })).toEqual([]);
    expect(notions({}, { waist: { finish: 'stay' } })).toEqual([{ kind: 'petersham', length: 800 }]);
  });

  it('strips that are bought, not those cut of the gown’s cloths; thread by cloth', () => {
    const strips = [
      { isCut: true, along: 'a' },
      { isCut: false, along: 'b' },
    ];
    const thread = [
      { layer: 'shell', cloth: 'crepe', need: { toBuy: 71 } },
      { layer: 'top', cloth: 'crepe', need: { toBuy: 13 } },
      { layer: 'loops', cloth: 'crepe', need: { toBuy: 5 } },
      { layer: 'pocket', cloth: 'satin', need: { toBuy: 7 } },
    ];
    const small = { loops: [{ layer: { name: 'loops' } }], pockets: [{ layer: { name: 'pocket' } }] };
    expect(notions({ strips, thread }, { waist: { finish: 'band' }, ...small })).toEqual([
      { kind: 'strip', strip: strips[1] },
      { kind: 'thread', cloth: 'crepe', length: 89 },
      { kind: 'thread', cloth: 'satin', length: 7 },
    ]);
  });
});

describe('hems', () => {
  const layer = (name: string, hem: string, own: object = {}) => ({
    name,
    hem,
    cloth: { name: 'crepe' },
    shape: { shorter: 0 },
    allowances: { hem: { width: 15 }, seam: { width: 15 }, waist: { width: 15 }, named: {} },
    place,
    ...own,
  });
  const facts = (layers: ReturnType<typeof layer>[], own: object = {}) =>
    hemFacts({
      gown: {
        layers,
        gores: [
          { name: 'front', roughCut: 0 },
          { name: 'back', roughCut: 21 },
        ],
      },
      skirt: {
        layers: layers.map((one) => ({
          layer: one,
          hem: 4000,
          flare: 3,
          gores: ['front', 'back'],
          seams: [],
          pleats: [],
          ...own,
        })),
      },
      say,
    } as never);

  it('bagged to the nearest that is bagged too: outwards first, then inwards', () => {
    const four = [layer('a', 'bagged'), layer('b', 'bagged'), layer('c', 'raw'), layer('d', 'bagged')];
    expect(facts(four).facts.map(({ partner }) => partner)).toEqual(['b', 'd', undefined, 'b']);
  });

  it('turned up: what is to be eased is twice the depth times the turn; all that is finished with its pleats', () => {
    const [own] = facts([layer('a', 'turned')], { pleats: [{ atHem: 120 }, { atHem: 80 }] }).facts;
    expect(own).toMatchObject({ length: 4200, allowance: 15, surplus: { toEase: 90, share: 90 / 4000 } });
    expect(own!.roughCut).toEqual([{ gore: 'back', depth: 21 }]);
    expect(facts([layer('a', 'faced')]).facts[0]!.surplus).toBeUndefined();
  });

  it('over a twentieth of the hem shows; on satin a fiftieth (common practice)', () => {
    const codes = (hem: number, cloth: string) =>
      facts([layer('a', 'turned', { cloth: { name: cloth } })], { hem }).findings.map(({ code }) => code);
    // 90 to ease.
    expect([codes(1801, 'crepe'), codes(1799, 'crepe')].map(({ length }) => length)).toEqual([0, 1]);
    expect([codes(4501, 'silk satin'), codes(4499, 'silk satin')].map(({ length }) => length)).toEqual([
      0, 1,
    ]);
    expect([
      isSatin({ name: 'satin', weave: 'crepe' } as never),
      isSatin({ name: 'x', weave: 'charmeuse' } as never),
    ]).toEqual([false, true]);
  });
});

describe('an order that waits', () => {
  const ids = (things: { id: string; after: string[]; before?: string[] }[]) => {
    const { order, stuck } = prerequisiteOrder(things);
    return [order.map(({ id }) => id).join(''), stuck.map(({ id }) => id).join('')];
  };

  it('for what comes before, and lets wait what it is before; else as listed', () => {
    expect(
      ids([
        { id: 'a', after: ['c'] },
        { id: 'b', after: [] },
        { id: 'c', after: [] },
      ]),
    ).toEqual(['bca', '']);
    expect(
      ids([
        { id: 'a', after: [] },
        { id: 'b', after: [], before: ['a'] },
        { id: 'c', after: [] },
      ]),
    ).toEqual(['bac', '']);
    expect(
      ids([
        { id: 'a', after: ['nobody'] },
        { id: 'b', after: [], before: ['nobody'] },
      ]),
    ).toEqual(['ab', '']);
  });

  it('names those that wait for each other', () => {
    expect(
      ids([
        { id: 'a', after: ['b'] },
        { id: 'b', after: ['a'] },
        { id: 'c', after: [] },
      ]),
    ).toEqual(['c', 'ab']);
  });
});

describe('the facing of a waist', () => {
  it('is cut to the outermost layer’s waist', () => {
    const draftOf = (top: number) => ({
      layer: { name: `l${top}`, gores: ['side'] },
      draft: {
        pieces: [
          sectorPiece({ gore: 'side', top, front: 0.1, back: 0.1, frontLength: 700, backLength: 700 }).piece,
        ],
        gown: { round: 'mirrored', gores: [{ name: 'side' }] },
      },
    });
    const layer = {
      name: 'waist-facing',
      cloth: { width: 100, selvedge: 0 },
      allowances: { seam: { width: 1 }, waist: { width: 1 }, hem: { width: 1 }, named: {} },
    };
    const waist = { finish: 'facing', layer, width: 50, place };
    const parts = waistParts({ waist } as never, [draftOf(100), draftOf(140)] as never) as readonly Part[];
    expect(lengthOfRun(parts[0]!.piece.edges[0]!.curves)).toBeCloseTo(140, 3);
  });
});

describe('straight lines inside a piece, for chalking', () => {
  it('down from the top of the cut line, across from the grain line, whichever way they are drawn', () => {
    const piece = sectorPiece({
      gore: 'side',
      top: 100,
      front: 0.1,
      back: 0.1,
      frontLength: 700,
      backLength: 700,
    });
    const line = (x: number, y: number, toX: number, toY: number) => ({
      kind: 'line',
      from: { x, y },
      to: { x: toX, y: toY },
    });
    const marks = [
      { name: 'fold-line', curves: [line(-31, 900, -20, 600)] },
      { name: 'dart-leg-line', curves: [line(41, 610, 52, 700)] },
      { name: 'hem-trim', curves: [line(0, 1000, 10, 1000)] },
    ];
    const { inner } = chalkTable({ ...piece, marks } as never, {});
    const tops = piece.cutEdges.flatMap(({ curves }) => curves);
    // The cut line's top lies on the grain of a sector that is alike on both sides: radius 500 less 15.
    expect(tops.length).toBeGreaterThan(3);
    const top = 485 * Math.cos(0.1 + Math.asin(15 / 485));
    const down = (y: number) => Math.round(y - top);
    const across = (x: number) => Math.round(x - piece.piece.grain.from.x);
    expect(inner).toEqual([
      {
        name: 'fold-line',
        from: { down: down(600), across: across(-20) },
        to: { down: down(900), across: across(-31) },
      },
      {
        name: 'dart-leg-line',
        from: { down: down(610), across: across(41) },
        to: { down: down(700), across: across(52) },
      },
    ]);
  });
});
