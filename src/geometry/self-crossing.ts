import { chordsCross } from './crossings.ts';
import type { Curve, Point } from './curve.ts';
import { flattenedRun } from './flatten.ts';

/** A point where a closed outline crosses itself, or undefined. Crossings finer than `tolerance` mm may pass. */
export function selfCrossing(outline: readonly Curve[], tolerance: number): Point | undefined {
  const points = flattenedRun(outline, tolerance);
  const count = points.length - 1;
  const stretches = stretchesOf(points);
  for (let i = 0; i < count; i++) {
    const a = points[i]!;
    const b = points[i + 1]!;
    const [left, right] = a.x < b.x ? [a.x, b.x] : [b.x, a.x];
    const [top, bottom] = a.y < b.y ? [a.y, b.y] : [b.y, a.y];
    for (const stretch of stretches) {
      if (stretch.right < left || stretch.left > right || stretch.bottom < top || stretch.top > bottom)
        continue;
      for (let j = Math.max(i + 2, stretch.from); j < stretch.until; j++) {
        if (i === 0 && j === count - 1) continue;
        const c = points[j]!;
        const d = points[j + 1]!;
        if ((c.x < left && d.x < left) || (c.x > right && d.x > right)) continue;
        const hit = chordsCross(a, b, c, d);
        if (hit !== undefined) return { x: a.x + (b.x - a.x) * hit[0], y: a.y + (b.y - a.y) * hit[0] };
      }
    }
  }
  return undefined;
}

/** Chords that follow one another, and the box around them: where that is far from a chord, none of them is asked. */
interface Stretch {
  readonly from: number;
  readonly until: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Chords in a stretch: about the root of how many an outline has. */
const CHORDS = 16;

function stretchesOf(points: readonly Point[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (let from = 0; from < points.length - 1; from += CHORDS) {
    const until = Math.min(from + CHORDS, points.length - 1);
    const own = points.slice(from, until + 1);
    const [across, down] = [own.map(({ x }) => x), own.map(({ y }) => y)];
    stretches.push({
      from,
      until,
      left: Math.min(...across),
      right: Math.max(...across),
      top: Math.min(...down),
      bottom: Math.max(...down),
    });
  }
  return stretches;
}
