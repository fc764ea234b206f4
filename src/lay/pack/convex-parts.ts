import type { Point } from '../../geometry/curve.ts';
import { signedArea } from './strip-problem.ts';

/**
 * A simple polygon divided into few convex ones, all of positive signed area (see `signedArea`). It is triangulated by
 * cutting off ears; then diagonals that convexity does not need are taken out again. That leaves at most four times the
 * least possible number of parts (S. Hertel and K. Mehlhorn, "Fast triangulation of simple polygons", 1983).
 */
export function convexParts(outline: readonly Point[]): Point[][] {
  const ring = cleaned(outline);
  if (ring.length < 3) throw new RangeError(`an outline of ${ring.length} corners has no area`);
  return joined(ears(ring));
}

/**
 * The outline run the positive way, without corners that are doubled or straight. They are taken out one at a time: of
 * two corners at one point both look straight, and only one may go.
 */
function cleaned(outline: readonly Point[]): Point[] {
  const ring = signedArea(outline) < 0 ? [...outline].reverse() : [...outline];
  for (let i = 0, checked = 0; checked < ring.length && ring.length >= 3; ) {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    if (turn(before, ring[i]!, ring[(i + 1) % ring.length]!) === 0) {
      ring.splice(i, 1);
      i = ring.length === 0 ? 0 : (i + ring.length - 1) % ring.length;
      checked = 0;
    } else {
      i = (i + 1) % ring.length;
      checked++;
    }
  }
  return ring;
}

function ears(ring: readonly Point[]): Point[][] {
  const left = [...ring];
  const triangles: Point[][] = [];
  while (left.length > 3) {
    const at = bestEar(left);
    const before = left[(at + left.length - 1) % left.length]!;
    const after = left[(at + 1) % left.length]!;
    if (turn(before, left[at]!, after) > 0) triangles.push([before, left[at]!, after]);
    left.splice(at, 1);
  }
  triangles.push(left);
  return triangles;
}

/** The ear with the shortest diagonal, as that avoids slivers; of equal ones the first. */
function bestEar(ring: readonly Point[]): number {
  let best = -1;
  let shortest = Infinity;
  for (let i = 0; i < ring.length; i++) {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const after = ring[(i + 1) % ring.length]!;
    const across = (before.x - after.x) ** 2 + (before.y - after.y) ** 2;
    if (across < shortest && isEar(ring, before, ring[i]!, after)) {
      best = i;
      shortest = across;
    }
  }
  return best >= 0 ? best : flattest(ring);
}

function isEar(ring: readonly Point[], a: Point, b: Point, c: Point): boolean {
  if (turn(a, b, c) <= 0) return false;
  return !ring.some(
    (p) => p !== a && p !== b && p !== c && turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0,
  );
}

/** Where rounding leaves no clean ear, the corner whose triangle is smallest. */
function flattest(ring: readonly Point[]): number {
  let best = 0;
  let least = Infinity;
  for (let i = 0; i < ring.length; i++) {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const size = Math.abs(turn(before, ring[i]!, ring[(i + 1) % ring.length]!));
    if (size < least) {
      least = size;
      best = i;
    }
  }
  return best;
}

function joined(parts: Point[][]): Point[][] {
  for (let i = 0; i < parts.length; i++) {
    for (let j = i + 1; j < parts.length; j++) {
      const union = joinedPair(parts[i]!, parts[j]!);
      if (union === undefined) continue;
      parts[i] = union;
      parts.splice(j, 1);
      j = i;
    }
  }
  return parts;
}

/** Two parts joined across the edge that they share, if that is convex. */
function joinedPair(a: readonly Point[], b: readonly Point[]): Point[] | undefined {
  for (let i = 0; i < a.length; i++) {
    const from = a[i]!;
    const to = a[(i + 1) % a.length]!;
    const at = b.findIndex((point, j) => point === to && b[(j + 1) % b.length] === from);
    if (at < 0) continue;
    const rest = b.map((_, j) => b[(at + 2 + j) % b.length]!).slice(0, b.length - 2);
    const union = [...a.slice(0, i + 1), ...rest, ...a.slice(i + 1)];
    const convex = union.every(
      (point, j) =>
        turn(union[(j + union.length - 1) % union.length]!, point, union[(j + 1) % union.length]!) >= 0,
    );
    return convex ? union : undefined;
  }
  return undefined;
}

/** Twice the signed area of a triangle. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
