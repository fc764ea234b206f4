import { describe, expect, it } from 'vitest';
import { withPleats } from '../../src/allowances/open-pleats.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Cubic, Curve, Line } from '../../src/geometry/curve.ts';
import { at, sampled } from '../fittings/sampled.ts';
import { line } from '../line.ts';

/**
 * A pleat opened on a piece whose waist leans 1 in 10 and whose hem 1 in 20: every line, and all that is marked, by hand.
 * The fold lies upright at 80 and is 30 deep, so what lies beyond is moved on by 60. mm.
 */

type Mark = CutPiece['marks'][number];
const mark = (name: string, ...curves: Curve[]): Mark => ({ name, curves });
const cut = (own: object = {}): CutPiece =>
  ({
    piece: {
      gore: 'side',
      edges: [
        { name: 'waist', curves: [line(0, 0, 200, 20)] },
        { name: 'side/back', curves: [line(200, 20, 200, 1010)] },
        { name: 'hem', curves: [line(200, 1010, 0, 1000)] },
        { name: 'front/side', curves: [line(0, 1000, 0, 0)] },
      ],
      grain: line(150, 200, 150, 800),
    },
    cutEdges: [
      { name: 'waist', curves: [line(-10, -12, 210, 10)] },
      { name: 'side/back', curves: [line(210, 10, 210, 1040.5)] },
      { name: 'hem', curves: [line(210, 1040.5, -10, 1029.5)] },
      { name: 'front/side', curves: [line(-10, 1029.5, -10, -12)] },
    ],
    notches: [],
    marks: [],
    labelAt: { x: 150, y: 500 },
    ...own,
  }) as never;
const fold = (under: 'left' | 'right', own: object = {}) =>
  ({
    pleat: { name: 'p', foldDepth: 30, stitchedDown: 0, ...own },
    line: line(80, 8, 80, 1004),
    under,
  }) as never;

const near = (value: number) => expect.closeTo(value, 6);
const corners = (curves: readonly Curve[]) =>
  [at(curves[0]!, 0), ...curves.map((curve) => at(curve, 1))].map(({ x, y }) => [x, y]);
const closeTo = (places: readonly (readonly number[])[]) => places.map(([x, y]) => [near(x!), near(y!)]);

describe('a pleat opened out', () => {
  it.each([
    [
      'left',
      [
        [
          [0, 0],
          [80, 8],
          [110, 5],
          [260, 20],
        ],
        [
          [260, 1010],
          [110, 1002.5],
          [80, 1004],
          [0, 1000],
        ],
      ],
      [
        [
          [-10, -12],
          [80, -3],
          [110, -6],
          [270, 10],
        ],
        [
          [270, 1040.5],
          [110, 1032.5],
          [80, 1034],
          [-10, 1029.5],
        ],
      ],
    ],
    [
      'right',
      [
        [
          [0, 0],
          [110, 11],
          [140, 8],
          [260, 20],
        ],
        [
          [260, 1010],
          [140, 1004],
          [110, 1005.5],
          [0, 1000],
        ],
      ],
      [
        [
          [-10, -12],
          [110, 0],
          [140, -3],
          [270, 10],
        ],
        [
          [270, 1040.5],
          [140, 1034],
          [110, 1035.5],
          [-10, 1029.5],
        ],
      ],
    ],
  ] as const)(
    'under its %s: waist, hem and both cut lines fold as its cloth does',
    (under, seam, cutLine) => {
      const { piece, cutEdges } = withPleats(cut(), [fold(under)]);
      for (const [edges, [upper, lower], side] of [
        [piece.edges, seam, 260],
        [cutEdges, cutLine, 270],
      ] as const) {
        expect(edges.map(({ name }) => name)).toEqual(['waist', 'side/back', 'hem', 'front/side']);
        expect(corners(edges[0]!.curves)).toEqual(closeTo(upper));
        expect(corners(edges[2]!.curves)).toEqual(closeTo(lower));
        for (const [x] of corners(edges[1]!.curves)) expect(x).toBe(side);
      }
      expect(piece.edges[3]).toEqual(cut().piece.edges[3]);
    },
  );

  it.each([
    // Outer fold, inner fold and placement, from cut edge to cut edge.
    [
      'left',
      [
        [80, -3, 80, 1034],
        [110, -6, 110, 1032.5],
        [140, -3, 140, 1034],
      ],
      80,
      140,
    ],
    [
      'right',
      [
        [140, -3, 140, 1034],
        [110, 0, 110, 1035.5],
        [80, -3, 80, 1034],
      ],
      140,
      80,
    ],
  ] as const)(
    'under its %s: its folds, its arrows and the end of its stitching',
    (under, lines, outer, brought) => {
      const { marks } = withPleats(cut(), [fold(under, { stitchedDown: 150 })]);
      const [first, inner, placement, top, low, ...ends] = marks;
      expect([first, inner, placement].map((one) => corners(one!.curves).flat())).toEqual(
        lines.map((own) => own.map(near)),
      );
      expect(first!.name).toBe(inner!.name);
      expect(new Set([first, placement, top, ends[0]].map((one) => one!.name)).size).toBe(4);
      // From 60 below the waist seam, and as far above the hem.
      for (const [arrow, y] of [
        [top, 68],
        [low, 944],
      ] as const) {
        const [tail, tip] = corners(arrow!.curves);
        expect([tail, tip]).toEqual(
          closeTo([
            [outer, y],
            [brought, y],
          ]),
        );
      }
      expect(ends.map(({ curves }) => corners(curves).flat())).toEqual(
        [outer, brought].map((x) => [x - 6, 158, x + 6, 158].map(near)),
      );
      expect(withPleats(cut(), [fold(under)]).marks).toHaveLength(5);
    },
  );

  it('on a short piece the arrows lie a quarter of the fold from its ends', () => {
    const short = cut();
    const edges = (own: CutPiece['cutEdges'], by: number) =>
      own.map(({ name, curves }) => ({
        name,
        curves: curves.map((curve) => {
          const { from, to } = curve as Line;
          const up = ({ x, y }: { x: number; y: number }) => ({ x, y: y > 500 ? y - by : y });
          return { ...curve, from: up(from), to: up(to) } as Line;
        }),
      }));
    const piece = { ...short.piece, edges: edges(short.piece.edges, 900) };
    const { marks } = withPleats({ ...short, piece, cutEdges: edges(short.cutEdges, 900) }, [fold('left')]);
    // 8 to 104: 24 from either end.
    expect(marks.slice(3).map(({ curves }) => corners(curves)[0]![1])).toEqual([near(32), near(80)]);
  });

  it('all that is marked goes with the cloth that it lies on', () => {
    const own = cut({
      notches: [
        { edge: 'side/back', distance: 100, ticks: [line(210, 120, 204, 120), line(210, 130, 204, 130)] },
        { edge: 'front/side', distance: 100, ticks: [line(-10, 100, -4, 100)] },
      ],
      marks: [
        mark('hem-trim', line(200, 1020, 0, 1010)),
        mark('tuck-fold', line(200, 910, 0, 900)),
        mark('pleat', line(40, 4, 40, 44)),
        mark('pleat', line(80, 8, 80, 48), line(80, 48, 84, 40)),
      ],
      stones: [
        {
          name: 'drops',
          layer: 'shell',
          runs: [[line(60, 300, 70, 300)], [line(100, 300, 70, 300), line(70, 300, 60, 310)]],
        },
      ],
      bustle: [
        {
          layer: 'shell',
          gore: 'side',
          across: 0.5,
          anchor: 30,
          pickUp: 700,
          at: [
            { x: 40, y: 30 },
            { x: 120, y: 700 },
          ],
        },
        {
          layer: 'shell',
          gore: 'side',
          across: 0.9,
          anchor: 30,
          pickUp: 700,
          at: [
            { x: 120, y: 31 },
            { x: 40, y: 701 },
          ],
        },
      ],
    });
    const opened = withPleats(own, [fold('left')]);
    expect(opened.notches.map(({ ticks }) => ticks)).toEqual([
      [line(270, 120, 264, 120), line(270, 130, 264, 130)],
      [line(-10, 100, -4, 100)],
    ]);
    expect(opened.notches.map(({ edge, distance }) => [edge, distance])).toEqual([
      ['side/back', 100],
      ['front/side', 100],
    ]);
    const [trim, tuck, kept, moved] = opened.marks;
    // Lines along the whole hem are folded with it.
    expect(corners(trim!.curves)).toEqual(
      closeTo([
        [260, 1020],
        [110, 1012.5],
        [80, 1014],
        [0, 1010],
      ]),
    );
    expect(corners(tuck!.curves)).toEqual(
      closeTo([
        [260, 910],
        [110, 902.5],
        [80, 904],
        [0, 900],
      ]),
    );
    expect([trim!.name, tuck!.name]).toEqual(['hem-trim', 'tuck-fold']);
    expect(kept).toEqual(mark('pleat', line(40, 4, 40, 44)));
    // On the fold's own line it lies beyond it, where the fold is brought to.
    expect(moved).toEqual(mark('pleat', line(140, 8, 140, 48), line(140, 48, 144, 40)));
    expect(opened.marks).toHaveLength(9);
    expect(opened.stones).toEqual([
      {
        name: 'drops',
        layer: 'shell',
        runs: [[line(60, 300, 70, 300)], [line(160, 300, 130, 300), line(130, 300, 120, 310)]],
      },
    ]);
    expect(opened.bustle!.map((point) => [point.across, point.at])).toEqual([
      [
        0.5,
        [
          { x: 40, y: 30 },
          { x: 180, y: 700 },
        ],
      ],
      [
        0.9,
        [
          { x: 180, y: 31 },
          { x: 40, y: 701 },
        ],
      ],
    ]);
    expect(opened.bustle![0]).toMatchObject({ layer: 'shell', gore: 'side', anchor: 30, pickUp: 700 });
    expect(opened.labelAt).toEqual({ x: 210, y: 500 });
    expect(opened.piece.grain).toEqual(line(210, 200, 210, 800));
    const plain = withPleats(cut({ labelAt: { x: 60, y: 500 } }), [fold('right')]);
    expect(plain.labelAt).toEqual({ x: 60, y: 500 });
    expect([plain.stones, plain.bustle]).toEqual([undefined, undefined]);
    const left = withPleats({ ...cut(), piece: { ...cut().piece, grain: line(60, 200, 60, 800) } }, [
      fold('left'),
    ]);
    expect(left.piece.grain).toEqual(line(60, 200, 60, 800));
  });

  it('two of a box pleat, from the right: each leaves the other where it was', () => {
    const at110 = { ...(fold('left') as object), line: line(110, 11, 110, 1005.5) } as never;
    const at50 = { ...(fold('right') as object), line: line(50, 5, 50, 1002.5) } as never;
    const { piece, marks } = withPleats(cut(), [at110, at50]);
    // The second moves all of the first, its marks too, on by 60.
    expect(corners(piece.edges[0]!.curves)).toEqual(
      closeTo([
        [0, 0],
        [80, 8],
        [110, 5],
        [170, 11],
        [200, 8],
        [320, 20],
      ]),
    );
    const folds = marks
      .filter(({ name }) => name === marks[0]!.name)
      .map(({ curves }) => corners(curves)[0]![0]);
    expect(folds).toEqual([near(170), near(200), near(110), near(80)]);
  });

  it.each([
    ['left', 0.3],
    ['right', 0.3],
    ['left', -0.2],
    ['right', 0],
  ] as const)(
    'under its %s, leaning by %f: folded again every point lies on the curved hem that it had',
    (under, lean) => {
      // y = 1000 + x² / 500 is one cubic.
      const y = (x: number) => 1000 + (x * x) / 500;
      const hem: Cubic = {
        kind: 'cubic',
        from: { x: 200, y: y(200) },
        control1: { x: 400 / 3, y: y(200) - (400 / 500) * (200 / 3) },
        control2: { x: 200 / 3, y: 1000 },
        to: { x: 0, y: 1000 },
      };
      const own = cut();
      const piece = { ...own.piece, edges: own.piece.edges.with(2, { name: 'hem', curves: [hem] }) };
      const [sin, cos] = [Math.sin(lean), Math.cos(lean)];
      // Through the hem near its middle.
      const origin = { x: 100 - 900 * sin, y: 1020 - 900 * cos };
      const { x: topX, y: topY } = origin;
      const leaning = {
        ...(fold(under) as object),
        line: line(topX, topY, topX + 900 * sin, topY + 900 * cos),
      } as never;
      const opened = withPleats({ ...own, piece, cutEdges: piece.edges }, [leaning]);
      const run = opened.piece.edges[2]!.curves;
      let [least, most] = [0, 0];
      for (const point of sampled(run, 40)) {
        // How far right of the fold's line: its right is square to it.
        const s = (point.x - origin.x) * cos - (point.y - origin.y) * sin;
        const back = (by: number) => ({ x: point.x + by * cos, y: point.y - by * sin });
        const unfolded =
          s <= 0
            ? point
            : s > 60
              ? back(-60)
              : under === 'left'
                ? back(s < 30 ? -2 * s : -60)
                : back(s < 30 ? 0 : 60 - 2 * s);
        expect(unfolded.y).toBeCloseTo(y(unfolded.x), 5);
        [least, most] = [Math.min(least, s), Math.max(most, s)];
      }
      expect(most).toBeGreaterThan(60);
      expect(least).toBeLessThan(-20);
      for (const [i, curve] of run.entries()) if (i > 0) expect(at(curve, 0)).toEqual(at(run[i - 1]!, 1));
    },
  );
});
