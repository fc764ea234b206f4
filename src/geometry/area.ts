import type { Arc, Cubic, Curve, Point } from './curve.ts';
import { endOf, startOf } from './evaluate.ts';
import { cross } from './point.ts';

/** Area inside a closed run of curves, mm², by Green's theorem in closed form; positive where the run is clockwise as drawn. */
export function areaInside(outline: readonly Curve[]): number {
  return outline.reduce((sum, curve) => sum + areaSwept(curve), 0);
}

/** ½∮(x dy − y dx) along one curve: the area that the line from the origin sweeps. */
function areaSwept(curve: Curve): number {
  switch (curve.kind) {
    case 'line':
      return cross(curve.from, curve.to) / 2;
    case 'arc':
      return sweptByArc(curve);
    case 'cubic':
      return sweptByCubic(curve);
  }
}

function sweptByArc(arc: Arc): number {
  const [from, to] = [startOf(arc), endOf(arc)];
  const chord: Point = { x: to.x - from.x, y: to.y - from.y };
  return (arc.radius * arc.radius * arc.sweep + cross(arc.centre, chord)) / 2;
}

/** The integral of the Bernstein products: Σ cᵢⱼ·(Pᵢ × Pⱼ) with the coefficients of a cubic. */
function sweptByCubic({ from, control1, control2, to }: Cubic): number {
  return (
    (6 * cross(from, control1) +
      3 * cross(from, control2) +
      cross(from, to) +
      3 * cross(control1, control2) +
      3 * cross(control1, to) +
      6 * cross(control2, to)) /
    20
  );
}
