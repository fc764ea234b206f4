import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meeting } from '../../src/geometry/corner.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { curvatureAt, endOf, pointAt, startOf, tangentAt } from '../../src/geometry/evaluate.ts';
import { fitCubics } from '../../src/geometry/fit-cubics.ts';
import { hermiteProfile } from '../../src/geometry/hermite-profile.ts';
import { monotoneSlopes } from '../../src/geometry/monotone-slopes.ts';
import { offsetCurve } from '../../src/geometry/offset.ts';
import { selfCrossing } from '../../src/geometry/self-crossing.ts';
import { evenly } from '../evenly.ts';
import { arcs, gentleCubics, lines } from './random-curves.ts';

/**
 * Nearest of very many points of the curve: no projection, nothing shared with the code under test. All along it in
 * steps of its 400th part, then as finely again around each of the three nearest.
 */
function distanceBySampling(point: Point, curve: Curve, samples = 400): number {
  const away = (t: number): number => {
    const at = pointAt(curve, t);
    return Math.hypot(at.x - point.x, at.y - point.y);
  };
  const coarse = Array.from({ length: samples + 1 }, (_, i) => ({ i, off: away(i / samples) }));
  const nearest = coarse.sort((a, b) => a.off - b.off).slice(0, 3);
  return Math.min(
    ...nearest.flatMap(({ i }) =>
      Array.from({ length: 41 }, (_, fine) => away(Math.min(1, Math.max(0, (i - 1 + fine / 20) / samples)))),
    ),
  );
}

const distances = fc.oneof(evenly(3, 60), evenly(-60, -3));

describe('an offset lies at its true distance everywhere', () => {
  it.each([
    ['lines', lines],
    ['arcs', arcs],
    ['gentle cubics', gentleCubics],
  ] as const)('%s', (_, kind) => {
    fc.assert(
      fc.property(kind as fc.Arbitrary<Curve>, distances, (curve, distance) => {
        const offset = offsetCurve(curve, distance, 0.004);
        if (offset === undefined) return;
        for (const piece of offset) {
          for (const t of [0.2, 0.5, 0.8]) {
            const off = distanceBySampling(pointAt(piece, t), curve);
            expect(Math.abs(off - Math.abs(distance))).toBeLessThan(0.02);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is refused only where the curve bends tighter than the distance', () => {
    fc.assert(
      fc.property(gentleCubics, distances, (curve, distance) => {
        const tightest = Math.min(
          ...Array.from({ length: 201 }, (_, i) => 1 + curvatureAt(curve, i / 200) * distance),
        );
        if (tightest > 0.1) expect(offsetCurve(curve, distance, 0.004)).toBeDefined();
        if (tightest < 0) expect(offsetCurve(curve, distance, 0.004)).toBeUndefined();
      }),
    );
  });

  it('lies to the left of the direction of travel, outwards on a clockwise outline', () => {
    const [moved] = offsetCurve({ kind: 'line', from: { x: 0, y: 0 }, to: { x: 100, y: 0 } }, 15, 0.004)!;
    expect(startOf(moved!)).toEqual({ x: 0, y: -15 });
  });
});

describe('corners', () => {
  const across: Curve = { kind: 'line', from: { x: 0, y: 0 }, to: { x: 100, y: 0 } };

  it('two lines that fall short run on to their crossing', () => {
    const down: Curve = { kind: 'line', from: { x: 110, y: 10 }, to: { x: 110, y: 200 } };
    const corner = meeting([across], [down], 40)!;
    expect(endOf(corner.before.at(-1)!)).toEqual({ x: 110, y: 0 });
    expect(startOf(corner.after[0]!)).toEqual({ x: 110, y: 0 });
  });

  it('two lines that cross are cut at the crossing', () => {
    const down: Curve = { kind: 'line', from: { x: 90, y: -10 }, to: { x: 90, y: 200 } };
    const corner = meeting([across], [down], 40)!;
    expect(endOf(corner.before.at(-1)!).x).toBeCloseTo(90, 9);
    expect(startOf(corner.after[0]!).y).toBeCloseTo(0, 9);
  });

  it('says so when they meet beyond reach', () => {
    const away: Curve = { kind: 'line', from: { x: 200, y: 10 }, to: { x: 210, y: 200 } };
    expect(meeting([across], [away], 40)).toBeUndefined();
  });
});

describe('fitted cubics', () => {
  it('hold a spiral within the tolerance that was asked for, at every accuracy', () => {
    const spiral = {
      pointAt: (t: number) => ({ x: (100 + 30 * t) * Math.cos(t), y: (100 + 30 * t) * Math.sin(t) }),
      derivativeAt: (t: number) => ({
        x: 30 * Math.cos(t) - (100 + 30 * t) * Math.sin(t),
        y: 30 * Math.sin(t) + (100 + 30 * t) * Math.cos(t),
      }),
    };
    /** How far round a point lies, 0 to 2π: the spiral's own parameter. */
    const turnTo = ({ x, y }: Point) => (Math.atan2(y, x) + 2 * Math.PI) % (2 * Math.PI);
    const counts = [1, 0.1, 0.01, 0.001].map((tolerance) => {
      const fit = fitCubics(spiral, 0, 5, tolerance);
      for (let i = 0; i <= 400; i++) {
        const point = spiral.pointAt(i / 80);
        const beside = fit.filter(
          ({ from, to }) => turnTo(from) <= i / 80 + 0.05 && turnTo(to) >= i / 80 - 0.05,
        );
        expect(Math.min(...beside.map((cubic) => distanceBySampling(point, cubic, 40)))).toBeLessThan(
          tolerance * 1.5 + 0.001,
        );
      }
      expect(Math.abs(tangentAt(fit[0]!, 0).x)).toBeCloseTo(30 / Math.hypot(30, 100), 9);
      return fit.length;
    });
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
  });
});

describe('the smooth curve through measured stations', () => {
  const knots = fc
    .array(fc.record({ step: evenly(1, 100), y: fc.integer({ min: 0, max: 300 }) }), {
      minLength: 2,
      maxLength: 12,
    })
    .map((list) => ({
      x: list.map((_, i) => list.slice(0, i + 1).reduce((sum, { step }) => sum + step, 0)),
      y: list.map(({ y }) => y),
    }));

  it('never leaves the range of its two neighbours: no dip between stations', () => {
    fc.assert(
      fc.property(knots, ({ x, y }) => {
        const profile = hermiteProfile(x, y, monotoneSlopes(x, y, 0, 0));
        for (let i = 1; i < x.length; i++) {
          for (let part = 0; part <= 1; part += 0.05) {
            const value = profile.valueAt(x[i - 1]! + part * (x[i]! - x[i - 1]!));
            expect(value).toBeGreaterThan(Math.min(y[i - 1]!, y[i]!) - 1e-9);
            expect(value).toBeLessThan(Math.max(y[i - 1]!, y[i]!) + 1e-9);
          }
        }
      }),
    );
  });

  it('its slope is the derivative of its value', () => {
    fc.assert(
      fc.property(knots, evenly(0.01, 0.99), ({ x, y }, part) => {
        const profile = hermiteProfile(x, y, monotoneSlopes(x, y, 'free', 0));
        const at = x[0]! + part * (x.at(-1)! - x[0]!);
        if (x.some((knot) => Math.abs(knot - at) < 0.01)) return;
        const numeric = (profile.valueAt(at + 1e-4) - profile.valueAt(at - 1e-4)) / 2e-4;
        expect(profile.slopeAt(at)).toBeCloseTo(numeric, 3);
      }),
    );
  });

  it('is the clamped cubic spline where that rises evenly (closed form for three knots)', () => {
    // Clamped at both ends, knots 0, 1, 2: m₁ = 3(y₂ − y₀)/4 (textbook).
    expect(monotoneSlopes([0, 1, 2], [0, 1, 2.5], 0, 0)[1]).toBeCloseTo((3 * 2.5) / 4, 12);
  });

  it('is a straight line through straight knots when its ends are free', () => {
    expect(monotoneSlopes([0, 2, 3, 7], [1, 5, 7, 15], 'free', 'free')).toEqual(
      [2, 2, 2, 2].map((v) => expect.closeTo(v, 12)),
    );
  });
});

describe('an outline that crosses itself', () => {
  const outline = (points: readonly [number, number][]): Curve[] =>
    points.map(([x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!;
      return { kind: 'line', from: { x, y }, to: { x: nextX, y: nextY } };
    });

  it('is found, at its crossing', () => {
    expect(
      selfCrossing(
        outline([
          [0, 0],
          [100, 100],
          [100, 0],
          [0, 100],
        ]),
        0.02,
      ),
    ).toEqual({ x: 50, y: 50 });
  });

  it('is not found in a plain square', () => {
    expect(
      selfCrossing(
        outline([
          [0, 0],
          [100, 0],
          [100, 100],
          [0, 100],
        ]),
        0.02,
      ),
    ).toBeUndefined();
  });
});
