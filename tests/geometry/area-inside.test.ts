import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaInside } from '../../src/geometry/area.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { pointOnRun, positionWhere } from '../../src/geometry/run-position.ts';
import { evenly } from '../evenly.ts';

const coordinate = evenly(-900, 900);
const point = fc.record({ x: coordinate, y: coordinate });

describe('area by closed form', () => {
  it('is πr² in a circle and the product of its sides in a rectangle', () => {
    const circle: Curve = { kind: 'arc', centre: { x: 40, y: -7 }, radius: 30, start: 1, sweep: 2 * Math.PI };
    expect(areaInside([circle])).toBeCloseTo(Math.PI * 900, 9);
    const corners: Point[] = [
      { x: 2, y: 3 },
      { x: 7, y: 3 },
      { x: 7, y: 14 },
      { x: 2, y: 14 },
    ];
    const sides = corners.map((from, i): Curve => ({ kind: 'line', from, to: corners[(i + 1) % 4]! }));
    expect(areaInside(sides)).toBeCloseTo(55, 12);
    // A sector's (a + b)·s/2 with arcs 400 and 900, slant 1000 (geometry): θ = 0.5, r 800, R 1800.
    const flank = (radius: number, angle: number): Point => ({
      x: radius * Math.cos(angle),
      y: radius * Math.sin(angle),
    });
    const sector: Curve[] = [
      { kind: 'arc', centre: { x: 0, y: 0 }, radius: 1800, start: 0, sweep: 0.5 },
      { kind: 'line', from: flank(1800, 0.5), to: flank(800, 0.5) },
      { kind: 'arc', centre: { x: 0, y: 0 }, radius: 800, start: 0.5, sweep: -0.5 },
      { kind: 'line', from: flank(800, 0), to: flank(1800, 0) },
    ];
    expect(areaInside(sector)).toBeCloseTo(((400 + 900) * 1000) / 2, 6);
  });

  it('agrees with a polygon of many sides along any cubic', () => {
    fc.assert(
      fc.property(point, point, point, point, (from, control1, control2, to) => {
        const cubic: Curve = { kind: 'cubic', from, control1, control2, to };
        const outline: Curve[] = [cubic, { kind: 'line', from: to, to: from }];
        const sides = Array.from({ length: 4001 }, (_, i) => pointAt(cubic, i / 4000));
        const polygon = sides.reduce((sum, a, i) => {
          const b = sides[(i + 1) % sides.length]!;
          return sum + (a.x * b.y - b.x * a.y) / 2;
        }, 0);
        expect(Math.abs(areaInside(outline) - polygon)).toBeLessThan(0.5);
      }),
      { numRuns: 40 },
    );
  });
});

describe('where a run takes a value', () => {
  it('is found on lines, arcs and cubics that rise all along', () => {
    fc.assert(
      fc.property(evenly(0.001, 0.999), (part) => {
        const run: Curve[] = [
          { kind: 'line', from: { x: 0, y: 0 }, to: { x: 50, y: 100 } },
          { kind: 'arc', centre: { x: 150, y: 100 }, radius: 100, start: Math.PI, sweep: -Math.PI / 2.5 },
          {
            kind: 'cubic',
            from: { x: 119, y: 195 },
            control1: { x: 130, y: 198 },
            control2: { x: 131, y: 600 },
            to: { x: 400, y: 601 },
          },
        ];
        const [first, last] = [pointOnRun(run, 0).y, pointOnRun(run, run.length).y];
        const wanted = first + (last - first) * part;
        const found = pointOnRun(
          run,
          positionWhere(run, (own) => own.y, wanted),
        );
        expect(Math.abs(found.y - wanted)).toBeLessThan(0.2);
        // Downwards as well as upwards.
        const other = pointOnRun(
          run,
          positionWhere(run, (own) => -own.y, -wanted),
        );
        expect(Math.abs(other.y - wanted)).toBeLessThan(0.2);
      }),
    );
  });
});
