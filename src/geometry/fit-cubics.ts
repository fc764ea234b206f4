import type { Cubic, Point } from './curve.ts';
import { pointAt } from './evaluate.ts';
import { dot, subtract } from './point.ts';

/** A smooth curve known by its points and its derivative. */
export interface ParametricCurve {
  readonly pointAt: (t: number) => Point;
  readonly derivativeAt: (t: number) => Point;
}

/** Where between its ends a fit is checked: clustered towards both ends, where a Hermite fit is worst judged by its middle. */
const CHECKS = [0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9];

/**
 * Cubics through a parametric curve from t = a to t = b, with exact ends and tangents, none farther than
 * `tolerance` mm (measured across the curve) from it. Splits in halves until it holds.
 */
export function fitCubics(
  curve: ParametricCurve,
  a: number,
  b: number,
  tolerance: number,
  depth = 0,
): Cubic[] {
  const cubic = hermite(curve, a, b);
  // What has no number anywhere is as far off in any number of pieces.
  if (depth >= 12 || !(farthest(curve, cubic, a, b) > tolerance)) return [cubic];
  const mid = (a + b) / 2;
  return [
    ...fitCubics(curve, a, mid, tolerance, depth + 1),
    ...fitCubics(curve, mid, b, tolerance, depth + 1),
  ];
}

function hermite(curve: ParametricCurve, a: number, b: number): Cubic {
  const from = curve.pointAt(a);
  const to = curve.pointAt(b);
  const out = curve.derivativeAt(a);
  const into = curve.derivativeAt(b);
  const third = (b - a) / 3;
  return {
    kind: 'cubic',
    from,
    control1: { x: from.x + out.x * third, y: from.y + out.y * third },
    control2: { x: to.x - into.x * third, y: to.y - into.y * third },
    to,
  };
}

/** Largest distance across the curve at the checks; the slip along it does no harm. */
function farthest(curve: ParametricCurve, cubic: Cubic, a: number, b: number): number {
  let worst = 0;
  for (const t of CHECKS) {
    const at = a + (b - a) * t;
    const direction = curve.derivativeAt(at);
    const gap = subtract(pointAt(cubic, t), curve.pointAt(at));
    const size = Math.hypot(direction.x, direction.y);
    const slip = size === 0 ? 0 : dot(gap, direction) / size;
    worst = Math.max(worst, Math.sqrt(Math.max(0, dot(gap, gap) - slip * slip)));
  }
  return worst;
}
