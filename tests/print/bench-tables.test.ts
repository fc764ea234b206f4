import { describe, expect, it } from 'vitest';
import { benchCloths, benchDates, benchLayers } from '../../src/print/papers/bench-tables.ts';
import { bodiceBlocks } from '../../src/print/papers/bodice-blocks.ts';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { goreTable, stationTable } from '../../src/print/papers/measure-blocks.ts';
import { levellingBlocks, orderBlocks } from '../../src/print/papers/order-blocks.ts';
import { asPrinted, handMade, tablesOf } from './hand-made-facts.ts';
import { beside, printedLines } from './page-rows.ts';

/** The bench page's tables, the bodice's, the order and the levelling record, from facts made by hand, mm. */

const width = (mm: number) => ({ width: mm });
const layer = (name: string, cloth: string, own: object = {}) => ({
  name,
  cloth: { name: cloth },
  hem: 'rolled',
  shape: { shorter: 0 },
  allowances: { waist: width(13), seam: width(16), hem: width(21), named: {} },
  ...own,
});

describe('layers and parts', () => {
  const gown = {
    stations: [{ name: 'front/side' }, { name: 'centre-back' }],
    layers: [
      layer('lining', 'cupro', { shape: { shorter: 19 } }),
      layer('shell', 'crepe', {
        allowances: {
          waist: width(12),
          seam: width(15),
          hem: width(40),
          // As wide as the seams, of a piece that is none of the gown's, and one to be told.
          named: { 'front/side': width(15), 'tail/side': width(9), 'centre-back': width(31) },
        },
      }),
    ],
    flounces: [
      { layer: layer('frill', 'net'), sewnTo: { name: 'shell' }, aboveHem: 0 },
      { layer: layer('ruffle', 'tulle'), sewnTo: { name: 'lining' }, aboveHem: 123 },
    ],
    tiers: [{ layer: layer('petticoat', 'stiff net') }],
    overskirts: [
      {
        gown: { layers: [layer('tail', 'velvet', { hem: 'faced' })] },
        from: 'front/side',
        to: undefined,
        fastened: 'hooks',
      },
      { gown: { layers: [layer('apron', 'voile')] }, from: 'a/b', to: 'c/d', fastened: 'sewn' },
    ],
    askedBodice: { layers: [layer('bodice', 'coutil')] },
    straps: [{ layer: layer('strap', 'satin') }],
    capes: [{ layers: [layer('cape', 'lace')] }],
  };
  const workroom = {
    waist: { groups: [{ layers: ['lining'] }, { layers: ['shell'] }] },
    hems: [
      { layer: 'lining', finish: 'turned' },
      { layer: 'shell', finish: 'faced' },
    ],
  };

  it('each in its row: cloth, waist, closure, hem, allowances', () => {
    const parts = 'seams 1.6, hem 2.1';
    expect(asPrinted(benchLayers(handMade('cm', { gown, workroom }))).slice(1)).toEqual([
      ['layer', 'cloth', 'waist', 'closure', 'hem', 'allowances'],
      ['shell', 'crepe', 'by itself', 'none', 'faced', 'waist 1.2, seams 1.5, hem 4.0; centre back 3.1'],
      ['lining', 'cupro', 'by itself', 'none', 'turned up, 1.9 cm shorter', 'waist 1.3, seams 1.6, hem 2.1'],
      ['frill', 'net', 'at the shell’s hem', '', 'rolled', parts],
      ['ruffle', 'tulle', 'on the lining, 12.3 cm above its hem', '', 'rolled', parts],
      ['petticoat', 'stiff net', 'by itself', '', '', 'seams 1.6'],
      ['tail', 'velvet', 'hooks, front/side to centre back', '', 'faced', parts],
      ['apron', 'voile', 'sewn, a/b to c/d', '', 'rolled', parts],
      ['bodice', 'coutil', 'bodice', '', '', 'seams 1.6'],
      ['strap', 'satin', 'upper edge', '', '', 'seams 1.6'],
      ['cape', 'lace', 'upper edge', '', '', 'seams 1.6'],
    ]);
  });
});

describe('cloths and dates', () => {
  const cloths = [
    { name: 'crepe', width: 1403, oneWay: true, shrinkage: 0.03, stretch: true },
    { name: 'net', width: 2990, oneWay: false, shrinkage: 0 },
  ];
  const gown = { cloths, layers: [layer('lining', 'net'), layer('shell', 'crepe'), layer('top', 'crepe')] };

  it('by what is bought, added up where a cloth has two lays', () => {
    const lays = [
      { name: 'a', cloth: 'crepe', layers: ['shell'], buy: 4110 },
      { name: 'b', cloth: 'crepe', layers: ['shell', 'top'], buy: 1230 },
      { name: 'c', cloth: 'felt', layers: ['pad'], buy: 550 },
    ];
    expect(asPrinted(benchCloths(handMade('cm', { gown, lays }))).slice(1)).toEqual([
      ['cloth', 'wide', 'to buy', 'for', 'to know'],
      ['crepe', '140.3 cm', '411 cm + 123 cm', 'shell and top', 'one way, shrinks 3 %, stretches'],
      ['felt', '', '55 cm', 'pad', ''],
    ]);
    // 55.236 and 161.811, 48.425
    expect(benchCloths(handMade('in', { gown, lays })).rows[0]!.slice(1, 3)).toEqual([
      '55 1/4 in',
      '161 13/16 in + 48 7/16 in',
    ]);
  });

  it('without lays by the layers, each once', () => {
    expect(benchCloths(handMade('cm', { gown })).rows).toEqual([
      ['net', '299 cm', '', '', ''],
      ['crepe', '140.3 cm', '', '', 'one way, shrinks 3 %, stretches'],
    ]);
  });

  it('dates in two columns, the first the longer', () => {
    const entry = (milestone: string, date: string, weekday: number, daysBefore: number) => ({
      milestone,
      date,
      weekday,
      daysBefore,
    });
    const calendar = [
      entry('cut', '2027-04-24', 5, 49),
      entry('hang', '2027-05-19', 2, 24),
      entry('event', '2027-06-12', 5, 0),
    ];
    // 12 June 2027 is a Saturday (perpetual calendar); 19 May 24 days before it a Wednesday.
    const tables = tablesOf(benchDates(handMade('cm', { workroom: { calendar } })));
    expect(tables.map(asPrinted)).toEqual([
      [
        ['<<>'],
        ['by', 'what', 'days'],
        ['Sat 24 Apr 2027', 'cut the cloth', '49'],
        ['Wed 19 May 2027', 'hang, at least 24 hours', '24'],
      ],
      [['<<>'], ['by', 'what', 'days'], ['Sat 12 Jun 2027', 'the event', '0']],
    ]);
    expect(benchDates(handMade('cm', {}))).toEqual([]);
  });
});

describe('stations and gores', () => {
  const stations = [
    { name: 'centre-front', seams: 0, drop: 71, finished: 1013, floor: { length: 1034, estimated: false } },
    {
      name: 'front/side',
      side: 'right',
      seams: 1,
      drop: 32,
      finished: 1055,
      floor: { length: 1046, estimated: true },
    },
    { name: 'centre-back', seams: 1, drop: 0, finished: 1766 },
    { name: 'level', seams: 1, drop: 0, finished: 1100, floor: { length: 1100, estimated: false } },
  ];

  it('stations: what lies on the floor is what is over, and what nobody measured is about so', () => {
    expect(asPrinted(stationTable(handMade('cm', { workroom: { skirt: { stations } } })))).toEqual([
      ['<>>>>'],
      ['station', 'drop', 'finished', 'to floor', 'on floor'],
      ['centre front', '7.1', '101.3', '103.4', ''],
      ['front/side, her right', '3.2', '105.5', 'about 104.6', '0.9'],
      ['centre back', '0.0', '176.6', '', ''],
      ['level', '0.0', '110.0', '110.0', ''],
    ]);
    const caption = (gown: object) =>
      stationTable(handMade('in', { gown, workroom: { skirt: { stations } } })).caption;
    expect([caption({}), caption({ waist: {} })]).toEqual([
      'Lengths from the bodice’s sewn edge, in',
      'Lengths from the sewn waist edge, in',
    ]);
  });

  const gores = [
    { name: 'front', onFold: true, top: 56, panel: 57, hem: 361, flare: (17 * Math.PI) / 180 },
    { name: 'side', side: 'left', top: 82, panel: undefined, hem: 463, flare: (20.5 * Math.PI) / 180 },
    { name: 'side', side: 'right', top: 83, panel: 84, hem: 475, flare: (21 * Math.PI) / 180 },
    { name: 'back', side: 'left', top: 91, panel: 92, hem: 501, flare: (23 * Math.PI) / 180 },
    { name: 'back', side: 'right', top: 91, panel: 92, hem: 501, flare: (23 * Math.PI) / 180 },
  ];
  const cut = (gore: string, own: object) => ({ piece: { gore, ...own } });
  const cutPieces = [
    cut('front', { cut: 'on-fold' }),
    cut('side', { cut: 'single', side: 'left' }),
    cut('side', { cut: 'single', side: 'right' }),
    cut('back', { cut: 'pair' }),
    cut('back', { cut: 'single', side: 'right', part: 'facing' }),
  ];

  it('gores: her sides by themselves where they are cut so', () => {
    const input = handMade('cm', { measures: { gores }, cutPieces });
    expect(asPrinted(goreTable(input))).toEqual([
      ['<>>>>'],
      ['gore', 'top', 'bodice', 'hem', 'flare'],
      ['front (half)', '5.6', '5.7', '36.1', '17.0°'],
      ['side, her left', '8.2', '', '46.3', '20.5°'],
      ['side, her right', '8.3', '8.4', '47.5', '21.0°'],
      ['back', '9.1', '9.2', '50.1', '23.0°'],
    ]);
    const whole = [cut('front', { cut: 'single', middle: true })];
    const middle = handMade('cm', {
      measures: { gores: [{ ...gores[0], side: 'left' }] },
      cutPieces: whole,
      gown: { waist: {} },
    });
    // Sewn to no bodice, it has no column for one.
    expect(asPrinted(goreTable(middle))).toEqual([
      ['<>>>'],
      ['gore', 'top', 'hem', 'flare'],
      ['front (half), her left', '5.6', '36.1', '17.0°'],
    ]);
  });

  it('the client’s page says the same lengths, front and back, and what lies behind her', () => {
    const skirt = { stations: stations.slice(0, 3), waist: 741, hem: 4012, offFloor: 21 };
    const stones = [{ stones: { name: 'beads', layer: { name: 'shell' } }, count: 357 }];
    const closure = { kind: 'lacing', at: 'front/side', side: 'right' };
    const about = { pricing: {}, weight: { layers: [] }, cautions: { client: [] } };
    const layers = [layer('lining', 'cupro'), layer('crepe', 'crepe')];
    const printed = (gown: object, own: object = {}) =>
      printedLines(
        clientPages(
          handMade('cm', {
            gown: { name: 'G', layers, train: { onFloor: 655 }, ...gown },
            workroom: { skirt, closure, ...about, stones, ...own },
          }),
        ).pages,
      );
    const lines = printed({});
    expect(beside(lines, 'waist seam, all round')).toEqual(['74.1 cm']);
    expect(beside(lines, 'front, from the bodice’s edge to the hem')).toEqual(['101.3 cm']);
    expect(beside(lines, 'back, from the bodice’s edge to the hem')).toEqual(['176.6 cm']);
    expect(beside(lines, 'train on the floor at the centre back')).toEqual(['65.5 cm']);
    expect(beside(lines, 'hem off the floor in front')).toEqual(['2.1 cm']);
    expect(beside(lines, 'hem, all round')).toEqual(['401.2 cm']);
    expect(beside(lines, 'opens')).toEqual(['lacing at front/side, on your right']);
    expect(beside(lines, 'set by hand')).toEqual(['beads on the shell, 357']);
    expect(beside(lines, 'layers, from the inside out')).toEqual(['lining (cupro) and crepe']);
    // Measured at the back, that is what counts: 176.6 − 111.2.
    const measured = stations.map((one) =>
      one.name === 'centre-back' ? { ...one, floor: { length: 1112, estimated: false } } : one,
    );
    const own = printed({ waist: {} }, { skirt: { ...skirt, stations: measured }, closure: undefined });
    expect(beside(own, 'train on the floor at the centre back')).toEqual(['65.4 cm']);
    expect(beside(own, 'back, from the waist to the hem')).toEqual(['176.6 cm']);
    expect(beside(own, 'opens')).toEqual([]);
    // Nothing on the floor is no train, and what is sewn on or worn with it stands by its cloth.
    const short = printed({ train: undefined });
    expect(beside(short, 'train on the floor at the centre back')).toEqual([]);
    const level = stations.map((one) => ({ ...one, floor: { length: one.finished, estimated: false } }));
    const clear = printed({}, { skirt: { ...skirt, stations: level } });
    expect(beside(clear, 'train on the floor at the centre back')).toEqual([]);
    const more = printed({
      flounces: [{ layer: layer('frill', 'net') }],
      capes: [{ name: 'cape', layers: [layer('inner', 'cupro'), layer('outer', 'wool')] }],
      tiers: [{ layer: layer('tulle', 'tulle') }],
      overskirts: [{ name: 'tail', gown: { layers: [layer('under', 'cupro'), layer('over', 'satin')] } }],
    });
    expect(beside(more, 'sewn on to it')).toEqual(['frill (net) and cape (wool)']);
    expect(beside(more, 'worn with it')).toEqual(['tulle and tail (satin)']);
  });

  it('the card says how the bustle goes up, step by step from the first', () => {
    const about = {
      pricing: {},
      weight: { layers: [{ cloth: 'crepe' }, { cloth: 'net' }, { cloth: 'crepe' }] },
      cautions: { client: ['stairs'] },
    };
    const skirt = { stations: [], waist: 741, hem: 4012 };
    const card = (bustle: object | undefined, gown: object = {}) =>
      printedLines(
        clientPages(handMade('cm', { gown: { name: 'G', ...gown }, workroom: { skirt, ...about, bustle } }))
          .pages,
      ).map((line) => line.map(({ text }) => text).join(' '));
    const lines = card({ kind: 'over', number: 3 });
    const steps = lines.slice(lines.indexOf('To put the bustle up') + 1);
    expect(
      steps.filter((line) => /^\d/.test(line)).map((line) => line.split(' ').slice(0, 3).join(' ')),
    ).toEqual(['1 Have somebody', '2 Begin at', '3 Walk a']);
    expect(card(undefined)).not.toContain('To put the bustle up');
    expect(card({ kind: 'over', number: 0 })).not.toContain('To put the bustle up');
    const said = lines.join(' ');
    expect(said.match(/(\w+): care by the supplier’s label/g)).toEqual([
      'crepe: care by the supplier’s label',
      'net: care by the supplier’s label',
    ]);
    expect(said).toContain('Fasten the waist stay first');
    expect(card(undefined, { waist: {} }).join(' ')).toContain('Hang it by its whole waist');
    expect(card(undefined, { waist: {}, wrap: {} }).join(' ')).toContain(
      'Fasten the under edge inside first',
    );
    expect(said).toContain('Stairs and escalators');
  });
});

describe('a drafted bodice', () => {
  const level = (at: string, above: number, body: number, open: number, sewn: number) => ({
    at,
    above,
    body,
    open,
    sewn,
  });
  const bodice = {
    figures: {
      levels: [level('waist', 0, 703, 51, 602), level('bust', 161, 924, 52, 873)],
      panels: [
        { name: 'front', upper: 101, widths: { waist: 72, bust: 113 }, lower: 74 },
        { name: 'back', side: 'left', upper: 96, widths: { waist: 65, bust: 88 }, lower: 67 },
      ],
    },
    draft: {
      measures: {
        reduce: { waist: 49 },
        girths: [
          { at: 'waist', above: 0 },
          { at: 'bust', above: 161 },
        ],
      },
    },
    asked: {
      draft: { panels: [{ name: 'front', onFold: true }, { name: 'back' }], closing: { at: 'centre-back' } },
    },
    bones: [
      { along: 'front/back', side: 'right', casing: 263, length: 237, count: 2 },
      { along: 'centre-back', casing: 254, length: 228, count: 4 },
    ],
    lacing: { eyelets: 12, pitch: 24, places: [11, 35, 59], worn: 3120, lace: 4330 },
    tape: { round: 601, length: 752 },
  };
  const blocks = (units: 'cm' | 'in', own: object = {}) =>
    bodiceBlocks(handMade(units, { workroom: { bodice: { ...bodice, ...own } } }));

  it('levels from the top, panels at each of them, bones', () => {
    expect(tablesOf(blocks('cm')).map(asPrinted)).toEqual([
      [
        ['<>>>>>'],
        ['level', 'above the waist', 'body', 'laced in', 'left open', 'sewn'],
        ['bust', '16.1', '92.4', '0.0', '5.2', '87.3'],
        ['waist', '0.0', '70.3', '4.9', '5.1', '60.2'],
      ],
      [
        ['<>>>>'],
        ['panel', 'upper edge', 'bust', 'waist', 'waist seam'],
        ['front (half)', '10.1', '11.3', '7.2', '7.4'],
        ['back, her left', '9.6', '8.8', '6.5', '6.7'],
      ],
      [
        ['<>>>'],
        ['along', 'casing', 'bone', 'count'],
        ['front/back, her right', '26.3', '23.7', '2'],
        ['centre back', '25.4', '22.8', '4'],
      ],
    ]);
    // 161: 6.339, 924: 36.378, 52: 2.047, 873: 34.370
    expect(tablesOf(blocks('in'))[0]!.rows[0]).toEqual(['bust', '6 5/16', '36 3/8', '0', '2 1/16', '34 3/8']);
  });

  it('lacing and tape', () => {
    const said = (own: object = {}) =>
      blocks('cm', own).flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []));
    expect(said()).toEqual([
      'Lacing at centre back: 12 eyelets a side, 2.4 cm apart.',
      'Eyelets from the upper end of the edge, cm: 1.1  3.5  5.9',
      'Lace: 312 cm as it is worn, 433 cm with what hangs free for tying; more where she steps in through it.',
      'Waist tape: closes at 60.1 cm, cut 75.2 cm with its ends.',
    ]);
    expect(said({ lacing: undefined })).toEqual([
      'Waist tape: closes at 60.1 cm, cut 75.2 cm with its ends.',
    ]);
    expect(tablesOf(blocks('cm', { bones: [] }))).toHaveLength(2);
  });
});

describe('order of making and levelling record', () => {
  it('a step, where to hold, its cautions with it and nobody else’s', () => {
    const step = (number: number, cautions: readonly string[]) => ({
      number,
      work: { kind: 'deliver' },
      cautions,
    });
    const words = {
      jobSheet: { order: 'Order', hold: 'Hold:', caution: 'Caution' },
      step: () => ({ does: 'Sew', notes: ['with thread'], holds: ['fit it'] }),
      caution: (kind: string, grams: number) => `${kind} ${grams}`,
    };
    const order = [step(4, []), step(5, ['needle', 'weight'])];
    const item = (number: string) => ({
      kind: 'item',
      tick: true,
      number,
      text: 'Sew',
      notes: ['with thread', 'Hold: fit it'],
    });
    expect(orderBlocks(handMade('cm', { words, workroom: { order, weight: { inAll: 1234 } } }))).toEqual([
      { kind: 'heading', level: 2, text: 'Order' },
      item('4'),
      {
        kind: 'columns',
        columns: [
          [
            item('5'),
            { kind: 'caution', lead: 'Caution', text: 'needle 1234' },
            { kind: 'caution', lead: 'Caution', text: 'weight 1234' },
          ],
        ],
      },
    ]);
  });

  it.each([
    // Half of 10.6 m: 0, 7.5 … 525 and 530 is past the last: 71 pins, down three columns of 24.
    [
      'cm',
      10_600,
      71,
      ['0.0', '', '', '180.0', '', '', '360.0', '', ''],
      ['172.5', '', '', '352.5', '', '', '', '', ''],
    ],
    // Half of 48 in: 0, 3 … 24: nine pins.
    ['in', 48 * 25.4, 9, ['0', '', '', '9', '', '', '18', '', ''], ['6', '', '', '15', '', '', '24', '', '']],
  ] as const)(
    'every 7.5 cm or 3 in from the centre front to the centre back, %s',
    (units, hem, pins, first, last) => {
      const [table] = tablesOf(levellingBlocks(handMade(units, { workroom: { skirt: { hem } } })));
      expect(table!.heads).toEqual(Array.from({ length: 3 }, () => ['along', 'left', 'right']).flat());
      expect(table!.rows.flat().filter((cell) => cell !== '')).toHaveLength(pins);
      expect([table!.rows[0], table!.rows.at(-1)]).toEqual([first, last]);
    },
  );
});
