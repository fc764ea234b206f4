import type { Point } from '../geometry/curve.ts';
import { integrate } from '../geometry/integrate.ts';

/** One stretch of a seam whose angle changes evenly: how far it reaches, and how that changes with the angle at its upper and its lower end. */
export interface Stretch {
  readonly reach: Point;
  readonly first: Point;
  readonly last: Point;
}

/** @param s slant distances of the places; @param angles from the axis there, radians */
export function angleStretches(s: readonly number[], angles: readonly number[]): Stretch[] {
  return s.slice(1).map((to, i) => {
    const long = to - s[i]!;
    const [from, until] = [angles[i]!, angles[i + 1]!];
    const over = (f: (angle: number, part: number) => number): number =>
      long * integrate((part) => f(from + (until - from) * part, part), 0, 1, 1);
    return {
      reach: { x: over(Math.sin), y: over(Math.cos) },
      first: {
        x: over((angle, part) => Math.cos(angle) * (1 - part)),
        y: over((angle, part) => -Math.sin(angle) * (1 - part)),
      },
      last: {
        x: over((angle, part) => Math.cos(angle) * part),
        y: over((angle, part) => -Math.sin(angle) * part),
      },
    };
  });
}

/** The places of a seam that begins at a point and goes on stretch by stretch. */
export function seamOf(start: Point, stretches: readonly Stretch[]): Point[] {
  const places = [start];
  for (const { reach } of stretches) {
    const { x, y } = places[places.length - 1]!;
    places.push({ x: x + reach.x, y: y + reach.y });
  }
  return places;
}
