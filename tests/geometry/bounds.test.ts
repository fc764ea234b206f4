import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOfCurves, extremesOf, rootsOfQuadratic, roughBoundsOf } from '../../src/geometry/bounds.ts';
import type { Arc, Cubic, Curve, Line, Point } from '../../src/geometry/curve.ts';
import { areDrawable } from '../../src/geometry/endless.ts';
import { derivativeAt, pointAt } from '../../src/geometry/evaluate.ts';
import { evenly } from '../evenly.ts';
import { arcs, curves, points } from './random-curves.ts';

const cubics: fc.Arbitrary<Cubic> = fc.record({
  kind: fc.constant('cubic' as const),
  from: points,
  control1: points,
  control2: points,
  to: points,
});

/** Least and greatest of very many points of the curve. */
function sampledBox(curve: Curve, samples = 2000) {
  const seen = Array.from({ length: samples + 1 }, (_, i) => pointAt(curve, i / samples));
  const [across, down] = [seen.map(({ x }) => x), seen.map(({ y }) => y)];
  return {
    left: Math.min(...across),
    top: Math.min(...down),
    right: Math.max(...across),
    bottom: Math.max(...down),
  };
}

describe('the box of a curve', () => {
  it('is that of its dense samples on every side, and no wider', () => {
    fc.assert(
      fc.property(fc.oneof(arcs, cubics), (curve) => {
        const box = boundsOfCurves([curve]);
        const seen = sampledBox(curve);
        // Between two samples an extreme stands out by a part of the step squared: 3000 · 6.2² / 8 / 2000².
        for (const side of ['left', 'top', 'right', 'bottom'] as const) {
          expect(Math.abs(box[side] - seen[side])).toBeLessThan(0.005);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of several is around them all; nothing has none', () => {
    const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
    const two = [line({ x: 3, y: 40 }, { x: 5, y: 20 }), line({ x: -7, y: 25 }, { x: 1, y: 31 })];
    expect(boundsOfCurves(two)).toEqual({ left: -7, top: 20, right: 5, bottom: 40 });
    expect(boundsOfCurves([...two].reverse())).toEqual({ left: -7, top: 20, right: 5, bottom: 40 });
    expect(() => boundsOfCurves([])).toThrow(/no curves/);
  });

  it('found roughly is that of the control points, or of the whole circle', () => {
    const arc: Arc = { kind: 'arc', centre: { x: 10, y: 200 }, radius: 30, start: 0, sweep: 1 };
    expect(roughBoundsOf(arc)).toEqual({ left: -20, top: 170, right: 40, bottom: 230 });
    const corners = [
      { x: 1, y: 50 },
      { x: 9, y: -6 },
      { x: -4, y: 70 },
      { x: 5, y: 8 },
    ];
    // Whichever of the four stands out on a side.
    for (const turn of [0, 1, 2, 3]) {
      const [from, control1, control2, to] = [...corners.slice(turn), ...corners.slice(0, turn)] as [
        Point,
        Point,
        Point,
        Point,
      ];
      expect(roughBoundsOf({ kind: 'cubic', from, control1, control2, to })).toEqual({
        left: -4,
        top: -6,
        right: 9,
        bottom: 70,
      });
    }
    expect(roughBoundsOf({ kind: 'line', from: { x: 4, y: 2 }, to: { x: 1, y: 3 } })).toEqual({
      left: 1,
      top: 2,
      right: 4,
      bottom: 3,
    });
  });
});

describe('where a curve runs along an axis', () => {
  it('a whole turn does so at its four quarters, a line nowhere', () => {
    const arc: Arc = { kind: 'arc', centre: { x: 0, y: 0 }, radius: 10, start: 0.3, sweep: -2 * Math.PI };
    const found = extremesOf(arc).slice(2);
    const quarters = [
      [-10, 0],
      [0, -10],
      [0, 10],
      [10, 0],
    ].map(([x, y]) => ({ x: expect.closeTo(x!, 9), y: expect.closeTo(y!, 9) }));
    expect(found.sort((a, b) => Math.round(a.x - b.x) || a.y - b.y)).toEqual(quarters);
    expect(extremesOf({ kind: 'line', from: { x: 0, y: 0 }, to: { x: 1, y: 2 } })).toHaveLength(2);
  });

  it('an arc of less has those between its ends, whichever way it runs', () => {
    const counted = (start: number, sweep: number) =>
      extremesOf({ kind: 'arc', centre: { x: 0, y: 0 }, radius: 1, start, sweep }).length - 2;
    expect([counted(0.1, 1.4), counted(0.1, 1.5), counted(1.7, -0.2), counted(1.7, -1.5)]).toEqual([
      0, 1, 1, 1,
    ]);
    expect([counted(-0.1, 0.2), counted(0.1, -1.6), counted(-3, 6)]).toEqual([1, 1, 3]);
    // A quarter at the very end counts as one.
    expect(counted(0.5, Math.PI / 2 - 0.5)).toBe(1);
  });

  it('a cubic does so where its derivative has no part across', () => {
    fc.assert(
      fc.property(cubics, (cubic) => {
        for (const point of extremesOf(cubic).slice(2)) {
          const t = Array.from({ length: 1001 }, (_, i) => i / 1000).reduce((best, at) =>
            Math.hypot(pointAt(cubic, at).x - point.x, pointAt(cubic, at).y - point.y) <
            Math.hypot(pointAt(cubic, best).x - point.x, pointAt(cubic, best).y - point.y)
              ? at
              : best,
          );
          const speed = derivativeAt(cubic, t);
          expect(Math.min(Math.abs(speed.x), Math.abs(speed.y))).toBeLessThan(30);
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('roots of a quadratic', () => {
  it('are those that it was multiplied out from, near and far', () => {
    fc.assert(
      fc.property(evenly(-9, 9), evenly(-9, 9), evenly(0.2, 5), fc.boolean(), (one, other, size, turned) => {
        fc.pre(Math.abs(one - other) > 1e-3);
        const a = turned ? -size : size;
        const found = rootsOfQuadratic(a, -a * (one + other), a * one * other).sort((p, q) => p - q);
        expect(found).toEqual([one, other].sort((p, q) => p - q).map((root) => expect.closeTo(root, 6)));
      }),
    );
    // (x − 10⁻⁹)(x − 10⁹), where the schoolbook's form loses the small root to rounding.
    expect(rootsOfQuadratic(1, -(1e9 + 1e-9), 1).sort((p, q) => p - q)[0]! * 1e9).toBeCloseTo(1, 9);
    expect(rootsOfQuadratic(1, 1e9 + 1e-9, 1).sort((p, q) => q - p)[0]! * 1e9).toBeCloseTo(-1, 9);
  });

  it('are none, one of a line, or one that is nought', () => {
    expect(rootsOfQuadratic(1, 0, 1)).toEqual([]);
    expect(rootsOfQuadratic(0, 4, -8)).toEqual([2]);
    expect(rootsOfQuadratic(1e-17, 4, 8)).toEqual([-2]);
    expect(rootsOfQuadratic(1e-17, 2, -2)).toEqual([1]);
    expect(rootsOfQuadratic(0, 0, 3)).toEqual([]);
    expect(rootsOfQuadratic(3, 0, 0)).toEqual([0]);
    expect(rootsOfQuadratic(2, -8, 8).every((root) => root === 2)).toBe(true);
    expect(rootsOfQuadratic(2, -8, 8).length).toBeGreaterThan(0);
  });
});

describe('what can be drawn', () => {
  const numbers = (curve: Curve): Curve[] => {
    // The same curve with each of its numbers in turn gone to no number.
    const found: Curve[] = [];
    for (const [name, value] of Object.entries(curve)) {
      if (typeof value === 'number') found.push({ ...curve, [name]: Number.NaN });
      if (typeof value === 'object') {
        for (const axis of ['x', 'y']) {
          for (const bad of [Number.NaN, Infinity])
            found.push({ ...curve, [name]: { ...value, [axis]: bad } });
        }
      }
    }
    return found;
  };

  it('has numbers everywhere', () => {
    fc.assert(
      fc.property(curves, (curve) => {
        expect(areDrawable([curve])).toBe(true);
        for (const spoiled of numbers(curve)) {
          expect(areDrawable([spoiled])).toBe(false);
          expect(areDrawable([curve, spoiled, curve])).toBe(false);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('begins and ends within a kilometre, whatever lies between', () => {
    const from = (start: Point, to: Point): Line => ({ kind: 'line', from: start, to });
    const here = { x: 0, y: 0 };
    for (const far of [
      { x: 2e6, y: 0 },
      { x: -2e6, y: 0 },
      { x: 0, y: 2e6 },
      { x: 0, y: -2e6 },
    ]) {
      expect(areDrawable([from(here, far)])).toBe(false);
      expect(areDrawable([from(far, here)])).toBe(false);
      expect(areDrawable([from(here, here), from(far, here)])).toBe(false);
    }
    expect(areDrawable([from({ x: 9e5, y: -9e5 }, { x: -9e5, y: 9e5 })])).toBe(true);
    // An arc that is hardly bent: its centre lies a thousand kilometres away.
    expect(
      areDrawable([{ kind: 'arc', centre: { x: 0, y: 1e9 }, radius: 1e9, start: -Math.PI / 2, sweep: 1e-6 }]),
    ).toBe(true);
  });
});
