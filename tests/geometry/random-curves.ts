import fc from 'fast-check';
import type { Arc, Cubic, Line, Point } from '../../src/geometry/curve.ts';

const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });

export const points: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });

export const lines: fc.Arbitrary<Line> = fc
  .record({ kind: fc.constant('line' as const), from: points, to: points })
  .filter(({ from, to }) => Math.hypot(from.x - to.x, from.y - to.y) > 1);

export const arcs: fc.Arbitrary<Arc> = fc.record({
  kind: fc.constant('arc' as const),
  centre: points,
  radius: fc.double({ min: 5, max: 3000, noNaN: true }),
  start: fc.double({ min: -7, max: 7, noNaN: true }),
  sweep: fc.oneof(
    fc.double({ min: 0.01, max: 6.2, noNaN: true }),
    fc.double({ min: -6.2, max: -0.01, noNaN: true }),
  ),
});

/** Gentle cubics, as hems are: both handles within 60° of the chord, each a third of it long, more or less. */
export const gentleCubics: fc.Arbitrary<Cubic> = fc
  .record({
    from: points,
    heading: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
    length: fc.double({ min: 80, max: 800, noNaN: true }),
    first: fc.double({ min: -0.9, max: 0.9, noNaN: true }),
    second: fc.double({ min: -0.9, max: 0.9, noNaN: true }),
    reach: fc.double({ min: 0.2, max: 0.45, noNaN: true }),
  })
  .map(({ from, heading, length, first, second, reach }) => {
    const at = (origin: Point, angle: number, size: number): Point => ({
      x: origin.x + Math.cos(angle) * size,
      y: origin.y + Math.sin(angle) * size,
    });
    const to = at(from, heading, length);
    return {
      kind: 'cubic',
      from,
      control1: at(from, heading + first, length * reach),
      control2: at(to, heading + Math.PI + second, length * reach),
      to,
    };
  });

export const curves = fc.oneof(lines, arcs, gentleCubics);
