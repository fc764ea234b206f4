import type { Curve } from './curve.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { integrate } from './integrate.ts';

/** Area inside a closed run of curves, mm², by Green's theorem; positive where the run is clockwise as drawn. */
export function areaInside(outline: readonly Curve[]): number {
  return outline.reduce(
    (sum, curve) =>
      sum +
      integrate(
        (t) => {
          const point = pointAt(curve, t);
          const speed = derivativeAt(curve, t);
          return (point.x * speed.y - point.y * speed.x) / 2;
        },
        0,
        1,
      ),
    0,
  );
}
