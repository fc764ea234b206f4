import type { CutPiece } from '../../draft/piece.ts';
import type { Curve, Point } from '../../geometry/curve.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import { cross, distance, subtract } from '../../geometry/point.ts';
import type { LabelBox, Window } from '../text/label-place.ts';

/** A short straight part of a line that is drawn. */
export type Segment = readonly [Point, Point];

/** Between a name and any line, mm. */
export const CLEAR = 0.3;

/** Of a sheet, mm. */
const RIM = 7;

/** Whether two lines run through one another. Most are nowhere near. */
export function lieAcross(a: Segment, b: Segment): boolean {
  return areNear(a, b) && liesAcross(a, b[0], b[1]) && liesAcross(b, a[0], a[1]);
}

function areNear(a: Segment, b: Segment): boolean {
  const p = a[0];
  const q = a[1];
  const r = b[0];
  const s = b[1];
  if (
    (p.x < r.x && p.x < s.x && q.x < r.x && q.x < s.x) ||
    (p.x > r.x && p.x > s.x && q.x > r.x && q.x > s.x)
  )
    return false;
  return !(
    (p.y < r.y && p.y < s.y && q.y < r.y && q.y < s.y) ||
    (p.y > r.y && p.y > s.y && q.y > r.y && q.y > s.y)
  );
}

/** Whether two points lie on different sides of the line through a segment. */
function liesAcross([from, to]: Segment, a: Point, b: Point): boolean {
  const way = subtract(to, from);
  return cross(way, subtract(a, from)) * cross(way, subtract(b, from)) < 0;
}

/** The lines of a piece: what is cut, and all others. */
export interface PieceLines {
  readonly outline: readonly Curve[];
  readonly runs: readonly (readonly Curve[])[];
}

export function linesOfPiece({ cutEdges, piece, marks, notches }: CutPiece): PieceLines {
  return {
    outline: cutEdges.flatMap(({ curves }) => curves),
    runs: [
      ...piece.edges.map(({ curves }) => curves),
      ...marks.map(({ curves }) => curves),
      ...notches.flatMap(({ ticks }) => ticks.map((tick) => [tick])),
    ],
  };
}

export function segmentsOf({ outline, runs }: PieceLines): Segment[] {
  return [...segments(outline), ...runs.flatMap(segments)];
}

export function outlineOf({ outline }: PieceLines): Segment[] {
  return segments(outline);
}

function segments(curves: readonly Curve[]): Segment[] {
  const points = flattenedRun(curves, 0.1);
  return points.slice(1).map((to, index) => [points[index]!, to]);
}

/** Whether a point lies farther than `reach` from a line. */
export function liesApart({ x, y }: Point, [from, to]: Segment, reach: number): boolean {
  if (x + reach < from.x && x + reach < to.x) return true;
  if (x - reach > from.x && x - reach > to.x) return true;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((x - from.x) * dx + (y - from.y) * dy) / square;
  const held = Math.min(1, Math.max(0, share));
  return distance({ x, y }, { x: from.x + held * dx, y: from.y + held * dy }) > reach;
}

/**
 * Whether a line comes into a box or too near to it: the part of the line between the box's four sides. Asked so often,
 * before it is made fast, that it puts nothing together.
 */
export function crosses(line: Segment, { x, y, width, height }: LabelBox): boolean {
  const from = line[0];
  const to = line[1];
  const left = x - CLEAR;
  const right = x + width + CLEAR;
  const top = y - CLEAR;
  const bottom = y + height + CLEAR;
  // Most lines are nowhere near.
  if ((from.x < left && to.x < left) || (from.x > right && to.x > right)) return false;
  if ((from.y < top && to.y < top) || (from.y > bottom && to.y > bottom)) return false;
  const across = to.x - from.x;
  const down = to.y - from.y;
  const enters = Math.max(
    0,
    firstBetween(from.x, across, left, right),
    firstBetween(from.y, down, top, bottom),
  );
  const leaves = Math.min(
    1,
    lastBetween(from.x, across, left, right),
    lastBetween(from.y, down, top, bottom),
  );
  return enters <= leaves;
}

/** The share of a line at which it comes between two sides that it does not lie wholly beyond, and at which it goes. */
function firstBetween(at: number, way: number, low: number, high: number): number {
  return way === 0 ? 0 : Math.min((low - at) / way, (high - at) / way);
}

function lastBetween(at: number, way: number, low: number, high: number): number {
  return way === 0 ? 1 : Math.max((low - at) / way, (high - at) / way);
}

export function meets(a: LabelBox, b: LabelBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export function isIn(at: Point, { x, y, width, height }: Window): boolean {
  return at.x >= x && at.x <= x + width && at.y >= y && at.y <= y + height;
}

/** With the rim of its sheet, where lines are but no names. */
export function grown({ x, y, width, height }: Window): Window {
  return { x: x - RIM, y: y - RIM, width: width + 2 * RIM, height: height + 2 * RIM };
}

export function within(box: LabelBox, window: Window): boolean {
  const end = { x: box.x + box.width, y: box.y + box.height };
  return isIn(box, window) && isIn(end, window);
}
