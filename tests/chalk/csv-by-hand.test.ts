import { describe, expect, it } from 'vitest';
import { chalkCsv, csvCell } from '../../src/chalk/chalk-csv.ts';
import { levelsOf } from '../../src/chalk/chalk-levels.ts';

/** A chalk table made by hand as a spreadsheet reads it, and its levels: every figure another. mm. */

const TABLE = {
  gore: 'side',
  layers: ['shell', 'net'],
  side: 'left',
  stretches: [
    {
      line: 'cut',
      edge: 'waist',
      from: { letter: 'A', down: 0, across: -40 },
      to: { letter: 'B', down: 30, across: 0 },
      points: [
        { kind: 'ordinate', along: 25, out: 5 },
        { kind: 'level', down: 20, across: -7.5 },
      ],
    },
  ],
  swings: [{ line: 'seam', edge: 'hem', radius: 801, down: -202, across: 13 }],
  inner: [{ name: 'fold-line', from: { down: 14, across: 15 }, to: { down: 916, across: 17 } }],
  bustle: [
    { place: { seam: 'a/b' }, anchor: { down: 61, across: 62 }, pickUp: { down: 703, across: 64 } },
    {
      place: { gore: 'side', across: 0.5 },
      anchor: { down: 65, across: 66 },
      pickUp: { down: 707, across: 68 },
    },
  ],
  diagonals: [{ from: 'a', to: 'c', length: 1010.5 }],
};

describe('a chalk table for spreadsheets (RFC 4180)', () => {
  const [heads, ...rows] = chalkCsv([TABLE as never])
    .trimEnd()
    .split('\r\n')
    .map((row) => row.split(','));
  const told = rows.map((row) =>
    Object.fromEntries(heads!.flatMap((head, i) => (row[i] === '' ? [] : [[head, row[i]]]))),
  );
  const own = { gore: 'side', layers: 'shell net', side: 'left' };

  it('a row for each corner, point, swing, mark and diagonal, each figure under its head', () => {
    expect(heads).toEqual('gore layers side line edge kind from to down across along out length'.split(' '));
    const cut = { ...own, line: 'cut', edge: 'waist', from: 'A', to: 'B' };
    // The chord of 50 runs 40 across and 30 down: 25 along it and 5 out, up and to the right.
    expect(told.map((row) => ({ ...row, layers: row.layers?.replace(/[^a-z]+/, ' ') }))).toEqual([
      expect.objectContaining({
        ...own,
        line: 'cut',
        edge: 'waist',
        kind: 'corner',
        down: '0',
        across: '-40',
      }),
      { ...cut, kind: 'ordinate', down: '11', across: '-17', along: '25', out: '5' },
      expect.objectContaining({
        ...own,
        line: 'cut',
        edge: 'waist',
        kind: 'level',
        down: '20',
        across: '-7.5',
      }),
      ...told.slice(3, -8).map((row) => expect.objectContaining({ kind: row.kind })),
      { ...own, line: 'seam', edge: 'hem', kind: 'swing', down: '-202', across: '13', length: '801' },
      { ...own, line: 'fold-line', kind: 'from', down: '14', across: '15' },
      { ...own, line: 'fold-line', kind: 'to', down: '916', across: '17' },
      { ...own, line: 'bustle', edge: 'a/b', kind: 'anchor', down: '61', across: '62' },
      { ...own, line: 'bustle', edge: 'a/b', kind: 'pick-up', down: '703', across: '64' },
      { ...own, line: 'bustle', kind: 'anchor', down: '65', across: '66' },
      { ...own, line: 'bustle', kind: 'pick-up', down: '707', across: '68' },
      { ...own, line: 'seam', kind: 'diagonal', from: 'a', to: 'c', length: '1010.5' },
    ]);
  });

  it('no cell is taken for a formula, and text with commas, quotes or lines is quoted', () => {
    expect(['=1', '+1', '-1', '@a', 'a-b', 'a,b', 'a"b', 'a\nb', ''].map((own) => csvCell(own))).toEqual([
      "'=1",
      "'+1",
      "'-1",
      "'@a",
      'a-b',
      '"a,b"',
      '"a""b"',
      '"a\nb"',
      '',
    ]);
    expect([csvCell(-1), csvCell(undefined)]).toEqual(['-1', '']);
  });
});

describe('levels of a table', () => {
  const stretch = (line: string, edge: string, from: number, to: number, across: number) => ({
    line,
    edge,
    from: { down: from },
    to: { down: to },
    points: [
      { kind: 'level', down: 200, across },
      { kind: 'ordinate', along: 1, out: 1 },
      { kind: 'level', down: 100, across: across + 1 },
    ],
  });
  const levels = (stretches: object[], frontEdge: string, backEdge: string) =>
    levelsOf(stretches as never, { frontEdge, backEdge });

  it('from the top: cut and seam at the left, seam and cut at the right, away from the grain', () => {
    const all = [
      stretch('cut', 'a', 900, 0, -50),
      stretch('seam', 'a', 900, 0, -40),
      stretch('seam', 'b', 0, 900, 30),
      stretch('cut', 'b', 0, 900, 45),
    ];
    expect(levels(all, 'a', 'b')).toEqual([
      { down: 100, cells: [[49], [39], [31], [46]] },
      { down: 200, cells: [[50], [40], [30], [45]] },
    ]);
    // Two sides of one name are told apart by which way they run.
    const alike = all.map((own) => ({ ...own, edge: 'a' }));
    expect(levels(alike, 'a', 'a')).toEqual(levels(all, 'a', 'b'));
  });

  it('beside a fold the other side alone; a side that is crossed twice has both in one cell', () => {
    const all = [
      stretch('cut', 'fold', 900, 0, -50),
      stretch('cut', 'b', 0, 900, 45),
      stretch('cut', 'b', 0, 900, 60),
    ];
    expect(levels(all, 'fold', 'b')).toEqual([
      { down: 100, cells: [[], [], [], [46, 61]] },
      { down: 200, cells: [[], [], [], [45, 60]] },
    ]);
    const left = [stretch('cut', 'a', 900, 0, -50), stretch('seam', 'fold', 0, 900, 9)];
    expect(levels(left, 'a', 'fold')).toEqual([
      { down: 100, cells: [[49], [], [], []] },
      { down: 200, cells: [[50], [], [], []] },
    ]);
    // A level that only the fold crosses is none.
    expect(levels([stretch('cut', 'fold', 900, 0, -50)], 'fold', 'b')).toEqual([]);
  });
});
