import { describe, expect, it } from 'vitest';
import { chainOf, chalkedAt } from '../../src/chalk/chalk-chain.ts';
import { chalkSpans, isSide } from '../../src/chalk/chalk-spans.ts';
import { chalkStep, chalkTable } from '../../src/chalk/chalk-table.ts';
import { chalkTables } from '../../src/chalk/chalk-tables.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { at, EDGES, line, quad, upright } from '../quads.ts';

/** The whole table of a piece whose every figure can be told by hand: straight sides, a hem that is an arc of 300. mm. */

const arc = (from: Point, to: Point, radius: number, x: number, y: number, down = true): Curve => {
  const start = Math.atan2(from.y - y, from.x - x);
  const end = Math.atan2(to.y - y, to.x - x);
  const turn = end - start;
  return {
    kind: 'arc',
    centre: at(x, y),
    radius,
    start,
    sweep: down && turn < 0 ? turn + 2 * Math.PI : turn,
  };
};
const edge = (name: string, ...curves: Curve[]) => ({ name, curves });
const straight = (name: string, ...points: Point[]) =>
  edge(name, ...points.slice(1).map((to, i) => line(points[i]!, to)));

/** Half the hem's chord is 95: its centre lies so far above it. */
const ABOVE = Math.sqrt(300 ** 2 - 95 ** 2);
const [a, b, c, d] = [at(20, 30), at(120, 30), at(160, 830), at(-30, 830)];
const [A, B, C, D] = [at(5, 15), at(135, 15), at(178, 850), at(-48, 850)];
const PIECE = {
  ...quad([a, b, c, d], undefined, { layers: ['shell', 'net'] }),
  cutEdges: [
    straight('waist', A, B),
    straight('side/back', B, C),
    straight('hem', C, D),
    straight('front/side', D, A),
  ],
  marks: [
    { name: 'fold-line', curves: [line(at(60, 700), at(50, 40))] },
    { name: 'hem', curves: [line(at(0, 0), at(9, 9))] },
    { name: 'dart-leg-line', curves: [line(at(80, 30), at(90, 130))] },
    { name: 'bent-line', curves: [line(at(0, 0), at(1, 1)), line(at(1, 1), at(2, 1))] },
  ],
  piece: {
    ...quad([a, b, c, d]).piece,
    grain: line(at(70, 100), at(70, 500)),
    edges: [
      straight('waist', a, b),
      straight('side/back', b, c),
      edge('hem', arc(c, d, 300, 65, 830 - ABOVE)),
      straight('front/side', d, a),
    ],
  },
};
const ordinates = (points: readonly object[]) => points as { kind: string; along: number; out: number }[];

describe('a table, figure by figure', () => {
  const table = chalkTable(PIECE);

  it('corners: down from the top of the cut line, across from the grain line; cut first, clockwise', () => {
    expect(table.corners.map((own) => [own.line, own.letter, own.down, own.across].join(' '))).toEqual([
      'cut A 0 -65',
      'cut B 0 65',
      'cut C 835 108',
      'cut D 835 -118',
      'seam a 15 -50',
      'seam b 15 50',
      'seam c 815 90',
      'seam d 815 -100',
    ]);
    expect(
      table.stretches.map(
        ({ line: own, edge: name, from, to }) => `${own} ${name} ${from.letter}${to.letter}`,
      ),
    ).toEqual([
      ...['waist AB', 'side/back BC', 'hem CD', 'front/side DA'].map((own) => `cut ${own}`),
      ...['waist ab', 'side/back bc', 'hem cd', 'front/side da'].map((own) => `seam ${own}`),
    ]);
  });

  it('levels: where each straight side crosses them', () => {
    const cell = (value: number) => [Math.round(value)];
    expect(table.levels).toEqual(
      [100, 200, 300, 400, 500, 600, 700, 800].map((down) => ({
        down,
        cells: [
          cell(65 + (53 * down) / 835),
          cell(50 + (50 * (down - 15)) / 800),
          cell(50 + (40 * (down - 15)) / 800),
          cell(65 + (43 * down) / 835),
        ],
      })),
    );
    const wide = chalkTable(PIECE, { every: 250 });
    expect(wide.levels.map(({ down }) => down)).toEqual([250, 500, 750]);
    expect([wide.every, wide.step]).toEqual([250, 1]);
    expect(() => chalkTable(PIECE, { every: 9 })).toThrow('9');
    expect(chalkTable(PIECE, { every: 10 }).levels).toHaveLength(83);
  });

  it('the curved hem: off its chord by the arc’s own height, each hundred, at its deepest, and as often as it bends', () => {
    const straightOnes = table.stretches.filter(
      ({ edge: name, line: own }) => name === 'waist' || (name === 'hem' && own === 'cut'),
    );
    expect(straightOnes.map(({ points }) => points)).toEqual([[], [], []]);
    const points = ordinates(
      table.stretches.find(({ edge: name, line: own }) => name === 'hem' && own === 'seam')!.points,
    );
    expect(points.map(({ along }) => along)).toEqual(expect.arrayContaining([95, 100]));
    for (const { kind, along, out } of points)
      expect([kind, out]).toEqual(['ordinate', Math.round(Math.sqrt(300 ** 2 - (95 - along) ** 2) - ABOVE)]);
    // Between two of them the arc is higher than a straight line by no more than a millimetre, rounding apart.
    const places = [0, ...points.map(({ along }) => along), 190];
    for (const [i, along] of places.slice(1).entries()) {
      expect(along).toBeGreaterThan(places[i]!);
      expect((along - places[i]!) ** 2 / (8 * 300)).toBeLessThan(1);
    }
    // 190 in parts of at most 49 are four; each halving beyond need would double them.
    expect(points.length).toBeLessThan(9);
  });

  it('swing, diagonals, lines inside from above down', () => {
    expect(table.swings).toEqual([
      { line: 'seam', edge: 'hem', radius: 300, down: Math.round(815 - ABOVE), across: -5 },
    ]);
    expect(table.diagonals).toEqual([
      { from: 'a', to: 'c', length: Math.round(Math.hypot(140, 800)) },
      { from: 'b', to: 'd', length: Math.round(Math.hypot(150, 800)) },
    ]);
    expect(table.inner).toEqual([
      { name: 'fold-line', from: { down: 25, across: -20 }, to: { down: 685, across: -10 } },
      { name: 'dart-leg-line', from: { down: 15, across: 10 }, to: { down: 115, across: 20 } },
    ]);
  });

  it('its outlines as points, and what it is of', () => {
    expect(table.lines.cut).toHaveLength(4 + 2 * 8);
    expect(table.lines.cut.slice(0, 3)).toEqual([
      at(-65, 0),
      at(65, 0),
      at(Math.round(65 + 4300 / 835), 100),
    ]);
    const lowest = Math.max(...table.lines.seam.map(({ y }) => y));
    expect(lowest).toBe(815 + Math.round(300 - ABOVE));
    expect(table).toMatchObject({
      gore: 'side',
      layers: ['shell', 'net'],
      cut: 'single',
      frontEdge: 'front/side',
      backEdge: 'side/back',
      columns: [0, 1, 2, 3],
    });
    for (const key of ['part', 'bias', 'copies', 'side']) expect(table).not.toHaveProperty(key);
    const own = { part: 'cape', bias: true, copies: 3, side: 'left', cut: 'single' } as const;
    expect(chalkTable({ ...PIECE, piece: { ...PIECE.piece, ...own } })).toMatchObject(own);
  });

  it('in thirty-seconds of an inch', () => {
    const step = chalkStep('in');
    expect([step, chalkStep('cm'), chalkStep('mm')]).toEqual([25.4 / 32, 1, 1]);
    const { corners, swings, diagonals } = chalkTable(PIECE, { step });
    const to = (value: number) => expect.closeTo(Math.round(value / step) * step, 9);
    expect(corners[2]).toEqual({ line: 'cut', letter: 'C', down: to(835), across: to(108) });
    expect(swings[0]).toMatchObject({ radius: to(300), down: to(815 - ABOVE), across: to(-5) });
    expect(diagonals[0]?.length).toEqual(to(Math.hypot(140, 800)));
  });
});

describe('where across is measured from', () => {
  const acrossOf = (piece: Parameters<typeof chalkTable>[0], grain?: number) =>
    chalkTable(piece, grain === undefined ? {} : { grain }).corners[0]?.across;
  it('the grain line, the fold, the middle of a thread at 45°, or where it is told', () => {
    const grain = line(at(40, 0), at(90, 50));
    expect(acrossOf(upright(100, 400, undefined, { piece: { grain } }))).toBe(-15 - 40);
    expect(acrossOf(upright(100, 400, undefined, { piece: { grain, bias: true } }))).toBe(-15 - 65);
    const fold = upright(
      100,
      400,
      undefined,
      { piece: { grain, cut: 'on-fold', frontEdge: 'fold' }, names: ['waist', 'side', 'hem', 'fold'] },
      [30, 0],
    );
    expect(acrossOf(fold)).toBe(0);
    expect(chalkTable(fold).columns).toEqual([2, 3]);
    expect(acrossOf(fold, 10)).toBe(20);
  });

  it('pieces of one gore, part and side from the first one’s, at the usual levels of her units', () => {
    const piece = (x: number, own: object = {}) =>
      upright(100, 300, undefined, { piece: { grain: line(at(x, 0), at(x, 9)), ...own }, ...own });
    const pieces = [
      piece(10),
      piece(50),
      piece(20, { gore: 'back' }),
      piece(30, { part: 'facing' }),
      piece(40, { side: 'left' }),
      piece(70, { part: 'facing' }),
    ];
    const across = (tables: ReturnType<typeof chalkTables>) =>
      tables.map(({ corners }) => corners[0]?.across);
    expect(across(chalkTables(pieces, 'cm'))).toEqual([-25, -25, -35, -45, -55, -45]);
    const levels = (...args: [units: 'cm' | 'mm' | 'in', every?: number]) =>
      chalkTables(pieces.slice(0, 1), ...args)[0];
    expect([levels('cm')?.every, levels('mm')?.every, levels('in')?.every, levels('cm', 60)?.every]).toEqual([
      100, 100, 101.6, 60,
    ]);
    expect(levels('in')?.step).toBe(25.4 / 32);
  });
});

describe('stretches between corners', () => {
  const turned = (degrees: number) =>
    at(200 * Math.cos((degrees * Math.PI) / 180), 200 * Math.sin((degrees * Math.PI) / 180));
  const spansOf = (...points: Point[]) =>
    chalkSpans([straight('waist', ...points)], []).map(({ curves }) => curves.length);
  it('an edge turns a corner at two degrees, and what is shorter than chalk is wide is no stretch', () => {
    expect(spansOf(at(-200, 0), at(0, 0), turned(1.9))).toEqual([2]);
    expect(spansOf(at(-200, 0), at(0, 0), turned(2.1))).toEqual([1, 1]);
    expect(spansOf(at(-200, 0), at(0, 0), turned(-2.1))).toEqual([1, 1]);
    expect(spansOf(at(0, 0), at(200, 0), at(200, 0.3))).toEqual([1, 1]);
    expect(spansOf(at(0, 0), at(200, 0), at(200, 0.2))).toEqual([1]);
  });

  it('a side is one as long as it runs down or up at less than 55° to the grain', () => {
    const side = (...points: Point[]) => isSide(straight('s', ...points) as never) && true;
    const sideOf = (degrees: number) => {
      const { curves } = straight('s', at(0, 0), turned(90 - degrees));
      return isSide({ edge: 's', curves });
    };
    expect([0, 54, -54, 56, -56, 126, 180, 234].map(sideOf)).toEqual([
      true,
      true,
      true,
      false,
      false,
      true,
      true,
      true,
    ]);
    expect(side(at(0, 0), at(10, 100), at(0, 0))).toBe(false);
  });

  it('a long bend is halved until ordinates stand off it clearly, a side is not', () => {
    // Half a circle of 100 leaves its chord at 90°; its halves at 45°.
    const half = edge('waist', arc(at(-100, 0), at(100, 0), 100, 0, 0, true));
    const parts = chalkSpans([half], []);
    expect(parts).toHaveLength(2);
    const joined = { kind: 'arc', radius: 100, centre: at(0, 0) } as const;
    expect(parts.map(({ curves }) => curves[0])).toEqual(
      [
        { ...joined, start: expect.closeTo(-Math.PI, 9), sweep: expect.closeTo(Math.PI / 2, 9) },
        { ...joined, start: expect.closeTo(-Math.PI / 2, 9), sweep: expect.closeTo(Math.PI / 2, 9) },
      ].map((own) => expect.objectContaining({ radius: own.radius })),
    );
    // Two curves of one bend are parted where they join.
    const quarters = edge(
      'waist',
      arc(at(-100, 0), at(0, -100), 100, 0, 0),
      arc(at(0, -100), at(100, 0), 100, 0, 0),
    );
    expect(chalkSpans([quarters], []).map(({ curves }) => curves)).toEqual(
      quarters.curves.map((own) => [own]),
    );
    const shallow = edge('side', arc(at(0, -30), at(0, 30), 300, -Math.sqrt(300 ** 2 - 900), 0));
    expect(chalkSpans([shallow], ['side'])).toHaveLength(1);
  });

  it('letters go on after Z, capitals on the cut line alone', () => {
    const corners = Array.from({ length: 55 }, (_, i) =>
      at(500 * Math.cos((2 * Math.PI * i) / 55), 500 * Math.sin((2 * Math.PI * i) / 55)),
    );
    const ring = [straight('waist', ...corners, corners[0]!)];
    const axes = { x: 0, y: 0, every: 100, step: 1 };
    const letters = (own: 'cut' | 'seam') =>
      chainOf(ring, axes, { line: own, sides: [] }).map(({ from }) => from.letter);
    expect([0, 25, 26, 27, 51, 52, 54].map((i) => letters('cut')[i])).toEqual([
      'A',
      'Z',
      'AA',
      'AB',
      'AZ',
      'BA',
      'BC',
    ]);
    expect([0, 26, 54].map((i) => letters('seam')[i])).toEqual(['a', 'aa', 'bc']);
    const last = chainOf(ring, axes, { line: 'cut', sides: [] })[54];
    expect(last?.to).toEqual({ letter: 'A', down: 0, across: 500 });
  });

  it('an edge that leaves its chord by half a millimetre is set off, one that does not is ruled', () => {
    // Over a chord of 200 an arc of radius r stands off by 10000 ÷ 2r, nearly.
    const pointsOf = (radius: number) => {
      const above = Math.sqrt(radius ** 2 - 100 ** 2);
      const hem = edge('hem', arc(at(200, 0), at(0, 0), radius, 100, -above));
      const back = straight('back', at(0, 0), at(0, -50), at(200, -50), at(200, 0));
      return chainOf([hem, back], { x: 0, y: 0, every: 90, step: 0.1 }, { line: 'seam', sides: [] })[0]!
        .points;
    };
    expect(pointsOf(5000 / 0.55)).not.toEqual([]);
    expect(pointsOf(5000 / 0.45)).toEqual([]);
  });

  it('a side that bends has more levels where it bends, none at its corners', () => {
    // An arc of 400 that runs down from the right of its centre: at ±300 it stands off by √(400² − 300²).
    const reach = Math.sqrt(400 ** 2 - 300 ** 2);
    const bent = edge('side', arc(at(reach, -300), at(reach, 300), 400, 0, 0));
    const [stretch] = chainOf(
      [bent],
      { x: -10, y: -300, every: 100, step: 1 },
      { line: 'seam', sides: ['side'] },
    );
    const points = stretch!.points as unknown as { kind: string; down: number; across: number }[];
    const levels = points.map(({ down }) => down);
    expect(levels).toEqual(levels.toSorted((one, two) => one - two));
    expect(levels).toEqual(expect.arrayContaining([100, 200, 300, 400, 500]));
    expect([levels[0]! > 0, levels.at(-1)! < 600]).toEqual([true, true]);
    for (const { kind, down, across } of points)
      expect([kind, across]).toEqual(['level', Math.round(10 + Math.sqrt(400 ** 2 - (down - 300) ** 2))]);
    // A hundred of it stands 3 off a straight line: no two lie a hundred apart.
    const downs = [0, ...levels, 600];
    for (const [i, down] of downs.slice(1).entries()) expect(down - downs[i]!).toBeLessThan(70);
    expect(levels.length).toBeLessThan(30);
    // The same side upwards has the same levels from below.
    const up = edge('side', arc(at(reach, 300), at(reach, -300), 400, 0, 0, false));
    const [back] = chainOf([up], { x: -10, y: -300, every: 100, step: 1 }, { line: 'seam', sides: ['side'] });
    expect(Math.abs(back!.points.length - points.length)).toBeLessThan(4);
  });

  it('a point of an ordinate lies square off its chord', () => {
    const corner = (letter: string, down: number, across: number) => ({ letter, down, across });
    const stretch = { from: corner('A', 10, 20), to: corner('B', 40, 60) };
    // 3-4-5: along by (0.8, 0.6), out by (0.6, -0.8).
    expect(chalkedAt(stretch, { kind: 'ordinate', along: 10, out: 5 })).toEqual({
      x: expect.closeTo(31, 9),
      y: expect.closeTo(12, 9),
    });
    expect(chalkedAt(stretch, { kind: 'level', down: 7, across: 8 })).toEqual(at(8, 7));
  });

  it('a flat side takes ordinates, and names of edges are kept', () => {
    const flat = straight('side', at(0, 0), at(300, 60));
    const [own] = chainOf([flat], { x: 0, y: 0, every: 100, step: 1 }, { line: 'cut', sides: ['side'] });
    expect(own).toMatchObject({ edge: 'side', line: 'cut', points: [] });
    expect(EDGES).toContain('hem');
  });
});
