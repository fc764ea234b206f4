import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arc, Cubic, Curve, Line, Point } from '../../src/geometry/curve.ts';
import {
  curvatureAt,
  derivativeAt,
  endOf,
  pointAt,
  secondDerivativeAt,
  startOf,
  tangentAt,
} from '../../src/geometry/evaluate.ts';
import { flattened, flattenedRun } from '../../src/geometry/flatten.ts';
import { integrate } from '../../src/geometry/integrate.ts';
import { lengthOf, lengthOfRun, parameterAtLength, placeOnRun } from '../../src/geometry/length.ts';
import { nearestOnRun } from '../../src/geometry/nearest.ts';
import {
  partOfRun,
  pointOnRun,
  positionAt,
  positionWhere,
  tangentOnRun,
} from '../../src/geometry/run-position.ts';
import { evenly } from '../evenly.ts';
import { arcs, curves, gentleCubics } from './random-curves.ts';

const at = (x: number, y: number): Point => ({ x, y });
const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
const close = (value: number) => expect.closeTo(value, 8);
const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

/** A level line of 30, a quarter turn of radius 20 clockwise as drawn, and 40 straight down: 10π round the turn. */
const BEND: Curve[] = [
  line(at(0, 0), at(30, 0)),
  { kind: 'arc', centre: at(30, 20), radius: 20, start: -Math.PI / 2, sweep: Math.PI / 2 },
  line(at(50, 20), at(50, 60)),
];
const ROUND = 10 * Math.PI;

/** A cubic that stands still: all its points are one. */
const STILL: Cubic = { kind: 'cubic', from: at(3, 4), control1: at(3, 4), control2: at(3, 4), to: at(3, 4) };

describe('derivatives', () => {
  it('the second is how fast the first changes', () => {
    fc.assert(
      fc.property(curves, evenly(0.1, 0.9), (curve, t) => {
        const [before, after] = [derivativeAt(curve, t - 1e-5), derivativeAt(curve, t + 1e-5)];
        const second = secondDerivativeAt(curve, t);
        const size = 1 + apart(before, at(0, 0));
        expect(Math.abs(second.x - (after.x - before.x) / 2e-5) / size).toBeLessThan(1e-5);
        expect(Math.abs(second.y - (after.y - before.y) / 2e-5) / size).toBeLessThan(1e-5);
      }),
      { numRuns: 60 },
    );
  });

  it('a line does not bend, and what stands still neither bends nor goes anywhere', () => {
    expect(curvatureAt(line(at(0, 0), at(3, 4)), 0.5)).toBe(0);
    expect(curvatureAt(STILL, 0.5)).toBe(0);
    expect(tangentAt(STILL, 0.5)).toEqual(at(0, 0));
    expect(tangentAt(line(at(1, 1), at(4, 5)), 0)).toEqual(at(close(0.6), close(0.8)));
  });
});

describe('chords', () => {
  it('of an arc are as few as its tolerance allows', () => {
    fc.assert(
      fc.property(arcs, evenly(0.01, 1), (arc, tolerance) => {
        const chords = flattened(arc, tolerance).length - 1;
        // Sagitta of a chord: r(1 − cos(angle/2)).
        const sagitta = (count: number) => arc.radius * (1 - Math.cos(Math.abs(arc.sweep) / count / 2));
        expect(sagitta(chords)).toBeLessThan(tolerance * 1.0001);
        if (chords > 1) expect(sagitta(chords - 1)).toBeGreaterThan(tolerance * 0.9999);
      }),
      { numRuns: 60 },
    );
    // A circle finer than the tolerance is still a line from its beginning to its end.
    expect(flattened({ kind: 'arc', centre: at(0, 0), radius: 0.01, start: 0, sweep: 1 }, 1)).toHaveLength(2);
  });

  it('of a cubic hold to the bound by its second derivative, whichever end bends more', () => {
    // x = 300t, y = 120t³: its bend is 720 at t = 1. √(720/8/0.1) = 30 chords; reversed too.
    const cubic: Cubic = {
      kind: 'cubic',
      from: at(0, 0),
      control1: at(100, 0),
      control2: at(200, 0),
      to: at(300, 120),
    };
    const back: Cubic = {
      kind: 'cubic',
      from: cubic.to,
      control1: cubic.control2,
      control2: cubic.control1,
      to: cubic.from,
    };
    expect(flattened(cubic, 0.1)).toHaveLength(31);
    expect(flattened(back, 0.1)).toHaveLength(31);
    const points = flattened(cubic, 0.1);
    expect(points[0]).toEqual(cubic.from);
    expect(points.at(-1)).toEqual(cubic.to);
    for (const { x, y } of points) expect(y).toBeCloseTo(120 * (x / 300) ** 3, 9);
    expect(flattened({ ...cubic, to: at(300, 0) }, 0.1)).toEqual([cubic.from, at(300, 0)]);
  });

  it('of a run have each of its joins once', () => {
    const points = flattenedRun(BEND, 0.5);
    for (const join of [at(0, 0), at(30, 0), at(50, 20), at(50, 60)]) {
      expect(points.filter((point) => apart(point, join) < 1e-9)).toHaveLength(1);
    }
    expect(points.every((point, i) => i === 0 || apart(point, points[i - 1]!) > 1)).toBe(true);
    expect(flattenedRun([], 0.5)).toEqual([]);
  });
});

describe('lengths', () => {
  it('the rule is exact to the fifteenth power on each of its parts', () => {
    for (const power of [0, 1, 2, 7, 14, 15]) {
      for (const [a, b] of [
        [0, 1],
        [-1, 2],
        [2, 0.5],
      ] as const) {
        const exact = (b ** (power + 1) - a ** (power + 1)) / (power + 1);
        expect(integrate((x) => x ** power, a, b, 1) / exact).toBeCloseTo(1, 11);
        expect(integrate((x) => x ** power, a, b) / exact).toBeCloseTo(1, 11);
      }
    }
    // Of a power beyond it four parts leave far less than one: the error falls with the part to its 17th power.
    const miss = (parts: number) => Math.abs(integrate((x) => x ** 24, 0, 1, parts) - 1 / 25);
    expect(miss(1)).toBeGreaterThan(1e-10);
    expect(miss(4)).toBeLessThan(miss(1) / 1e6);
  });

  it('of parts add up to the whole', () => {
    fc.assert(
      fc.property(curves, evenly(0, 1), (curve, t) => {
        expect(lengthOf(curve, 0, t) + lengthOf(curve, t, 1)).toBeCloseTo(lengthOf(curve), 6);
        expect(lengthOf(curve, 0.25, 0.25)).toBe(0);
      }),
      { numRuns: 40 },
    );
    expect(lengthOf(line(at(0, 0), at(30, 40)), 0.2, 0.6)).toBeCloseTo(20, 12);
    expect(lengthOf(BEND[1]!, 0.25, 0.75)).toBeCloseTo(ROUND / 2, 12);
    expect(lengthOfRun(BEND)).toBeCloseTo(70 + ROUND, 12);
    expect(lengthOfRun([])).toBe(0);
  });

  it('past either end is that end; what has no length begins at once', () => {
    for (const curve of [
      line(at(0, 0), at(9, 0)),
      BEND[1]!,
      { ...STILL, to: at(90, 4), control2: at(60, 4) },
    ]) {
      expect(parameterAtLength(curve, -1)).toBe(0);
      expect(parameterAtLength(curve, 1000)).toBe(1);
    }
    expect(parameterAtLength(STILL, 1)).toBe(0);
    expect(parameterAtLength(line(at(0, 0), at(0, 0)), 1)).toBe(0);
  });

  it('run on from curve to curve', () => {
    const place = (length: number) => {
      const { curve, t } = placeOnRun(BEND, length);
      return [BEND.indexOf(curve), t];
    };
    expect([place(12), place(30), place(30 + ROUND / 4), place(30 + ROUND + 10), place(1000)]).toEqual([
      [0, close(0.4)],
      [0, 1],
      [1, close(0.25)],
      [2, close(0.25)],
      [2, 1],
    ]);
    const position = [12, 30, 30 + ROUND / 4, 30 + ROUND + 10, 1000].map((length) =>
      positionAt(BEND, length),
    );
    expect(position).toEqual([0.4, 1, 1.25, 2.25, 3].map(close));
  });
});

describe('places on a run', () => {
  it('are the curve and how far along it', () => {
    expect([0, 0.5, 1.5, 2.25, 3].map((place) => pointOnRun(BEND, place))).toEqual(
      [at(0, 0), at(15, 0), at(30 + 20 * Math.SQRT1_2, 20 - 20 * Math.SQRT1_2), at(50, 30), at(50, 60)].map(
        ({ x, y }) => at(close(x), close(y)),
      ),
    );
    expect([0.5, 1.5, 2.5, 3].map((place) => tangentOnRun(BEND, place))).toEqual(
      [at(1, 0), at(Math.SQRT1_2, Math.SQRT1_2), at(0, 1), at(0, 1)].map(({ x, y }) =>
        at(close(x), close(y)),
      ),
    );
    // Before its start and beyond its end it runs straight on.
    expect([pointOnRun(BEND, -0.5), pointOnRun(BEND, 3.5)]).toEqual([at(-15, 0), at(50, 80)]);
  });

  it('a part between two has what lies there, whole curves as they are', () => {
    const part = partOfRun(BEND, 0.5, 2.25);
    expect(part.map((curve) => lengthOf(curve))).toEqual([15, ROUND, 10].map(close));
    expect(part[1]).toBe(BEND[1]);
    expect([startOf(part[0]!), endOf(part[2]!)]).toEqual([at(15, 0), at(50, 30)]);
    expect(partOfRun(BEND, 1, 2)).toEqual([BEND[1]]);
    expect(partOfRun(BEND, 1.2, 1.2)).toEqual([]);
    expect(partOfRun(BEND, -3, 9)).toEqual(BEND);
    expect(partOfRun(BEND, 2, 9)).toEqual([BEND[2]]);
    expect(partOfRun(BEND, -3, 1)).toEqual([BEND[0]]);
    expect(partOfRun(BEND, 1.25, 1.75).map((curve) => lengthOf(curve))).toEqual([close(ROUND / 2)]);
  });

  it('where a value is taken is found to a thousandth of a micrometre, also between two places only', () => {
    const down = (value: number, ...range: number[]) => positionWhere(BEND, ({ y }) => y, value, ...range);
    const sum = (value: number, ...range: number[]) =>
      positionWhere(BEND, ({ x, y }) => x + y, value, ...range);
    expect(down(50)).toBeCloseTo(2.75, 7);
    expect(sum(15)).toBeCloseTo(0.5, 7);
    // x + y on the turn: 50 + 20(sin a − cos a), a from 0 to a quarter.
    expect(sum(50 + 20 * (Math.sin(0.5) - Math.cos(0.5)))).toBeCloseTo(1 + 0.5 / (Math.PI / 2), 7);
    expect([sum(-3), sum(999), sum(0), sum(110)]).toEqual([0, 3, expect.closeTo(0, 7), 3]);
    expect([sum(-3, 0.5, 2.5), sum(15.5, 0.5, 2.5), sum(999, 0.5, 2.5)]).toEqual([
      0.5,
      expect.closeTo(0.5 + 0.5 / 30, 7),
      2.5,
    ]);
    expect(positionWhere(BEND, ({ x, y }) => -x - y, -15)).toBeCloseTo(0.5, 7);
    expect(positionWhere(BEND, ({ x, y }) => -x - y, -999)).toBe(3);
    expect(positionWhere(BEND, ({ x, y }) => -x - y, 999)).toBe(0);
  });

  it('is found in few looks, however unevenly the measure rises', () => {
    for (const power of [9, 1 / 9]) {
      for (const share of [0.01, 0.3, 0.99]) {
        let looks = 0;
        const measure = ({ x }: Point) => {
          looks++;
          return (x / 100) ** power;
        };
        const found = positionWhere([line(at(0, 0), at(100, 0))], measure, share ** power);
        // Within a millionth of what is measured, or of the way.
        const miss = Math.abs(found ** power - share ** power);
        expect(Math.min(miss, Math.abs(found - share))).toBeLessThan(1.1e-6);
        expect(looks).toBeLessThan(40);
      }
    }
  });
});

describe('the nearest point', () => {
  it('of a run lies on whichever curve is nearest', () => {
    const near = (x: number, y: number) => nearestOnRun(BEND, at(x, y));
    expect(near(10, -5)).toEqual({
      index: 0,
      t: close(1 / 3),
      point: at(close(10), close(0)),
      distance: close(5),
    });
    expect(near(-3, -4)).toEqual({ index: 0, t: 0, point: at(0, 0), distance: close(5) });
    expect(near(60, 45)).toEqual({
      index: 2,
      t: close(0.625),
      point: at(close(50), close(45)),
      distance: close(10),
    });
    expect(near(53, 64)).toEqual({ index: 2, t: 1, point: at(50, 60), distance: close(5) });
    expect(near(30 + 50 * 0.6, 20 - 50 * 0.8)).toMatchObject({
      index: 1,
      point: at(close(30 + 20 * 0.6), close(20 - 20 * 0.8)),
      distance: close(30),
    });
    expect(() => nearestOnRun([], at(0, 0))).toThrow(/empty run/);
  });

  it('has its foot square to the curve, from either side', () => {
    fc.assert(
      fc.property(gentleCubics, evenly(0.02, 0.98), evenly(-8, 8), (curve, t, off) => {
        const [on, way] = [pointAt(curve, t), tangentAt(curve, t)];
        const from = at(on.x - off * way.y, on.y + off * way.x);
        const found = nearestOnRun([curve], from);
        expect(found.distance).toBeCloseTo(Math.abs(off), 6);
        expect(apart(found.point, on)).toBeLessThan(1e-5);
        expect(apart(pointAt(curve, found.t), found.point)).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  it('from within a circle lies straight out, also far from the samples', () => {
    const round: Arc = { kind: 'arc', centre: at(5, -7), radius: 100, start: 0.3, sweep: 6 };
    for (const turn of [0.4, 0.55, 1.7, 3, 6.2]) {
      const found = nearestOnRun([round], at(5 + 20 * Math.cos(turn), -7 + 20 * Math.sin(turn)));
      expect(found.distance).toBeCloseTo(80, 9);
      expect(found.t).toBeCloseTo((turn - 0.3) / 6, 9);
    }
  });
});
