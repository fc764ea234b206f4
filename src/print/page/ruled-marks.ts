import type { Line, Point } from '../../geometry/curve.ts';
import type { LineStyle, PathMark, TextMark } from '../drawing.ts';

/** Small marks that every page is made of; coordinates mm. */

export function lineMark(from: Point, to: Point, line: LineStyle): PathMark {
  return { kind: 'path', runs: [[{ kind: 'line', from, to }]], closed: false, line };
}

export function boxMark(x: number, y: number, width: number, height: number, line: LineStyle): PathMark {
  return { kind: 'path', runs: [rectangleRun(x, y, width, height)], closed: true, line };
}

export function rectangleRun(x: number, y: number, width: number, height: number): Line[] {
  return polygonRun([
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]);
}

/** Lines through the points and back to the first. */
export function polygonRun(points: readonly Point[]): Line[] {
  return points.map((from, index) => ({ kind: 'line', from, to: points[(index + 1) % points.length]! }));
}

export function textMark(
  text: string,
  at: Point,
  size: number,
  options: { readonly anchor?: TextMark['anchor']; readonly bold?: boolean; readonly class?: string } = {},
): TextMark {
  return { kind: 'text', text, at, size, anchor: 'start', ...options };
}
