import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Drawing } from '../../src/print/drawing.ts';
import { bendingFigure } from '../../src/print/papers/bending-figure.ts';
import { footprintDrawing } from '../../src/print/papers/footprint-drawing.ts';
import { placingChart } from '../../src/print/papers/placing-chart.ts';
import { at } from '../quads.ts';
import { textsOf } from './page-texts.ts';

/** Figures on papers that are to scale, from rectangles made by hand: where each line and figure stands. mm. */

const paths = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === 'path' ? [mark] : []));
const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const ends = (run: readonly Curve[]): [Point, Point] => [pointAt(run[0]!, 0), pointAt(run.at(-1)!, 1)];
const corners = (run: readonly Curve[]): Point[] => run.map((curve) => pointAt(curve, 0));
const texts = (drawing: Drawing) =>
  textsOf(drawing).map(({ text, left, right, baseline }) => [
    text,
    Math.round(((left + right) / 2) * 100) / 100,
    Math.round(baseline * 100) / 100,
  ]);

describe('a placing chart', () => {
  const rectangle = (x: number, y: number, wide: number, high: number) => [
    at(x, y),
    at(x + wide, y),
    at(x + wide, y + high),
    at(x, y + high),
  ];
  const pieces = [
    {
      gore: 'front',
      outline: rectangle(-40, 30, 100, 200),
      stones: [at(-40, 30), at(10, 130)],
      times: 2,
      once: 1,
    },
    { gore: 'side', side: 'left', outline: rectangle(500, 0, 60, 240), stones: [], times: 1, once: 0 },
    { gore: 'back', outline: rectangle(0, 0, 40, 80), stones: [at(20, 40)], times: 1, once: 0 },
  ];
  const say = (...told: unknown[]) => told.join(' ');
  const chart = (stones: object, room: { width: number; height: number }) =>
    placingChart(stones as never, pieces as never, room, say);

  it('pieces side by side as large as the room is wide or high, three lines of type above them', () => {
    // 200 across and two gaps of 6 into 112; 240 down into 308.4 less 8.4: a half, across.
    const wide = chart({}, { width: 112, height: 308.4 });
    expect([wide.width, wide.height]).toEqual([expect.closeTo(112, 6), expect.closeTo(128.4, 6)]);
    const outlines = paths(wide).filter(({ closed }) => closed);
    expect(outlines.map(({ runs }) => corners(runs[0]!))).toEqual(
      [rectangle(0, 8.4, 50, 100), rectangle(56, 8.4, 30, 120), rectangle(92, 8.4, 20, 40)].map((own) =>
        own.map(({ x, y }) => near(x, y)),
      ),
    );
    // 240 down into 60: a quarter.
    const high = chart({}, { width: 500, height: 68.4 });
    expect([high.width, high.height]).toEqual([expect.closeTo(62, 6), expect.closeTo(68.4, 6)]);
    // Its names: over the middle of each, on two heights, with what is counted on it.
    expect(texts(wide)).toEqual([
      ['front 2 2 1', 25, 2.8],
      ['side, left 0 1 0', 71, 6.16],
      ['back 1 1 0', 102, 2.8],
    ]);
  });

  it('a dot half a millimetre wide for each stone, its outline where that is larger than two', () => {
    const room = { width: 112, height: 308.4 };
    const stones = (own: object) => paths(chart(own, room)).filter((mark) => mark.class === 'stone');
    const dots = stones({ size: 2 });
    expect(dots.map(({ runs }) => runs.map(ends))).toEqual([
      [
        [near(-0.25, 8.4), near(0.25, 8.4)],
        [near(24.75, 58.4), near(25.25, 58.4)],
      ],
      [[near(101.75, 28.4), near(102.25, 28.4)]],
    ]);
    expect(dots[0]!.line?.width).toBe(0.5);
    const [motifs] = stones({ size: 60, motif: { width: 40, height: 60 } });
    // Half of it on paper: 10 across from its middle, 15 down.
    expect(corners(motifs!.runs[1]!)).toEqual([
      near(15, 58.4),
      near(25, 43.4),
      near(35, 58.4),
      near(25, 73.4),
    ]);
    expect(motifs!.line?.width).toBe(0.2);
    const [round] = stones({ size: 4 });
    expect(corners(round!.runs[1]!)[0]).toEqual(near(24, 58.4));
    // Its narrower way decides.
    expect(stones({ size: 60, motif: { width: 2, height: 60 } })[0]!.runs[1]).toHaveLength(1);
  });
});

describe('a train on the floor', () => {
  // 400 wide about the middle, 300 long from where it meets the floor; the skirt a circle of radius 50 before that.
  const outline = [at(-200, 0), at(200, 0), at(200, 300), at(-200, 300)];
  const print = { outline, seams: [[at(-10, 0), at(30, 300)]], length: 300, width: 400, radius: 50 };
  const drawn = (width = 124, height = 224) =>
    footprintDrawing(print as never, { length: (mm) => `${mm} long`, skirt: 'skirt' }, width, height);

  it('to scale: skirt, outline and seams, twelve of room and twenty for its figure', () => {
    // 400 across into 124 − 24 − 20 = 80: a fifth. From 100 before the floor line to 300 behind it: 80 down.
    const drawing = drawn();
    expect([drawing.width, drawing.height]).toEqual([124, expect.closeTo(98, 6)]);
    const [circle, edge, seam] = paths(drawing);
    // In the middle; six from above.
    expect(circle!.runs[0]![0]).toMatchObject({
      kind: 'arc',
      centre: near(62, 16),
      radius: expect.closeTo(10, 6),
    });
    expect(circle!.line?.dash).toHaveLength(2);
    expect(corners(edge!.runs[0]!)).toEqual([near(22, 26), near(102, 26), near(102, 86), near(22, 86)]);
    expect(edge!.closed).toBe(true);
    expect(ends(seam!.runs[0]!)).toEqual([near(60, 26), near(68, 86)]);
    // 400 down into 104 − 24: a fifth, where there is more room across.
    const low = paths(drawn(500, 104))[1]!;
    expect(corners(low.runs[0]!)[0]).toEqual(near(250 - 40, 26));
  });

  it('its length at the right, from the floor line to its end; its width below; a stroke across every end', () => {
    const drawing = drawn();
    expect(texts(drawing).map(([text]) => text)).toEqual(['skirt', '300 long', '400 long']);
    const [skirt, length, width] = textsOf(drawing);
    expect((skirt!.left + skirt!.right) / 2).toBeCloseTo(62, 6);
    expect(skirt!.baseline).toBeCloseTo(16, 6);
    expect([length!.left, length!.baseline]).toEqual([
      expect.closeTo(110, 6),
      expect.closeTo(56 + 2.8 / 3, 6),
    ]);
    expect((width!.left + width!.right) / 2).toBeCloseTo(62, 6);
    expect(width!.baseline).toBeCloseTo(90 + 1.3 * 2.8, 6);
    const measures = paths(drawing)
      .slice(3)
      .map(({ runs }) => ends(runs[0]!));
    expect(measures).toEqual([
      [near(108, 26), near(108, 86)],
      [near(107, 26), near(109, 26)],
      [near(107, 86), near(109, 86)],
      [near(22, 90), near(102, 90)],
      [near(22, 89), near(22, 91)],
      [near(102, 89), near(102, 91)],
    ]);
  });
});

describe('a strip over the table’s edge', () => {
  const drawing = bendingFigure({ overhang: ['so long', 'hangs over'], slope: '41.5°' }, 90);
  const [top, side, slope, strip] = paths(drawing);

  it('its tip lies 41.5° down from the edge, on the line (BS 3356), and it leaves the table level', () => {
    const [[edge], [, foot], [from, to]] = [top!, side!, slope!].map(({ runs }) => ends(runs[0]!)) as [
      [Point, Point],
      [Point, Point],
      [Point, Point],
    ];
    const [start, tip] = ends(strip!.runs[0]!);
    expect(from).toEqual({ x: 20, y: 8 });
    const angle = ({ x, y }: Point) => (Math.atan2(y - from.y, x - from.x) * 180) / Math.PI;
    expect([angle(to), angle(tip)]).toEqual([expect.closeTo(41.5, 9), expect.closeTo(41.5, 9)]);
    expect(Math.hypot(tip.x - from.x, tip.y - from.y)).toBeLessThan(Math.hypot(to.x - from.x, to.y - from.y));
    const hanging = strip!.runs[0]!.at(-1)!;
    const leaves = pointAt(hanging, 1e-4);
    expect(leaves.y - from.y).toBeCloseTo(0, 4);
    expect(leaves.x).toBeGreaterThan(from.x);
    // The strip lies on the table, and that has no leg above it.
    expect(start.y).toBe(from.y);
    expect(edge!.y).toBeGreaterThan(from.y);
    expect(foot!.y).toBeLessThan(drawing.height);
    expect(foot!.x).toBe(from.x);
    expect(foot!.y).toBeGreaterThan(tip.y);
    // At its tip it points more steeply down than the line: 53.9° for a heavy elastica.
    const before = pointAt(hanging, 1 - 1e-5);
    expect((Math.atan2(tip.y - before.y, tip.x - before.x) * 180) / Math.PI).toBeCloseTo(53.87, 1);
  });

  it('its words stand above it from the top, and beside the line’s end', () => {
    const [first, second, angle] = textsOf(drawing);
    expect([first!.text, second!.text, angle!.text]).toEqual(['so long', 'hangs over', '41.5°']);
    expect(first!.baseline).toBeLessThan(8);
    expect(second!.baseline - first!.baseline).toBeCloseTo(3.9, 6);
    expect(first!.left).toBe(second!.left);
    expect(first!.left).toBeGreaterThan(20);
    const [, to] = ends(slope!.runs[0]!);
    expect(angle!.left).toBeGreaterThan(to.x);
    expect(Math.abs(angle!.baseline - to.y)).toBeLessThan(3);
  });
});
