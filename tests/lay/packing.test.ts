import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import { convexParts } from '../../src/lay/pack/convex-parts.ts';
import { Layout } from '../../src/lay/pack/layout.ts';
import { NoFitTable } from '../../src/lay/pack/no-fit-table.ts';
import { packStrip } from '../../src/lay/pack/pack-strip.ts';
import {
  type Attitude,
  placedOutline,
  type StripPacking,
  type StripProblem,
  signedArea,
} from '../../src/lay/pack/strip-problem.ts';
import { evenly } from '../evenly.ts';
import { commonArea, moved, rectangle } from './polygons.ts';

/** Cells a side of the rough grid of a no-fit polygon. */
const ROUGH_CELLS = 16;

const AS_DRAWN: Attitude = { shape: 0, mirrored: false, turned: false };

/** Star-shaped about the origin, so simple whatever the radii. */
const star = fc.array(evenly(0.2, 1), { minLength: 3, maxLength: 11 }).map((radii) =>
  radii.map((radius, i): Point => {
    const angle = (2 * Math.PI * i) / radii.length;
    return { x: Math.cos(angle) * radius * 100, y: Math.sin(angle) * radius * 60 };
  }),
);

describe('convex parts', () => {
  it('cover the polygon once', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const parts = convexParts(ring);
        const area = parts.reduce((sum, part) => sum + signedArea(part), 0);
        expect(area).toBeCloseTo(Math.abs(signedArea(ring)), 4);
        for (let i = 0; i < parts.length; i++) {
          for (let j = 0; j < i; j++) expect(commonArea(parts[i]!, parts[j]!)).toBeLessThan(0.01);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('are few', () => {
    expect(convexParts(rectangle(3, 2))).toHaveLength(1);
    const ell = [
      ...rectangle(3, 3).slice(0, 2),
      { x: 3, y: 1 },
      { x: 1, y: 1 },
      { x: 1, y: 3 },
      { x: 0, y: 3 },
    ];
    expect(convexParts(ell)).toHaveLength(2);
  });

  it('keep a corner that the ring names twice, as closed rings do', () => {
    const closed = [...rectangle(3, 2), { x: 0, y: 0 }];
    expect(convexParts(closed).map(signedArea)).toEqual([6]);
  });

  it('refuse what has no area', () => {
    expect(() =>
      convexParts([
        { x: 0, y: 0 },
        { x: 1, y: 1 },
        { x: 2, y: 2 },
      ]),
    ).toThrow('no area');
  });
});

describe('no-fit polygons, against another polygon library', () => {
  const flips = fc.record({ mirrored: fc.boolean(), turned: fc.boolean() });
  const shift = fc.record({
    x: evenly(-150, 150),
    y: evenly(-90, 90),
  });

  it('are deep exactly where two shapes overlap, and moving that far frees them', () => {
    fc.assert(
      fc.property(star, star, flips, flips, shift, (first, second, flipA, flipB, by) => {
        const problem: StripProblem = { width: 1, shapes: [first, second], items: [], gap: 0 };
        const a = placedOutline(problem, { attitude: { shape: 0, ...flipA }, x: 0, y: 0 });
        const b = placedOutline(problem, { attitude: { shape: 1, ...flipB }, x: 0, y: 0 });
        const depth = depthOf(problem, { shape: 0, ...flipA }, { shape: 1, ...flipB }, by);
        const common = commonArea(a, moved(b, by));
        if (depth === 0) expect(common).toBeLessThan(1e-3);
        if (depth > 0.01) expect(common).toBeGreaterThan(0);
        // The depth is the least way out: nothing shorter frees them, and in one direction no more is needed.
        const ways = Array.from({ length: 180 }, (_, i) => (Math.PI * i) / 90);
        const left = (share: number) =>
          Math.min(
            ...ways.map((angle) =>
              commonArea(
                a,
                moved(b, {
                  x: by.x + Math.cos(angle) * depth * share,
                  y: by.y + Math.sin(angle) * depth * share,
                }),
              ),
            ),
          );
        if (depth > 1) {
          expect(left(0.97)).toBeGreaterThan(0);
          expect(left(1.03)).toBeLessThan(1e-3);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('are a rectangle for two rectangles, in closed form', () => {
    const problem: StripProblem = {
      width: 1,
      shapes: [rectangle(40, 20), rectangle(10, 30)],
      items: [],
      gap: 0,
    };
    const at = (x: number, y: number) => depthOf(problem, AS_DRAWN, { ...AS_DRAWN, shape: 1 }, { x, y });
    expect(at(0, 0)).toBeCloseTo(25, 9);
    expect(at(20, 0)).toBeCloseTo(5, 9);
    expect(at(24, 24)).toBeCloseTo(1, 9);
    expect(at(24.9, -20)).toBeCloseTo(0.1, 9);
  });
});

describe('packing a strip', () => {
  it('finds the one row of rectangles that fill it, and stops there', () => {
    const problem = rectangles(100, [60, 40, 30, 70], 50);
    expect(packed(problem, 2e5).length).toBeCloseTo(100, 1);
  });

  it('turns two right trapezoids into a rectangle', () => {
    const gore = [
      { x: 0, y: 0 },
      { x: 12, y: 0 },
      { x: 24, y: 40 },
      { x: 0, y: 40 },
    ];
    const attitudes = [AS_DRAWN, { ...AS_DRAWN, turned: true }];
    const problem: StripProblem = {
      width: 36.001,
      shapes: [gore],
      items: [{ attitudes }, { attitudes }],
      gap: -0.001,
    };
    expect(packed(problem, 2e5).length).toBeCloseTo(40, 6);
  });

  it('overlaps nothing, keeps inside and uses each item once, by another library', () => {
    for (const shapes of fc.sample(fc.array(star, { minLength: 3, maxLength: 3 }), { numRuns: 4, seed: 7 })) {
      const items = Array.from({ length: 9 }, (_, i) => ({
        attitudes: [false, true].map((turned) => ({ shape: i % 3, mirrored: i > 5, turned })),
      }));
      const problem: StripProblem = { width: 300, shapes, items, gap: 1e-6 };
      const packing = packed(problem, 2e5);
      expect(packing.placements.map(({ attitude }) => attitude.shape)).toEqual(items.map((_, i) => i % 3));
      expectClear(problem, packing);
      const area = items.reduce((sum, _, i) => sum + Math.abs(signedArea(shapes[i % 3]!)), 0);
      expect(packing.length).toBeGreaterThanOrEqual(area / 300);
    }
  });

  it('gives the same packing for the same seed, and never a longer one than it starts from', () => {
    const problem = rectangles(100, [55, 45, 35, 65, 25, 75, 50], 40);
    const first = packed(problem, 5e4);
    expect(packed(problem, 5e4)).toEqual(first);
    for (const starts of [0, 1, 3])
      for (const budget of [1, 5e3, 5e4]) {
        const options = { seed: 2, spent: (work: number) => work / budget, start: first, starts };
        const again = packStrip(problem, options);
        expectClear(problem, again);
        expect(again.length).toBeLessThanOrEqual(first.length);
      }
  });

  it('stops when it is told to, with a packing', () => {
    const problem = rectangles(100, [55, 45, 35, 65, 25, 75, 50], 40);
    const packing = packStrip(problem, { seed: 1, spent: () => 1 });
    expectClear(problem, packing);
  });

  it('keeps items on the pattern and on their line', () => {
    const free = rectangles(100, [30, 30, 20], 45);
    const problem: StripProblem = {
      ...free,
      items: free.items.map((item, i) => (i === 0 ? { ...item, middleAt: 15 } : item)),
      repeat: { anchors: free.shapes.map(() => 0), down: 20, across: { step: 10, origin: 50 } },
    };
    const packing = packed(problem, 5e4);
    expectClear(problem, packing);
    expect(packing.placements[0]!.x).toBe(15);
    packing.placements.forEach(({ x, y }, i) => {
      expect(((y - 22.5) / 20) % 1).toBeCloseTo(0, 9);
      if (i > 0) expect(((x - 50) / 10) % 1).toBeCloseTo(0, 9);
    });
  });
});

describe('neighbours of an item, among more than one word of bits holds', () => {
  // Whole numbers, as doubles are drawn by their bits: nearly all of them next to nothing.
  const within = (most: number) => fc.integer({ min: 0, max: most * 64 }).map((units) => units / 64);
  const side = within(140).map((more) => 20 + more);
  const [laid = []] = fc.sample(
    fc.array(fc.record({ width: side, height: side, x: within(1000), y: within(800) }), {
      minLength: 70,
      maxLength: 70,
      size: 'max',
    }),
    { numRuns: 1, seed: 5, unbiased: true },
  );
  const places = fc.sample(fc.record({ item: fc.nat(69), x: within(1000), y: within(800) }), {
    numRuns: 50,
    seed: 5,
    unbiased: true,
  });
  const problem: StripProblem = {
    width: 1000,
    shapes: laid.map(({ width, height }) => rectangle(width, height)),
    items: laid.map((_, shape) => ({ attitudes: [{ ...AS_DRAWN, shape }] })),
    gap: 0,
  };
  const table = new NoFitTable(problem.shapes, problem.gap);
  const layout = new Layout(problem, 1, table);
  layout.length = 800;
  laid.forEach(({ x, y }, i) => {
    layout.put(i, 0, x, y);
  });
  /** How deep a rectangle at the place lies in another, by their sides. */
  const depth = ({ item, x, y }: (typeof places)[number], other: number): number =>
    Math.min(
      (laid[item]!.width + laid[other]!.width) / 2 - Math.abs(x - layout.x(other)),
      (laid[item]!.height + laid[other]!.height) / 2 - Math.abs(y - layout.y(other)),
    );
  const others = (item: number) => Array.from(laid.keys()).filter((other) => other !== item);

  it.each([0, 30])('are all that it could touch within %s', (reach) => {
    let found = 0;
    for (const place of places) {
      const count = table.code.near(place.item, place.x, place.y, reach);
      const near = Array.from({ length: count }, (_, i) => table.code.nearAt(i));
      expect(near.sort((a, b) => a - b)).toEqual(
        others(place.item).filter((other) => depth(place, other) > -reach),
      );
      found += count;
    }
    expect(found).toBeGreaterThan(100);
  });

  it('make places cost about what they overlap, and those past a limit are left out', () => {
    const item = 3;
    const drawn = places.map((place) => {
      const deep = others(item).filter((other) => depth({ ...place, item }, other) > 0);
      const sides = deep
        .map((other) => [laid[item]!, laid[other]!] as const)
        .reduce((sum, [own, its]) => sum + own.width + its.width + own.height + its.height, 0);
      const cost = deep.reduce((sum, other) => sum + depth({ ...place, item }, other), 0);
      // A cell's plane is true at its middle: off it, by no more than half the cell each way.
      return { ...place, cost, off: sides / ROUGH_CELLS / 2 };
    });
    const priced = (limit: number) => {
      for (const { x, y } of drawn) table.code.addDrawn(x, y);
      const count = table.code.price(item, limit);
      return new Map(
        Array.from({ length: count }, (_, i) => [table.code.drawnX(i), table.code.drawnCost(i)]),
      );
    };
    const all = priced(1e30);
    for (const { x, cost, off } of drawn) expect(Math.abs(all.get(x)! - cost)).toBeLessThanOrEqual(off);
    const limit = [...all.values()].sort((a, b) => a - b)[drawn.length / 2]!;
    expect(limit).toBeGreaterThan(20);
    const below = [...all].filter(([, cost]) => cost < limit);
    expect(new Map([...priced(limit)].sort())).toEqual(new Map(below.sort()));
    expect(below).toHaveLength(drawn.length / 2);
  });
});

describe('settling', () => {
  it('pushes a row apart that no single move frees, where there is just room', () => {
    // Five of width 20 on 100.6: each lies 0.5 into the next, and all the room is at one end.
    const layout = new Layout(rectangles(100.6, [20, 20, 20, 20, 20], 30), 1);
    layout.length = 30;
    for (let i = 0; i < 5; i++) layout.put(i, 0, 10 + 19.5 * i, 15);
    expect(layout.overlap(0, 1)).toBeCloseTo(0.5, 2);
    expect(layout.settle()).toBe(true);
    expectClear(layout.problem, layout.packing());
  });

  it('gives up where there is no room', () => {
    const layout = new Layout(rectangles(99, [20, 20, 20, 20, 20], 30), 1);
    layout.length = 30;
    for (let i = 0; i < 5; i++) layout.put(i, 0, 10 + 19.5 * i, 15);
    expect(layout.settle()).toBe(false);
  });
});

it('draws the same random numbers on any machine', () => {
  const layout = new Layout(rectangles(100, [50], 50), 1);
  const drawn = Array.from({ length: 1000 }, () => layout.unit());
  expect(drawn.every((value) => value >= 0 && value < 1)).toBe(true);
  expect(drawn.reduce((sum, value) => sum + value, 0) / 1000).toBeCloseTo(0.5, 1);
  expect(new Set(drawn).size).toBeGreaterThan(995);
});

/** How deep B, shifted from A, lies in it, on a strip that holds both wherever they lie. */
function depthOf(problem: StripProblem, a: Attitude, b: Attitude, by: Point): number {
  const items = [{ attitudes: [a] }, { attitudes: [b] }];
  const layout = new Layout({ ...problem, width: 1000, items }, 1);
  layout.length = 1000;
  layout.put(0, 0, 500, 500);
  layout.put(1, 0, 500 + by.x, 500 + by.y);
  return layout.overlap(0, 1);
}

function rectangles(width: number, widths: readonly number[], height: number): StripProblem {
  return {
    width: width + 1e-3,
    shapes: widths.map((own) => rectangle(own, height)),
    items: widths.map((_, shape) => ({ attitudes: [{ shape, mirrored: false, turned: false }] })),
    gap: -1e-3,
  };
}

function packed(problem: StripProblem, work: number): StripPacking {
  return packStrip(problem, { seed: 1, spent: (done) => done / work });
}

function expectClear(problem: StripProblem, { placements, length }: StripPacking): void {
  const rings = placements.map((placement) => placedOutline(problem, placement));
  rings.forEach((ring, i) => {
    for (const { x, y } of ring) {
      expect(Math.min(x, problem.width - x, y, length - y)).toBeGreaterThan(-1e-6);
    }
    // A strip that lets edges run into each other by a thousandth shares slivers no larger than edge × that.
    for (let j = 0; j < i; j++) expect(commonArea(ring, rings[j]!)).toBeLessThan(0.2);
  });
}
