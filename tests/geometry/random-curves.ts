import fc from 'fast-check';
import type { Arc, Cubic, Line, Point } from '../../src/geometry/curve.ts';
import { evenly } from '../evenly.ts';

const coordinate = evenly(-1000, 1000);

export const points: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });

export const lines: fc.Arbitrary<Line> = fc
  .record({ kind: fc.constant('line' as const), from: points, to: points })
  .filter(({ from, to }) => Math.hypot(from.x - to.x, from.y - to.y) > 1);

export const arcs: fc.Arbitrary<Arc> = fc.record({
  kind: fc.constant('arc' as const),
  centre: points,
  radius: evenly(5, 3000),
  start: evenly(-7, 7),
  sweep: fc.oneof(evenly(0.01, 6.2), evenly(-6.2, -0.01)),
});

/** Gentle cubics, as hems are: both handles within 60° of the chord, each a third of it long, more or less. */
export const gentleCubics: fc.Arbitrary<Cubic> = fc
  .record({
    from: points,
    heading: evenly(-Math.PI, Math.PI),
    length: evenly(80, 800),
    first: evenly(-0.9, 0.9),
    second: evenly(-0.9, 0.9),
    reach: evenly(0.2, 0.45),
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
