import { chordsCross } from './crossings.ts';
import type { Curve, Point } from './curve.ts';
import { flattenedRun } from './flatten.ts';

/** A point where a closed outline crosses itself, or undefined. Crossings finer than `tolerance` mm may pass. */
export function selfCrossing(outline: readonly Curve[], tolerance: number): Point | undefined {
  const points = flattenedRun(outline, tolerance);
  const count = points.length - 1;
  for (let i = 0; i < count; i++) {
    const a = points[i]!;
    const b = points[i + 1]!;
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      const c = points[j]!;
      const d = points[j + 1]!;
      if (Math.max(c.x, d.x) < Math.min(a.x, b.x) || Math.min(c.x, d.x) > Math.max(a.x, b.x)) continue;
      const hit = chordsCross(a, b, c, d);
      if (hit !== undefined) return { x: a.x + (b.x - a.x) * hit[0], y: a.y + (b.y - a.y) * hit[0] };
    }
  }
  return undefined;
}
