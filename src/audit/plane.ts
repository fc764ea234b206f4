/** Points, boxes and maps of a page, mm; the audit's own, so that it shares nothing with what it audits. */

export interface XY {
  readonly x: number;
  readonly y: number;
}

/** A straight part of a stroked line, mm from the page's lower left corner, y up; curves come in many. */
export interface Stroke {
  readonly from: XY;
  readonly to: XY;
}

/** As PDF writes it: a b c d e f, the point x y going to ax + cy + e, bx + dy + f. */
export type Matrix = readonly [number, number, number, number, number, number];

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export function mapped([a, b, c, d, e, f]: Matrix, x: number, y: number): XY {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** First `inner`, then `outer`. */
export function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

export function cubicAt(a: XY, b: XY, c: XY, d: XY, t: number): XY {
  const s = 1 - t;
  const [u, v, w, z] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return { x: u * a.x + v * b.x + w * c.x + z * d.x, y: u * a.y + v * b.y + w * c.y + z * d.y };
}

/** Clips of sheets are upright rectangles, of which this is exact. */
export function boxAround(points: readonly XY[]): Box {
  const box = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
  for (const { x, y } of points) {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.bottom = Math.min(box.bottom, y);
    box.top = Math.max(box.top, y);
  }
  return box;
}

export function meet(a: Box, b: Box): Box {
  return {
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    top: Math.min(a.top, b.top),
  };
}

/** The part of a segment within a box, or undefined (Liang and Barsky 1984). */
export function clippedTo(from: XY, to: XY, box: Box): Stroke | undefined {
  let enter = 0;
  let leave = 1;
  const sides = [
    [from.x - to.x, from.x - box.left],
    [to.x - from.x, box.right - from.x],
    [from.y - to.y, from.y - box.bottom],
    [to.y - from.y, box.top - from.y],
  ] as const;
  for (const [towards, room] of sides) {
    if (towards === 0 && room < 0) return undefined;
    if (towards < 0) enter = Math.max(enter, room / towards);
    if (towards > 0) leave = Math.min(leave, room / towards);
  }
  if (enter > leave) return undefined;
  const at = (t: number): XY => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
  return { from: at(enter), to: at(leave) };
}
