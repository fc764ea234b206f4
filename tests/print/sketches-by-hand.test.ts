import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Drawing } from '../../src/print/drawing.ts';
import { chalkFigure } from '../../src/print/papers/chalk-figure.ts';
import { stationFigure } from '../../src/print/papers/station-figure.ts';
import { at } from '../quads.ts';
import { textsOf } from './page-texts.ts';

/** The small figures beside a chalk table and on the form for her measures: where their letters and labels stand. mm. */

const paths = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === 'path' ? [mark] : []));
const corners = (runs: readonly (readonly Curve[])[]): Point[] =>
  runs.flat().map((curve) => pointAt(curve, 0));
const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const middleOf = ({ left, right }: { left: number; right: number }) => (left + right) / 2;

describe('a piece as its table plots it', () => {
  const cut = [at(-60, 0), at(140, 0), at(140, 400), at(-60, 400)];
  const seam = [at(-50, 10), at(130, 10), at(130, 390), at(-50, 390)];
  const stretches = [
    ...cut.map((own, i) => ['cut', 'ABCD'[i]!, own] as const),
    ...seam.map((own, i) => ['seam', 'abcd'[i]!, own] as const),
  ].map(([line, letter, { x, y }]) => ({ line, from: { letter, down: y, across: x } }));
  const figure = (own: readonly Point[] = cut, size = { width: 116, height: 96 }) =>
    chalkFigure({ stretches } as never, { cut: own, seam }, size);

  it('as large as fits, eight clear all round, cut line, seam line and grain line each by its own stroke', () => {
    // 400 down into 80, 200 across into 100: a fifth.
    const drawing = figure();
    expect([drawing.width, drawing.height]).toEqual([expect.closeTo(56, 6), expect.closeTo(96, 6)]);
    const [outer, inner, grain] = paths(drawing);
    expect(corners(outer!.runs)).toEqual([near(8, 8), near(48, 8), near(48, 88), near(8, 88)]);
    expect(corners(inner!.runs)).toEqual([near(10, 10), near(46, 10), near(46, 86), near(10, 86)]);
    expect([outer!.closed, inner!.closed, grain!.closed]).toEqual([true, true, false]);
    // Across is counted from the grain: 60 of it at the left.
    expect(grain!.runs[0]![0]).toMatchObject({ from: near(20, 8), to: near(20, 88) });
    expect([outer, inner, grain].map((own) => own!.line?.dash?.length ?? 0)).toEqual([0, 2, 4]);
    expect(figure(cut, { width: 56 - 20, height: 300 }).width).toBeCloseTo(36, 6);
  });

  it('a grain line beside the piece is drawn too', () => {
    const aside = cut.map(({ x, y }) => at(x + 100, y));
    const [outer, , grain] = paths(figure(aside));
    // From 0 to 240 across.
    expect(corners(outer!.runs)[0]).toEqual(near(8 + 40 / 5, 8));
    expect(grain!.runs[0]![0]).toMatchObject({ from: near(8, 8) });
  });

  it('capitals stand outside their corners, small letters inside, none over another', () => {
    const letters = textsOf(figure());
    expect(letters.map(({ text }) => text)).toEqual([...'ABCDabcd']);
    const outside = { A: [-1, -1], B: [1, -1], C: [1, 1], D: [-1, 1] } as const;
    for (const [letter, [x, y]] of Object.entries(outside)) {
      const own = letters.find(({ text }) => text === letter)!;
      const corner = { x: x < 0 ? 8 : 48, y: y < 0 ? 8 : 88 };
      expect(Math.sign(middleOf(own) - corner.x), letter).toBe(x);
      const small = letters.find(({ text }) => text === letter.toLowerCase())!;
      const inner = { x: x < 0 ? 10 : 46, y: y < 0 ? 10 : 86 };
      expect(Math.sign(middleOf(small) - inner.x), letter.toLowerCase()).toBe(-x);
      // Up or down of it, by the text's own line, that lies a third of its height below its middle.
      expect(Math.sign(own.baseline - 0.91 - corner.y), letter).toBe(y);
      expect(Math.hypot(middleOf(own) - corner.x, own.baseline - 0.91 - corner.y)).toBeCloseTo(2.2, 1);
    }
    for (const [i, one] of letters.entries())
      for (const other of letters.slice(i + 1))
        expect(Math.hypot(middleOf(one) - middleOf(other), one.baseline - other.baseline)).toBeGreaterThan(
          2.69,
        );
  });

  it('a letter that has no room at its corner stands farther off, and a line leads to it', () => {
    const crowded = {
      stretches: ['A', 'B', 'C', 'D', 'E', 'F', 'G'].map((letter) => ({
        line: 'cut',
        from: { letter, down: 0, across: -60 },
      })),
    };
    const drawing = chalkFigure(crowded as never, { cut, seam }, { width: 116, height: 96 });
    const leaders = paths(drawing).slice(3);
    expect(leaders.length).toBeGreaterThan(0);
    for (const { runs } of leaders) expect(pointAt(runs[0]![0]!, 0)).toEqual(near(8, 8));
  });
});

describe('where to measure', () => {
  const names = {
    shoulders: 'over both shoulders',
    waist: 'level waist',
    hip: 'hip',
    floor: 'floor, in the shoes',
  };
  const texts = (stations: readonly string[], levels = {}) =>
    textsOf(stationFigure({ ...names, ...levels }, stations, 180));

  it('levels that are measured are named from the top, in one column', () => {
    const labels = texts([]).filter(({ text }) => Object.values(names).includes(text));
    expect(labels.map(({ text }) => text)).toEqual(Object.values(names));
    expect(labels.map(({ baseline }) => baseline)).toEqual(
      labels.map(({ baseline }) => baseline).toSorted((a, b) => a - b),
    );
    expect(new Set(labels.map(({ left }) => left)).size).toBe(1);
    const more = texts([], { bust: 'bust', underbust: 'underbust', edge: 'bodice edge', hoop: 'hoop' }).map(
      ({ text }) => text,
    );
    expect(more).toEqual([
      'over both shoulders',
      'bust',
      'underbust',
      'level waist',
      'bodice edge',
      'hip',
      'hoop',
      'floor, in the shoes',
    ]);
    // Rings are drawn round bust and underbust where they are measured.
    const dashed = (levels: object) =>
      paths(stationFigure({ ...names, ...levels }, [], 180)).filter(({ line }) => line?.dash !== undefined)
        .length;
    expect(dashed({ bust: 'bust', underbust: 'underbust' }) - dashed({})).toBe(2);
    expect(dashed({ hoop: 'hoop' }) - dashed({})).toBe(1);
  });

  it('stations are numbered along the hem from the front round, and named in that order', () => {
    const found = texts(['centre front', 'front/side', 'side/back', 'centre back']);
    const numbers = found.filter(({ text }) => /^\d$/.test(text));
    expect(numbers.map(({ text }) => text)).toEqual(['1', '2', '3', '4']);
    expect(numbers.map(({ left }) => left)).toEqual(
      numbers.map(({ left }) => left).toSorted((a, b) => a - b),
    );
    // A body from its side: (1 − cos)/2 of its depth of 46.
    const shown = [0, 1, 2, 3].map((i) => 46 * ((1 - Math.cos((Math.PI * i) / 3)) / 2));
    expect(numbers.map((own) => middleOf(own) - middleOf(numbers[0]!))).toEqual(
      shown.map((own) => expect.closeTo(own, 3)),
    );
    const listed = found.filter(({ text }) => /^\d {1,2}\w/.test(text));
    expect(listed.map(({ text }) => text.replace(/ +/g, ' '))).toEqual([
      '1 centre front',
      '2 front/side',
      '3 side/back',
      '4 centre back',
    ]);
    expect(listed.map(({ baseline }) => baseline)).toEqual(
      listed.map(({ baseline }) => baseline).toSorted((a, b) => a - b),
    );
    expect(Math.min(...listed.map(({ left }) => left))).toBeGreaterThan(
      Math.max(...numbers.map(({ right }) => right)),
    );
    // A long name is set smaller, within the width.
    const long = texts(['a'.repeat(90), 'b']).find(({ text }) => text.includes('aaa'))!;
    expect(long.right).toBeLessThan(180.01);
    // One station stands in the middle.
    const single = texts(['centre']).filter(({ text }) => text === '1');
    expect(middleOf(single[0]!) - middleOf(numbers[0]!)).toBeCloseTo(23, 3);
  });
});
