import { Clipper, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts';
import type { Point } from '../../src/geometry/curve.ts';

/** Steps of the outside library's integers in a unit of ours: its decimals stop at two otherwise. */
const STEPS = 1e5;

export function path64(ring: readonly Point[]): Path64 {
  return ring.map(({ x, y }) => ({ x: Math.round(x * STEPS), y: Math.round(y * STEPS) }));
}

/** Area common to two polygons, by another library. */
export function commonArea(a: readonly Point[], b: readonly Point[]): number {
  return areaOf(Clipper.intersect([path64(a)], [path64(b)], FillRule.NonZero));
}

/** What of `a` lies outside `b`. */
export function areaOutside(a: readonly Point[], b: readonly Point[]): number {
  return areaOf(Clipper.difference([path64(a)], [path64(b)], FillRule.NonZero));
}

/** Whether two polygons run into each other by more than `depth`, by another library: one drawn in by it still meets. */
export function overlapBy(a: readonly Point[], b: readonly Point[], depth: number): boolean {
  const drawnIn = Clipper.inflatePaths([path64(a)], -depth * STEPS, JoinType.Miter, EndType.Polygon);
  return areaOf(Clipper.intersect(drawnIn, [path64(b)], FillRule.NonZero)) > 0;
}

function areaOf(paths: readonly Path64[]): number {
  return paths.reduce((sum, path) => sum + Math.abs(Clipper.area(path)), 0) / STEPS / STEPS;
}

export function moved(ring: readonly Point[], by: Point): Point[] {
  return ring.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
}

export function rectangle(width: number, height: number): Point[] {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
}
