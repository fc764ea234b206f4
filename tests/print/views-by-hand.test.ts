import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Mark } from '../../src/print/drawing.ts';
import { viewsCaption } from '../../src/print/papers/views-block.ts';
import { type DrawnViews, viewsDrawing } from '../../src/print/papers/views-drawing.ts';
import { english } from '../../src/words/english.ts';

/** Views of no gown but of boxes, mm: where they stand on the page, at what scale, and what their measures say. */

const box = (left: number, top: number, right: number, bottom: number): Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
  { x: left, y: top },
];
const view = (side: string, left: number, top: number, right: number, bottom: number, own: object = {}) => ({
  side,
  outlines: [box(left, top, right, bottom)],
  folds: [],
  seams: [],
  edging: [],
  parts: [],
  edges: [],
  figure: [],
  opening: [],
  strokes: [],
  box: { left, top, right, bottom },
  ...own,
});

const FRONT = view('front', -300, -1500, 300, 0);
const SIDE = view('side', -400, -1400, 500, 0);
const ABOVE = view('above', -450, -350, 450, 900);
const TRAIN = { heelBehind: 50, behindHeel: 800, left: 380, right: -420 };

const drawn = (rows: { view: unknown; name: string }[][], own: object = {}) =>
  ({
    layer: 'shell',
    notHung: [],
    isBodiceDrafted: true,
    rows,
    floor: 'floor',
    scaleBar: 500,
    say: (mm: number) => `${mm} said`,
    ...own,
  }) as unknown as DrawnViews;

const ROW = [
  { view: FRONT, name: 'front' },
  { view: SIDE, name: 'side' },
  { view: ABOVE, name: 'above' },
];

function flat(marks: readonly Mark[]): Mark[] {
  return marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));
}
const ends = (run: readonly Curve[]): Point[] => run.map((curve) => pointAt(curve, 0));
const extent = (run: readonly Curve[]) => {
  const points = ends(run);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

function read(views: DrawnViews, room: Parameters<typeof viewsDrawing>[1]) {
  const drawing = viewsDrawing(views, room);
  const marks = flat(drawing.marks);
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
  const paths = marks.flatMap((mark) => (mark.kind === 'path' ? [mark] : []));
  const outlines = paths.filter((path) => path.class === 'outline').map(({ runs }) => extent(runs[0]!));
  const straight = paths.flatMap(({ runs, class: own }) =>
    own === undefined ? runs.map((run) => [pointAt(run[0]!, 0), pointAt(run.at(-1)!, 1)] as const) : [],
  );
  const said = (text: string) => texts.find((one) => one.text === text)!;
  return { drawing, texts, paths, outlines, straight, said };
}

describe('views in a row', () => {
  // 600 + 900 + 900 across, four gaps, and beside the train 3 and its length a fifth wider than Helvetica's 2.8 mm: digits
  // 556 thousandths, space 278, s 500, a 556, i 222, d 556 (its published AFM). Other type than that may stand in for it.
  const { drawing, outlines, straight, said } = read(drawn([ROW], { train: TRAIN }), { width: 322 });
  const scale = (outlines[0]!.right - outlines[0]!.left) / 600;
  const beside = 3 + (1.2 * 2.8 * (3 * 556 + 278 + 500 + 556 + 222 + 556)) / 1000;
  const gap = (322 - beside - 2400 * scale) / 4;

  it('all at one scale, as large as the width allows, side by side and apart', () => {
    expect(outlines).toHaveLength(3);
    for (const [i, { view: own }] of ROW.entries()) {
      const { left, right, top, bottom } = outlines[i]!;
      const wanted = own.box;
      expect(right - left).toBeCloseTo((wanted.right - wanted.left) * scale, 9);
      expect(bottom - top).toBeCloseTo((wanted.bottom - wanted.top) * scale, 9);
    }
    expect(gap).toBeGreaterThan(3);
    expect(outlines[1]!.left - outlines[0]!.right).toBeCloseTo(gap, 9);
    expect(outlines[2]!.left - outlines[1]!.right).toBeCloseTo(gap, 9);
    expect(outlines[0]!.left).toBeGreaterThanOrEqual(gap - 1e-9);
    expect(outlines[2]!.right).toBeLessThanOrEqual(322 - beside + 1e-9);
    // What is said there ends on the page.
    expect(said('800 said').at.x + (beside - 3) / 1.2).toBeLessThan(322);
  });

  it('on one floor: its line under each that stands, and its name', () => {
    const floor = outlines[0]!.bottom;
    expect(outlines[1]!.bottom).toBeCloseTo(floor, 9);
    expect(outlines[2]!.bottom).toBeCloseTo(floor, 9);
    const under = straight.filter(([a, b]) => Math.abs(a.y - floor) < 1e-9 && Math.abs(b.y - floor) < 1e-9);
    expect(under).toHaveLength(2);
    for (const [i, [a, b]] of under.entries()) {
      expect(a.x).toBeLessThan(outlines[i]!.left);
      expect(b.x).toBeGreaterThan(outlines[i]!.right);
    }
    expect(said('floor').at.y).toBeGreaterThan(floor);
    // The highest begins below the names.
    expect(outlines[0]!.top).toBeCloseTo(5.6, 9);
    expect(drawing.height).toBeCloseTo(5.6 + 1500 * scale + 9, 9);
  });

  it('each name over the middle of its view', () => {
    for (const [i, { name }] of ROW.entries()) {
      const { at, anchor } = said(name);
      expect(anchor).toBe('middle');
      expect(at.x).toBeCloseTo((outlines[i]!.left + outlines[i]!.right) / 2, 9);
      expect(at.y).toBeLessThan(outlines[i]!.top);
    }
  });

  it('the train: its length from the heels beside, its width below, each as long as it says', () => {
    const spans = straight.map(([a, b]) => ({
      across: Math.abs(b.x - a.x),
      down: Math.abs(b.y - a.y),
      a,
      b,
    }));
    const long = spans.find(({ across, down }) => across < 1e-9 && Math.abs(down - 800 * scale) < 1e-9)!;
    // 50 of 1250 behind the middle, which lies 350 below the top of the view.
    const middle = outlines[2]!.top + 350 * scale;
    expect(Math.min(long.a.y, long.b.y)).toBeCloseTo(middle + 50 * scale, 9);
    expect(long.a.x).toBeGreaterThan(outlines[2]!.right);
    expect(said('800 said').at.x).toBeGreaterThan(long.a.x);
    expect(Math.abs(said('800 said').at.y - (long.a.y + long.b.y) / 2)).toBeLessThan(1.5);
    const wide = spans.find(
      ({ across, down, a }) =>
        down < 1e-9 && Math.abs(across - 800 * scale) < 1e-9 && a.y > outlines[2]!.bottom,
    )!;
    // Her left lies on the left: 380 of it, and 420 to the right.
    const centre = (outlines[2]!.left + outlines[2]!.right) / 2;
    expect([wide.a.x, wide.b.x].toSorted((p, q) => p - q)).toEqual(
      [centre - 380 * scale, centre + 420 * scale].map((x) => expect.closeTo(x, 9)),
    );
    const plain = read(drawn([ROW]), { width: 322 });
    // Without it there is more room.
    expect(plain.outlines[0]!.right - plain.outlines[0]!.left).toBeCloseTo(600 * (scale + beside / 2400), 9);
    expect(plain.said('800 said')).toBeUndefined();
  });

  it('the scale bar is as long as it says', () => {
    const bar = straight.find(([a, b]) => a.y === b.y && Math.abs(Math.abs(b.x - a.x) - 500 * scale) < 1e-9)!;
    expect(bar).toBeDefined();
    const { at } = said('500 said');
    expect(at.x).toBeGreaterThan(Math.max(bar[0].x, bar[1].x));
    expect(bar[0].y).toBeGreaterThan(outlines[0]!.bottom);
    expect(bar[0].y).toBeLessThan(drawing.height);
  });
});

describe('two rows', () => {
  const second = [{ view: view('front', -250, -1100, 250, 0), name: 'front, bustled' }];

  it('one above the other, at one scale, as tall as there is room', () => {
    const { outlines, drawing } = read(drawn([ROW, second, []]), { width: 1000, height: 160 });
    // 1500 + 1100 in 160 less twice 14.6.
    const scale = (160 - 2 * 14.6) / 2600;
    expect(outlines[3]!.right - outlines[3]!.left).toBeCloseTo(500 * scale, 9);
    expect(outlines[3]!.top).toBeGreaterThan(outlines[0]!.bottom + 9);
    expect(drawing.height).toBeCloseTo(160, 9);
    expect(outlines.every(({ left, right }) => left >= 0 && right <= 1000)).toBe(true);
  });

  it('no larger than asked for', () => {
    const { outlines } = read(drawn([second]), { width: 1000, scale: 0.1 });
    expect(outlines[0]!.right - outlines[0]!.left).toBeCloseTo(50, 9);
    // In the middle of the page.
    expect((outlines[0]!.left + outlines[0]!.right) / 2).toBeCloseTo(500, 9);
  });
});

describe('lines', () => {
  const lines = {
    folds: [
      [
        { x: 0, y: -900 },
        { x: 5, y: -500 },
        { x: 0, y: -100 },
      ],
    ],
    seams: [
      [
        { x: 100, y: -900 },
        { x: 150, y: -100 },
      ],
    ],
    edging: [
      [
        { x: -200, y: -60 },
        { x: 200, y: -60 },
      ],
    ],
    parts: [
      [
        { x: -100, y: -700 },
        { x: 100, y: -700 },
      ],
    ],
    edges: [
      [
        { x: -300, y: 0 },
        { x: 300, y: 0 },
      ],
    ],
    figure: [
      [
        { x: 0, y: -1480 },
        { x: 10, y: -1490 },
      ],
    ],
    opening: [
      [
        { x: 50, y: -900 },
        { x: 52, y: -700 },
      ],
    ],
    strokes: [
      [
        { x: 48, y: -800 },
        { x: 56, y: -800 },
      ],
    ],
  };
  const own = view('front', -300, -1500, 300, 0, lines);
  const { paths, outlines } = read(drawn([[{ view: own, name: 'front' }]]), { width: 1000, scale: 0.1 });

  it.each(['fold', 'seam', 'edging', 'part', 'edge', 'figure', 'opening', 'stroke'] as const)(
    '%s lies where it should',
    (name) => {
      const path = paths.find((one) => one.class === name)!;
      const key = name === 'edging' || name === 'figure' || name === 'opening' ? name : (`${name}s` as const);
      const [first, last] = [lines[key][0]![0]!, lines[key][0]!.at(-1)!];
      const place = ({ x, y }: Point) => ({
        x: expect.closeTo(outlines[0]!.left + (x + 300) * 0.1, 9),
        y: expect.closeTo(outlines[0]!.bottom + y * 0.1, 9),
      });
      expect(pointAt(path.runs[0]![0]!, 0)).toEqual(place(first));
      expect(pointAt(path.runs[0]!.at(-1)!, 1)).toEqual(place(last));
      expect(path.line.dash !== undefined).toBe(name === 'edging');
    },
  );

  it('corners stay corners, and what bends runs through its points without a kink', () => {
    const outline = paths.find((one) => one.class === 'outline')!.runs[0]!;
    expect(outline.every(({ kind }) => kind === 'line')).toBe(true);
    const [a, b] = paths.find((one) => one.class === 'fold')!.runs[0]!;
    const way = (curve: Curve | undefined, at: 'start' | 'end') => {
      if (curve?.kind !== 'cubic') throw new Error('no cubic');
      const [p, q] = at === 'start' ? [curve.from, curve.control1] : [curve.control2, curve.to];
      return { angle: Math.atan2(q.y - p.y, q.x - p.x), reach: Math.hypot(q.x - p.x, q.y - p.y) };
    };
    // Along the chord of its neighbours, straight down, by a third of each stretch: √(5² + 400²) ÷ 3 at 1:10.
    for (const own of [way(a, 'end'), way(b, 'start')]) {
      expect(own.angle).toBeCloseTo(Math.PI / 2, 9);
      expect(own.reach).toBeCloseTo(Math.hypot(0.5, 40) / 3, 9);
    }
  });
});

describe('what is written below', () => {
  const words = english('cm');
  const caption = (own: object, lines: object = {}) =>
    viewsCaption(drawn([[{ view: view('front', 0, -1, 1, 0, lines), name: 'front' }]], own), words);

  it('whose cloth is seen, and what is not there', () => {
    expect(caption({})).toBe(
      'The shell as it hangs, worked out from the pattern; folds fall anew each time it is worn. The figure is for proportion only.',
    );
    expect(caption({ isBodiceDrafted: false, notHung: ['frill', 'cape'] })).toContain(
      'Bodice and figure are for proportion only. Not drawn: frill and cape.',
    );
    expect(caption({}, { edging: [[{ x: 0, y: 0 }]] })).toContain(words.hung.edging);
    expect(caption({})).not.toContain(words.hung.edging);
  });

  it('that the gown is off where its net tiers alone are seen, and both where both are', () => {
    const shell = view('front', 0, -1, 1, 0);
    const tiers = view('front', 0, -1, 1, 0);
    const row = (seen: typeof shell) => [{ view: seen, name: 'front' }];
    const said = (...rows: (typeof shell)[]) => viewsCaption(drawn(rows.map(row), { under: [tiers] }), words);
    expect(said(tiers)).toMatch(/^Without the gown: its net tiers as they hang/);
    expect(said(tiers)).not.toContain('The shell');
    expect(said(shell)).toMatch(/^The shell as it hangs/);
    expect(said(shell)).not.toContain('net tiers');
    expect(said(shell, tiers)).toMatch(/^The shell as it hangs.*each time it is worn\. Without the gown: /);
  });
});

describe('lines through points, as a hand draws them', () => {
  // One view 600 wide in 610 with two gaps of 5: at full size, its box beginning at 5.
  const drawnRuns = (own: object, name: string) => {
    const one = view('front', 0, -600, 600, 0, { outlines: [], ...own });
    const { marks } = viewsDrawing(drawn([[{ view: one, name: 'front' }]]), { width: 610 });
    const [path] = flat(marks).flatMap((mark) => (mark.kind === 'path' && mark.class === name ? [mark] : []));
    const move = ({ x, y }: Point): Point => ({ x: x - 5, y: y - 605.6 });
    return path!.runs[0]!.map((curve) => {
      if (curve.kind === 'line') return [curve.from, curve.to].map(move);
      if (curve.kind === 'cubic') return [curve.from, curve.control1, curve.control2, curve.to].map(move);
      throw new Error('an arc');
    });
  };
  const near = (...points: [number, number][]) =>
    points.map(([x, y]) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) }));
  const p = (x: number, y: number): Point => ({ x, y });

  it('along a straight row by thirds; at a turn of 30° along the chord of the neighbours', () => {
    const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const [first, second] = drawnRuns(
      { folds: [[p(0, -300), p(90, -300), p(90 + 120 * cos, -300 + 120 * sin)]] },
      'fold',
    );
    // From the first point to the last.
    const chord = [90 + 120 * cos, 120 * sin] as const;
    const long = Math.hypot(...chord);
    const way = (reach: number) => [(chord[0] / long) * reach, (chord[1] / long) * reach] as const;
    const [into, out] = [way(30), way(40)];
    expect(first).toEqual(near([0, -300], [30, -300], [90 - into[0], -300 - into[1]], [90, -300]));
    expect(second).toEqual(
      near(
        [90, -300],
        [90 + out[0], -300 + out[1]],
        [90 + 80 * cos, -300 + 80 * sin],
        [90 + 120 * cos, -300 + 120 * sin],
      ),
    );
  });

  it('turns sharper than 50° stay corners, lines between them straight', () => {
    expect(drawnRuns({ seams: [[p(0, -300), p(90, -300), p(90, -200)]] }, 'seam')).toEqual([
      near([0, -300], [90, -300]),
      near([90, -300], [90, -200]),
    ]);
    const turned = (degrees: number) => {
      const angle = (degrees * Math.PI) / 180;
      return drawnRuns(
        { seams: [[p(0, -300), p(90, -300), p(90 + 90 * Math.cos(angle), -300 + 90 * Math.sin(angle))]] },
        'seam',
      ).map((own) => own.length);
    };
    expect([turned(49), turned(51)]).toEqual([
      [4, 4],
      [2, 2],
    ]);
  });

  it('a closed outline is as smooth where it ends as elsewhere', () => {
    const twelve = Array.from({ length: 13 }, (_, i) =>
      p(300 + 100 * Math.cos((i * Math.PI) / 6), -300 + 100 * Math.sin((i * Math.PI) / 6)),
    );
    const curves = drawnRuns({ outlines: [twelve] }, 'outline');
    expect(curves.map((own) => own.length)).toEqual(Array(12).fill(4));
    // Every handle stands square to the radius.
    for (const [from, control1, control2, to] of curves as [Point, Point, Point, Point][])
      for (const [at, handle] of [
        [from, control1],
        [to, control2],
      ] as const)
        expect((handle.x - at.x) * (at.x - 300) + (handle.y - at.y) * (at.y + 300)).toBeCloseTo(0, 6);
    const open = drawnRuns({ edges: [twelve] }, 'edge');
    expect((open[0]![1]!.x - open[0]![0]!.x) * 100).not.toBeCloseTo(0, 1);
  });

  it('the scale’s bar: as long as it says, below the floor at the left, its figure behind it', () => {
    const one = view('front', 0, -600, 600, 0);
    const { straight, said } = read(drawn([[{ view: one, name: 'front' }]]), { width: 310 });
    // At half size 500 are 250; the floor lies at 5.6 and 300, the bar seven below it, a third of a gap to the left.
    expect(straight).toContainEqual([
      { x: expect.closeTo(5 - 5 / 3, 6), y: expect.closeTo(312.6, 6) },
      { x: expect.closeTo(5 - 5 / 3 + 250, 6), y: expect.closeTo(312.6, 6) },
    ]);
    expect(said('500 said').at).toEqual({
      x: expect.closeTo(5 - 5 / 3 + 251.5, 6),
      y: expect.closeTo(312.6 + 2.8 / 3, 6),
    });
  });
});
