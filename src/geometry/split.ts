import type { Curve, Point } from './curve.ts';
import { pointAt } from './evaluate.ts';

/** The part of a curve between two parameters, exactly. `from > to` is not allowed; reverse first. */
export function partOf(curve: Curve, from: number, to: number): Curve {
  switch (curve.kind) {
    case 'line':
      return { kind: 'line', from: pointAt(curve, from), to: pointAt(curve, to) };
    case 'arc':
      return { ...curve, start: curve.start + curve.sweep * from, sweep: curve.sweep * (to - from) };
    case 'cubic': {
      // Blossoming: the control points are the polar form at (from, from, to) and (from, to, to).
      const blossom = (a: number, b: number, c: number): Point => {
        const lerp = (p: Point, q: Point, t: number): Point => ({
          x: p.x + (q.x - p.x) * t,
          y: p.y + (q.y - p.y) * t,
        });
        const p01 = lerp(curve.from, curve.control1, a);
        const p12 = lerp(curve.control1, curve.control2, a);
        const p23 = lerp(curve.control2, curve.to, a);
        return lerp(lerp(p01, p12, b), lerp(p12, p23, b), c);
      };
      return {
        kind: 'cubic',
        from: blossom(from, from, from),
        control1: blossom(from, from, to),
        control2: blossom(from, to, to),
        to: blossom(to, to, to),
      };
    }
  }
}

/** The same curve run backwards. */
export function reversed(curve: Curve): Curve {
  switch (curve.kind) {
    case 'line':
      return { kind: 'line', from: curve.to, to: curve.from };
    case 'arc':
      return { ...curve, start: curve.start + curve.sweep, sweep: -curve.sweep };
    case 'cubic':
      return {
        kind: 'cubic',
        from: curve.to,
        control1: curve.control2,
        control2: curve.control1,
        to: curve.from,
      };
  }
}

export function reversedRun(curves: readonly Curve[]): Curve[] {
  return curves.map(reversed).reverse();
}
