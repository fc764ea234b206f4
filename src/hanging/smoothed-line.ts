import type { Point } from '../geometry/curve.ts';

/** How a line is made as a hand would draw it. mm. */
export interface Hand {
  /** Distance between the places that it is drawn through. */
  readonly step: number;
  /** Rounds in which every place goes half-way to the middle of its neighbours. */
  readonly rounds: number;
  /** Farthest that a place may lie off the line drawn without it. */
  readonly tolerance: number;
  /** What turns sharply within a few places stays where it is. */
  readonly keepsCorners?: boolean;
}

export function smoothedLine(
  line: readonly Point[],
  { step, rounds, tolerance, keepsCorners = false }: Hand,
  closed = false,
): Point[] {
  let points = evenlySpaced(closed ? [...line, line[0]!] : line, step);
  const corners = keepsCorners ? cornersOf(points, closed) : NO_CORNERS;
  if (keepsCorners)
    points = points.map((point, i) => (corners.has(i) ? tipOf(line, points, i, closed) : point));
  for (let round = 0; round < rounds; round++) {
    points = points.map((point, i) => {
      if (corners.has(i)) return point;
      const before = points[i - 1] ?? (closed ? points[points.length - 2] : undefined);
      const after = points[i + 1] ?? (closed ? points[1] : undefined);
      if (before === undefined || after === undefined) return point;
      return { x: (before.x + 2 * point.x + after.x) / 4, y: (before.y + 2 * point.y + after.y) / 4 };
    });
  }
  return thinned(points, tolerance);
}

export function lengthOfLine(line: readonly Point[]): number {
  return line.slice(1).reduce((sum, point, i) => sum + apart(line[i]!, point), 0);
}

/** Places at even distances along a line, its ends among them. */
export function evenlySpaced(points: readonly Point[], step: number): Point[] {
  const count = Math.max(2, Math.round(lengthOfLine(points) / step));
  const whole = lengthOfLine(points);
  const out = [points[0]!];
  let [at, passed] = [1, 0];
  for (let k = 1; k < count; k++) {
    const wanted = (whole * k) / count;
    while (at < points.length - 1 && passed + apart(points[at - 1]!, points[at]!) < wanted) {
      passed += apart(points[at - 1]!, points[at]!);
      at++;
    }
    const [a, b] = [points[at - 1]!, points[at]!];
    const span = apart(a, b);
    const part = span > 0 ? (wanted - passed) / span : 0;
    out.push({ x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part });
  }
  return [...out, points[points.length - 1]!];
}

/** Places over which a corner is looked for, and the cosine of the least turn that is one: 50°. */
const REACH = 4;
const CORNER = 0.64;
const NO_CORNERS: ReadonlySet<number> = new Set();

/** Places at which a line turns by more than a corner, each the sharpest of those around it. */
function cornersOf(points: readonly Point[], closed: boolean): ReadonlySet<number> {
  const at = (i: number): Point => placeOn(points, i, closed);
  const cosine = points.map((_, i) => cosineOfTurn(at(i - REACH), at(i), at(i + REACH)));
  const sharpest = (i: number): boolean =>
    cosine[i]! < CORNER && cosine.slice(Math.max(0, i - 2), i + 3).every((other) => other >= cosine[i]!);
  const corners = points.flatMap((_, i) => (sharpest(i) ? [i] : []));
  return new Set(corners.filter((own) => !corners.some((other) => isStep(points, own, other, closed))));
}

/** Two corners this many places apart of which one turns back what the other turned are a step, which a hand draws over. */
const STEP = 4;

function isStep(points: readonly Point[], i: number, j: number, closed: boolean): boolean {
  if (i === j || Math.abs(i - j) > STEP) return false;
  const turn = (k: number): number => {
    const [a, b, c] = [k - REACH, k, k + REACH].map((at) => placeOn(points, at, closed)) as [
      Point,
      Point,
      Point,
    ];
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  };
  return turn(i) * turn(j) < 0;
}

/** The tip of a corner near an even place: where the line itself lies farthest from the chord past it. */
function tipOf(line: readonly Point[], points: readonly Point[], i: number, closed: boolean): Point {
  const [from, to] = [placeOn(points, i - REACH, closed), placeOn(points, i + REACH, closed)];
  const reach =
    apart(points[i]!, placeOn(points, i - 1, closed)) || apart(points[i]!, placeOn(points, i + 1, closed));
  let tip = points[i]!;
  for (const point of line)
    if (apart(point, points[i]!) <= reach && offChord(from, to, point) > offChord(from, to, tip)) tip = point;
  return tip;
}

function placeOn(points: readonly Point[], i: number, closed: boolean): Point {
  const last = points.length - 1;
  return points[closed ? (i + last) % last : Math.min(last, Math.max(0, i))]!;
}

/** Leaves out what a straight line shows as well (Ramer 1972; Douglas, Peucker 1973). */
function thinned(points: readonly Point[], tolerance: number): Point[] {
  const last = points.length - 1;
  if (last < 2) return [...points];
  let [farthest, at] = [0, 0];
  for (let i = 1; i < last; i++) {
    const off = offChord(points[0]!, points[last]!, points[i]!);
    if (off > farthest) [farthest, at] = [off, i];
  }
  if (farthest <= tolerance) return [points[0]!, points[last]!];
  return [...thinned(points.slice(0, at + 1), tolerance), ...thinned(points.slice(at), tolerance).slice(1)];
}

function offChord(from: Point, to: Point, point: Point): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.sqrt(x * x + y * y);
  const [px, py] = [point.x - from.x, point.y - from.y];
  return length > 0 ? Math.abs(x * py - y * px) / length : Math.sqrt(px * px + py * py);
}

/** Distance between two places of a drawing; by the root, which every machine takes alike. */
export function apart(a: Point, b: Point): number {
  const [x, y] = [b.x - a.x, b.y - a.y];
  return Math.sqrt(x * x + y * y);
}

/** Of the angle by which a line through three places turns at the second; 1 where two are one. */
export function cosineOfTurn(a: Point, b: Point, c: Point): number {
  const [ax, ay, bx, by] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  const lengths = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
  return lengths > 0 ? (ax * bx + ay * by) / lengths : 1;
}
