import fc from 'fast-check';
import { expect, it } from 'vitest';
import { crossingsOf } from '../../src/geometry/crossings.ts';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { pointAt, tangentAt } from '../../src/geometry/evaluate.ts';
import { distance } from '../../src/geometry/point.ts';
import { partOf } from '../../src/geometry/split.ts';
import { gentleCubics } from './random-curves.ts';

/** Evenly spread: doubles as such are nearly all next to nothing. */
const within = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((part) => min + ((max - min) * part) / 10_000);

it('a crossing beside a join of two curves is found, to the last digit, on both lines', () => {
  fc.assert(
    fc.property(
      gentleCubics,
      within(0.1, 0.9),
      within(0.15, Math.PI - 0.15),
      // The joins lie as near to the crossing as chords lie to their curves, mm and parameter.
      within(-0.06, 0.06),
      within(-1e-3, 1e-3),
      (cubic, place, slant, lineJoin, cubicJoin) => {
        const crossing = pointAt(cubic, place);
        const tangent = tangentAt(cubic, place);
        const angle = Math.atan2(tangent.y, tangent.x) + slant;
        const at = (way: number): Point => ({
          x: crossing.x + way * Math.cos(angle),
          y: crossing.y + way * Math.sin(angle),
        });
        const lines: Line[] = [
          { kind: 'line', from: at(-300), to: at(lineJoin) },
          { kind: 'line', from: at(lineJoin), to: at(200) },
        ];
        const curves = [partOf(cubic, 0, place + cubicJoin), partOf(cubic, place + cubicJoin, 1)];
        const found = lines.flatMap((line) =>
          curves.flatMap((curve) =>
            crossingsOf(line, curve).map(({ t, u }) => [pointAt(line, t), pointAt(curve, u)] as const),
          ),
        );
        for (const [onLine, onCurve] of found) expect(distance(onLine, onCurve)).toBeLessThan(1e-5);
        expect(Math.min(...found.map(([onLine]) => distance(onLine, crossing)))).toBeLessThan(1e-5);
      },
    ),
    { numRuns: 500 },
  );
});
