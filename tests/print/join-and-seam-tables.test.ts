import { describe, expect, it } from 'vitest';
import { cuttingBlocks } from '../../src/print/papers/cutting-blocks.ts';
import { joinBlocks } from '../../src/print/papers/join-blocks.ts';
import { seamBlocks } from '../../src/print/papers/seam-blocks.ts';
import { asPrinted, handMade, tablesOf } from './hand-made-facts.ts';

/** What is joined with what, seams by layer and the cutting list, from facts made by hand, mm. */

const LAYERS = ['lining', 'shell', 'net', 'organza'].map((name) => ({ name }));

const CLOSURE = {
  kind: 'zip',
  at: 'side/back',
  side: 'left',
  starts: 26,
  stops: 257,
  zip: { stock: 250, shortenBy: 19 },
  passage: {
    passes: 1202,
    against: [
      { entry: 'steps-in', girth: 1013, room: 189 },
      { entry: 'over-the-head', girth: 1215, room: -13 },
    ],
  },
  takes: ['shell', 'net'],
  felled: ['lining'],
  beside: 'finished',
};

const WAIST = {
  groups: [
    { layers: ['organza'], plies: { together: 2, atCrossings: 4 } },
    { layers: ['shell', 'net'], plies: { together: 3, atCrossings: 6 } },
  ],
  clearance: 11,
  bonesEnd: 14,
  secondRow: 3,
};

const joins = (units: 'cm' | 'in', workroom: object, gown: object = {}) =>
  tablesOf(
    joinBlocks(
      handMade(units, {
        gown: { layers: LAYERS, ...gown },
        workroom: { waist: WAIST, closure: CLOSURE, ...workroom },
      }),
    ),
  ).map(asPrinted);

describe('what each layer is joined with', () => {
  const hems = [
    { layer: 'lining', finish: 'bagged', partner: 'shell' },
    { layer: 'shell', finish: 'bagged', partner: 'lining' },
    { layer: 'net', finish: 'rolled' },
  ];

  it('from the outside in: waist, closure, hem', () => {
    expect(joins('cm', { hems })[0]!.slice(1)).toEqual([
      ['layer', 'waist', 'closure', 'hem'],
      ['organza', 'by itself', 'as one with shell and net', ''],
      ['net', 'as one with shell', 'as one with shell', 'rolled'],
      ['shell', 'as one with net', 'as one with net', 'bagged to the lining'],
      ['lining', 'by itself', 'felled to it last', 'bagged to the shell'],
    ]);
  });

  it('without a closure nothing is joined to it', () => {
    const [layers, rows] = joins('cm', { hems, closure: undefined });
    expect(layers!.slice(2).map((row) => row[2])).toEqual(['none', 'none', 'none', 'none']);
    expect(rows!.slice(2).map(([label]) => label)).toEqual([
      'plies at the waist, organza',
      'plies at the waist, shell and net',
      'between needle and bones',
    ]);
  });
});

describe('the closure', () => {
  it('each figure beside its label', () => {
    expect(joins('cm', {})[1]!.slice(2)).toEqual([
      ['zip', 'side/back, her left'],
      ['starts below the waist seam', '2.6 cm'],
      ['stops below the waist seam', '25.7 cm'],
      ['zip to buy', '25 cm, shortened by 1.9 cm'],
      ['lets through', '120.2 cm (waist seam and twice the opening)'],
      ['her hip, stepping in', '101.3 cm: 18.9 cm to spare'],
      ['her shoulders, over the head', '121.5 cm: 1.3 cm too little'],
      ['taken as one', 'shell and net'],
      ['felled to it last', 'lining'],
      ['bodice edge above', 'finished'],
      ['skirt’s edge finished by', 'not decided'],
      ['plies at the waist, organza', '2; 4 where pressed-open seams cross'],
      ['plies at the waist, shell and net', '3; 6 where pressed-open seams cross'],
      ['between needle and bones', '1.1 cm (bones end 1.4 cm above, second row 0.3 cm)'],
    ]);
  });

  it('a wrap: where, which side on top, how far at the waist and at the hem, what becomes of its edges', () => {
    const wrap = {
      at: 'side/back',
      over: 'left',
      overlap: 161,
      overlapAtHem: 432,
      edges: 'faced',
      fastened: 'ties',
    };
    expect(joins('cm', { closure: undefined }, { wrap })[1]!.slice(2, 6)).toEqual([
      ['wraps at', 'side/back, her left side on top'],
      ['edge over edge', '16.1 cm at the waist, 43.2 cm at the hem'],
      ['edges', 'faced'],
      ['held by', 'ties'],
    ]);
  });

  it('in inches; a zip as long as the shops’, whatever passes passes, and a waist of its own', () => {
    const closure = {
      ...CLOSURE,
      zip: { stock: 250, shortenBy: 0 },
      passage: { passes: 1202, against: [{ entry: 'steps-in', girth: 1202, room: 0 }] },
      finish: 'guard',
      felled: [],
    };
    const waist = { groups: [], clearance: -2, bonesEnd: 1, secondRow: 3 };
    expect(joins('in', { closure, waist }, { waist: {} })[1]!.slice(2)).toEqual([
      ['zip', 'side/back, her left'],
      // 1.024, 10.118, 9.843, 47.323
      ['starts below the waist seam', '1 in'],
      ['stops below the waist seam', '10 1/8 in'],
      ['zip to buy', '9 13/16 in'],
      ['lets through', '47 5/16 in (waist seam and twice the opening)'],
      ['her hip, stepping in', '47 5/16 in: 0 in to spare'],
      ['taken as one', 'shell and net'],
      ['skirt’s edge finished by', 'a zip guard'],
      ['between needle and bones', '0 in (bones end 1/16 in above, second row 1/8 in)'],
    ]);
  });

  it('hooks start at the waist seam and have no zip; sewn shut above, they need no finish', () => {
    const { zip: _, passage: __, stops: ___, side: ____, ...rest } = CLOSURE;
    const short = { ...CLOSURE, zip: { stock: 232, shortenBy: 1 } };
    expect(joins('cm', { closure: short })[1]).toContainEqual(['zip to buy', '23.2 cm, shortened by 0.1 cm']);
    const closure = { ...rest, kind: 'hooks', beside: 'sewn' };
    expect(joins('cm', { closure, waist: { groups: [] } })[1]!.slice(2)).toEqual([
      ['hooks and bars', 'side/back'],
      ['taken as one', 'shell and net'],
      ['felled to it last', 'lining'],
      ['bodice edge above', 'sewn shut'],
    ]);
    const finished = { ...closure, finish: 'placket' };
    expect(joins('cm', { closure: finished, waist: { groups: [], bonesEnd: 9 } })[1]!.at(-1)).toEqual([
      'skirt’s edge finished by',
      'a placket',
    ]);
  });
});

describe('seams', () => {
  const stations = [
    { name: 'centre-front', seams: 0, station: {} },
    { name: 'front/side', side: 'left', seams: 1, station: {} },
    { name: 'front/side', side: 'right', seams: 1, station: {} },
    { name: 'centre-back', seams: 1, station: {} },
    // An edge that lies free is no seam.
    { name: 'outer-edge', seams: 1, station: { free: true } },
  ];
  const layer = (name: string, lengths: readonly number[]) => ({
    layer: { name },
    seams: stations
      .slice(1, 1 + lengths.length)
      .map((station, i) => ({ name: station.name, side: station.side, length: lengths[i] })),
  });
  const notched = (gore: string, layers: string[], edge: string, distances: number[]) => ({
    gore,
    layers,
    notches: distances.map((distance) => ({ edge, distance })),
  });
  const input = handMade('cm', {
    gown: { layers: LAYERS, gores: [{ name: 'front' }, { name: 'back' }] },
    workroom: {
      skirt: {
        stations,
        layers: [
          layer('lining', [1011, 1022, 1733]),
          layer('shell', [1031.02, 1042, 1753]),
          // Nobody sees a twentieth of a millimetre.
          layer('net', [1031, 1042.04, 1753]),
          layer('organza', [1031, 1042]),
        ],
      },
    },
    cutPieces: [
      notched('front', ['lining'], 'front/side', [111, 222]),
      notched('front', ['shell'], 'front/side', [133, 244, 244]),
      notched('back', ['shell'], 'centre-back', [355]),
      notched('back', ['net'], 'hem', [9]),
      // Neither a gore of the skirt's nor cloth of its layers.
      notched('flounce', ['shell'], 'front/side', [777]),
      notched('front', ['facing'], 'front/side', [888]),
    ],
  });

  it('layers that are alike share a column; each seam on its side; notches of the outermost that has it', () => {
    expect(asPrinted(tablesOf(seamBlocks(input))[0]!)).toEqual([
      ['<>>>><'],
      ['seam', 'how many', 'lining', 'shell and net', 'organza', 'notches from the waist seam'],
      ['front/side, her left', '1', '101.1', '103.1', '103.1', '13.3  24.4'],
      ['front/side, her right', '1', '102.2', '104.2', '104.2', '13.3  24.4'],
      ['centre back', '1', '173.3', '175.3', '', '35.5'],
    ]);
  });

  it('none where there is no seam', () => {
    const workroom = { skirt: { stations: stations.slice(0, 1), layers: [] } };
    expect(seamBlocks(handMade('cm', { workroom }))).toEqual([]);
  });
});

describe('the cutting list', () => {
  const corners: readonly [number, number][] = [
    [-31, 12],
    [402, 12],
    [402, 1209],
    [-31, 1209],
  ];
  const box = corners.map(([x, y], i) => {
    const [toX, toY] = corners[(i + 1) % 4]!;
    return { name: `${i}`, curves: [{ kind: 'line', from: { x, y }, to: { x: toX, y: toY } }] };
  });
  const piece = (own: object, allowances: object, rest: object = {}) => ({
    gore: 'side',
    layers: ['shell', 'net'],
    cutEdges: box,
    roughCut: 0,
    allowances,
    piece: {
      gore: 'side',
      cut: 'pair',
      frontEdge: 'front/side',
      backEdge: 'side/back',
      edges: ['waist', 'side/back', 'hem', 'front/side'].map((name) => ({ name })),
      ...own,
    },
    ...rest,
  });
  const all = { waist: 13, hem: 31, 'front/side': 16, 'side/back': 16 };
  const rows = (units: 'cm' | 'in', ...cutPieces: object[]) =>
    asPrinted(tablesOf(cuttingBlocks(handMade(units, { cutPieces })))[0]!);

  it('piece, layers, how many, across and down, allowances', () => {
    expect(rows('cm', piece({}, all))).toEqual([
      ['<<<<<'],
      ['piece', 'layers', 'cut', 'across × down', 'allowances'],
      // 402 + 31 and 1209 − 12
      ['side', 'shell and net', '2, a mirrored pair', '43.3 × 119.7', 'waist 1.3, sides 1.6, hem 3.1'],
    ]);
    // 17.047, 47.126; 0.512, 0.630, 1.220
    expect(rows('in', piece({}, all))[2]!.slice(3)).toEqual([
      '17 1/16 × 47 1/8',
      'waist 1/2, sides 5/8, hem 1 1/4',
    ]);
  });

  it.each([
    [
      'sides that differ, each by its name',
      {},
      { ...all, 'side/back': 25 },
      'waist 1.3, front/side 1.6, side/back 2.5, hem 3.1',
    ],
    [
      'a fold has none',
      { frontEdge: 'fold', edges: ['waist', 'side/back', 'hem', 'fold'].map((name) => ({ name })) },
      all,
      'waist 1.3, sides 1.6, hem 3.1',
    ],
    [
      'what is not given is none',
      {},
      { hem: 31, 'front/side': 16, 'side/back': 16 },
      'waist 0, sides 1.6, hem 3.1',
    ],
    ['folds alone', { frontEdge: 'fold', backEdge: 'fold', edges: [{ name: 'hem' }] }, all, 'hem 3.1'],
  ])('%s', (_, own, allowances, wanted) => {
    expect(rows('cm', piece(own, allowances))[2]![4]).toBe(wanted);
  });

  it.each([
    [{ cut: 'on-fold' }, {}, '1 on the fold'],
    [{ cut: 'single', copies: 3 }, {}, '3'],
    [{ cut: 'single' }, {}, '1'],
    [{ cut: 'single', side: 'left' }, {}, '1, her left'],
    [
      { cut: 'pair' },
      { remarks: [{ kind: 'slit-stay', seam: 'a/b' }, { kind: 'modesty-panel' }] },
      '2, a mirrored pair; over the upper end of the slit at a/b; behind the lacing, sewn to one edge only',
    ],
  ])('%j %j: %s', (own, rest, wanted) => {
    expect(rows('cm', piece(own, all, rest))[2]![2]).toBe(wanted);
  });

  it('what is left rough stands at the hem', () => {
    expect(rows('cm', piece({}, all, { roughCut: 27 }))[2]![4]).toBe(
      'waist 1.3, sides 1.6, hem 3.1 + 2.7 rough',
    );
  });

  it('lays below it, each with its drawing or what is said of it', () => {
    const drawing = { x: 0, y: 0, width: 1, height: 1, marks: [] };
    const lays = [
      { name: 'crepe', caption: 'as wide as that', drawing },
      { name: 'net', caption: 'does not fit' },
    ];
    expect(cuttingBlocks(handMade('cm', { lays })).slice(2)).toEqual([
      { kind: 'heading', level: 2, text: 'Lays' },
      { kind: 'heading', level: 3, text: 'crepe' },
      { kind: 'figure', drawing, maxHeight: 110, caption: 'as wide as that' },
      { kind: 'heading', level: 3, text: 'net' },
      { kind: 'paragraph', text: 'does not fit' },
    ]);
  });
});
