import { describe, expect, it } from 'vitest';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import type { LayFigure, PaperInput } from '../../src/print/papers/paper-input.ts';
import { linesOf, type PlacedText, textsOf } from '../print/page-texts.ts';
import { ALL_CONSTRUCTIONS, gownOf } from './constructions.ts';
import { example, made } from './made.ts';
import { hungInputOf, inputOf } from './paper-input.ts';

const A4 = { width: 210, height: 297 };
const LETTER = { width: 215.9, height: 279.4 };

/** One half mirrored; every figure below is worked out from these by hand. */
const MIRRORED = `format: 1
gown: Bench
client: AA-07
units: cm
notes: Stone stairs.
bodice: {waist-seam: 74, panels: {front: 12, side: 13, back: 12}, drop-below-waist: {centre-front: 4, front/side: 4, side/back: 4, centre-back: 4}}
gores:
  - {name: front, top: 12, hem: 40}
  - {name: side, top: 13, hem: 45}
  - {name: back, top: 12, hem: 46}
lengths: {hem-width-at: 100, at: {centre-front: 100, centre-back: 100}, to-floor: {centre-front: 103, centre-back: 98}}
allowances: {seam: 1.5, waist: 1.2, hem: 3, centre-back: 2}
layers:
  - {name: lining, cloth: cupro, hem: turned, shorter: 2, allowances: {hem: 1}}
  - {name: shell, cloth: crepe, hem: faced}
sewn-as-one: {waist: [[lining], [shell]], closure: [shell]}
cloths:
  cupro: {width: 148, selvedge: 1, weight: 70, shrinkage: 2%}
  crepe: {width: 140, selvedge: 1, weight: 210, one-way: true}
closure: {kind: zip, at: centre-back, starts: 2.5, opening: 22, hip: 98, entry: steps-in}
dates: {event: 2027-06-12, before: {cut: 40}}
`;

/** The same with a curved edge, and its lengths measured everywhere. */
const CURVED = MIRRORED.replace(
  /drop-below-waist: \{[^}]*\}/,
  'drop-below-waist: {centre-front: 4, front/side: 3, side/back: 1, centre-back: 0}',
)
  .replace(
    /at: \{centre-front: 100[^}]*\}/,
    'at: {centre-front: 100, front/side: 101, side/back: 103, centre-back: 107}',
  )
  .replace(
    /to-floor: \{[^}]*\}/,
    'to-floor: {centre-front: 102.5, front/side: 103, side/back: 104, centre-back: 104.5}',
  );

/** Her two sides differ, in inches. */
const ONE_SIDED = `format: 1
gown: Bench in inches
units: in
symmetry: none
bodice: {waist-seam: 30, panels: {left: 15, right: 15}}
gores:
  - {name: left, top: 15, hem: 40}
  - {name: right, top: 15, hem: 55}
lengths: {hem-width-at: 40, at: {right/left: 40, left/right: 40}, to-floor: {right/left: 41 1/2, left/right: 41 1/4}}
allowances: {seam: 5/8, waist: 1/2, hem: 1}
layers: [{name: shell, cloth: crepe, hem: turned}]
cloths: {crepe: {width: 58, selvedge: 1/2, weight: 200}}
closure: {kind: hooks, at: left/right, opening: 9, hip: 38, entry: steps-in}
`;

const LAYS: LayFigure[] = [
  { name: 'cupro', cloth: 'cupro', layers: ['lining'], buy: 3400, caption: '' },
  { name: 'crepe', cloth: 'crepe', layers: ['shell'], buy: 4150, caption: '' },
];

function benchOf(text: string, paper = A4, rest: Partial<PaperInput> = {}): PlacedText[] {
  return textsOf(jobSheet({ ...hungInputOf(made(text), paper), ...rest }).pages[0]!);
}

/** Rows under these heads: each cell stands under its head, flush left or right with it. */
function rowsUnder(texts: readonly PlacedText[], heads: readonly string[]): string[][] {
  const lines = linesOf(texts);
  const at = lines.findIndex((line) =>
    line
      .map(({ text }) => text)
      .join('|')
      .includes(heads.join('|')),
  );
  const head = lines[at] ?? [];
  const from = head.findIndex((_, i) => heads.every((own, k) => head[i + k]?.text === own));
  const columns = head.slice(from, from + heads.length);
  const rows: string[][] = [];
  for (const line of lines.slice(at + 1)) {
    const row = columns.map(
      ({ left, right }) =>
        line.find((cell) => Math.abs(cell.left - left) < 0.3 || Math.abs(cell.right - right) < 0.3)?.text ??
        '',
    );
    if (row.every((cell) => cell === '')) break;
    const last = rows.at(-1);
    // A cell of several lines has them below each other.
    if (row[0] !== '' || last === undefined) rows.push(row);
    else for (const [i, cell] of row.entries()) last[i] = `${last[i]} ${cell}`.trim();
  }
  return rows;
}

describe('the bench page of a mirrored gown in cm', () => {
  const bench = benchOf(MIRRORED, A4, { lays: LAYS });
  const all = bench.map(({ text }) => text).join(' ');

  it('lengths by station: drop and finished as the spec gives them, on the floor what is over', () => {
    expect(rowsUnder(benchOf(CURVED), ['station', 'drop', 'finished', 'to floor', 'on floor'])).toEqual([
      ['centre front', '4.0', '100.0', '102.5', ''],
      ['front/side', '3.0', '101.0', '103.0', ''],
      ['side/back', '1.0', '103.0', '104.0', ''],
      // 107 of cloth where the floor lies 104.5 away.
      ['centre back', '0.0', '107.0', '104.5', '2.5'],
    ]);
  });

  it('gores: top and hem as given, the flare by the ring sector: (hem − top) over the length, in radians', () => {
    // The hem's width is taken 100 below the level waist, and the edge lies 4 below that: 28, 32 and 34 over 96.
    const flare = (share: number): string => `${((share * 180) / Math.PI).toFixed(1)}°`;
    expect(rowsUnder(bench, ['gore', 'top', 'bodice', 'hem', 'flare'])).toEqual([
      ['front', '12.0', '12.0', (12 + 2800 / 96).toFixed(1), flare(28 / 96)],
      ['side', '13.0', '13.0', (13 + 3200 / 96).toFixed(1), flare(32 / 96)],
      ['back', '12.0', '12.0', (12 + 3400 / 96).toFixed(1), flare(34 / 96)],
    ]);
    // 2 × (12 + 13 + 12), and 100 long: 2 × (37 + 94 × 100 ÷ 96).
    expect(all).toContain(
      'The gores’ tops are 74 cm all round, the bodice edge 74 cm. The hem is 269.8 cm round.',
    );
  });

  it('layers from the outside in: what is joined where, and allowances', () => {
    expect(rowsUnder(bench, ['layer', 'cloth', 'waist', 'closure', 'hem', 'allowances'])).toEqual([
      ['shell', 'crepe', 'by itself', 'by itself', 'faced', 'waist 1.2, seams 1.5, hem 3.0; centre back 2.0'],
      [
        'lining',
        'cupro',
        'by itself',
        'felled to it last',
        'turned up, 2 cm shorter',
        'waist 1.2, seams 1.5, hem 1.0; centre back 2.0',
      ],
    ]);
    // 2.5 and 22 more.
    expect(all).toContain('Opens by zip at centre back, from 2.5 cm to 24.5 cm below the waist seam.');
  });

  it('cloths: width, what is bought, what it is for', () => {
    expect(rowsUnder(bench, ['cloth', 'wide', 'to buy', 'for', 'to know'])).toEqual([
      ['cupro', '148 cm', '340 cm', 'lining', 'shrinks 2 %'],
      ['crepe', '140 cm', '415 cm', 'shell', 'one way'],
    ]);
  });

  it('dates, counted back by the calendar of the machine', () => {
    const day = (before: number): string => {
      const date = new Date(Date.UTC(2027, 5, 12 - before));
      const [week, month] = [date.toUTCString().slice(0, 3), date.toUTCString().slice(8, 11)];
      return `${week} ${date.getUTCDate()} ${month} ${date.getUTCFullYear()}`;
    };
    const known: [string, number][] = [
      ['order the cloth', 84],
      ['cut the cloth', 40],
      ['level the hem on her', 21],
      ['the event', 0],
    ];
    for (const [what, before] of known) {
      const line = linesOf(bench).find((own) => own.some(({ text }) => text === what))!;
      const place = line.findIndex(({ text }) => text === what);
      expect([line[place - 1]!.text, line[place + 1]!.text]).toEqual([day(before), String(before)]);
    }
  });

  it('whose it is, which state of the spec, and the maker’s own words', () => {
    expect(all).toContain('Bench · AA-07');
    expect(all).toMatch(/format 1 · [0-9a-f]{8}/);
    expect(all).toContain(inputOf(made(MIRRORED)).gown.content);
    expect(all).toContain('Stone stairs.');
  });
});

describe('the bench page of a one-sided gown in inches', () => {
  const bench = benchOf(ONE_SIDED, LETTER);
  const all = bench.map(({ text }) => text).join(' ');

  it('each side by itself, in fractions', () => {
    expect(rowsUnder(bench, ['gore', 'top', 'bodice', 'hem', 'flare'])).toEqual([
      // 25 and 40 over 40 inches.
      [expect.stringMatching(/^left/), '15', '15', '40', `${((0.625 * 180) / Math.PI).toFixed(1)}°`],
      [expect.stringMatching(/^right/), '15', '15', '55', `${((1 * 180) / Math.PI).toFixed(1)}°`],
    ]);
    const stations = rowsUnder(bench, ['station', 'drop', 'finished', 'to floor', 'on floor']);
    expect(stations.map(([name, , finished, floor]) => [name, finished, floor])).toEqual([
      ['right/left', '40', '41 1/2'],
      ['left/right', '40', '41 1/4'],
    ]);
    expect(rowsUnder(bench, ['layer', 'cloth', 'waist', 'closure', 'hem', 'allowances'])).toEqual([
      ['shell', 'crepe', 'by itself', 'by itself', 'turned up', 'waist 1/2, seams 5/8, hem 1'],
    ]);
    expect(all).toContain('The hem is 95 in round. Opens by hooks and bars at left/');
    expect(all).toContain('down to 9 in below the waist seam');
  });
});

describe('one side of paper', () => {
  const spread = Array.from({ length: 24 }, (_, i) => `  - {name: gore-${i + 1}, top: 1.5, hem: 9}`).join(
    '\n',
  );
  const gowns: [string, string][] = [
    ['an evening gown', example('lantern')],
    ['a stage costume', example('puffin')],
    ['every construction at once', gownOf(ALL_CONSTRUCTIONS)],
    [
      'twenty-four gores',
      MIRRORED.replace(/panels: \{[^}]*\}, drop-below-waist: \{[^}]*\}/, 'plies: 2')
        .replace(/gores:[\s\S]*?lengths/, `gores:\n${spread}\nlengths`)
        .replace('waist-seam: 74', 'waist-seam: 72'),
    ],
  ];
  it.each(gowns)('holds %s', (_, text) => {
    const one = made(text);
    for (const paper of [A4, LETTER]) {
      const { pages } = jobSheet(hungInputOf(one, paper));
      const first = textsOf(pages[0]!);
      const said = first.map(({ text: own }) => own);
      for (const { name } of one.facts.skirt.stations.filter(({ name: own }) => own.startsWith('centre')))
        expect(said).toContain(name.replace('-', ' '));
      for (const layer of one.gown.gown.layers) expect(said).toContain(layer.name);
      // What comes next begins on the next page.
      expect(textsOf(pages[1]!).map(({ text: own }) => own)).toContain('Notes');
      expect(said).not.toContain('Notes');
      for (const { baseline, text: own } of first) expect(baseline, own).toBeLessThan(paper.height - 14);
      // 6 points: the least that is read without a glass, from memory.
      const tables = first.filter(({ text: own }) => ['centre front', 'station', 'allowances'].includes(own));
      expect(Math.min(...tables.map(({ size }) => size))).toBeGreaterThan((6 * 25.4) / 72);
    }
  });
});
