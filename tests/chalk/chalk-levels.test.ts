import { describe, expect, it } from 'vitest';
import { chalkTable } from '../../src/chalk/chalk-table.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve, Line, Point } from '../../src/geometry/curve.ts';

/** A table of a piece made by hand: straight sides that lean outwards, 1 in 20 at the left and 1 in 10 at the right. mm. */

const NAMES = ['waist', 'side/back', 'hem', 'front/side'];
const edges = (corners: readonly Point[], hem?: Curve) =>
  corners.map((from, i) => ({
    name: NAMES[i]!,
    curves: [
      i === 2 && hem !== undefined ? hem : ({ kind: 'line', from, to: corners[(i + 1) % 4]! } satisfies Line),
    ],
  }));
/** Its top at 40, its grain line at 10. */
const CUT = [
  { x: -40, y: 40 },
  { x: 210, y: 40 },
  { x: 310, y: 1040 },
  { x: -90, y: 1040 },
];
const SEAM = [
  { x: -25, y: 55 },
  { x: 195, y: 55 },
  { x: 292, y: 1025 },
  { x: -73.5, y: 1025 },
];
const piece = (own: object = {}, rest: Partial<CutPiece> = {}): CutPiece =>
  ({
    gore: 'side',
    layers: ['shell'],
    cutEdges: edges(CUT),
    notches: [],
    marks: [],
    roughCut: 0,
    allowances: {},
    labelAt: { x: 0, y: 0 },
    piece: {
      gore: 'side',
      layers: ['shell'],
      edges: edges(SEAM),
      frontEdge: 'front/side',
      backEdge: 'side/back',
      grain: { kind: 'line', from: { x: 10, y: 200 }, to: { x: 10, y: 800 } },
      cut: 'pair',
      ...own,
    },
    ...rest,
  }) as CutPiece;

describe('a chalk table of straight sides', () => {
  const table = chalkTable(piece());

  it('levels from the first whole hundred below the top to the last above the hem: away from the grain line both ways', () => {
    expect(table.levels.map(({ down }) => down)).toEqual([100, 200, 300, 400, 500, 600, 700, 800, 900]);
    // Left 50 and a twentieth of the way down, right 200 and a tenth; seam lines 15 in at the top, less of the way.
    for (const { down, cells } of table.levels)
      for (const [i, wanted] of [
        50 + down / 20,
        35 + (down - 15) / 20,
        185 + (down - 15) / 10,
        200 + down / 10,
      ].entries()) {
        expect(cells[i]).toHaveLength(1);
        expect(Math.abs(cells[i]![0]! - wanted), `${down}, ${i}`).toBeLessThanOrEqual(0.5 + 1e-9);
      }
    expect(table.levels[3]!.cells).toEqual([[70], [expect.any(Number)], [expect.any(Number)], [240]]);
  });

  it('corners by their letters, down from the top and across from the grain line', () => {
    expect(table.corners.map(({ line, letter, down, across }) => [line, letter, down, across])).toEqual([
      ['cut', 'A', 0, -50],
      ['cut', 'B', 0, 200],
      ['cut', 'C', 1000, 300],
      ['cut', 'D', 1000, -100],
      ['seam', 'a', 15, -35],
      ['seam', 'b', 15, 185],
      ['seam', 'c', 985, 282],
      ['seam', 'd', 985, -83],
    ]);
    // From corner to corner of the seam line: 317 by 970 and 268.5 by 970.
    expect(table.diagonals).toEqual([
      { from: 'a', to: 'c', length: Math.round(Math.hypot(317, 970)) },
      { from: 'b', to: 'd', length: Math.round(Math.hypot(268.5, 970)) },
    ]);
    // Straight lines need nothing between their ends.
    expect(
      table.stretches.filter(({ edge }) => edge === 'waist' || edge === 'hem').map(({ points }) => points),
    ).toEqual([[], [], [], []]);
  });

  it('every so far, to such a step', () => {
    const wide = chalkTable(piece(), { every: 250, step: 25.4 / 32 });
    expect(wide.levels.map(({ down }) => down)).toEqual([250, 500, 750]);
    // 62.5 to a thirty-second of an inch: 79 of them are 62.71.
    expect(wide.levels[0]!.cells[0]![0]).toBeCloseTo((79 * 25.4) / 32, 9);
    expect(() => chalkTable(piece(), { every: 9 })).toThrow(RangeError);
    // A level that is a corner is marked already.
    expect(chalkTable(piece(), { every: 500 }).levels.map(({ down }) => down)).toEqual([500]);
  });

  it('beside a fold one side alone: at the right of one in front, at the left of one behind, the seam line first', () => {
    const renamed = (name: string) => {
      const as = (all: CutPiece['cutEdges']) =>
        all.map((edge) => (edge.name === name ? { ...edge, name: 'fold' } : edge));
      const side = name === 'front/side' ? { frontEdge: 'fold' } : { backEdge: 'fold' };
      const own = piece({ cut: 'on-fold', ...side });
      return chalkTable({
        ...own,
        cutEdges: as(own.cutEdges),
        piece: { ...own.piece, edges: as(own.piece.edges) },
      });
    };
    const [front, back] = [renamed('front/side'), renamed('side/back')];
    expect(front.columns).toEqual([2, 3]);
    expect([front.levels.length, back.levels.length]).toEqual([9, 9]);
    for (const { cells } of front.levels) expect(cells.map(({ length }) => length)).toEqual([0, 0, 1, 1]);
    expect(back.columns).toEqual([1, 0]);
    for (const { cells } of back.levels) expect(cells.map(({ length }) => length)).toEqual([1, 1, 0, 0]);
  });
});

describe('a hem that bends', () => {
  /** From corner to corner an arc that reaches 40 below its chord of 400: its radius is (200² + 40²) ÷ 80. */
  const radius = (200 ** 2 + 40 ** 2) / 80;
  const half = Math.asin(200 / radius);
  const hem: Curve = {
    kind: 'arc',
    centre: { x: 110, y: 1080 - radius },
    radius,
    start: Math.PI / 2 - half,
    sweep: 2 * half,
  };
  const table = chalkTable(piece({}, { cutEdges: edges(CUT, hem) }));
  const { points } = table.stretches.find(({ line, edge }) => line === 'cut' && edge === 'hem')!;

  it('is set off its chord, each hundred and at its deepest place, outwards as +', () => {
    const ordinates = points.flatMap((point) => (point.kind === 'ordinate' ? [point] : []));
    expect(ordinates).toHaveLength(points.length);
    for (const along of [100, 200, 300]) expect(ordinates.map((own) => own.along)).toContain(along);
    for (const { along, out } of ordinates)
      expect(
        Math.abs(out - (Math.sqrt(radius ** 2 - (along - 200) ** 2) - (radius - 40))),
      ).toBeLessThanOrEqual(0.5 + 1e-6);
    expect(ordinates.find(({ along }) => along === 200)!.out).toBe(40);
  });

  it('so closely that straight lines from mark to mark keep within a millimetre of it', () => {
    const marks = [0, ...points.map((point) => (point.kind === 'ordinate' ? point.along : 0)), 400];
    expect(marks).toEqual(marks.toSorted((a, b) => a - b));
    // A chord of c leaves an arc by c² ÷ 8r.
    for (const [i, to] of marks.slice(1).entries())
      expect((to - marks[i]!) ** 2 / (8 * radius)).toBeLessThan(1.01);
  });

  it('swung with a tape from its centre', () => {
    expect(table.swings).toEqual([
      { line: 'cut', edge: 'hem', radius: Math.round(radius), down: Math.round(1040 - radius), across: 100 },
    ]);
  });
});
