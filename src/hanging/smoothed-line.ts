import type { Point } from '../geometry/curve.ts';

/** How a line is made as a hand would draw it. mm. */
export interface Hand {
  /** Distance between the places that it is drawn through. */
  readonly step: number;
  /** Rounds in which every place goes half-way to the middle of its neighbours. */
  readonly rounds: number;
  /** Farthest that a place may lie off the line drawn without it. */
  readonly tolerance: number;
}

export function smoothedLine(
  line: readonly Point[],
  { step, rounds, tolerance }: Hand,
  closed = false,
): Point[] {
  let points = evenly(line, step, closed);
  for (let round = 0; round < rounds; round++) {
    points = points.map((point, i) => {
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

/** Places at even distances along a line, its ends among them; a closed line ends where it began. */
function evenly(line: readonly Point[], step: number, closed: boolean): Point[] {
  const points = closed ? [...line, line[0]!] : line;
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

function apart(a: Point, b: Point): number {
  const [x, y] = [b.x - a.x, b.y - a.y];
  return Math.sqrt(x * x + y * y);
}
