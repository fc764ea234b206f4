import type { Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { FLAT } from '../geometry/tolerances.ts';

/** Part of the vertical chord through its place that the grain line takes. */
const FROM = 0.2;
const TO = 0.8;

/** A line along the grain through a place inside the outline, clear of its ends. */
export function upright(through: Point, edges: readonly Edge[]): Line {
  const outline = flattenedRun(
    edges.flatMap((edge) => edge.curves),
    FLAT * 10,
  );
  const crossings = outline.flatMap((point, i) => {
    const next = outline[(i + 1) % outline.length]!;
    if (point.x > through.x === next.x > through.x) return [];
    return [point.y + ((through.x - point.x) / (next.x - point.x)) * (next.y - point.y)];
  });
  const top = Math.max(...crossings.filter((y) => y <= through.y));
  const bottom = Math.min(...crossings.filter((y) => y >= through.y));
  const at = (part: number): Point => ({ x: through.x, y: top + (bottom - top) * part });
  return { kind: 'line', from: at(FROM), to: at(TO) };
}
