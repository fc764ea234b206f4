import { describe, expect, it } from 'vitest';
import { sharedTables } from '../../src/chalk/shared-tables.ts';

/** Tables of layers that differ a little, made by hand: which share one, and what is told apart. mm. */

const corner = (letter: string, down: number, across: number) => ({ letter, down, across });
const table = (
  layers: string[],
  long: number,
  own: object = {},
  { waist = 5, side = 100 }: { waist?: number; side?: number } = {},
) => ({
  gore: 'side',
  layers,
  cut: 'pair',
  frontEdge: 'front/side',
  backEdge: 'side/back',
  every: 100,
  step: 1,
  stretches: [
    {
      line: 'cut',
      edge: 'waist',
      from: corner('A', 0, -50),
      to: corner('B', 0, 60),
      points: [{ kind: 'ordinate', along: 50, out: waist }],
    },
    { line: 'cut', edge: 'side/back', from: corner('B', 0, 60), to: corner('C', long, 90), points: [] },
    {
      line: 'cut',
      edge: 'hem',
      from: corner('C', long, 90),
      to: corner('D', long, -80),
      points: [{ kind: 'ordinate', along: 70, out: long / 100 }],
    },
  ],
  corners: [
    { line: 'cut', ...corner('A', 0, -50) },
    { line: 'cut', ...corner('C', long, 90) },
  ],
  levels: Array.from({ length: Math.floor(long / 100) }, (_, i) => ({
    down: 100 * (i + 1),
    cells: [[50 + i], [side + (i > 6 ? long : 0)]],
  })),
  ...own,
});
const shared = (...tables: object[]) =>
  sharedTables(tables as never).map(({ table: main, others }) => [
    main.layers.join(),
    ...others.map((other) => other.table.layers.join()),
  ]);

describe('layers that share a table', () => {
  it('the longest is the table, and stands where the first of them stood', () => {
    const other = table(['cape'], 400, { gore: 'cape' });
    expect(shared(table(['lining'], 800), other, table(['shell'], 900), table(['net'], 850))).toEqual([
      ['shell', 'lining', 'net'],
      ['cape'],
    ]);
  });

  it.each<[string, object]>([
    ['gore', { gore: 'back' }],
    ['part', { part: 'facing' }],
    ['side of her', { side: 'left' }],
    ['way to cut', { cut: 'single' }],
    ['grain', { bias: true }],
    ['number', { copies: 3 }],
    ['front edge', { frontEdge: 'x' }],
    ['back edge', { backEdge: 'x' }],
    ['levels', { every: 50 }],
    ['step', { step: 2 }],
  ])('not of another %s', (_, own) => {
    expect(shared(table(['a'], 900), table(['b'], 900, own))).toHaveLength(2);
  });

  it('not with another waist, nor where more than three levels differ', () => {
    expect(shared(table(['a'], 900), table(['b'], 900, {}, { waist: 6 }))).toHaveLength(2);
    expect(shared(table(['a'], 900), table(['b'], 900, {}, { side: 101 }))).toHaveLength(2);
    // The last two levels alone: 800 and 900.
    expect(shared(table(['a'], 900), table(['b'], 905))).toHaveLength(1);
    const levels = table(['b'], 900).levels;
    const differing = (count: number) =>
      levels.map((level, i) => (i < count ? { ...level, cells: [[1], [2]] } : level));
    expect(shared(table(['a'], 900), table(['b'], 900, { levels: differing(3) }))).toHaveLength(1);
    expect(shared(table(['a'], 900), table(['b'], 900, { levels: differing(4) }))).toHaveLength(2);
  });

  it('tells of the other its own corners, curves and levels, and nothing that both have', () => {
    const [only] = sharedTables([table(['lining'], 800), table(['shell'], 900)] as never);
    const [{ levels, curves, corners }] = only!.others as never as [
      { levels: { down: number }[]; curves: { edge: string; from: object }[]; corners: object[] },
    ];
    expect(levels).toEqual([{ down: 800, cells: [[57], [900]] }]);
    expect(curves.map(({ edge, from }) => [edge, from])).toEqual([['hem', corner('C', 800, 90)]]);
    expect(corners).toEqual([{ line: 'cut', ...corner('C', 800, 90) }]);
    const [same] = sharedTables([table(['a'], 900), table(['b'], 900)] as never);
    expect(same!.others[0]).toMatchObject({ levels: [], curves: [], corners: [] });
    // Of two as long the first is the table.
    expect(same!.table.layers).toEqual(['a']);
  });
});
