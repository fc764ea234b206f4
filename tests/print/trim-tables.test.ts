import { describe, expect, it } from 'vitest';
import { trimBlocks } from '../../src/print/papers/trim-blocks.ts';
import { asPrinted, handMade, tablesOf } from './hand-made-facts.ts';

/** Hems, strips, edging, petticoat and bustle from facts made by hand, mm; each figure in its own column. */

const HEMS = [
  {
    layer: 'lining',
    finish: 'turned',
    length: 2345,
    allowance: 30,
    shorter: 20,
    surplus: { toEase: 167, share: 0.0712 },
  },
  { layer: 'shell', finish: 'bagged', length: 2567, allowance: 15, shorter: 0, partner: 'lining' },
  { layer: 'net', finish: 'raw', length: 2789, allowance: 0, shorter: 1 },
];

const STRIPS = [
  { kind: 'horsehair', layer: 'shell', along: 'hem', width: 76.2, length: { length: 2601, drawnIn: 98 } },
  { kind: 'stay-tape', layer: 'lining', along: 'waist', length: { length: 741, drawnIn: 0 } },
  { kind: 'binding', layer: 'net', along: 'side/back', width: 40, length: { length: 1113 }, isCut: true },
].map((strip, i) => ({ isCut: false, buy: [3000, 1000, 2226][i], ...strip }));

const trims = (units: 'cm' | 'in', workroom: object) =>
  tablesOf(trimBlocks(handMade(units, { workroom: { hems: HEMS, ...workroom } }))).map(asPrinted);

describe('hems and strips', () => {
  it('in cm', () => {
    expect(trims('cm', { strips: STRIPS })).toEqual([
      [
        ['<<>><'],
        ['layer', 'hem', 'round', 'allowance', 'to know'],
        [
          'lining',
          'turned up',
          '234.5',
          '3.0',
          '2 cm shorter than the gown; 16.7 cm to ease when turned up (7.1 %)',
        ],
        ['shell', 'bagged', '256.7', '1.5', 'bagged to the lining'],
        ['net', 'raw', '278.9', '0.0', '0.1 cm shorter than the gown'],
      ],
      [
        ['<<>>>'],
        ['strip', 'where', 'length', 'buy', 'drawn in'],
        ['horsehair braid, 7.6 cm', 'shell, hem', '260.1', '300.0', '9.8'],
        ['stay tape', 'lining, waist', '74.1', '100.0', ''],
        ['binding, 4 cm', 'net, side/back seam', '111.3', 'cut', ''],
      ],
    ]);
  });

  it('in inches, to a sixteenth', () => {
    const [hems, strips] = trims('in', { strips: STRIPS });
    // 92.323, 1.181; 101.063, 0.591; 109.803
    expect(hems!.slice(2).map(([, , round, allowance]) => [round, allowance])).toEqual([
      ['92 5/16', '1 3/16'],
      ['101 1/16', '9/16'],
      ['109 13/16', '0'],
    ]);
    // 102.402, 118.110, 3.858; 29.173, 39.370
    expect(strips!.slice(2, 4)).toEqual([
      ['horsehair braid, 3 in', 'shell, hem', '102 3/8', '118 1/8', '3 7/8'],
      ['stay tape', 'lining, waist', '29 3/16', '39 3/8', ''],
    ]);
  });

  it('no table of strips where there are none', () => {
    expect(trims('cm', {})).toHaveLength(1);
  });
});

describe('edging', () => {
  const edging = {
    name: 'galloon',
    repeat: 140,
    start: 'side/back',
    side: 'left',
    buy: 6300,
    hems: [
      {
        layer: 'shell',
        length: 5510,
        plan: { repeats: 40, length: 5600, ease: 90, easePerRepeat: 2.25 },
        byGore: [
          { gore: 'front', length: 611, lap: 31, lapPerMotif: 7.1, easeOuter: 0.4 },
          { gore: 'back', side: 'right', length: 722, lap: 0.2, easeOuter: 12.9 },
        ],
      },
      { layer: 'cape', length: 990, plan: undefined, byGore: [] },
    ],
    own: { cloth: 'lace', supply: 7100, bought: 3550 },
    scallops: { lowPoints: 21, highPoints: 36 },
  };

  it('round each hem, its repeats and ease, where it starts, what to get', () => {
    const [, first, byGore, ...more] = trims('cm', { edging });
    expect(more).toEqual([]);
    expect(first!.slice(2)).toEqual([
      ['round the shell’s hem', '551 cm'],
      ['repeats', '40 of 14 cm: 560 cm'],
      ['to ease in', '9 cm, 0.2 cm a repeat'],
      ['round the cape’s hem', '99 cm'],
      ['starts and joins at', 'left side/back'],
      ['to get', '630 cm, a motif for each join in it'],
      ['from the cloth’s two edges', '710 cm from 355 cm of lace'],
      ['scallops off the floor', 'low points 2.1 cm, high points 3.6 cm'],
    ]);
    expect(byGore).toEqual([
      ['<>>>>'],
      ['gore', 'its hem', 'inner edge to lap', 'a motif', 'outer edge to ease'],
      // What no eye sees is not asked for.
      ['front', '61.1', '3.1', '0.7', ''],
      ['back, right', '72.2', '0.0', '', '1.3'],
    ]);
  });

  it('without a repeat, a cloth of its own or scallops, nothing of them', () => {
    const { own: _, scallops: __, repeat: ___, side: ____, ...bare } = edging;
    const [, rows] = trims('in', { edging: { ...bare, hems: [{ ...edging.hems[1] }] } });
    expect(rows!.slice(2)).toEqual([
      // 990 / 25.4 = 38.976
      ['round the cape’s hem', '39 in'],
      ['starts and joins at', 'side/back'],
    ]);
  });

  it('of a cloth that nothing is bought of yet, no supply', () => {
    const [, rows] = trims('cm', { edging: { ...edging, own: { cloth: 'lace', clothNeeded: 3150 } } });
    expect(rows!.map(([label]) => label)).not.toContain('from the cloth’s two edges');
  });
});

describe('petticoat and walking', () => {
  const hoop = {
    round: 3101,
    offFloor: 42,
    sweep: { sweep: 4321, ratio: 1.393 },
    least: 3050,
    withTrain: true,
    slant: 1062,
    height: 995,
  };

  it('the front, the hoop, the skirt round it, and the way down to it', () => {
    const [, rows] = trims('cm', { petticoat: { offFloor: 23, hoop } });
    expect(rows!.slice(2)).toEqual([
      [
        'front hem off the floor',
        '2.3 cm (textbook: 2.5 cm); she walks in it at the fitting before it stays so',
      ],
      ['bottom hoop', '310.1 cm round, 4.2 cm off the floor'],
      ['skirt round at the hoop', '432.1 cm, 1.39 times the hoop (common practice: 1.3 or more)'],
      ['comfortable from', '305 cm round, with a train (common practice)'],
      [
        'level waist to hoop, centre front',
        '106.2 cm along the cloth, 99.5 cm straight down: measure her to check',
      ],
    ]);
  });

  it('what is not known is left out, and the whole where nothing is', () => {
    const known = { ...hoop, sweep: undefined, slant: undefined, withTrain: false };
    const [, rows] = trims('in', { petticoat: { offFloor: undefined, hoop: known } });
    expect(rows!.slice(2)).toEqual([
      // 122.087, 1.654; 120.079
      ['bottom hoop', '122 1/16 in round, 1 5/8 in off the floor'],
      ['comfortable from', '120 1/16 in round (common practice)'],
    ]);
    expect(trims('cm', { petticoat: { offFloor: undefined, hoop: undefined } })).toHaveLength(1);
    expect(
      trims('cm', { petticoat: { offFloor: 25, hoop: { ...known, height: undefined, slant: 9 } } })[1],
    ).toHaveLength(5);
  });
});

describe('bustle', () => {
  const points = [
    { seam: 'centre-back', copies: 1, anchor: 121, pickUp: 786, lift: 665, loopBottom: 807, aboveHem: 954 },
    {
      seam: 'side/back',
      side: 'left',
      copies: 2,
      anchor: 142,
      pickUp: 433,
      lift: 291,
      loopBottom: 454,
      aboveHem: 935,
    },
  ];
  const bustle = { kind: 'over', number: 3, clearance: 21, points, advised: false };
  const said = (own: object) =>
    trimBlocks(handMade('cm', { workroom: { bustle: own } })).flatMap((block) =>
      block.kind === 'paragraph' ? [block.text] : [],
    );

  it('points down the cloth, each figure under its head', () => {
    expect(trims('cm', { bustle })[1]).toEqual([
      ['<>>>>>>'],
      ['seam', 'points', 'anchor', 'pick-up', 'lift', 'loop ends', 'above the hem'],
      ['centre back', '1', '12.1', '78.6', '66.5', '80.7', '95.4'],
      ['side/back, her left', '2', '14.2', '43.3', '29.1', '45.4', '93.5'],
    ]);
    // 121 / 25.4 = 4.764, 786: 30.945, 665: 26.181, 807: 31.772, 954: 37.559
    expect(trims('in', { bustle })[1]![2]).toEqual([
      'centre back',
      '1',
      '4 3/4',
      '30 15/16',
      '26 3/16',
      '31 3/4',
      '37 9/16',
    ]);
  });

  it('how it is held, and who says where', () => {
    expect(said(bustle)).toEqual([
      'Over: loops at the pick-ups, hooks outside; 3 points; the hem then hangs 2.1 cm off the floor.',
    ]);
    const under = said({ ...bustle, kind: 'under', number: 1, advised: true });
    expect(under).toEqual([
      'Under: ribbons inside; 1 point; the hem then hangs 2.1 cm off the floor.',
      'Points advised, not asked for: the fitter pins them first and moves the anchors.',
    ]);
  });

  it('off a seam: its place across the gore, a head that says so, and the patch', () => {
    const off = { ...points[0], seam: undefined, gore: 'back', across: 0.375 };
    const own = { ...bustle, points: [points[1], off] };
    const [heads, , row] = trims('cm', { bustle: own })[1]!.slice(1);
    expect([heads![0], row![0], row![2]]).toEqual(['seam or gore', 'back, 37.5 % across', '12.1']);
    expect(said(own)[1]).toContain('Back both with a patch');
    expect(trims('cm', { bustle: { ...bustle, points: [] } })).toHaveLength(1);
  });

  it('what it wants more is a table of its own, with what it is for', () => {
    const more = [
      { ...points[1], seam: undefined, side: undefined, gore: 'back', across: 0.25, anchor: 155 },
    ];
    const [own, others] = trims('cm', { bustle: { ...bustle, more } }).slice(1);
    expect(own!.slice(2).map(([where]) => where)).toEqual(['centre back', 'side/back, her left']);
    expect(others!.slice(1)).toEqual([
      ['seam or gore', 'points', 'anchor', 'pick-up', 'lift', 'loop ends', 'above the hem'],
      ['back, 25 % across', '2', '15.5', '43.3', '29.1', '45.4', '93.5'],
    ]);
    expect(said({ ...bustle, more }).join(' ')).toContain('Back both with a patch');
  });
});
