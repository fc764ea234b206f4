import type { Point } from '../geometry/curve.ts';
import { apart } from './smoothed-line.ts';

/** A line as it is drawn, and whether its ends lie on other lines. */
export interface MetLine {
  readonly line: readonly Point[];
  readonly startMeets: boolean;
  readonly endMeets: boolean;
}

/** The way that an end of a line runs is read over this, mm. */
const READ_OVER = 24;
/** An end this near to another line stands on it already, mm. */
const ON_LINE = 2;

/**
 * Draws the ends of a line on to what they point at: a hand lets a seam end at the hem and a waist at the outline, not
 * just before them.
 *
 * @param reach farthest that an end is drawn on, mm
 */
export function metLine(
  line: readonly Point[],
  targets: readonly (readonly Point[])[],
  reach: number,
): MetLine {
  const backwards = [...line].reverse();
  const [start, end] = [onTo(backwards, targets, reach), onTo(line, targets, reach)];
  return {
    line: [
      ...(start === undefined || start === 'there' ? [] : [start]),
      ...line,
      ...(end === undefined || end === 'there' ? [] : [end]),
    ],
    startMeets: start !== undefined,
    endMeets: end !== undefined,
  };
}

/** Where a line's end, drawn on, comes to another line. */
function onTo(
  line: readonly Point[],
  targets: readonly (readonly Point[])[],
  reach: number,
): Point | 'there' | undefined {
  const end = line[line.length - 1]!;
  const way = endWay(line);
  if (way === undefined) return undefined;
  let nearest = reach;
  for (const target of targets) {
    for (let i = 1; i < target.length; i++) {
      const [a, b] = [target[i - 1]!, target[i]!];
      if (offSegment(end, a, b) <= ON_LINE) return 'there';
      const at = crossing(end, way, a, b);
      if (at !== undefined && at < nearest) nearest = at;
    }
  }
  return nearest < reach ? { x: end.x + way.x * nearest, y: end.y + way.y * nearest } : undefined;
}

/** The way that a line runs at its last place, of length 1. */
export function endWay(line: readonly Point[]): Point | undefined {
  const end = line[line.length - 1]!;
  let [from, passed] = [line.length - 1, 0];
  while (from > 0 && passed < READ_OVER) {
    passed += apart(line[from]!, line[from - 1]!);
    from--;
  }
  const [x, y] = [end.x - line[from]!.x, end.y - line[from]!.y];
  const length = Math.sqrt(x * x + y * y);
  return length > 0 ? { x: x / length, y: y / length } : undefined;
}

/** How far on from a place, along a way of length 1, it crosses a segment; undefined where it does not. */
export function crossing(from: Point, way: Point, a: Point, b: Point): number | undefined {
  const [sx, sy] = [b.x - a.x, b.y - a.y];
  const across = way.x * sy - way.y * sx;
  if (across === 0) return undefined;
  const [px, py] = [a.x - from.x, a.y - from.y];
  const on = (px * sy - py * sx) / across;
  const part = (px * way.y - py * way.x) / across;
  return on > 0 && part >= 0 && part <= 1 ? on : undefined;
}

function offSegment(point: Point, a: Point, b: Point): number {
  const [x, y] = [b.x - a.x, b.y - a.y];
  const whole = x * x + y * y;
  const along = whole > 0 ? ((point.x - a.x) * x + (point.y - a.y) * y) / whole : 0;
  const part = Math.min(1, Math.max(0, along));
  return apart(point, { x: a.x + x * part, y: a.y + y * part });
}
