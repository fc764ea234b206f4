import { Clipper, ClipType, FillRule, type Path64, PointInPolygonResult } from 'clipper2-ts';
import type { Point } from './segment.ts';

/** Polygon questions by another library, in whole units of a tenth of a micrometre. */
const UNITS_PER_MM = 10_000;

/** Number of separate outlines that an even-odd reading makes of one closed outline: more than one where it crosses itself. */
export function loopsOf(polygon: readonly Point[]): number {
  const loops = Clipper.booleanOp(ClipType.Union, [whole(polygon)], null, FillRule.EvenOdd);
  return loops.filter((loop) => Math.abs(Clipper.area(loop)) / UNITS_PER_MM ** 2 > 0.0005).length;
}

/** Area that two closed outlines share, mm². */
export function overlapOf(a: readonly Point[], b: readonly Point[]): number {
  const shared = Clipper.booleanOp(ClipType.Intersection, [whole(a)], [whole(b)], FillRule.NonZero);
  return Math.abs(Clipper.areaPaths(shared)) / UNITS_PER_MM ** 2;
}

export function isInside(point: Point, polygon: readonly Point[]): boolean {
  return Clipper.pointInPolygon(unit(point), whole(polygon)) !== PointInPolygonResult.IsOutside;
}

const cache = new WeakMap<readonly Point[], Path64>();

function whole(polygon: readonly Point[]): Path64 {
  let path = cache.get(polygon);
  if (path === undefined) {
    path = polygon.map(unit);
    cache.set(polygon, path);
  }
  return path;
}

const unit = (point: Point) => ({
  x: Math.round(point.x * UNITS_PER_MM),
  y: Math.round(point.y * UNITS_PER_MM),
});
