import SVGPathCommander from 'svg-path-commander';
import {
  arcSegment,
  cubicSegment,
  distance,
  gauss5,
  lineSegment,
  minus,
  opposite,
  type Point,
  type Segment,
} from './segment.ts';

/** A run of segments, as drawn. */
export interface CurvePath {
  readonly segments: readonly Segment[];
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
}

/** A point of a path with its way from the path's start along the curve. */
export interface Sample {
  readonly point: Point;
  /** Unit tangent in the direction of travel. */
  readonly direction: Point;
  readonly distance: number;
}

/** Every subpath of an SVG `d`; `Z` closes with a line where the ends differ. */
export function readPaths(d: string): CurvePath[] {
  const paths: CurvePath[] = [];
  let run: Segment[] = [];
  let at: Point = { x: 0, y: 0 };
  let start = at;
  const close = () => {
    if (run.length > 0) paths.push(pathOf(run));
    run = [];
  };
  for (const step of new SVGPathCommander(d, { round: 'off' }).toAbsolute().segments) {
    const [command, ...rest] = step as [string, ...number[]];
    const n = rest as number[];
    const end = (to: Point, segment: Segment) => {
      run.push(segment);
      at = to;
    };
    if (command === 'M') {
      close();
      at = start = { x: n[0]!, y: n[1]! };
    } else if (command === 'L' || command === 'H' || command === 'V') {
      const to = {
        x: command === 'V' ? at.x : n[0]!,
        y: command === 'H' ? at.y : command === 'V' ? n[0]! : n[1]!,
      };
      end(to, lineSegment(at, to));
    } else if (command === 'C') {
      const to = { x: n[4]!, y: n[5]! };
      end(to, cubicSegment(at, { x: n[0]!, y: n[1]! }, { x: n[2]!, y: n[3]! }, to));
    } else if (command === 'A') {
      if (Math.abs(n[0]! - n[1]!) > 1e-9) throw new Error(`an ellipse in a pattern: ${step.join(' ')}`);
      const to = { x: n[5]!, y: n[6]! };
      end(to, arcSegment(at, n[0]!, n[3] === 1, n[4] === 1, to));
    } else if (command === 'Z') {
      if (distance(at, start) > 1e-9) end(start, lineSegment(at, start));
      at = start;
      close();
    } else throw new Error(`path command ${command} in a pattern`);
  }
  close();
  return paths;
}

export function readPath(d: string): CurvePath {
  const paths = readPaths(d);
  if (paths.length !== 1)
    throw new Error(`one run of curves expected, found ${paths.length}: ${d.slice(0, 80)}`);
  return paths[0]!;
}

export function pathOf(segments: readonly Segment[]): CurvePath {
  return {
    segments,
    from: segments[0]!.from,
    to: segments.at(-1)!.to,
    length: segments.reduce((sum, segment) => sum + segment.length, 0),
  };
}

export function reversed(path: CurvePath): CurvePath {
  return pathOf(
    [...path.segments].reverse().map((segment) => ({
      from: segment.to,
      to: segment.from,
      length: segment.length,
      at: (t) => segment.at(1 - t),
      direction: (t) => opposite(segment.direction(1 - t)),
      speed: typeof segment.speed === 'number' ? segment.speed : reversedSpeed(segment.speed),
      steps: segment.steps,
      area: () => -segment.area(),
    })),
  );
}

export const directionAtStart = (path: CurvePath): Point => path.segments[0]!.direction(0);
export const directionAtEnd = (path: CurvePath): Point => path.segments.at(-1)!.direction(1);

/** Points at most `step` apart, with true distances along the path; both ends are among them. */
export function samplesOf(path: CurvePath, step: number): Sample[] {
  const samples: Sample[] = [{ point: path.from, direction: directionAtStart(path), distance: 0 }];
  let before = 0;
  for (const segment of path.segments) {
    const { speed } = segment;
    const count = Math.max(2, Math.ceil(segment.length / step));
    let way = 0;
    for (let i = 1; i <= count; i++) {
      way += typeof speed === 'number' ? speed / count : gauss5(speed, (i - 1) / count, i / count);
      samples.push({
        point: segment.at(i / count),
        direction: segment.direction(i / count),
        distance: before + way,
      });
    }
    before += segment.length;
  }
  return samples;
}

/** Corners of a polygon within `tolerance` of the path. */
export function polygonOf(path: CurvePath, tolerance = 0.002): Point[] {
  const points: Point[] = [path.from];
  for (const segment of path.segments) {
    const count = segment.steps(tolerance);
    for (let i = 1; i <= count; i++) points.push(segment.at(i / count));
  }
  if (distance(points[0]!, points.at(-1)!) < 1e-6) points.pop();
  return points;
}

/** Area inside a closed path, mm², whichever way it runs. */
export function areaOf(path: CurvePath): number {
  const closing = lineSegment(path.to, path.from).area();
  return Math.abs(path.segments.reduce((sum, segment) => sum + segment.area(), closing));
}

/** Distance from a point to the nearest of a path: coarse samples, then golden section about the best of them. */
export function distanceTo(path: CurvePath, point: Point): number {
  let best = Number.POSITIVE_INFINITY;
  for (const segment of path.segments) {
    if (boxDistance(segment, point) > best) continue;
    const count = Math.max(4, Math.min(48, segment.steps(0.05) * 3));
    let nearest = 0;
    let nearestDistance = Number.POSITIVE_INFINITY;
    for (let i = 0; i <= count; i++) {
      const here = distance(segment.at(i / count), point);
      if (here < nearestDistance) [nearest, nearestDistance] = [i, here];
    }
    const low = Math.max(0, (nearest - 1) / count);
    const high = Math.min(1, (nearest + 1) / count);
    best = Math.min(best, distance(segment.at(smallest(segment, point, low, high)), point));
  }
  return best;
}

/** Cheap lower bound: no point of a segment is farther than its length from its start. */
function boxDistance(segment: Segment, point: Point): number {
  return Math.max(distance(segment.from, point), distance(segment.to, point)) - segment.length;
}

/** Where the distance stops falling: a root of (curve − point) · tangent, by bisection. */
function smallest(segment: Segment, point: Point, low: number, high: number): number {
  const falling = (t: number) => {
    const away = minus(segment.at(t), point);
    const direction = segment.direction(t);
    return away.x * direction.x + away.y * direction.y;
  };
  let [a, b] = [low, high];
  if (falling(a) >= 0) return a;
  if (falling(b) <= 0) return b;
  for (let i = 0; i < 40; i++) {
    const middle = (a + b) / 2;
    if (falling(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

function reversedSpeed(speed: (t: number) => number): (t: number) => number {
  return (t) => speed(1 - t);
}
