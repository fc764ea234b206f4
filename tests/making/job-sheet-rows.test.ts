import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { beside, printedLines, rowsUnder } from '../print/page-rows.ts';
import { example, made } from './made.ts';
import { hungInputOf, inputOf } from './paper-input.ts';

/**
 * The job sheet's tables, row by row and in their own columns, against figures worked out by hand from
 * examples/lantern.yaml, in cm, or from dense samples of the drafted outlines. Beside each the sum.
 */
const LAYS = [
  { cloth: 'cupro', layers: ['lining'], length: 4310, buy: 4500 },
  { cloth: 'crepe', layers: ['shell'], length: 4630, buy: 4700 },
  { cloth: 'organza', layers: ['organza'], length: 5100, buy: 5500 },
];

const lantern = made(example('lantern'), LAYS);
const lines = printedLines(jobSheet(hungInputOf(lantern)).pages);
const clientLines = printedLines(clientPages(inputOf(lantern)).pages);

/** Rows that begin so, each as printed: others may stand between them. */
function expectRows(printed: readonly string[][], wanted: readonly (readonly string[])[]): void {
  for (const row of wanted) expect(printed).toContainEqual(row);
}

const points = (curves: readonly Curve[]): Point[] =>
  curves.flatMap((curve) => Array.from({ length: 401 }, (_, i) => pointAt(curve, i / 400)));

function lengthAlong(curves: readonly Curve[]): number {
  const run = points(curves);
  return run.slice(1).reduce((sum, b, i) => sum + Math.hypot(b.x - run[i]!.x, b.y - run[i]!.y), 0);
}

function areaWithin(curves: readonly Curve[]): number {
  const run = points(curves);
  const twice = run.reduce((sum, a, i) => {
    const b = run[(i + 1) % run.length]!;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
  return Math.abs(twice) / 2;
}

const cm = (mm: number): string => (mm / 10).toFixed(1);
const GORES = ['front', 'side-front', 'side', 'side-back', 'back'];
const piecesOf = (layer: string): CutPiece[] =>
  GORES.map(
    (gore) => lantern.gown.cut.pieces.find((one) => one.gore === gore && one.layers.includes(layer))!,
  );
const hemOf = ({ piece }: CutPiece): number =>
  lengthAlong(piece.edges.find(({ name }) => name === 'hem')!.curves);
/** Every gore is there twice: one on the fold is drawn as its half. */
const roundOf = (layer: string): number => 2 * piecesOf(layer).reduce((sum, piece) => sum + hemOf(piece), 0);

describe('measures', () => {
  it('stations: below the waist, finished, to the floor, and what lies on it', () => {
    const heads = ['station', 'drop', 'finished', 'to floor', 'on floor'];
    expect(rowsUnder(lines, heads)).toEqual([
      ['centre front', '7.0', '101.5', '103.5', ''],
      ['front/side-front', '5.5', '103.0', '105.0', ''],
      ['side-front/side', '2.5', '106.0', '108.0', ''],
      // 112 − 110.5, 139 − 111.5, 176 − 111.5
      ['side/side-back', '0.0', '112.0', '110.5', '1.5'],
      ['side-back/back', '0.0', '139.0', '111.5', '27.5'],
      ['centre back', '0.0', '176.0', '111.5', '64.5'],
    ]);
  });

  it('gores: top, the panel above it, hem and flare', () => {
    const heads = ['gore', 'top', 'bodice', 'hem', 'flare'];
    const hems = piecesOf('shell').map((piece) => cm(hemOf(piece)));
    expect(rowsUnder(lines, heads)).toEqual([
      ['front (half)', '5.6', '5.6', hems[0], '17.0°'],
      ['side-front', '8.2', '8.2', hems[1], '20.0°'],
      ['side', '8.6', '8.6', hems[2], '20.0°'],
      ['side-back', '7.9', '7.9', hems[3], '20.5°'],
      ['back', '6.7', '6.7', hems[4], '16.5°'],
    ]);
  });

  it('tops against the bodice, where they are not quite alike', () => {
    const text = example('lantern').replace('waist-seam: 74', 'waist-seam: 74.1');
    const said = printedLines(jobSheet(inputOf(made(text))).pages).map(([first]) => first!.text);
    // 2 × (5.6 + 8.2 + 8.6 + 7.9 + 6.7) = 74
    expect(said.join(' ')).toContain('The gores’ tops are 74 cm all round, the bodice edge 74.1 cm.');
    expect(said.join(' ')).toContain(`The hem is ${cm(roundOf('shell'))} cm round.`);
  });
});

describe('figures that are alike in the example, where they differ', () => {
  const told = (text: string) => printedLines(jobSheet(inputOf(made(text))).pages);
  const sentences = (own: ReturnType<typeof told>) =>
    own.map((line) => line.map(({ text }) => text).join(' ')).join('\n');

  it('a top that is a hair longer than its panel', () => {
    const own = told(example('lantern').replace('top: 8.2, flare', 'top: 8.26, flare'));
    const rows = rowsUnder(own, ['gore', 'top', 'bodice', 'hem', 'flare']);
    expect(rows.find(([gore]) => gore === 'side-front')!.slice(1, 3)).toEqual(['8.3', '8.2']);
  });

  it('the train on the floor: as long as it lies behind, and wider than that', () => {
    const { width } = lantern.facts.footprint!;
    expect(sentences(lines)).toContain(`64.5 cm long behind the skirt, ${cm(width)} cm wide`);
    expect(width).toBeGreaterThan(1000);
  });

  it('scallops: their low points nearer to the floor than the high ones, by their depth', () => {
    const own = told(example('lantern').replace('  repeat: 14\n', '  repeat: 14\n  scallop: 1.5\n'));
    const [, low, high] = /^low points ([\d.]+) cm, high points ([\d.]+) cm$/.exec(
      beside(own, 'scallops off the floor')[0]!,
    )!;
    expect(Number(high) - Number(low)).toBeCloseTo(1.5, 6);
  });

  it('a zip that is not on the list: what is bought, and what it is shortened to', () => {
    const own = told(
      example('lantern').replace(
        '  - {name: concealed zip 25 cm, count: 1, price: 2.80, colour: black}\n',
        '',
      ),
    );
    expect(sentences(own)).toContain('zip 25 cm, to be shortened to 23 cm');
  });
});

describe('cutting', () => {
  const heads = ['piece', 'layers', 'cut', 'across × down', 'allowances'];

  it.each([
    ['lining', '1.5'],
    ['shell', '1.5'],
    ['organza', '0'],
  ])('the %s: each piece as wide and as long as its cut line', (layer, hem) => {
    const wanted = piecesOf(layer).map((piece, i) => {
      const drawn = points(piece.cutEdges.flatMap(({ curves }) => curves));
      const size = (of: (point: Point) => number) => Math.max(...drawn.map(of)) - Math.min(...drawn.map(of));
      return [
        GORES[i]!,
        layer,
        // The bustle's points lie at seams from the side on, marked on the layer that is hooked.
        `${i === 0 ? '1 on the fold' : '2, a mirrored pair'}${layer === 'organza' && i > 1 ? '; bustle marks' : ''}`,
        `${cm(size(({ x }) => x))} × ${cm(size(({ y }) => y))}`,
        `waist 1.5, sides 1.5, hem ${hem}${i < 2 ? '' : ' + 2.0 rough'}`,
      ];
    });
    expectRows(rowsUnder(lines, heads), wanted);
  });

  it('seams: how many there are, and how long in which layer', () => {
    const of = (name: string) => ['seam', 'how many', 'lining', name, 'notches from the waist seam'];
    const rows = rowsUnder(lines, of('shell and organza')).map((row) => row.slice(0, 4));
    // The lining is 2 cm shorter; one seam at the centre back, two of each other.
    expect(rows).toEqual([
      ['front/side-front', '2', '101.0', '103.0'],
      ['side-front/side', '2', '104.0', '106.0'],
      ['side/side-back', '2', '110.0', '112.0'],
      ['side-back/back', '2', '137.0', '139.0'],
      ['centre back', '1', '174.0', '176.0'],
    ]);
  });

  it('notches: what both pieces of a seam are marked with', () => {
    const rows = rowsUnder(lines, [
      'seam',
      'how many',
      'lining',
      'shell and organza',
      'notches from the waist seam',
    ]);
    for (const [name, , , , notches] of rows.slice(0, 4)) {
      const [before, after] = name!.split('/');
      for (const gore of [before, after]) {
        const piece = piecesOf('organza')[GORES.indexOf(gore!)]!;
        const edge = piece.piece.edges.find((own) => own.name === name)!;
        const along = piece.notches.filter((notch) => notch.edge === edge.name);
        expect(notches, name).toBe([...new Set(along.map(({ distance }) => cm(distance)))].join('  '));
      }
    }
  });

  it('what each layer is joined with, the outermost first', () => {
    expect(rowsUnder(lines, ['layer', 'waist', 'closure', 'hem'])).toEqual([
      ['organza', 'as one with shell', 'as one with shell', 'raw'],
      ['shell', 'as one with organza', 'as one with organza', 'faced'],
      ['lining', 'by itself', 'felled to it last', 'turned up'],
    ]);
  });
});

describe('closure', () => {
  it.each([
    ['zip', 'side-front/side, her left'],
    ['starts below the waist seam', '2.5 cm'],
    // 2.5 + 23
    ['stops below the waist seam', '25.5 cm'],
    // The shortest of the shops' that is 23 cm long or longer.
    ['zip to buy', '25 cm, shortened by 2 cm'],
    // 74 + 2 × 23, and 120 − 101
    ['lets through', '120 cm (waist seam and twice the opening)'],
    ['her hip, stepping in', '101 cm: 19 cm to spare'],
    ['taken as one', 'shell and organza'],
    ['felled to it last', 'lining'],
    // One ply of the bodice, its own one layer; twice that where seams cross.
    ['plies at the waist, lining', '2; 4 where pressed-open seams cross'],
    ['plies at the waist, shell and', '3; 6 where pressed-open seams cross'],
    // 1.3 − 0.3
    ['between needle and bones', '1 cm (bones end 1.3 cm above, second row 0.3 cm)'],
  ])('%s: %s', (label, wanted) => expect(beside(lines, label)).toContain(wanted));

  it('says what is wanting where she does not pass', () => {
    const narrow = example('lantern').replace('opening: 23', 'opening: 12');
    const own = printedLines(jobSheet(inputOf(made(narrow))).pages);
    // 74 + 2 × 12 = 98, of 101
    expect(beside(own, 'her hip, stepping in')).toEqual(['101 cm: 3 cm too little']);
  });
});

describe('hems and what goes on them', () => {
  /** Turned by one flare after the other, all round: 2 × (17 + 20 + 20 + 20.5 + 16.5)° = 3.2812. */
  const TURN = (2 * 94 * Math.PI) / 180;

  it('hems: round, allowance, what is to be eased', () => {
    const rows = rowsUnder(lines, ['layer', 'hem', 'round', 'allowance', 'to know']);
    const [lining, shell] = ['lining', 'shell'].map(roundOf);
    // Folded along the hem line the edge is longer than where it is sewn by twice its depth times the turn.
    const ease = 2 * 15 * TURN;
    expect(rows.slice(0, 3)).toEqual([
      [
        'lining',
        'turned up',
        cm(lining!),
        '1.5',
        `2 cm shorter than the gown; ${cm(ease)} cm to ease when turned up (${Number(((100 * ease) / lining!).toFixed(1))} %)`,
      ],
      ['shell', 'faced', cm(shell!), '1.5', ''],
      ['organza', 'raw', cm(roundOf('organza')), '0.0', ''],
    ]);
  });

  it('strips: how long, what to buy, what is drawn in', () => {
    const rows = rowsUnder(lines, ['strip', 'where', 'length', 'buy', 'drawn in']);
    // 5 % over and a lap of 1.3 cm; sold by the metre; its width times the turn.
    const braid = 1.05 * roundOf('shell') + 13;
    expect(rows).toEqual([
      ['horsehair braid, 10 cm', 'shell, hem', cm(braid), '600.0', cm(100 * TURN)],
      ['stay tape, 1 cm', 'shell, waist', '74.0', '100.0', ''],
    ]);
  });

  it('strips along seams: as long as one, bought for each, its thread along each', () => {
    const tape = '  - {kind: stay-tape, layer: shell, along: side/side-back, width: 1}\n';
    const taped = made(example('lantern').replace('trims:\n', `trims:\n${tape}`));
    const own = printedLines(jobSheet(inputOf(taped)).pages);
    // 112 at each of her sides, without a step that it is sold by.
    expect(rowsUnder(own, ['strip', 'where', 'length', 'buy', 'drawn in'])).toContainEqual([
      'stay tape, 1 cm',
      'shell, side/side-back seam',
      '112.0',
      '224.0',
      '',
    ]);
    const threadOf = (facts: typeof taped.facts) =>
      facts.thread.find(({ layer }) => layer === 'shell')!.need.sewn;
    // Held along both its edges, on both of her sides.
    expect(threadOf(taped.facts) - threadOf(lantern.facts)).toBeCloseTo(2 * 2 * 1120, 3);
  });

  it('edging: repeats, ease, and what to get', () => {
    const round = roundOf('organza');
    const repeats = Math.ceil(round / 140);
    const ease = 140 * repeats - round;
    expect(beside(lines, 'round the organza’s hem')).toEqual([`${cm(round)} cm`]);
    expect(beside(lines, 'repeats')).toEqual([`${repeats} of 14 cm: ${14 * repeats} cm`]);
    expect(beside(lines, 'to ease in')).toEqual([`${cm(ease)} cm, ${cm(ease / repeats)} cm a repeat`]);
    // One motif more for the join.
    expect(beside(lines, 'to get')).toEqual([`${14 * (repeats + 1)} cm, a motif for each join in it`]);
    expect(beside(lines, 'starts and joins at')).toEqual(['side-front/side']);
  });

  it('edging, gore by gore: its inner edge is shorter by its depth times the turn', () => {
    const rows = rowsUnder(lines, ['gore', 'its hem', 'inner edge to lap', 'a motif', 'outer edge to ease']);
    const hems = piecesOf('organza').map(hemOf);
    // The front lies there whole. Up to the side the hem runs square to its gores, and turns as they flare.
    const laps = [34, 20].map((flare) => (60 * flare * Math.PI) / 180);
    const motifs = laps.map((lap, i) => lap / (((i === 0 ? 2 : 1) * hems[i]!) / 140));
    const [front, sideFront] = rows as [string[], string[]];
    expect(front.slice(0, 4)).toEqual(['front', cm(2 * hems[0]!), cm(laps[0]!), cm(motifs[0]!)]);
    expect(sideFront.slice(0, 4)).toEqual(['side-front', cm(hems[1]!), cm(laps[1]!), cm(motifs[1]!)]);
    expect(rows.map(([gore, hem]) => [gore, hem])).toEqual(
      GORES.map((gore, i) => [gore, cm((i === 0 ? 2 : 1) * hems[i]!)]),
    );
  });

  it('petticoat: the hoop, the skirt over it, and the way down to it', () => {
    expect(beside(lines, 'front hem off the floor')[0]).toMatch(/^2 cm \(textbook: 2\.5 cm/);
    expect(beside(lines, 'bottom hoop')).toEqual(['310 cm round, 4 cm off the floor']);
    expect(beside(lines, 'comfortable from')).toEqual(['300 cm round, with a train (common practice)']);
    const [, sweep, ratio] = /^([\d.]+) cm, ([\d.]+) times/.exec(
      beside(lines, 'skirt round at the hoop')[0]!,
    )!;
    expect(Number(ratio)).toBeCloseTo(Number(sweep) / 310, 2);
    const [, slant, height] = /^([\d.]+) cm along the cloth, ([\d.]+) cm straight down/.exec(
      beside(lines, 'level waist to hoop, centre')[0]!,
    )!;
    // Out by (310 − 74) ÷ 2π; the cloth goes on past the hoop as slanting as it came, 110.5 to the floor.
    const out = 236 / (2 * Math.PI);
    expect(Number(height)).toBeCloseTo(Math.sqrt(Number(slant) ** 2 - out ** 2), 0);
    expect(Number(slant) * (1 + 4 / Number(height))).toBeCloseTo(110.5, 0);
  });

  it('bustle: from the anchor to the loop, and what hangs below it', () => {
    const heads = ['seam', 'points', 'anchor', 'pick-up', 'lift', 'loop ends', 'above the hem'];
    // Pick-up: anchor + length − (floor − 2); a loop of 2; above the hem: length − where the loop ends.
    expect(rowsUnder(lines, heads)).toEqual([
      ['centre back', '1', '12.0', '78.5', '66.5', '80.5', '95.5'],
      ['side-back/back', '2', '14.0', '43.5', '29.5', '45.5', '93.5'],
      ['side/side-back', '2', '20.0', '23.5', '3.5', '25.5', '86.5'],
    ]);
  });
});

describe('weight and thread', () => {
  /** Rows of stitching, mm: seams once, a group's waist twice in its outermost layer, hem and what is sewn on it. */
  const SEAMS = 2 * (1030 + 1060 + 1120 + 1390) + 1760;
  const SEWN = {
    lining: SEAMS - 9 * 20 + 2 * 740 + roundOf('lining'),
    // Three rows of a facing; a braid and a tape are held along both their edges.
    shell: SEAMS + 3 * roundOf('shell') + 2 * roundOf('shell') + 2 * 740,
    organza: SEAMS + 2 * 740 + roundOf('organza'),
  };

  it.each([
    ['lining', 'cupro', 70],
    ['shell', 'crepe', 210],
    ['organza', 'organza', 45],
  ] as const)('of the %s: areas of all its pieces, grams, metres', (layer, cloth, grams) => {
    const rows = rowsUnder(lines, ['layer', 'cloth', 'sewn area', 'cut area', 'weight', 'thread to buy']);
    const areaOf = (edges: (piece: CutPiece) => readonly { curves: readonly Curve[] }[]): number =>
      2 *
      piecesOf(layer).reduce((sum, one) => sum + areaWithin(edges(one).flatMap(({ curves }) => curves)), 0) *
      1e-6;
    const cut = areaOf((piece) => piece.cutEdges);
    expectRows(rows, [
      [
        layer,
        cloth,
        `${areaOf(({ piece }) => piece.edges).toFixed(2)} m²`,
        `${cut.toFixed(2)} m²`,
        `${Math.round(cut * grams)} g`,
        // 2.5 m a metre and 15 % waste.
        `${Math.ceil((SEWN[layer] * 2.5 * 1.15) / 1000)} m`,
      ],
    ]);
  });

  it('what to have at hand', () => {
    const said = lines.map((line) => line.map(({ text }) => text).join(' '));
    for (const item of [
      'concealed zip 25 cm, 1 (black)',
      'petersham, 80 cm',
      'hooks and eyes for the bustle, 5. Ask whether they hold nickel.',
      'horsehair braid 10 cm wide, 600 cm: the shell’s hem',
      'stay tape 1 cm wide, 100 cm: the shell’s waist',
    ])
      expect(
        said.some((line) => line.endsWith(item)),
        item,
      ).toBe(true);
  });
});

describe('calendar', () => {
  it('names the day of the week that each date falls on', () => {
    // 12 June 2027 is a Saturday (perpetual calendar): whole weeks before it are Saturdays too.
    expectRows(rowsUnder(lines, ['by', 'what', 'days']), [
      ['Sat 20 Mar 2027', 'order the cloth', '84'],
      ['Sat 8 May 2027', 'first fitting', '35'],
      ['Wed 19 May 2027', 'hang, at least 24 hours', '24'],
      ['Wed 2 Jun 2027', 'last fitting, bustle pinned', '10'],
      ['Tue 8 Jun 2027', 'deliver, pins counted', '4'],
      ['Sat 12 Jun 2027', 'the event', '0'],
    ]);
  });
});

describe('the client’s page', () => {
  it.each([
    ['waist seam, all round', '74 cm'],
    ['front, from the bodice’s edge to the hem', '101.5 cm'],
    ['back, from the bodice’s edge to the hem', '176 cm'],
    ['train on the floor at the centre back', '64.5 cm'],
    ['hem off the floor in front', '2 cm'],
    ['hem, all round', `${cm(roundOf('shell'))} cm`],
    ['opens', 'zip at side-front/side, on your left'],
  ])('%s: %s', (label, wanted) => expect(beside(clientLines, label)).toEqual([wanted]));
});
