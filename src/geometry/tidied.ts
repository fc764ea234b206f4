import type { Arc, Curve, Line, Point } from './curve.ts';
import { derivativeAt, endOf, startOf, tangentAt } from './evaluate.ts';
import { cross, distance, dot } from './point.ts';
import { JOIN } from './tolerances.ts';

/** Shortest piece worth keeping, mm. Smaller ones are rounding, and have no direction once they are drawn. */
const CRUMB = 0.01;

/**
 * A run without crumbs, and with lines and arcs that go on made one. What lay before a crumb reaches to its end; what
 * comes after a crumb that the run begins with begins where it did.
 */
export function tidied(run: readonly Curve[]): Curve[] {
  const kept: Curve[] = [];
  let begins: Point | undefined;
  for (const own of run) {
    const curve = begins === undefined || own.kind === 'arc' ? own : { ...own, from: begins };
    const last = kept[kept.length - 1];
    const speed = derivativeAt(curve, 0.5);
    if (Math.hypot(speed.x, speed.y) < CRUMB) {
      if (last === undefined) begins ??= startOf(curve);
      else if (last.kind !== 'arc') kept[kept.length - 1] = { ...last, to: endOf(curve) };
      continue;
    }
    begins = undefined;
    const one = last === undefined ? undefined : asOne(last, curve);
    if (one === undefined) kept.push(curve);
    else kept[kept.length - 1] = one;
  }
  return kept;
}

function asOne(a: Curve, b: Curve): Curve | undefined {
  if (a.kind === 'line' && b.kind === 'line') {
    return goesOn(a, b) ? { kind: 'line', from: a.from, to: b.to } : undefined;
  }
  if (a.kind === 'arc' && b.kind === 'arc')
    return sameCircle(a, b) ? { ...a, sweep: a.sweep + b.sweep } : undefined;
  return undefined;
}

function goesOn(a: Line, b: Line): boolean {
  const p = tangentAt(a, 0);
  const q = tangentAt(b, 0);
  return Math.abs(cross(p, q)) < 1e-12 && dot(p, q) > 0;
}

function sameCircle(a: Arc, b: Arc): boolean {
  return (
    distance(a.centre, b.centre) < JOIN &&
    Math.abs(a.radius - b.radius) < JOIN &&
    Math.sign(a.sweep) === Math.sign(b.sweep)
  );
}
