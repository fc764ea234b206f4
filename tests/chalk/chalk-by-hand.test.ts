import { describe, expect, it } from 'vitest';
import { chalkCsv, csvCell } from '../../src/chalk/chalk-csv.ts';
import { swingsOf } from '../../src/chalk/chalk-swings.ts';
import { chalkPages } from '../../src/print/papers/chalk-pages.ts';
import { handMade } from '../print/hand-made-facts.ts';
import { printedLines, rowsUnder } from '../print/page-rows.ts';

/** A chalk table made by hand: every figure another, so that each shows where it stands, on paper and for scripts. mm. */

const corner = (letter: string, down: number, across: number) => ({ letter, down, across });
const [A, B, C, D] = [
  corner('A', 3, -52),
  corner('B', 4, 181),
  corner('C', 1002, 203),
  corner('D', 1001, -74),
];
const [a, b, c, d] = [
  corner('a', 18, -37),
  corner('b', 19, 166),
  corner('c', 987, 188),
  corner('d', 986, -59),
];
const stretch = (line: string, edge: string, from: object, to: object, points: object[] = []) => ({
  line,
  edge,
  from,
  to,
  points,
});
const ordinate = (along: number, out: number) => ({ kind: 'ordinate', along, out });

const TABLE = {
  gore: 'side',
  layers: ['shell'],
  cut: 'single',
  copies: 3,
  side: 'left',
  frontEdge: 'front/side',
  backEdge: 'side/back',
  every: 100,
  step: 1,
  stretches: [
    stretch('cut', 'waist', A, B, [ordinate(41, 7), ordinate(142, -8)]),
    stretch('cut', 'side/back', B, C, [{ kind: 'level', down: 500, across: 192 }]),
    stretch('cut', 'hem', C, D),
    stretch('cut', 'front/side', D, A),
    stretch('seam', 'waist', a, b),
    stretch('seam', 'side/back', b, c),
    stretch('seam', 'hem', c, d, [ordinate(63, 9)]),
    stretch('seam', 'front/side', d, a),
  ],
  corners: [A, B, C, D]
    .map((own) => ({ line: 'cut', ...own }))
    .concat([a, b, c, d].map((own) => ({ line: 'seam', ...own }))),
  levels: [
    { down: 100, cells: [[-54], [-39], [168], [183]] },
    { down: 900, cells: [[-72, -71], [-57], [186], []] },
  ],
  columns: [0, 1, 2, 3],
  lines: { cut: [], seam: [] },
  swings: [
    { line: 'cut', edge: 'hem', radius: 2011, down: -1009, across: 12 },
    { line: 'seam', edge: 'waist', radius: 1311, down: 44, across: -13 },
    { line: 'seam', edge: 'hem', radius: 1996, down: -1010, across: 0 },
  ],
  diagonals: [
    { from: 'a', to: 'c', length: 995 },
    { from: 'b', to: 'd', length: 993 },
  ],
  bustle: [],
  inner: [
    { name: 'dart-leg-line', from: { down: 21, across: 88 }, to: { down: 131, across: 99 } },
    { name: 'fold-line', from: { down: 22, across: -11 }, to: { down: 932, across: -9 } },
  ],
};

const square = [
  { x: -50, y: 0 },
  { x: 200, y: 0 },
  { x: 200, y: 1000 },
];
const drawn = { ...TABLE, lines: { cut: square, seam: square } };

const printed = (own: object = {}, others: object[] = [], units: 'cm' | 'mm' | 'in' = 'mm') =>
  printedLines(
    chalkPages(
      handMade(units, {
        chalk: [{ table: { ...drawn, ...own }, others }],
        gown: { name: 'G', format: 1, content: 'c' },
      }),
    ).pages,
  );
const sentences = (lines: ReturnType<typeof printed>) =>
  lines.map((line) => line.map(({ text }) => text).join(' '));

describe('on paper', () => {
  const lines = printed();
  const said = sentences(lines);

  it('corners: cut line left, seam line right, down before across', () => {
    const rows = rowsUnder(lines, ['down', 'across', 'down', 'across']);
    expect(rows.slice(0, 4)).toEqual([
      ['3', '-52', '18', '-37'],
      ['4', '181', '19', '166'],
      ['1002', '203', '987', '188'],
      ['1001', '-74', '986', '-59'],
    ]);
    expect(said).toContain('Diagonals: a–c 995; b–d 993.');
  });

  it('levels: four distances, two where the line comes back', () => {
    const levels = (all: readonly string[]) =>
      all.flatMap((line) => /(?:100|900)( \/? ?-?\d+)+$/.exec(line)?.[0] ?? []);
    expect(levels(said).slice(0, 2)).toEqual(['100 -54 -39 168 183', '900 -72 / -71 -57 186']);
    // A column that no level has is left out, its head too.
    const narrow = sentences(printed({ levels: [{ down: 900, cells: [[], [-57], [186], []] }] }));
    expect(levels(narrow)).toEqual(['900 -57 186']);
    expect(narrow.join(' ')).not.toMatch(/cut left|cut right/);
  });

  it('curves: along and off, from letter to letter', () => {
    expect(said.join('\n')).toMatch(/A–B, waist.*c–d, hem/);
    expect(said).toContain('along 41 142 along 63');
    expect(said).toContain('off 7 -8 off 9');
  });

  it('swings: above or below, left or right of the grain line', () => {
    const text = said.join('\n');
    expect(text).toContain(
      'Cut line of the hem: swing 2011 from a point 1009 above the top, 12 right of it.',
    );
    expect(text).toContain('Seam line of the waist: swing 1311 from a point 44 down, 13 left of it.');
    expect(text).toContain(
      'Seam line of the hem: swing 1996 from a point 1010 above the top, on the grain line.',
    );
  });

  it('lines inside, from the left; its name, layers and copies', () => {
    expect(rowsUnder(lines, ['line', 'from: down', 'across', 'to: down', 'across'])).toEqual([
      ['fold', '22', '-11', '932', '-9'],
      ['leg of a dart', '21', '88', '131', '99'],
    ]);
    expect(said).toContain('side, her left: shell. cut 3');
    expect(sentences(printed({ side: undefined, cut: 'pair', copies: undefined }))).toContain(
      'side: shell. cut 2, the second mirrored',
    );
    expect(sentences(printed({ side: undefined, cut: 'on-fold', copies: undefined }))).toContain(
      'side: shell. cut 1 on the fold',
    );
  });

  it('how the grain is found: on the bias, on the fold, else by its own line', () => {
    const start = (own: object) => sentences(printed(own)).join('\n');
    const [bias, fold] = [/^On the bias: chalk the line/m, /^On the fold: the fold is the grain line/m];
    expect(start({ bias: true })).toMatch(bias);
    expect(start({ cut: 'on-fold', copies: undefined })).toMatch(fold);
    for (const none of [bias, fold]) expect(start({})).not.toMatch(none);
  });

  it('in inches to a thirty-second', () => {
    const rows = rowsUnder(printed({}, [], 'in'), ['down', 'across', 'down', 'across']);
    // 1002 ÷ 25.4 = 39.449, 203: 7.992, 987: 38.858, 188: 7.402
    expect(rows[2]).toEqual(['39 7/16', '8', '38 27/32', '7 13/32']);
  });

  it('what differs on another layer stands by itself: its corners, levels and curves, and the swings of these', () => {
    const longer = stretch('cut', 'hem', corner('C', 1042, 207), corner('D', 1041, -78), [ordinate(77, -6)]);
    const other = {
      table: {
        ...TABLE,
        layers: ['net'],
        diagonals: [{ from: 'a', to: 'c', length: 1033 }],
        swings: [
          { line: 'cut', edge: 'hem', radius: 2051, down: -1009, across: 12 },
          { line: 'seam', edge: 'hem', radius: 2036, down: -1009, across: 12 },
          { line: 'cut', edge: 'waist', radius: 1351, down: -1009, across: 12 },
        ],
      },
      corners: [{ line: 'cut', ...corner('C', 1042, 207) }],
      levels: [{ down: 1000, cells: [[-79], [-60], [190], [204]] }],
      curves: [longer],
    };
    const all = sentences(printed({}, [other]));
    const text = all.slice(all.findIndex((line) => line.includes('Different in the net'))).join('\n');
    for (const part of [
      'C 1042 207',
      'Diagonals: a–c 1033.',
      '1000 -79 -60 190 204',
      'C–D, hem',
      'along 77',
      'off -6',
    ])
      expect(text).toContain(part);
    // The cut line of the hem is the only curve that differs.
    expect(text.match(/swing \d+/g)).toEqual(['swing 2051']);
    expect(all).toContain('side, her left: shell and net. cut 3');
    expect(all.join(' ')).toContain('Of the shell; what differs');
    const alike = sentences(printed({}, [{ ...other, corners: [], levels: [], curves: [] }]));
    const rest = alike.slice(alike.findIndex((line) => line.includes('Different in the net')) + 1).join('\n');
    expect(rest).not.toMatch(/Diagonals|swing|along/);
  });
});

describe('for scripts', () => {
  it('every point with its place, in columns by name', () => {
    const rows = chalkCsv([TABLE as never])
      .trimEnd()
      .split('\r\n')
      .map((row) => row.split(','));
    const [heads, ...cells] = rows;
    const read = cells.map((row) =>
      Object.fromEntries(heads!.map((head, i) => [head, row[i]]).filter(([, own]) => own !== '')),
    );
    const base = { gore: 'side', layers: 'shell', side: 'left' };
    const waist = { ...base, line: 'cut', edge: 'waist', from: 'A' };
    expect(read[0]).toEqual({ ...waist, kind: 'corner', down: '3', across: '-52' });
    // The chord from A to B: (233, 1) of 233.002; 41 along and 7 out, away from the piece, upwards.
    const [x, y] = [233, 1].map((own) => own / Math.hypot(233, 1)) as [number, number];
    expect(read[1]).toEqual({
      ...waist,
      kind: 'ordinate',
      to: 'B',
      down: String(Number((3 + 41 * y - 7 * x).toFixed(3))),
      across: String(Number((-52 + 41 * x + 7 * y).toFixed(3))),
      along: '41',
      out: '7',
    });
    expect(read.find(({ kind }) => kind === 'level')).toEqual({
      ...base,
      line: 'cut',
      edge: 'side/back',
      kind: 'level',
      from: 'B',
      to: 'C',
      down: '500',
      across: '192',
    });
    const swing = read.find(({ kind, line }) => kind === 'swing' && line === 'cut');
    expect(swing).toEqual({
      ...base,
      line: 'cut',
      edge: 'hem',
      kind: 'swing',
      down: '-1009',
      across: '12',
      length: '2011',
    });
    expect(
      read.filter(({ line }) => line === 'fold-line').map(({ kind, down, across }) => [kind, down, across]),
    ).toEqual([
      ['from', '22', '-11'],
      ['to', '932', '-9'],
    ]);
    expect(read.at(-1)).toEqual({
      ...base,
      line: 'seam',
      kind: 'diagonal',
      from: 'b',
      to: 'd',
      length: '993',
    });
  });

  it.each([
    [undefined, ''],
    [1.23456, '1.235'],
    [-0.0001, '0'],
    [12.5, '12.5'],
    [100, '100'],
    ['a,b', '"a,b"'],
    ['say "x"', '"say ""x"""'],
    ['=1+1', "'=1+1"],
    ['-x', "'-x"],
  ])('%j is %j', (value, cell) => expect(csvCell(value as string)).toBe(cell));
});

describe('edges that a tape swings', () => {
  const arc = (radius: number, x: number, y: number) => ({
    kind: 'arc',
    radius,
    centre: { x, y },
    start: 0,
    sweep: 1,
  });
  const axes = { x: 40, y: -15, every: 100, step: 1 };
  const swings = (...curves: object[]) => swingsOf([{ name: 'hem', curves } as never], axes, 'seam');

  it('radius and centre, from the grain line and the top', () => {
    // 61.2 − 40 to the right; −900.6 + 15 down: above.
    expect(swings(arc(1234.4, 61.2, -900.6))).toEqual([
      { line: 'seam', edge: 'hem', radius: 1234, down: -886, across: 21 },
    ]);
    expect(swings(arc(500, 0, 0), arc(500, 0, 0))).toHaveLength(1);
  });

  it('none of two circles, of a straight line, or longer than three metres', () => {
    expect(swings(arc(500, 0, 0), arc(501, 0, 0))).toEqual([]);
    expect(swings(arc(500, 0, 0), arc(500, 0, 1))).toEqual([]);
    expect(swings(arc(500, 0, 0), { kind: 'line', from: { x: 0, y: 0 }, to: { x: 1, y: 1 } })).toEqual([]);
    expect(swings(arc(3001, 0, 0))).toEqual([]);
    expect(swings(arc(3000, 0, 0))).toHaveLength(1);
  });
});
