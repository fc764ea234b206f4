import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaInside } from '../../src/geometry/area.ts';
import { boundsOfCurves } from '../../src/geometry/bounds.ts';
import type { Cubic, Curve, Point } from '../../src/geometry/curve.ts';
import { curvatureAt, derivativeAt, endOf, pointAt, startOf } from '../../src/geometry/evaluate.ts';
import { flattened } from '../../src/geometry/flatten.ts';
import { lengthOf, parameterAtLength } from '../../src/geometry/length.ts';
import { nearestOnRun } from '../../src/geometry/nearest.ts';
import { partOf, reversed } from '../../src/geometry/split.ts';
import { placed, placedPoint, reflected, reflectedPoint } from '../../src/geometry/transform.ts';
import { evenly } from '../evenly.ts';
import { arcs, curves, gentleCubics, points } from './random-curves.ts';

const fractions = evenly(0, 1);

function bezier({ from, control1, control2, to }: Cubic): Bezier {
  return new Bezier([from, control1, control2, to]);
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

describe('cubics, against bezier-js', () => {
  it('have the same points, derivatives and lengths', () => {
    fc.assert(
      fc.property(gentleCubics, fractions, (cubic, t) => {
        const other = bezier(cubic);
        expect(apart(pointAt(cubic, t), other.get(t))).toBeLessThan(1e-9);
        expect(apart(derivativeAt(cubic, t), other.derivative(t))).toBeLessThan(1e-8);
        expect(lengthOf(cubic)).toBeCloseTo(other.length(), 5);
        const box = other.bbox();
        expect(boundsOfCurves([cubic]).left).toBeCloseTo(box.x.min, 5);
        expect(boundsOfCurves([cubic]).bottom).toBeCloseTo(box.y.max, 5);
      }),
    );
  });

  it('bend by the turn of their direction over their way, measured on bezier-js', () => {
    fc.assert(
      fc.property(gentleCubics, evenly(0.01, 0.99), (cubic, t) => {
        const other = bezier(cubic);
        const [a, b] = [other.derivative(t - 1e-4), other.derivative(t + 1e-4)];
        const turn = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
        const way = apart(other.get(t - 1e-4), other.get(t + 1e-4));
        expect(curvatureAt(cubic, t)).toBeCloseTo(turn / way, 5);
      }),
    );
  });
});

describe('arcs, against their closed forms', () => {
  it('every point lies a radius from the centre, and the length is radius times angle', () => {
    fc.assert(
      fc.property(arcs, fractions, (arc, t) => {
        expect(apart(pointAt(arc, t), arc.centre)).toBeCloseTo(arc.radius, 8);
        expect(lengthOf(arc)).toBeCloseTo(arc.radius * Math.abs(arc.sweep), 8);
        expect(curvatureAt(arc, t)).toBeCloseTo(Math.sign(arc.sweep) / arc.radius, 12);
      }),
    );
  });

  it('a whole circle has the area πr² and the bounds of its diameter', () => {
    const circle: Curve = { kind: 'arc', centre: { x: 3, y: -4 }, radius: 50, start: 1, sweep: 2 * Math.PI };
    expect(areaInside([circle])).toBeCloseTo(Math.PI * 2500, 8);
    const box = boundsOfCurves([circle]);
    expect([box.left, box.top, box.right, box.bottom].map((value) => Number(value.toFixed(9)))).toEqual([
      -47, -54, 53, 46,
    ]);
  });
});

describe('parts, reversals and placements keep the curve', () => {
  it('a part has the points between its ends', () => {
    fc.assert(
      fc.property(curves, fractions, fractions, fractions, (curve, a, b, t) => {
        const [from, to] = a < b ? [a, b] : [b, a];
        const part = partOf(curve, from, to);
        expect(apart(pointAt(part, t), pointAt(curve, from + (to - from) * t))).toBeLessThan(1e-8);
      }),
    );
  });

  it('a reversal runs the same way back', () => {
    fc.assert(
      fc.property(curves, fractions, (curve, t) => {
        expect(apart(pointAt(reversed(curve), t), pointAt(curve, 1 - t))).toBeLessThan(1e-8);
      }),
    );
  });

  it('placing a curve places each of its points; distances stay', () => {
    const placements = fc.record({ mirror: fc.boolean(), angle: fractions.map((f) => f * 7), shift: points });
    fc.assert(
      fc.property(curves, placements, fractions, (curve, placement, t) => {
        const moved = placed(placement, curve);
        expect(apart(pointAt(moved, t), placedPoint(placement, pointAt(curve, t)))).toBeLessThan(1e-7);
        expect(apart(startOf(moved), endOf(moved))).toBeCloseTo(apart(startOf(curve), endOf(curve)), 7);
      }),
    );
  });

  it('a reflection leaves its axis where it is and comes back when done twice', () => {
    fc.assert(
      fc.property(curves, points, fractions, (curve, origin, t) => {
        const direction = { x: Math.cos(7 * t), y: Math.sin(7 * t) };
        const onAxis = { x: origin.x + 20 * direction.x, y: origin.y + 20 * direction.y };
        expect(apart(reflectedPoint(onAxis, origin, direction), onAxis)).toBeLessThan(1e-9);
        const twice = reflected(reflected(curve, origin, direction), origin, direction);
        expect(apart(pointAt(twice, t), pointAt(curve, t))).toBeLessThan(1e-7);
      }),
    );
  });
});

describe('measures along a curve', () => {
  it('the parameter at a length cuts off that length', () => {
    fc.assert(
      fc.property(curves, fractions, (curve, f) => {
        const wanted = lengthOf(curve) * f;
        expect(lengthOf(curve, 0, parameterAtLength(curve, wanted))).toBeCloseTo(wanted, 6);
      }),
    );
  });

  it('chords stay within their tolerance of the curve', () => {
    fc.assert(
      fc.property(fc.oneof(arcs, gentleCubics), (curve) => {
        const chords = flattened(curve, 0.1);
        for (let i = 0; i <= 200; i++) {
          const point = pointAt(curve, i / 200);
          const off = chords.slice(1).map((to, j) => distanceToChord(point, chords[j]!, to));
          expect(Math.min(...off)).toBeLessThan(0.1001);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('no dense sample of a run is nearer than its nearest point', () => {
    fc.assert(
      fc.property(gentleCubics, points, (curve, point) => {
        const { distance } = nearestOnRun([curve], point);
        const sampled = Math.min(
          ...Array.from({ length: 2001 }, (_, i) => apart(pointAt(curve, i / 2000), point)),
        );
        expect(distance).toBeLessThan(sampled + 1e-9);
        expect(distance).toBeGreaterThan(sampled - 0.3);
      }),
    );
  });
});

function distanceToChord(p: Point, a: Point, b: Point): number {
  const along = { x: b.x - a.x, y: b.y - a.y };
  const size = along.x ** 2 + along.y ** 2;
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * along.x + (p.y - a.y) * along.y) / size));
  return Math.hypot(p.x - a.x - t * along.x, p.y - a.y - t * along.y);
}
