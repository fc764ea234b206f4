import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaInside } from '../../src/geometry/area.ts';
import type { Cubic, Curve, Line, Point } from '../../src/geometry/curve.ts';
import { endOf, pointAt, startOf } from '../../src/geometry/evaluate.ts';
import { fitCubics, type ParametricCurve } from '../../src/geometry/fit-cubics.ts';
import { hermiteProfile } from '../../src/geometry/hermite-profile.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { monotoneSlopes } from '../../src/geometry/monotone-slopes.ts';
import { bendsTighterThan, offsetCurve, stretchesThatOffset } from '../../src/geometry/offset.ts';
import { oval } from '../../src/geometry/oval.ts';
import {
  add,
  along,
  angleBetween,
  cross,
  dot,
  leftOf,
  middle,
  scaled,
  unit,
} from '../../src/geometry/point.ts';
import { reversedRun } from '../../src/geometry/split.ts';
import { tidied } from '../../src/geometry/tidied.ts';
import { enlarged, reflected, reflectedPoint, rotated, translated } from '../../src/geometry/transform.ts';
import { evenly } from '../evenly.ts';
import { curves, points } from './random-curves.ts';

const at = (x: number, y: number): Point => ({ x, y });
const line = (x1: number, y1: number, x2: number, y2: number): Line => ({
  kind: 'line',
  from: at(x1, y1),
  to: at(x2, y2),
});
const arc = (x: number, y: number, radius: number, start: number, sweep: number): Curve => ({
  kind: 'arc',
  centre: at(x, y),
  radius,
  start,
  sweep,
});
const close = (value: number) => expect.closeTo(value, 9);
const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

describe('vectors', () => {
  it('by hand', () => {
    const [a, b] = [at(3, 4), at(-2, 7)];
    expect([add(a, b), along(a, b, 2), middle(a, b), scaled(a, 3)]).toEqual([
      at(1, 11),
      at(-1, 18),
      at(0.5, 5.5),
      at(9, 12),
    ]);
    expect([dot(a, b), cross(a, b), cross(b, a)]).toEqual([22, 29, -29]);
    expect([unit(a), unit(at(0, 0)), leftOf(a)]).toEqual([at(0.6, 0.8), at(0, 0), at(4, -3)]);
    // From 0 to half a turn, whichever of the two comes first.
    for (const turn of [0.2, 1.5, 3]) {
      const other = at(5 * Math.cos(1 + turn), 5 * Math.sin(1 + turn));
      const one = at(2 * Math.cos(1), 2 * Math.sin(1));
      expect([angleBetween(one, other), angleBetween(other, one)]).toEqual([close(turn), close(turn)]);
    }
  });
});

describe('curves moved as they are', () => {
  it('every point goes where the map takes it', () => {
    fc.assert(
      fc.property(
        curves,
        points,
        evenly(-4, 4),
        evenly(0.2, 3),
        evenly(0, 1),
        (curve, shift, angle, factor, t) => {
          const { x, y } = pointAt(curve, t);
          const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
          const moved = pointAt(translated(curve, shift), t);
          expect(apart(moved, at(x + shift.x, y + shift.y))).toBeLessThan(1e-8);
          expect(
            apart(pointAt(rotated(curve, angle), t), at(cos * x - sin * y, sin * x + cos * y)),
          ).toBeLessThan(1e-8);
          expect(apart(pointAt(enlarged(curve, factor), t), at(factor * x, factor * y))).toBeLessThan(1e-8);
          // Turned so that the axis lies level, mirrored in it, turned back.
          const [dx, dy] = [x - shift.x, y - shift.y];
          const [onward, off] = [cos * dx + sin * dy, -sin * dx + cos * dy];
          const mirrored = at(shift.x + cos * onward + sin * off, shift.y + sin * onward - cos * off);
          const axis = at(3 * cos, 3 * sin);
          expect(apart(reflectedPoint(at(x, y), shift, axis), mirrored)).toBeLessThan(1e-8);
          expect(apart(pointAt(reflected(curve, shift, axis), t), mirrored)).toBeLessThan(1e-8);
        },
      ),
      { numRuns: 80 },
    );
  });

  it('a run reversed begins with its last curve, run back', () => {
    const run = [line(0, 0, 5, 1), line(5, 1, 7, 9)];
    expect(reversedRun(run)).toEqual([line(7, 9, 5, 1), line(5, 1, 0, 0)]);
  });

  it('an oval is an ellipse within 0.03 %, from its left end clockwise', () => {
    const run = oval(at(10, -20), 60, 25);
    expect(startOf(run[0]!)).toEqual(at(-50, -20));
    expect(startOf(run[1]!)).toEqual(at(10, -45));
    expect(areaInside(run) / (Math.PI * 60 * 25)).toBeCloseTo(1, 3);
    for (const [i, curve] of run.entries()) {
      expect(apart(endOf(curve), startOf(run[(i + 1) % 4]!))).toBeLessThan(1e-9);
      for (const t of [0.2, 0.4, 0.5, 0.7]) {
        const { x, y } = pointAt(curve, t);
        expect(Math.abs(Math.hypot((x - 10) / 60, (y + 20) / 25) - 1)).toBeLessThan(3e-4);
      }
    }
  });
});

describe('a run made tidy', () => {
  it('lines that go on are one, what turns or comes back is not', () => {
    expect(tidied([line(0, 0, 5, 0), line(5, 0, 9, 0), line(9, 0, 20, 0)])).toEqual([line(0, 0, 20, 0)]);
    expect(tidied([line(0, 0, 5, 0), line(5, 0, 9, 1e-9)])).toHaveLength(2);
    expect(tidied([line(0, 0, 5, 0), line(5, 0, 2, 0)])).toHaveLength(2);
    expect(tidied([line(0, 0, 5, 0), arc(5, 5, 5, -Math.PI / 2, 1)])).toHaveLength(2);
    expect(tidied([])).toEqual([]);
  });

  it('arcs of one circle that turn one way are one', () => {
    expect(tidied([arc(1, 2, 50, 0, 1), arc(1, 2, 50, 1, 0.5)])).toEqual([arc(1, 2, 50, 0, 1.5)]);
    expect(tidied([arc(1, 2, 50, 0, -1), arc(1, 2, 50, -1, -0.5)])).toEqual([arc(1, 2, 50, 0, -1.5)]);
    for (const other of [
      arc(1, 2, 50, 1, -0.5),
      arc(1, 3, 50, 1, 0.5),
      arc(2, 2, 50, 1, 0.5),
      arc(1, 2, 49, 1, 0.5),
    ]) {
      expect(tidied([arc(1, 2, 50, 0, 1), other])).toHaveLength(2);
    }
    expect(tidied([arc(1, 2, 50, 0, 1), line(0, 0, 5, 5)])).toHaveLength(2);
  });

  it('crumbs are gone, and no gap is left where they lay', () => {
    const crumb = line(10, 0, 10.005, 0.003);
    expect(tidied([line(0, 0, 10, 0), crumb, line(10.005, 0.003, 10, 50)])).toEqual([
      line(0, 0, 10.005, 0.003),
      line(10.005, 0.003, 10, 50),
    ]);
    expect(tidied([crumb, line(10.005, 0.003, 10, 50)])).toEqual([line(10, 0, 10, 50)]);
    expect(tidied([crumb, line(10.005, 0.003, 10.007, 0.003), line(10.007, 0.003, 10, 50)])).toEqual([
      line(10, 0, 10, 50),
    ]);
    expect(tidied([line(0, 0, 10, 0), crumb])).toEqual([line(0, 0, 10.005, 0.003)]);
    // Nothing of an arc is drawn out.
    expect(tidied([arc(0, 0, 10, 0, 1), line(1, 1, 1.001, 1), line(1, 1, 9, 9)])).toEqual([
      arc(0, 0, 10, 0, 1),
      line(1, 1, 9, 9),
    ]);
    expect(tidied([crumb, arc(0, 0, 10, 0, 1), line(0, 0, 5, 1)])).toEqual([
      arc(0, 0, 10, 0, 1),
      line(0, 0, 5, 1),
    ]);
    expect(tidied([line(0, 0, 0.02, 0)])).toHaveLength(1);
    // A cubic counts by how fast it runs in its middle: ends that meet do not make it a crumb.
    const loop: Cubic = {
      kind: 'cubic',
      from: at(0, 0),
      control1: at(40, 30),
      control2: at(-40, 30),
      to: at(0, 0),
    };
    expect(tidied([loop])).toEqual([loop]);
  });
});

describe('cubics that are fitted', () => {
  const checked = (curve: ParametricCurve, tolerance = 0.01) => fitCubics(curve, 0, 1, tolerance);

  it('a cubic is fitted by itself, over any part', () => {
    const cubic: ParametricCurve = {
      pointAt: (t) => at(100 * t, 40 * t ** 3 - 10 * t),
      derivativeAt: (t) => at(100, 120 * t * t - 10),
    };
    const [fit, ...rest] = fitCubics(cubic, 0.2, 0.9, 1e-6);
    expect(rest).toEqual([]);
    for (const t of [0, 0.3, 0.8, 1]) {
      const wanted = cubic.pointAt(0.2 + 0.7 * t);
      expect(apart(pointAt(fit!, t), wanted)).toBeLessThan(1e-9);
    }
  });

  it('slipping along the line does no harm, across it does', () => {
    const [cos, sin] = [0.6, 0.8];
    const straight: ParametricCurve = {
      pointAt: (t) => at(50 * cos * Math.exp(3 * t), 50 * sin * Math.exp(3 * t)),
      derivativeAt: (t) => at(150 * cos * Math.exp(3 * t), 150 * sin * Math.exp(3 * t)),
    };
    expect(checked(straight)).toHaveLength(1);
    const bent: ParametricCurve = {
      pointAt: (t) => at(50 * Math.exp(3 * t), 20 * Math.sin(6 * t)),
      derivativeAt: (t) => at(150 * Math.exp(3 * t), 120 * Math.cos(6 * t)),
    };
    const upright: ParametricCurve = {
      pointAt: (t) => at(20 * Math.sin(6 * t), 50 * Math.exp(3 * t)),
      derivativeAt: (t) => at(120 * Math.cos(6 * t), 150 * Math.exp(3 * t)),
    };
    expect(checked(bent).length).toBeGreaterThan(2);
    // What lies on its side is fitted as it is standing up.
    expect(checked(upright)).toHaveLength(checked(bent).length);
  });

  it.each([0.1, 0.9])('a dent at %d of the way is seen', (place) => {
    const way = (t: number) => Math.min(1, Math.abs(t - place) / 0.06);
    const dented: ParametricCurve = {
      pointAt: (t) => at(500 * t, 3 * (1 - way(t) ** 2) ** 2),
      derivativeAt: (t) => at(500, way(t) === 1 ? 0 : (-12 * (1 - way(t) ** 2) * (t - place)) / 0.06 ** 2),
    };
    const fit = checked(dented);
    expect(fit.length).toBeGreaterThan(2);
    expect(lengthOfRun(fit)).toBeLessThan(501);
  });

  it('what nothing fits ends all the same, and what stands still is one', () => {
    const torn: ParametricCurve = {
      pointAt: (t) => at(t < 1 / 3 ? 0 : 100, t),
      derivativeAt: () => at(0, 1),
    };
    // Halved twelve times where it is torn, once a halving elsewhere.
    expect(checked(torn)).toHaveLength(13);
    expect(checked({ pointAt: () => at(3, 4), derivativeAt: () => at(0, 0) })).toHaveLength(1);
    // What is no number is as far off in any number of pieces.
    expect(checked({ pointAt: (t) => at(t, t), derivativeAt: () => at(Number.NaN, 1) })).toHaveLength(1);
  });
});

describe('what moves to its side', () => {
  it('an arc grows or shrinks by the way it turns; nothing at all is itself', () => {
    expect(offsetCurve(arc(0, 0, 50, 0, 1), 10, 0.004)).toEqual([arc(0, 0, 60, 0, 1)]);
    expect(offsetCurve(arc(0, 0, 50, 1, -1), 10, 0.004)).toEqual([arc(0, 0, 40, 1, -1)]);
    expect(offsetCurve(arc(0, 0, 50, 0, 1), -45, 0.004)).toEqual([arc(0, 0, 5, 0, 1)]);
    expect(offsetCurve(arc(0, 0, 50, 0, 1), -50, 0.004)).toBeUndefined();
    expect(offsetCurve(arc(0, 0, 50, 1, -1), 60, 0.004)).toBeUndefined();
    const own = arc(0, 0, 5, 0, 1);
    expect(offsetCurve(own, 0, 0.004)).toEqual([own]);
    expect(offsetCurve(line(0, 0, 30, 40), -10, 0.004)).toEqual([line(-8, 6, 22, 46)]);
  });

  /** y = 0.01x² from −100 to 100, as a cubic: least radius 50, where it is level; its ends run at ±63°. */
  const parabola: Cubic = {
    kind: 'cubic',
    from: at(-100, 100),
    control1: at(-100 / 3, -100 / 3),
    control2: at(100 / 3, -100 / 3),
    to: at(100, 100),
  };

  it('a parabola folds from its least radius on, on its inside alone, both ways round', () => {
    const back = reversedRun([parabola])[0]!;
    // y grows down: on its way to the right it turns clockwise, and its inside lies to the right.
    expect([45, 55, -45, -55, -900].map((way) => bendsTighterThan(parabola, way))).toEqual(
      [45, 55, -45, -55, -900].map((way) => way < -49),
    );
    expect([45, 55, -45, -55, 900].map((way) => bendsTighterThan(back, way))).toEqual(
      [45, 55, -45, -55, 900].map((way) => way > 49),
    );
    expect(bendsTighterThan(line(0, 0, 1, 1), 900)).toBe(false);
    expect(bendsTighterThan(parabola, 0)).toBe(false);
  });

  it('is parted where it begins to fold and where it ends', () => {
    // Radius (1 + (0.02x)²)^1.5 · 50: what keeps 0.02 of its length at 80 has one of 80/0.98.
    const x = 50 * Math.sqrt((80 / 0.98 / 50) ** (2 / 3) - 1);
    const [first, second, ...rest] = stretchesThatOffset(parabola, -80);
    expect(rest).toEqual([]);
    expect([startOf(first!).x, endOf(first!).x, startOf(second!).x, endOf(second!).x]).toEqual(
      [-100, -x, x, 100].map((value) => expect.closeTo(value, 6)),
    );
    expect(stretchesThatOffset(parabola, 80)).toEqual([
      expect.objectContaining({ from: parabola.from, to: parabola.to }),
    ]);
    // The half that begins with the fold, and the one that ends with it.
    const [left, right] = [-1, 1].map(
      (side): Cubic => ({
        kind: 'cubic',
        from: side < 0 ? parabola.from : at(0, 0),
        control1: side < 0 ? at(-200 / 3, 100 / 3) : at(100 / 3, 0),
        control2: side < 0 ? at(-100 / 3, 0) : at(200 / 3, 100 / 3),
        to: side < 0 ? at(0, 0) : parabola.to,
      }),
    );
    expect(stretchesThatOffset(left!, -80).map((part) => [startOf(part).x, endOf(part).x])).toEqual([
      [-100, expect.closeTo(-x, 6)],
    ]);
    expect(stretchesThatOffset(right!, -80).map((part) => [startOf(part).x, endOf(part).x])).toEqual([
      [expect.closeTo(x, 6), 100],
    ]);
    expect(stretchesThatOffset(arc(0, 0, 50, 0, 1), -60)).toEqual([]);
    expect(stretchesThatOffset(arc(0, 0, 50, 0, 1), 60)).toEqual([arc(0, 0, 50, 0, 1)]);
  });
});

describe('heights over a way', () => {
  const profile = hermiteProfile([0, 2, 5], [1, 5, 6], [1, 2, -0.5]);

  it('hold at the knots, with their slopes, and run on straight', () => {
    expect([0, 2, 5].map(profile.valueAt)).toEqual([1, 5, 6].map(close));
    expect([0, 2, 5].map(profile.slopeAt)).toEqual([1, 2, -0.5].map(close));
    expect([-3, 9].map(profile.valueAt)).toEqual([-2, 4]);
    expect([-3, 9].map(profile.slopeAt)).toEqual([1, -0.5]);
    expect(profile.joins).toEqual([0, 2, 5]);
  });

  it('between them are the cubic of Hermite: half way the mean, and an eighth of the difference of slopes', () => {
    expect(profile.valueAt(1)).toBeCloseTo((1 + 5) / 2 + (2 * (1 - 2)) / 8, 12);
    expect(profile.valueAt(3.5)).toBeCloseTo((5 + 6) / 2 + (3 * (2 + 0.5)) / 8, 12);
    // There its slope is one and a half times the rise, less a quarter of both slopes.
    expect(profile.slopeAt(1)).toBeCloseTo(1.5 * 2 - (1 + 2) / 4, 12);
    expect(profile.slopeAt(3.5)).toBeCloseTo(1.5 / 3 - (2 - 0.5) / 4, 12);
  });

  it('a cubic comes back whole from its own slopes', () => {
    const own = (x: number) => 0.3 * x ** 3 - 2 * x * x + x + 4;
    const slope = (x: number) => 0.9 * x * x - 4 * x + 1;
    const knots = [-2, 0.5, 1, 4, 7];
    const whole = hermiteProfile(knots, knots.map(own), knots.map(slope));
    for (const x of [-1.9, -1, 0.4, 0.7, 1, 2, 3.9, 4.1, 6.9]) {
      expect(whole.valueAt(x)).toBeCloseTo(own(x), 9);
      expect(whole.slopeAt(x)).toBeCloseTo(slope(x), 9);
    }
  });
});

describe('slopes at the knots', () => {
  it('are those of the clamped spline: its second derivative is one number on both sides of a knot', () => {
    const [x, y] = [
      [0, 1, 3, 4, 6],
      [0, 2, 5, 7, 10],
    ];
    const slopes = monotoneSlopes(x!, y!, 1.5, 1.2);
    expect([slopes[0], slopes[4]]).toEqual([1.5, 1.2]);
    for (const i of [1, 2, 3]) {
      const [before, after] = [x![i]! - x![i - 1]!, x![i + 1]! - x![i]!];
      const [rise, next] = [(y![i]! - y![i - 1]!) / before, (y![i + 1]! - y![i]!) / after];
      // Of a Hermite piece: (2m₀ + 4m₁ − 6·rise)/h at its end, (6·rise − 4m₀ − 2m₁)/h at its start.
      const ends = (2 * slopes[i - 1]! + 4 * slopes[i]! - 6 * rise) / before;
      expect(ends).toBeCloseTo((6 * next - 4 * slopes[i]! - 2 * slopes[i + 1]!) / after, 9);
    }
    // Free ends do not bend.
    const free = monotoneSlopes(x!, y!, 'free', 'free');
    expect(2 * free[0]! + free[1]!).toBeCloseTo(3 * 2, 9);
    expect(2 * free[4]! + free[3]!).toBeCloseTo(3 * 1.5, 9);
  });

  it('are nought at flats and turns, and the two sides of one do not know of each other', () => {
    const slopes = monotoneSlopes([0, 1, 2, 3, 4, 5], [0, 1, 3, 3, 2, 0], 'free', 'free');
    expect([slopes[2], slopes[3]]).toEqual([0, 0]);
    expect(slopes.slice(0, 3)).toEqual(monotoneSlopes([0, 1, 2], [0, 1, 3], 'free', 0));
    expect(slopes.slice(3)).toEqual(monotoneSlopes([3, 4, 5], [3, 2, 0], 0, 'free'));
    expect(monotoneSlopes([0, 1, 2], [4, 4, 4], 1, 1)).toEqual([0, 0, 0]);
    expect(monotoneSlopes([0, 1, 2, 3], [0, 2, 1, 4], 0, 0)[1]).toBe(0);
  });

  it('are no steeper than three times the gentler chord, falling too, and never against it', () => {
    // Beside a chord of 0.1 the spline's slope of about 3 stands back to 0.3.
    expect(monotoneSlopes([0, 1, 2, 3], [0, 5, 5.1, 10], 'free', 'free').slice(1, 3)).toEqual([
      close(0.3),
      close(0.3),
    ]);
    expect(monotoneSlopes([0, 1, 2, 3], [0, -5, -5.1, -10], 'free', 'free').slice(1, 3)).toEqual([
      close(-0.3),
      close(-0.3),
    ]);
    expect(monotoneSlopes([0, 1], [0, 2], 9, -1)).toEqual([6, 0]);
    expect(monotoneSlopes([0, 1], [0, -2], -9, 1)).toEqual([-6, 0]);
    expect(monotoneSlopes([0, 1], [0, 2], 1, 3)).toEqual([1, 3]);
  });
});
