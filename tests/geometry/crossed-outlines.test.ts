import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import {
  depthIn,
  exitFrom,
  isInside,
  isNoLarger,
  reentrantCorners,
  regionOf,
} from '../../src/geometry/region.ts';
import { selfCrossing } from '../../src/geometry/self-crossing.ts';
import { evenly } from '../evenly.ts';

/** A star about the origin whose rim goes in and out, of any number of corners: it never crosses itself. */
const stars = fc.array(evenly(30, 100), { minLength: 5, maxLength: 70 }).map((radii) =>
  radii.map((radius, i): Point => {
    const turn = (2 * Math.PI * i) / radii.length;
    return { x: radius * Math.cos(turn) + 40, y: radius * Math.sin(turn) - 25 };
  }),
);

const outlineOf = (corners: readonly Point[]): Curve[] =>
  corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % corners.length]! }));

/** Where two chords cross, both of them written out as a + t(b − a). */
function crossingOf([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): Point | undefined {
  const turn = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const [one, other] = [turn(c, d, a), turn(c, d, b)];
  if (one * other > 0 || turn(a, b, c) * turn(a, b, d) > 0 || one === other) return undefined;
  const t = one / (one - other);
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
}

/** Every two chords that do not follow one another, held against each other. */
function crossingsOf(corners: readonly Point[]): Point[] {
  const chords = corners.map((a, i) => [a, corners[(i + 1) % corners.length]!] as const);
  return chords.flatMap((one, i) =>
    chords
      .slice(i + 2)
      .flatMap((other, j) =>
        i === 0 && i + 2 + j === chords.length - 1 ? [] : (crossingOf(one, other) ?? []),
      ),
  );
}

describe('an outline that crosses itself', () => {
  it('is found wherever every two of its chords, held against each other, cross; and at such a place', () => {
    fc.assert(
      fc.property(stars, evenly(0, 1), evenly(0, 1), (corners, one, other) => {
        expect(selfCrossing(outlineOf(corners), 0.02)).toBeUndefined();
        const [i, j] = [one, other].map((share) =>
          Math.min(corners.length - 1, Math.floor(share * corners.length)),
        ) as [number, number];
        const swapped = corners.with(i, corners[j]!).with(j, corners[i]!);
        const crossings = crossingsOf(swapped);
        const found = selfCrossing(outlineOf(swapped), 0.02);
        expect(found !== undefined).toBe(crossings.length > 0);
        if (found === undefined) return;
        expect(Math.min(...crossings.map(({ x, y }) => Math.hypot(x - found.x, y - found.y)))).toBeLessThan(
          1e-9,
        );
      }),
      { numRuns: 300 },
    );
  });

  it('is found on every side of it, however far apart its two chords come in it', () => {
    // A round of 80 corners; one of them drawn out through the rim on the other side.
    for (let i = 0; i < 80; i += 7) {
      for (const reach of [-130, 95]) {
        const corners = Array.from({ length: 80 }, (_, k): Point => {
          const radius = k === i ? reach : 100;
          return { x: radius * Math.cos((k * Math.PI) / 40), y: radius * Math.sin((k * Math.PI) / 40) };
        });
        const found = selfCrossing(outlineOf(corners), 0.02);
        expect(found === undefined).toBe(reach > 0);
        if (found !== undefined) expect(Math.hypot(found.x, found.y)).toBeCloseTo(100, 0);
      }
    }
  });
});

describe('the inside of an outline', () => {
  const insideBy = (corners: readonly Point[], x: number, y: number) => {
    // How often the outline winds round the point, by the angles that its chords are seen under.
    const turns = corners.reduce((sum, a, i) => {
      const b = corners[(i + 1) % corners.length]!;
      const [ax, ay, bx, by] = [a.x - x, a.y - y, b.x - x, b.y - y];
      return sum + Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }, 0);
    return Math.abs(turns) > 1;
  };
  const depthBy = (corners: readonly Point[], x: number, y: number) =>
    Math.min(
      ...corners.flatMap((a, i) => {
        const b = corners[(i + 1) % corners.length]!;
        return Array.from({ length: 401 }, (_, k) =>
          Math.hypot(a.x + ((b.x - a.x) * k) / 400 - x, a.y + ((b.y - a.y) * k) / 400 - y),
        );
      }),
    );
  const region = (corners: readonly Point[]) => regionOf([{ curves: outlineOf(corners), edge: 0 }]);

  it('is where the outline winds round, and so deep as the nearest of dense samples', () => {
    fc.assert(
      fc.property(stars, evenly(-70, 150), evenly(-135, 85), (corners, x, y) => {
        const own = region(corners);
        const inside = insideBy(corners, x, y);
        expect(isInside(own, x, y)).toBe(inside);
        const { depth, deeper } = depthIn(own, x, y);
        expect(depth > 0).toBe(inside);
        expect(Math.abs(depth)).toBeCloseTo(depthBy(corners, x, y), 1);
        const further = depthIn(own, x + 1e-4 * deeper.x, y + 1e-4 * deeper.y).depth;
        expect((further - depth) / 1e-4).toBeGreaterThan(0.99);
      }),
      { numRuns: 60 },
    );
  });

  it('is left where a line from within first crosses out of it, and from without where it last did', () => {
    fc.assert(
      fc.property(
        stars,
        evenly(-70, 150),
        evenly(-135, 85),
        evenly(0, 2 * Math.PI),
        (corners, x, y, turn) => {
          const way = { x: Math.cos(turn), y: Math.sin(turn) };
          const inside = insideBy(corners, x, y);
          const steps = Array.from({ length: 8001 }, (_, k) => (inside ? k : -k) * 0.05);
          const wasIn = steps.map((s) => insideBy(corners, x + s * way.x, y + s * way.y));
          // From without, going back: the first step that lies inside.
          const at = inside ? wasIn.indexOf(false) : wasIn.indexOf(true);
          const exit = exitFrom(region(corners), { x, y }, way, inside);
          if (at < 0) expect(exit).toBeUndefined();
          else expect(Math.abs(exit!.distance - steps[at]!)).toBeLessThan(0.06);
        },
      ),
      { numRuns: 12 },
    );
  });

  it('of a comb is left behind where its last tooth was, through the edge of that tooth', () => {
    // Three teeth 10 wide and 10 apart on a back; a line level through them.
    const teeth = [0, 20, 40].flatMap((x) => [
      { x, y: 0 },
      { x: x + 10, y: 0 },
      { x: x + 10, y: 30 },
      { x: x + 20, y: 30 },
    ]);
    const comb = [...teeth.slice(0, -2), { x: 50, y: 60 }, { x: 0, y: 60 }];
    const own = regionOf(outlineOf(comb).map((curve, edge) => ({ curves: [curve], edge })));
    const exit = (x: number, way: number) => exitFrom(own, { x, y: 12 }, { x: way, y: 0 });
    expect([exit(55, 1), exit(35, 1), exit(15, 1), exit(-5, 1)].map((found) => found?.distance)).toEqual([
      -5,
      -5,
      -5,
      undefined,
    ]);
    expect([exit(-5, -1), exit(15, -1), exit(35, -1), exit(55, -1)].map((found) => found?.distance)).toEqual([
      -5,
      -5,
      -5,
      undefined,
    ]);
    expect([exit(5, 1), exit(25, 1), exit(45, -1)].map((found) => found?.distance)).toEqual([5, 5, 5]);
    expect(exit(55, 1)!.edge).toBe(9);
  });

  it('on its rim deepens square to it, inwards', () => {
    const square = region([
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 30, y: 20 },
      { x: 0, y: 20 },
    ]);
    for (const [x, y, deeper] of [
      [12, 0, { x: 0, y: 1 }],
      [30, 9, { x: -1, y: 0 }],
      [7, 20, { x: 0, y: -1 }],
      [0, 4, { x: 1, y: 0 }],
    ] as const) {
      const found = depthIn(square, x, y);
      expect(Math.abs(found.depth)).toBe(0);
      expect([found.deeper.x, found.deeper.y]).toEqual([
        expect.closeTo(deeper.x, 9),
        expect.closeTo(deeper.y, 9),
      ]);
    }
    expect(isNoLarger(square, square)).toBe(true);
  });

  it('has the corners that stand into it, of 0.03 radians and more', () => {
    const bent = (turn: number): Point[] => [
      { x: 0, y: 0 },
      { x: 50, y: 50 * Math.tan(turn / 2) },
      { x: 100, y: 0 },
      { x: 100, y: 80 },
      { x: 0, y: 80 },
    ];
    expect(reentrantCorners(region(bent(0.04)))).toHaveLength(1);
    expect(reentrantCorners(region(bent(0.02)))).toEqual([]);
    expect(reentrantCorners(region(bent(-0.5)))).toEqual([]);
    // Sharper than square, and at the very first corner.
    const sharp = [
      { x: 50, y: 60 },
      { x: 100, y: 0 },
      { x: 100, y: 80 },
      { x: 0, y: 80 },
      { x: 0, y: 0 },
    ];
    expect(reentrantCorners(region(sharp))).toEqual([{ x: 50, y: 60 }]);
  });
});
