import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import type { Drawing, Mark } from '../../src/print/drawing.ts';
import { chalkFigure } from '../../src/print/papers/chalk-figure.ts';
import { footprintDrawing } from '../../src/print/papers/footprint-drawing.ts';
import { stationFigure } from '../../src/print/papers/station-figure.ts';

/** Small figures on the papers, from shapes made by hand: what is drawn lies where it should, at one scale, mm. */

const texts = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
const paths = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === 'path' ? [mark] : []));
/** The ends of every straight line of a mark. */
const linesIn = (mark: Extract<Mark, { kind: 'path' }>): [Point, Point][] =>
  mark.runs.flatMap((run) =>
    run.flatMap((one) => (one.kind === 'line' ? [[one.from, one.to] as [Point, Point]] : [])),
  );
const near = ({ x, y }: Point) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });

describe('the train on the floor', () => {
  const print = {
    // 600 wide, 400 long behind the skirt, which is 200 across.
    outline: [
      { x: -100, y: 0 },
      { x: 100, y: 0 },
      { x: 320, y: 350 },
      { x: 0, y: 400 },
      { x: -280, y: 350 },
    ],
    seams: [
      [
        { x: 0, y: 0 },
        { x: 0, y: 400 },
      ],
    ] as const,
    length: 400,
    width: 600,
    radius: 100,
  };
  const words = { length: (mm: number) => `${mm} long`, skirt: 'skirt' };

  it.each([
    // 176 in 600 across; 96 in 600 down, from −200 to 400.
    [220, 1000, 176 / 600],
    [220, 120, 96 / 600],
  ])(
    'in %s by %s: everything at one scale, each measure as long as what it measures',
    (width, height, scale) => {
      const drawing = footprintDrawing(print, words, width, height);
      const [circle, outline, seam, ...rest] = paths(drawing);
      expect(circle!.runs[0]![0]).toMatchObject({ kind: 'arc', radius: expect.closeTo(100 * scale, 9) });
      const corners = linesIn(outline!).map(([from]) => from);
      // Where the cloth meets the floor in the middle is the seam's upper end.
      const [zero, tip] = linesIn(seam!)[0]!;
      const place = ({ x, y }: Point) => near({ x: zero.x + x * scale, y: zero.y + y * scale });
      expect(corners).toEqual(print.outline.map(place));
      expect(tip).toEqual(place({ x: 0, y: 400 }));
      const centre = circle!.runs[0]![0]!;
      expect('centre' in centre && centre.centre).toEqual(place({ x: 0, y: -100 }));
      // In the middle across: 20 lies between −280 and 320.
      expect(zero.x + 20 * scale).toBeCloseTo(width / 2, 9);
      const [down, topEnd, lowEnd, across, leftEnd, rightEnd] = rest.map((mark) => linesIn(mark)[0]!);
      expect(rest).toHaveLength(6);
      // Its length stands at the right of it, its width below it.
      expect(down!.map(({ y }) => y)).toEqual(
        [zero.y, zero.y + 400 * scale].map((y) => expect.closeTo(y, 9)),
      );
      expect(down![0].x).toBeCloseTo(zero.x + 320 * scale + 6, 9);
      expect(down![1].x).toBe(down![0].x);
      expect(across!.map(({ x }) => x)).toEqual(
        [zero.x - 280 * scale, zero.x + 320 * scale].map((x) => expect.closeTo(x, 9)),
      );
      expect(across![0].y).toBeCloseTo(zero.y + 400 * scale + 4, 9);
      expect(across![1].y).toBe(across![0].y);
      // End strokes of 2, square to their line and centred on its ends.
      for (const [stroke, end, axis] of [
        [topEnd, down![0], 'x'],
        [lowEnd, down![1], 'x'],
        [leftEnd, across![0], 'y'],
        [rightEnd, across![1], 'y'],
      ] as const) {
        const [a, b] = stroke!;
        expect([(a.x + b.x) / 2, (a.y + b.y) / 2]).toEqual([
          expect.closeTo(end.x, 9),
          expect.closeTo(end.y, 9),
        ]);
        expect(Math.abs(a[axis] - b[axis])).toBeCloseTo(2, 9);
      }
      const [skirt, long, wide] = texts(drawing);
      expect([skirt!.text, long!.text, wide!.text]).toEqual(['skirt', '400 long', '600 long']);
      expect(skirt!.at).toEqual(place({ x: 0, y: -100 }));
      expect([long!.at.x > down![0].x, Math.abs(long!.at.y - (zero.y + 200 * scale)) < 1.5]).toEqual([
        true,
        true,
      ]);
      expect(wide!.at.x).toBeCloseTo(width / 2, 9);
      expect(wide!.at.y).toBeGreaterThan(across![0].y + 2);
      expect(drawing.height).toBeGreaterThan(wide!.at.y);
      expect([drawing.width, zero.y - 200 * scale]).toEqual([width, expect.closeTo(6, 9)]);
    },
  );
});

describe('a piece as its chalk table plots it', () => {
  const square = (left: number, top: number, right: number, bottom: number): Point[] => [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  const cut = square(-100, 0, 200, 900);
  const seam = square(-80, 20, 180, 880);
  const corner = (letter: string, { x, y }: Point, line: string) => ({
    line,
    from: { letter, across: x, down: y },
  });
  const stretches = [
    ...cut.map((at, i) => corner('ABCD'[i]!, at, 'cut')),
    ...seam.map((at, i) => corner('abcd'[i]!, at, 'seam')),
  ];
  const drawn = chalkFigure({ stretches } as never, { cut, seam }, { width: 76, height: 196 });

  it('cut line, seam line and grain line, 8 clear all round', () => {
    // 60 of 300 across, 180 of 900 down: a fifth.
    const place = ({ x, y }: Point): Point => ({ x: 8 + (x + 100) / 5, y: 8 + y / 5 });
    const [cutLine, seamLine, grain, ...leaders] = paths(drawn);
    expect(linesIn(cutLine!).map(([from]) => from)).toEqual(cut.map(place).map(near));
    expect(linesIn(seamLine!).map(([from]) => from)).toEqual(seam.map(place).map(near));
    expect(cutLine!.line.dash).toBeUndefined();
    expect(seamLine!.line.dash).toBeDefined();
    expect(linesIn(grain!)).toEqual([[near(place({ x: 0, y: 0 })), near(place({ x: 0, y: 900 }))]]);
    expect([drawn.width, drawn.height]).toEqual([76, 196]);
    expect(leaders).toEqual([]);
  });

  it('capitals stand outside their corners, small letters inside, each 2.2 away', () => {
    const middle = { x: 8 + 150 / 5, y: 8 + 450 / 5 };
    const away = ({ x, y }: Point) => Math.hypot(x - middle.x, y - middle.y);
    for (const { text, at, anchor } of texts(drawn)) {
      const own = stretches.find(({ from }) => from.letter === text)!.from;
      const on = { x: 8 + (own.across + 100) / 5, y: 8 + own.down / 5 };
      // From the baseline up to the middle of the letter: 0.35 of 2.6.
      const centre = { x: at.x, y: at.y - 0.91 };
      expect(Math.hypot(centre.x - on.x, centre.y - on.y)).toBeCloseTo(2.2, 9);
      expect(away(centre) > away(on)).toBe(text === text.toUpperCase());
      expect(anchor).toBe('middle');
    }
    expect(texts(drawn)).toHaveLength(8);
  });

  it('letters of corners that lie on one another move apart, and are led to their corner', () => {
    const crowded = [...'ABCDEFG'].map((letter) => corner(letter, cut[0]!, 'cut'));
    const figure = chalkFigure({ stretches: crowded } as never, { cut, seam }, { width: 76, height: 196 });
    const centres = texts(figure).map(({ at }) => ({ x: at.x, y: at.y - 0.91 }));
    for (const [i, a] of centres.entries())
      for (const b of centres.slice(i + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(2.7);
    const leaders = paths(figure)
      .slice(3)
      .map((mark) => linesIn(mark)[0]!);
    const moved = centres.filter(({ x, y }) => Math.hypot(x - 8, y - 8) > 2.3);
    expect(leaders).toHaveLength(moved.length);
    expect(moved.length).toBeGreaterThan(2);
    for (const [i, [from, to]] of leaders.entries()) {
      expect(from).toEqual(near({ x: 8, y: 8 }));
      // As far as half a letter short of its middle.
      expect(Math.hypot(to.x - moved[i]!.x, to.y - moved[i]!.y)).toBeCloseTo(1.3, 9);
    }
  });

  it('a grain line that lies beside the piece is drawn there', () => {
    const beside = square(50, 0, 250, 400);
    const { width, marks } = chalkFigure(
      { stretches: [] } as never,
      { cut: beside, seam: beside },
      { width: 66, height: 400 },
    );
    expect(width).toBe(66);
    expect(paths({ marks } as never).map((mark) => linesIn(mark)[0]![0].x)).toEqual(
      [18, 18, 8].map((x) => expect.closeTo(x, 9)),
    );
  });
});

describe('where to measure', () => {
  const levels = { waist: 'level waist', hip: 'hip', floor: 'floor' };
  const figure = (stations: string[]) => stationFigure(levels, stations, 180);

  it('names the levels that are measured, each at the end of its leader, from the top', () => {
    const named = texts(figure(['a', 'b']));
    const heights = Object.values(levels).map((name) => named.find(({ text }) => text === name)!.at);
    expect(heights.map(({ y }) => y)).toEqual(heights.map(({ y }) => y).toSorted((a, b) => a - b));
    for (const { x, y } of heights) {
      const leader = paths(figure(['a', 'b']))
        .flatMap(linesIn)
        .find(([, to]) => Math.abs(to.x - (x - 1.5)) < 1e-9 && Math.abs(to.y - (y - 1.05)) < 1e-9);
      expect(leader![0].y).toBeCloseTo(leader![1].y, 9);
      expect(leader![0].x).toBeLessThan(leader![1].x);
    }
    expect(named.some(({ text }) => text === 'bust')).toBe(false);
  });

  it('numbers the stations from the front round, below their lines and in the list', () => {
    const names = ['centre front', 'front/side', 'side/back', 'centre back'];
    const drawing = figure(names);
    const numbers = texts(drawing).filter(({ bold }) => bold);
    expect(numbers.map(({ text }) => text)).toEqual(['1', '2', '3', '4']);
    const xs = numbers.map(({ at }) => at.x);
    expect(xs).toEqual(xs.toSorted((a, b) => a - b));
    // Round a body seen from the side the outer ones crowd together: shares (1 − cos) ÷ 2 of 46.
    expect(xs.map((x) => x - xs[0]!)).toEqual(
      [0, 0.25, 0.75, 1].map((share) => expect.closeTo(46 * share, 9)),
    );
    const feet = paths(drawing)
      .flatMap(linesIn)
      .map(([, to]) => to);
    for (const { at } of numbers) expect(feet).toContainEqual(near({ x: at.x, y: at.y - 3.9 }));
    const listed = names.map((name, i) => texts(drawing).find(({ text }) => text === `${i + 1}  ${name}`)!);
    expect(new Set(listed.map(({ at }) => at.x)).size).toBe(1);
    const steps = listed.slice(1).map(({ at }, i) => at.y - listed[i]!.at.y);
    for (const step of steps) expect(step).toBeCloseTo(4.5, 9);
  });

  it('as many as there are fit in: smaller and closer, and within the page', () => {
    const drawing = figure(Array.from({ length: 30 }, (_, i) => `a rather long name of a seam, ${i}`));
    for (const { at, size } of texts(drawing)) {
      expect(at.y).toBeLessThanOrEqual(drawing.height);
      expect(size).toBeGreaterThan(0.5);
    }
    const listed = texts(drawing).filter(({ text }) => text.includes('rather'));
    expect(listed[1]!.at.y - listed[0]!.at.y).toBeGreaterThan(listed[0]!.size);
    const single = texts(figure(['only'])).find(({ bold }) => bold)!;
    const pair = texts(figure(['a', 'b'])).filter(({ bold }) => bold);
    expect(single.at.x).toBeCloseTo((pair[0]!.at.x + pair[1]!.at.x) / 2, 9);
  });
});
