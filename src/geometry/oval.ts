import type { Cubic, Point } from './curve.ts';

/** Of a quarter circle's handles, as a share of its radius: within 0.03 % of it. */
const HANDLE = 0.5522847498;

/** An ellipse, upright, from its left end clockwise as drawn. @param across half its width, @param down half its height */
export function oval({ x, y }: Point, across: number, down: number): Cubic[] {
  const [a, b] = [HANDLE * across, HANDLE * down];
  const at = (dx: number, dy: number): Point => ({ x: x + dx, y: y + dy });
  const quarter = (from: Point, control1: Point, control2: Point, to: Point): Cubic => ({
    kind: 'cubic',
    from,
    control1,
    control2,
    to,
  });
  return [
    quarter(at(-across, 0), at(-across, -b), at(-a, -down), at(0, -down)),
    quarter(at(0, -down), at(a, -down), at(across, -b), at(across, 0)),
    quarter(at(across, 0), at(across, b), at(a, down), at(0, down)),
    quarter(at(0, down), at(-a, down), at(-across, b), at(-across, 0)),
  ];
}
