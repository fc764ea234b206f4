import { describe, expect, it } from 'vitest';
import { bodiceReport, capeReport } from '../../src/report/bodice-report.ts';
import { findingsOf, gownReport } from '../../src/report/gown-report.ts';
import { hangReport } from '../../src/report/hang-report.ts';
import { pleatReport } from '../../src/report/pleat-report.ts';
import { at, quad, upright } from '../quads.ts';

/** More of `report.json` from figures made by hand, every one another: bodice, layers, pleats, how it hangs. mm, degrees. */

const turn = (degrees: number) => (degrees * Math.PI) / 180;

describe('a drafted bodice', () => {
  const bodice = {
    asked: {
      draft: { closing: { at: 'centre-back', tails: 905, modesty: 61 }, bones: { kind: 'spiral-steel' } },
    },
    figures: {
      levels: [
        { at: 'bust', above: 201.00004, body: 881, sewn: 845.5, open: 52 },
        { at: 'waist', above: 0, body: 701, sewn: 641, open: 53 },
      ],
      panels: [
        { name: 'front', upper: 91, lower: 62, widths: { bust: 101.00006, waist: 71 } },
        { name: 'side', side: 'left', upper: 83, lower: 54, widths: {} },
      ],
      seams: [
        {
          name: 'front/side',
          side: 'right',
          lengths: [310, 313.5],
          upperAngle: turn(179),
          lowerAngle: turn(182.5),
        },
        { name: 'side/back', lengths: [325, 321], upperAngle: turn(177), lowerAngle: turn(181) },
      ],
      upper: 862,
      lower: 643,
    },
    bones: [
      { along: 'front/side', side: 'left', seam: 314, length: 290, casing: 302, count: 3 },
      { along: 'side/back', seam: 327, length: 280, casing: 303, count: 4 },
      { along: 'centre-back', seam: 341, length: 290, casing: 304, count: 2 },
    ],
    lacing: {
      eyelets: 13,
      pitch: 25.00004,
      places: [12, 37, 311],
      between: [51, 71],
      worn: 1201,
      lace: 3405,
    },
    tape: { round: 702, length: 812 },
    fittings: [{ date: 'd', upper: [861.00006, 852], lower: [643, 634], seams: 's' }],
  };
  const report = (own: object = {}) => bodiceReport({ ...bodice, ...own } as never);

  it('each figure under its name', () => {
    expect(report()).toEqual({
      levels: [
        { at: 'bust', above: 201, body: 881, sewn: 845.5, open: 52 },
        { at: 'waist', above: 0, body: 701, sewn: 641, open: 53 },
      ],
      panels: [
        { name: 'front', upper: 91, lower: 62, widths: { bust: 101.0001, waist: 71 } },
        { name: 'side', side: 'left', upper: 83, lower: 54, widths: {} },
      ],
      seams: [
        {
          name: 'front/side',
          side: 'right',
          lengths: [310, 313.5],
          difference: 3.5,
          upperAngle: 179,
          lowerAngle: 182.5,
        },
        { name: 'side/back', lengths: [325, 321], difference: 4, upperAngle: 177, lowerAngle: 181 },
      ],
      upper: { sewn: 862 },
      lower: { sewn: 643 },
      bones: [
        { along: 'front/side', side: 'left', seam: 314, length: 290, casing: 302, count: 3 },
        { along: 'side/back', seam: 327, length: 280, casing: 303, count: 4 },
        { along: 'centre-back', seam: 341, length: 290, casing: 304, count: 2 },
      ],
      // By the length, the shortest first.
      bonesToBuy: [
        { length: 280, count: 4 },
        { length: 290, count: 5 },
      ],
      lacing: {
        at: 'centre-back',
        eyelets: 13,
        pitch: 25,
        places: [12, 37, 311],
        between: [51, 71],
        worn: 1201,
        tails: 905,
        lace: 3405,
        // As long as the edge: as far below its last eyelet as its first lies below the upper end.
        modesty: { width: 61, length: 323 },
      },
      waistTape: { round: 702, length: 812 },
      fittings: [{ date: 'd', upper: [861.0001, 852], lower: [643, 634], seams: 's' }],
    });
  });

  it('bones that are cut from a run are bought in one; no lacing, no modesty panel', () => {
    const draft = (own: object) => report({ asked: { draft: own } });
    // 290 × 5 and 280 × 4.
    expect(draft({ bones: { kind: 'synthetic' } }).bonesToBuy).toEqual([{ length: 2570, count: 1 }]);
    expect(draft({}).bonesToBuy).toHaveLength(2);
    expect(draft({}).lacing).toBeNull();
    expect(report({ lacing: undefined }).lacing).toBeNull();
    expect(draft({ closing: { at: 'side', tails: 7 } }).lacing).toMatchObject({
      at: 'side',
      tails: 7,
      modesty: null,
    });
  });

  it('capes', () => {
    const cape = { cape: { name: 'cape' }, inner: 411.00004, hem: 2202, radius: 263 };
    expect(capeReport(cape as never)).toEqual({ name: 'cape', inner: 411, hem: 2202, radius: 263 });
    expect(capeReport({ ...cape, radius: undefined } as never).radius).toBeNull();
  });
});

describe('layers', () => {
  const pieces = [upright(120, 300).piece, upright(150, 310).piece];
  const gown = { round: 'mirrored', gores: [{ name: 'front' }, { name: 'side' }], stations: [] };
  const layer = (own: object = {}) => ({
    name: 'shell',
    cloth: { name: 'crepe' },
    hem: 'faced',
    gores: ['front', 'side'],
    ...own,
  });
  const seam = (own: object) => ({ gores: ['front', 'side'], station: 1, ...own });
  const measures = {
    gores: [
      { name: 'front', top: 111 },
      { name: 'side', top: 143.00004 },
    ],
    seams: [
      seam({ lengths: [300, 301.5], hemAngle: turn(181), waistAngle: turn(177) }),
      seam({ lengths: [310, 310.5], hemAngle: turn(178), waistAngle: turn(182), station: 2 }),
      seam({ lengths: [1, 9], hemAngle: turn(90), waistAngle: turn(90), free: true }),
    ],
    waist: { sewn: 1 },
    hem: { sewn: 1 },
  };
  const of = (own: object, round = 'mirrored') =>
    gownReport(
      { name: 'L', godets: [] } as never,
      {
        drafts: { gown: { gown: { round, stations: [] }, lengths: [] } },
        measures: { ...measures, gores: [], seams: [] },
        layers: [{ layer: layer(own), draft: { gown: { ...gown, round }, pieces, shape: {} }, measures }],
      } as never,
      {} as never,
    ).layers[0];

  it('each by its own figures: its hem and its waist all round, its worst seam', () => {
    expect(of({ grain: 'bias', tucks: { count: 3, width: 7 } })).toEqual({
      name: 'shell',
      cloth: 'crepe',
      hem: 'faced',
      grain: 'bias',
      tuckedUp: 42,
      sewnHem: 540,
      seams: { difference: 1.5, hemAngle: 178, waistAngle: 177 },
      sewnWaist: 508.0001,
    });
    expect(of({})).not.toHaveProperty('grain');
    expect(of({})).not.toHaveProperty('tuckedUp');
    expect(of({ gores: ['side'] })).toMatchObject({
      sewnHem: 300,
      sewnWaist: 286.0001,
      seams: { difference: 0 },
    });
    expect(of({}, 'ring')).toMatchObject({ sewnHem: 270, sewnWaist: 254 });
  });

  it('findings with their lines', () => {
    const text = 'gown: A\nhem: 4\n';
    const span = { start: text.indexOf('4'), end: text.length, source: { name: 'a.yaml', text } };
    const found = { code: 'c', level: 'warning', message: 'M.', why: 'W.', hint: 'H.', span };
    expect(findingsOf([found] as never)).toEqual([
      { code: 'c', level: 'warning', message: 'M.', line: 2, column: 6 },
    ]);
  });

  it('pleats: what they take, and what they add at either edge', () => {
    // The hem falls by 60 on 200: beside an upright side a fold of 40 is so much longer along it.
    const slant = Math.hypot(200, 60) / 200;
    const piece = quad([at(0, 0), at(200, 0), at(200, 900), at(0, 960)], undefined, {
      names: ['waist', 'a/b', 'hem', 'centre-front'],
      piece: { gore: 'a', cut: 'pair' },
    }).piece;
    const layers = [
      {
        layer: { name: 'shell', gores: ['a'] },
        draft: { gown: { round: 'mirrored', gores: [{ name: 'a' }] }, shape: {}, pieces: [piece] },
      },
    ];
    const kick = {
      name: 'vent',
      kind: 'kick',
      at: 'a/b',
      foldDepth: 40.00004,
      aboveHem: 300,
      layers: ['shell'],
    };
    // One piece of the seam, on both sides of her: two folds in all of half a pleat each.
    expect(pleatReport({ pleats: [kick] } as never, layers as never)).toEqual([
      {
        name: 'vent',
        layer: 'shell',
        kind: 'kick',
        at: 'a/b',
        places: 1,
        folds: 1,
        foldDepth: 40,
        underlay: 80.0001,
        atWaist: 0,
        atHem: expect.closeTo(2 * 40 * slant, 3),
      },
    ]);
  });
});

describe('how a gown hangs', () => {
  const figures = (own: object = {}) => ({
    hem: [
      { along: 0, height: 24.96, near: { station: 'centre-front', gore: 'x' } },
      { along: 811, height: 3.04, near: { station: 'side/back' } },
    ],
    touches: [{ from: 1900, to: 2100 }],
    stretch: 0.012345,
    train: { behindHeel: 603.21, left: 555.11, right: -444.32 },
    lainBehind: 402.06,
    assumedFloor: false,
    ...own,
  });
  const report = (own: object = {}, bustled?: object) =>
    hangReport(
      { layer: 'shell', sewn: { cloth: { bendingLength: 21.26 } }, notHung: ['cape'] } as never,
      { figures: figures(own), bustled } as never,
    );
  const hem = [
    { along: 0, offFloor: 25, near: 'centre-front' },
    { along: 811, offFloor: 3, near: 'side/back' },
  ];

  it('each figure under its name, to a tenth', () => {
    expect(report()).toEqual({
      layer: 'shell',
      bendingLength: 21.3,
      floor: 'measured',
      hem,
      touches: [{ from: 1900, to: 2100 }],
      train: { behindHeel: 603.2, width: 999.4, onFloor: 402.1 },
      stretch: 0.0123,
      bustled: null,
      notHung: ['cape'],
    });
    expect(report({ train: undefined, assumedFloor: true })).toMatchObject({ train: null, floor: 'assumed' });
  });

  it('drawn up: its own hem, and what more it wants', () => {
    const own = { ...figures({ touches: [], stretch: 0.5 }) };
    expect(report({}, { figures: own }).bustled).toEqual({ hem, touches: [], stretch: 0.5 });
    const points = [{ seam: 'centre-back', copies: 1, anchor: 60, pickUp: 700, lift: 640 }];
    expect(report({}, { figures: own, advice: { points, clears: true } }).bustled).toMatchObject({
      touches: [],
      advised: { points, clears: true },
    });
  });
});
