import { describe, expect, it } from 'vitest';
import { bustleReport } from '../../src/report/bustle-report.ts';
import { finishingReport } from '../../src/report/finishing-report.ts';
import { fittingReport } from '../../src/report/fitting-report.ts';
import { gownReport } from '../../src/report/gown-report.ts';
import { layCost, layReport } from '../../src/report/lay-report.ts';
import { partReport } from '../../src/report/part-report.ts';
import { stoneReport } from '../../src/report/stone-report.ts';
import { upright } from '../quads.ts';

/** Fields of `report.json` from figures made by hand, every one another: each under its own name. mm, degrees. */

const turn = (degrees: number) => (degrees * Math.PI) / 180;

describe('the gown', () => {
  const gores = [
    {
      name: 'front',
      copies: 1,
      onFold: true,
      top: 56.11111,
      hem: 211,
      flare: turn(8.5),
      area: 12345.678,
      tightest: 431,
      edges: { waist: 56, fold: 1001.00006 },
    },
    {
      name: 'side',
      side: 'right',
      copies: 2,
      onFold: false,
      top: 86,
      hem: 465,
      flare: turn(-3),
      area: 54321,
      tightest: Number.POSITIVE_INFINITY,
      edges: {},
    },
  ];
  const seams = [
    {
      name: 'front/side',
      lengths: [1001, 1003.5],
      hemAngle: turn(179),
      waistAngle: turn(181),
      offSquare: turn(12),
    },
    {
      name: 'side/back',
      side: 'left',
      lengths: [1105, 1104],
      hemAngle: turn(180),
      waistAngle: turn(178),
      offSquare: turn(-4),
    },
    { name: 'centre-back', free: true, lengths: [1, 1], hemAngle: 0, waistAngle: 0, offSquare: 0 },
  ];
  const stations = [
    { name: 'centre-front', drop: 70, given: 1035, asWorn: 1049 },
    { name: 'front/side', side: 'left', drop: 55, given: undefined, asWorn: undefined },
    { name: 'centre-back', drop: 0, given: 1115, asWorn: 1122 },
  ];
  const report = (own: object = {}, round = 'mirrored') =>
    gownReport(
      { name: 'Lantern', format: 1, content: 'abcd1234', waistSeam: 740, ...own } as never,
      {
        drafts: { gown: { gown: { round, stations }, lengths: [1030.00004, 1041, 1117] } },
        measures: { gores, seams, waist: { sewn: 738.5 }, hem: { sewn: 4210 } },
        layers: [],
      } as never,
      { parts: [{ name: 'p' }], finishing: [], overskirts: [], fittings: [] } as never,
    );

  it('whose it is, its gores, seams and stations', () => {
    const found = report({ client: 'LAN-07' });
    expect(found).toMatchObject({ gown: 'Lantern', client: 'LAN-07', format: 1, content: 'abcd1234' });
    expect(report()).not.toHaveProperty('client');
    expect(found.gores).toEqual([
      {
        name: 'front',
        copies: 1,
        onFold: true,
        top: 56.1111,
        hem: 211,
        flareDegrees: 8.5,
        area: 12345.68,
        tightestRadius: 431,
        edges: { waist: 56, fold: 1001.0001 },
      },
      {
        name: 'side',
        side: 'right',
        copies: 2,
        onFold: false,
        top: 86,
        hem: 465,
        flareDegrees: -3,
        area: 54321,
        tightestRadius: null,
        edges: {},
      },
    ]);
    expect(found.stations).toEqual([
      { name: 'centre-front', length: 1030, drop: 70, given: 1035, asWorn: 1049 },
      { name: 'front/side', side: 'left', length: 1041, drop: 55, given: null, asWorn: null },
      { name: 'centre-back', length: 1117, drop: 0, given: 1115, asWorn: 1122 },
    ]);
    expect(found.seams).toEqual([
      {
        name: 'front/side',
        lengths: [1001, 1003.5],
        difference: 2.5,
        hemAngle: 179,
        waistAngle: 181,
        hemOffSquare: 12,
      },
      {
        name: 'side/back',
        side: 'left',
        lengths: [1105, 1104],
        difference: 1,
        hemAngle: 180,
        waistAngle: 178,
        hemOffSquare: -4,
      },
    ]);
    expect(found).toMatchObject({
      waist: { sewn: 738.5, bodice: 740, difference: 1.5 },
      hem: { sewn: 4210 },
      parts: [{ name: 'p' }],
    });
    expect(found).not.toHaveProperty('wrap');
    expect(report({ wrap: { at: 'a/b', over: 'left', overlap: 150, overlapAtHem: 420 } }).wrap).toEqual({
      at: 'a/b',
      over: 'left',
      overlap: 150,
      overlapAtHem: 420,
    });
  });
});

describe('lays', () => {
  const lay = (own: object = {}) => ({
    cloth: 'crepe',
    layers: ['shell'],
    facts: { width: 1400 },
    fold: 'lengthwise',
    length: 4310.00004,
    used: 0.81234567,
    buy: 4500,
    cutShort: false,
    ...own,
  });
  const cloths = [
    { name: 'net', price: '9', pricedPer: 1000 },
    { name: 'crepe', price: '24.50', pricedPer: 914.4 },
    { name: 'felt' },
  ];
  const reports = (...lays: object[]) => layReport({ cloths, currency: 'EUR' } as never, lays as never);
  it('each figure under its name; the price by the yard or metre that it is for', () => {
    // 4500 ÷ 914.4 × 24.50
    expect(reports(lay(), lay({ layers: ['a', 'b'], cloth: 'felt', cutShort: true }))).toEqual([
      {
        cloth: 'crepe',
        layers: ['shell'],
        layer: 'shell',
        width: 1400,
        fold: 'lengthwise',
        length: 4310,
        used: 0.812346,
        buy: 4500,
        cost: 120.57,
      },
      {
        cloth: 'felt',
        layers: ['a', 'b'],
        width: 1400,
        fold: 'lengthwise',
        length: 4310,
        used: 0.812346,
        buy: 4500,
        cost: null,
        cutShort: true,
      },
    ]);
    const apart = {
      layers: [
        { layer: 'a', length: 1100, buy: 1250 },
        { layer: 'b', length: 2200, buy: 2500 },
      ],
      length: 3300,
      buy: 3750,
    };
    expect(reports(lay({ apart }))[0]?.apart).toEqual(apart);
    expect(layCost({ cloths, currency: 'EUR' } as never, 'net', 3300)).toEqual({
      minor: 2970n,
      currency: 'EUR',
    });
    expect(layCost({ cloths, currency: 'EUR' } as never, 'none', 3300)).toBeUndefined();
  });
});

describe('what is sewn on, drawn up, set by hand', () => {
  it('a bustle’s points, on seams and on gores', () => {
    const point = { copies: 2, anchor: 11, pickUp: 801, lift: 790 };
    const points = [
      { ...point, seam: 'centre-back' },
      {
        ...point,
        gore: 'back',
        across: 0.3,
        side: 'left',
        copies: 1,
        anchor: 12,
        pickUp: 702.00004,
        lift: 690,
      },
    ];
    expect(bustleReport({ kind: 'over', advised: true, number: 3, clearance: 21, points } as never)).toEqual({
      kind: 'over',
      advised: true,
      number: 3,
      clearance: 21,
      points: [
        { seam: 'centre-back', copies: 2, anchor: 11, pickUp: 801, lift: 790 },
        { gore: 'back', across: 0.3, side: 'left', copies: 1, anchor: 12, pickUp: 702, lift: 690 },
      ],
    });
  });

  const piece = (own: object = {}) => ({
    ...upright(120, 300, undefined, { piece: own }).piece,
    gore: 'frill',
  });
  const layer = { name: 'net', cloth: { name: 'tulle' } };
  const edges = { waist: 120, hem: 120, 'side/back': 300, 'front/side': 300 };
  it.each([
    [{ cut: 'pair' }, 2],
    [{ cut: 'single', copies: 7 }, 7],
    [{ cut: 'on-fold' }, 1],
  ])('parts and finishing pieces: %j', (own, copies) => {
    const measures = { difference: 0.25, hemAngle: turn(179.5) };
    expect(partReport({ part: { piece: piece(own), layer }, measures } as never)).toEqual({
      name: 'frill',
      layer: 'net',
      copies,
      edges,
      seams: { difference: 0.25, hemAngle: 179.5 },
    });
    expect(
      finishingReport({ piece: piece({ ...own, part: 'facing', bySize: true }), layer } as never),
    ).toEqual({
      part: 'facing',
      name: 'frill',
      layer: 'net',
      cloth: 'tulle',
      copies,
      onFold: copies === 1,
      bySize: true,
      edges,
    });
    expect(finishingReport({ piece: piece(own), layer } as never)).toMatchObject({ part: '', bySize: false });
  });

  it('stones: their own hours and their own cost', () => {
    const set = (name: string, own: object = {}) => ({
      stones: { name, layer: { name: 'shell' }, perHour: 40, ...own },
      count: 350,
      gross: 3,
      grams: 12.34567,
    });
    const hours = (numerator: bigint) => ({ numerator, denominator: 4n });
    const tasks = [
      { task: 'making', hours: hours(9n) },
      { task: 'beads', hours: hours(35n) },
    ];
    const lines = [
      { kind: 'notion', name: 'beads', amount: { minor: 1n } },
      { kind: 'stones', name: 'beads', amount: { minor: 4567n } },
    ];
    const pricing = { hours: { tasks }, quote: { lines } };
    expect(
      stoneReport({
        stones: [set('beads'), set('sequins'), set('beads', { perHour: undefined })],
        pricing,
      } as never),
    ).toEqual([
      { name: 'beads', layer: 'shell', count: 350, gross: 3, grams: 12.3457, hours: 8.75, cost: '45.67' },
      { name: 'sequins', layer: 'shell', count: 350, gross: 3, grams: 12.3457 },
      { name: 'beads', layer: 'shell', count: 350, gross: 3, grams: 12.3457, cost: '45.67' },
    ]);
  });

  it('a fitting, before and after', () => {
    const trace = {
      date: 'd',
      hem: [4210.00004, 4190],
      waist: [740, 728],
      lengths: [{ name: 'a', length: [1001, 1011] }],
    };
    expect(fittingReport(trace as never)).toEqual({ ...trace, hem: [4210, 4190] });
  });
});
