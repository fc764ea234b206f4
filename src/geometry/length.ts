import type { Cubic, Curve } from './curve.ts';
import { derivativeAt } from './evaluate.ts';
import { integrate } from './integrate.ts';
import { distance } from './point.ts';

/** Length of a curve between two parameters, mm. Exact for lines and arcs; cubics to well under a micrometre. */
export function lengthOf(curve: Curve, from = 0, to = 1): number {
  switch (curve.kind) {
    case 'line':
      return distance(curve.from, curve.to) * (to - from);
    case 'arc':
      return curve.radius * Math.abs(curve.sweep) * (to - from);
    case 'cubic':
      return from === 0 && to === 1 ? wholeLength(curve) : lengthBetween(curve, from, to);
  }
}

/** Edges are measured again and again, by truing, allowances, sheets and papers: four times in five one known already. */
function wholeLength(cubic: Cubic): number {
  const known = WHOLE_LENGTHS.get(cubic);
  if (known !== undefined) return known;
  const length = lengthBetween(cubic, 0, 1);
  WHOLE_LENGTHS.set(cubic, length);
  return length;
}

const WHOLE_LENGTHS = new WeakMap<Cubic, number>();

function lengthBetween(cubic: Cubic, from: number, to: number): number {
  return integrate(
    (t) => {
      const speed = derivativeAt(cubic, t);
      return Math.hypot(speed.x, speed.y);
    },
    from,
    to,
  );
}

/** Length of a run of curves, mm. */
export function lengthOfRun(curves: readonly Curve[]): number {
  return curves.reduce((sum, curve) => sum + lengthOf(curve), 0);
}

/** Parameter at which a curve has run `length` mm from its start; 0 … 1. Newton, started from the straight guess. */
export function parameterAtLength(curve: Curve, length: number): number {
  const whole = lengthOf(curve);
  if (whole === 0) return 0;
  let t = Math.min(1, Math.max(0, length / whole));
  if (curve.kind !== 'cubic') return t;
  for (let step = 0; step < 20; step++) {
    const speed = derivativeAt(curve, t);
    const size = Math.hypot(speed.x, speed.y);
    if (size === 0) break;
    const change = (lengthOf(curve, 0, t) - length) / size;
    t = Math.min(1, Math.max(0, t - change));
    if (Math.abs(change) < 1e-12) break;
  }
  return t;
}

/** Curve and parameter at `length` mm along a run. */
export function placeOnRun(
  curves: readonly Curve[],
  length: number,
): { readonly curve: Curve; readonly t: number } {
  let left = length;
  for (const curve of curves) {
    const own = lengthOf(curve);
    if (left <= own) return { curve, t: parameterAtLength(curve, left) };
    left -= own;
  }
  return { curve: curves[curves.length - 1]!, t: 1 };
}
