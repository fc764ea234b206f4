import { describe, expect, it } from 'vitest';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { placingChart } from '../../src/print/papers/placing-chart.ts';
import { stoneBlocks } from '../../src/print/papers/stone-blocks.ts';
import { evenRandom } from '../../src/stones/random.ts';
import { acrossSeam, beside, frameAt, seamLine } from '../../src/stones/seam-line.ts';
import { asPrinted, handMade, tablesOf } from './hand-made-facts.ts';

/** What is set by hand, from facts made by hand: no two figures alike. mm, grams. */

describe('what is set by hand', () => {
  const square = (left: number, top: number, width: number, height: number) => [
    { x: left, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left, y: top + height },
  ];
  const pieces = [
    {
      gore: 'front',
      side: undefined,
      outline: square(50, -20, 300, 900),
      stones: [{ x: 100, y: 80 }],
      times: 2,
    },
    {
      gore: 'back',
      side: 'left' as const,
      outline: square(-10, 30, 500, 1000),
      stones: [],
      times: 1,
      once: 0,
      index: 1,
    },
  ];
  const sets = [
    {
      stones: { name: 'beads', layer: { name: 'shell' }, soldAs: '11/0', size: 2.1 },
      pieces,
      count: 2468,
      gross: 18,
      grams: 23.5,
    },
    { stones: { name: 'drops', layer: { name: 'net' } }, pieces, count: 97, gross: 1, grams: undefined },
    {
      stones: {
        name: 'rose',
        layer: { name: 'shell' },
        motif: { width: 42, height: 31 },
        places: [
          { gore: 'front', across: 0.375, belowWaist: 611 },
          { gore: 'back', across: 0.5, aboveHem: 82 },
        ],
      },
      pieces: pieces.slice(1),
      count: 3,
      gross: 1,
      grams: 9,
    },
  ];
  const quote = {
    lines: [
      { kind: 'notion', name: 'beads', amount: { minor: 111n, currency: 'EUR' } },
      { kind: 'stones', name: 'drops', amount: { minor: 222n, currency: 'EUR' } },
      { kind: 'stones', name: 'beads', amount: { minor: 333n, currency: 'EUR' } },
    ],
  };
  const hours = {
    tasks: [
      { task: 'making', hours: { numerator: 9n, denominator: 1n } },
      { task: 'beads', hours: { numerator: 11n, denominator: 4n } },
    ],
  };

  it('each set in its row, what is not known left out', () => {
    const input = handMade('cm', { workroom: { stones: sets, pricing: { quote, hours } } });
    expect(asPrinted(tablesOf(stoneBlocks(input))[0]!)).toEqual([
      ['<<<>>>>>'],
      ['set', 'on', 'across', 'how many', 'gross', 'weight', 'hours', 'cost'],
      ['beads', 'shell', '11/0, 2.1 mm', '2468', '18', '24 g', '2.75', '3.33'],
      ['drops', 'net', '', '97', '1', '', '', '2.22'],
      // One by one they are not sold by the gross.
      ['rose', 'shell', '42 × 31 mm', '3', '', '9 g', '', ''],
    ]);
    expect(asPrinted(tablesOf(stoneBlocks(input))[1]!)).toEqual([
      ['<<>>>'],
      ['set', 'gore', 'across', 'below the waist seam', 'above the hem'],
      ['rose', 'front', '37.5 %', '61.1', ''],
      ['rose', 'back', '50 %', '', '8.2'],
    ]);
    const charts = stoneBlocks(input).flatMap((block) => (block.kind === 'figure' ? [block] : []));
    expect(charts.map(({ caption }) => caption!.split(':')[0])).toEqual([
      'Placing chart of the beads, 2.1 mm',
      'Placing chart of the drops',
      'Placing chart of the rose, 42 × 31 mm',
    ]);
    for (const { drawing } of charts) {
      expect(drawing.width).toBeLessThanOrEqual(180);
      expect(drawing.height).toBeLessThanOrEqual(210 + 1e-9);
    }
    expect(stoneBlocks(handMade('cm', {}))).toEqual([]);
  });

  it('the chart: pieces side by side at one scale, each under its name, each stone a dot in its place', () => {
    // 800 of cloth in 166 less one gap of 6: a fifth; 1000 tall would take 200 of the 300.
    const { marks, width, height } = placingChart(
      {},
      pieces as never,
      { width: 166, height: 300 },
      (name, count, times) => [name, count, times].join(' '),
    );
    expect([width, height]).toEqual([166, expect.closeTo(200 + 8.4, 9)]);
    const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    expect(texts.map(({ text, at }) => [text, at.x])).toEqual([
      ['front 1 2', 30],
      ['back, left 0 1', 60 + 6 + 50],
    ]);
    // One above the other, both above the pieces.
    expect(texts[0]!.at.y).toBeLessThan(texts[1]!.at.y - 2.8);
    expect(texts[1]!.at.y).toBeLessThan(8.4);
    const [first, dots, second, ...more] = marks.flatMap((mark) => (mark.kind === 'path' ? [mark] : []));
    expect(more).toEqual([]);
    const corners = (path: typeof first) =>
      path!.runs[0]!.map((line) => ('from' in line ? line.from : undefined));
    expect(corners(first)).toEqual(square(0, 8.4, 60, 180).map(near));
    expect(corners(second)).toEqual(square(66, 8.4, 100, 200).map(near));
    // 50 and 100 into its piece.
    const [dot] = dots!.runs[0]!;
    expect(dot).toMatchObject({ from: near({ x: 9.75, y: 28.4 }), to: near({ x: 10.25, y: 28.4 }) });
  });

  it('a tall piece is held by the height', () => {
    const tall = [{ ...pieces[0]!, outline: square(0, 0, 10, 1000) }];
    const { width, height } = placingChart({}, tall as never, { width: 180, height: 108.4 }, () => '');
    expect([width, height]).toEqual([expect.closeTo(1, 9), expect.closeTo(108.4, 9)]);
  });
});

describe('a stone that is wider than its dot', () => {
  it('is drawn as its outline, at the chart’s scale', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 200 },
      { x: 0, y: 200 },
    ];
    const pieces = [{ gore: 'a', outline: square, stones: [{ x: 50, y: 60 }], times: 1, once: 1 }];
    // 200 in 108.4 less 8.4: a half.
    const marks = (stones: object) =>
      placingChart(stones, pieces as never, { width: 180, height: 108.4 }, () => '').marks;
    const points = (stones: object) =>
      marks(stones).flatMap((mark) =>
        mark.kind === 'path' && mark.class === 'stone'
          ? mark.runs[0]!.flatMap((curve) => [0, 0.5].map((t) => pointAt(curve, t)))
          : [],
      );
    const size = (stones: object) => {
      const [xs, ys] = [points(stones).map(({ x }) => x), points(stones).map(({ y }) => y)];
      return [
        Math.max(...xs) - Math.min(...xs),
        Math.max(...ys) - Math.min(...ys),
        (Math.max(...xs) + Math.min(...xs)) / 2,
        (Math.max(...ys) + Math.min(...ys)) / 2,
      ];
    };
    // Sampled at quarters and eighths, the ends of both axes among them.
    expect(size({ motif: { width: 40, height: 20 } })).toEqual(
      [20, 10, 25, 8.4 + 30].map((own) => expect.closeTo(own, 6)),
    );
    expect(size({ size: 12 })).toEqual([6, 6, 25, 38.4].map((own) => expect.closeTo(own, 6)));
    // 2 mm are one on paper: a dot of a half.
    expect(size({ size: 2 }).slice(0, 2)).toEqual([0.25, 0].map((own) => expect.closeTo(own, 6)));
  });
});

describe('a seam that stones lie across', () => {
  const line = (x: number, y: number, toX: number, toY: number) =>
    ({ kind: 'line', from: { x, y }, to: { x: toX, y: toY } }) as const;
  // Down by 100, then aslant: 3 across to 4 down.
  const bent = seamLine([line(10, 20, 10, 120), line(10, 120, 40, 160)]);

  it('a foot, and how far beside it', () => {
    expect(bent.ways).toEqual([0, 100, 150]);
    expect(beside(bent, { x: 17, y: 50 })).toEqual({ way: 30, away: 7 });
    // From (25, 140), half way down the slanting part, 10 square off it.
    expect(beside(bent, { x: 33, y: 134 })).toEqual({
      way: expect.closeTo(125, 9),
      away: expect.closeTo(10, 9),
    });
    expect(beside(bent, { x: 10, y: 12 })).toEqual({ way: 0, away: 8 });
    expect(beside(bent, { x: 43, y: 164 })).toEqual({ way: 150, away: 5 });
  });

  it('the place at a way down it, and its direction there', () => {
    expect(frameAt(bent, 30)).toEqual({ at: { x: 10, y: 50 }, down: { x: 0, y: 1 } });
    expect(frameAt(bent, 125)).toEqual({ at: near({ x: 25, y: 140 }), down: near({ x: 0.6, y: 0.8 }) });
    // On past both ends.
    expect(frameAt(bent, 175).at).toEqual(near({ x: 55, y: 180 }));
    expect(frameAt(bent, -10).at).toEqual(near({ x: 10, y: 10 }));
  });

  it('where a stone of the next piece lies once both are sewn', () => {
    const other = seamLine([line(500, 0, 500, 200)]);
    // 7 to the right of the other side and 5 below the place: as far beside this one, which runs as that does.
    expect(acrossSeam(bent, other, 30, { x: 507, y: 35 }, false)).toEqual(near({ x: 17, y: 55 }));
    // Its own mirror image: on the other side.
    expect(acrossSeam(bent, other, 30, { x: 507, y: 35 }, true)).toEqual(near({ x: 3, y: 55 }));
    // Where this one slants: from (25, 140) 5 down it and 10 to its right as it runs down.
    expect(acrossSeam(bent, other, 125, { x: 510, y: 130 }, false)).toEqual(
      near({ x: 25 + 3 + 8, y: 140 + 4 - 6 }),
    );
  });
});

describe('numbers that scatter them', () => {
  it('are even, and never the same twice in a row', () => {
    const random = evenRandom(1);
    const all = Array.from({ length: 20_000 }, random);
    const tenths = Array.from(
      { length: 10 },
      (_, i) => all.filter((one) => Math.floor(10 * one) === i).length,
    );
    // Two thousand in each tenth; five times √1800 is 212.
    for (const count of tenths) expect(Math.abs(count - 2000)).toBeLessThan(212);
    const follows = all.slice(1).reduce((sum, one, i) => sum + (one - 0.5) * (all[i]! - 0.5), 0) / all.length;
    // One after another they have nothing to do with each other: 1/12 were they alike; five times 1/12/√20000.
    expect(Math.abs(follows)).toBeLessThan(0.003);
  });
});

function near({ x, y }: { x: number; y: number }) {
  return { x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) };
}
