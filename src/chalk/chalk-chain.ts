import type { Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { pointOnRun, positionWhere, type RunPosition } from '../geometry/run-position.ts';
import { CHALK_AGREES } from '../geometry/tolerances.ts';
import type { ChalkCorner, ChalkPoint, ChalkStretch } from './chalk.ts';
import { type ChalkSpan, chalkSpans, isSide } from './chalk-spans.ts';

/** Where the figures are measured from: the grain line's x and the top's y in the piece's own coordinates. mm. */
export interface ChalkAxes {
  readonly x: number;
  readonly y: number;
  readonly every: number;
  readonly step: number;
}

/** An outline as stretches between lettered corners. */
export function chainOf(
  edges: readonly Edge[],
  axes: ChalkAxes,
  names: { readonly line: 'cut' | 'seam'; readonly sides: readonly string[] },
): ChalkStretch[] {
  const spans = chalkSpans(edges, names.sides);
  const corners = spans.map((span, index): ChalkCorner => {
    const start = pointOnRun(span.curves, 0);
    return {
      letter: letter(index, names.line === 'cut'),
      down: rounded(start.y - axes.y, axes.step),
      across: rounded(start.x - axes.x, axes.step),
    };
  });
  return spans.map((span, index) => {
    const from = corners[index]!;
    const to = corners[(index + 1) % corners.length]!;
    const side = names.sides.includes(span.edge) && isSide(span);
    const points = side ? levelPoints(span, from, to, axes) : ordinates(span, from, to, axes);
    return { line: names.line, edge: span.edge, from, to, points };
  });
}

/** A point of a stretch in the table's own coordinates: x across, y down. */
export function chalkedAt(stretch: Pick<ChalkStretch, 'from' | 'to'>, point: ChalkPoint): Point {
  if (point.kind === 'level') return { x: point.across, y: point.down };
  const { origin, direction, outward } = chordOf(stretch.from, stretch.to);
  return {
    x: origin.x + direction.x * point.along + outward.x * point.out,
    y: origin.y + direction.y * point.along + outward.y * point.out,
  };
}

interface Marked {
  readonly at: RunPosition;
  readonly point: ChalkPoint;
}

/** Points where a side crosses the levels; between two of them more levels while the side bends too much. */
function levelPoints(span: ChalkSpan, from: ChalkCorner, to: ChalkCorner, axes: ChalkAxes): ChalkPoint[] {
  const downOf = (point: Point): number => point.y - axes.y;
  const ends = [downOf(pointOnRun(span.curves, 0)), downOf(pointOnRun(span.curves, span.curves.length))];
  const [top, bottom] = [Math.min(...ends), Math.max(...ends)];
  const mark = (down: number): Marked | undefined => {
    // A level at an end of the side is its corner, which is marked already.
    if (down <= top + axes.step / 2 || down >= bottom - axes.step / 2) return undefined;
    const at = positionWhere(span.curves, downOf, down);
    const across = rounded(pointOnRun(span.curves, at).x - axes.x, axes.step);
    return { at, point: { kind: 'level', down, across } };
  };
  const levels: number[] = [];
  for (let k = Math.ceil(top / axes.every); k * axes.every < bottom; k++) levels.push(k * axes.every);
  const value = (point: ChalkPoint): number => (point.kind === 'level' ? point.down : Number.NaN);
  return denser(span.curves, axes, {
    from,
    to,
    first: levels.flatMap((down) => mark(down) ?? []),
    mark,
    value,
    ends,
  });
}

/** Ordinates from the chord, every level's distance along it and at its deepest place; more while it bends too much. */
function ordinates(span: ChalkSpan, from: ChalkCorner, to: ChalkCorner, axes: ChalkAxes): ChalkPoint[] {
  const { origin, direction, outward, length } = chordOf(from, to);
  const measured = (point: Point, axis: Point): number =>
    (point.x - axes.x - origin.x) * axis.x + (point.y - axes.y - origin.y) * axis.y;
  const alongOf = (point: Point): number => measured(point, direction);
  const mark = (along: number): Marked | undefined => {
    if (along <= 0 || along >= length) return undefined;
    const at = positionWhere(span.curves, alongOf, along);
    const out = rounded(measured(pointOnRun(span.curves, at), outward), axes.step);
    return { at, point: { kind: 'ordinate', along, out } };
  };
  if (length < axes.step) return [];
  const places = bends(span.curves, (point) => measured(point, outward))
    ? [
        ...everyAlong(length, axes.every),
        rounded(
          deepest(span.curves, alongOf, (p) => measured(p, outward)),
          axes.step,
        ),
      ]
    : [];
  const first = [...new Set(places)].sort((a, b) => a - b).flatMap((along) => mark(along) ?? []);
  const value = (point: ChalkPoint): number => (point.kind === 'ordinate' ? point.along : Number.NaN);
  return denser(span.curves, axes, { from, to, first, mark, value, ends: [0, length] });
}

function everyAlong(length: number, every: number): number[] {
  const places = Math.max(0, Math.ceil((length - LOST_IN_CORNER) / every) - 1);
  return Array.from({ length: places }, (_, k) => (k + 1) * every);
}

/** A mark of a round distance that is no farther from a corner than this only blurs the corner's own, mm. */
const LOST_IN_CORNER = 4;

/** Whether the run leaves its chord by enough to be set off with a ruler. */
function bends(run: readonly Curve[], outOf: (point: Point) => number): boolean {
  return Array.from({ length: 41 }, (_, i) => pointOnRun(run, (run.length * i) / 40)).some(
    (point) => Math.abs(outOf(point)) > CHALK_AGREES / 2,
  );
}

/** Distance along the chord where the run is farthest from it. */
function deepest(run: readonly Curve[], alongOf: (p: Point) => number, outOf: (p: Point) => number): number {
  let best = { along: 0, out: 0 };
  for (let i = 1; i < 200; i++) {
    const point = pointOnRun(run, (run.length * i) / 200);
    const out = Math.abs(outOf(point));
    if (out > best.out) best = { along: alongOf(point), out };
  }
  return best.along;
}

interface Stretching {
  readonly from: ChalkCorner;
  readonly to: ChalkCorner;
  readonly first: readonly Marked[];
  /** A further point at a level or at a distance along the chord. */
  readonly mark: (value: number) => Marked | undefined;
  readonly value: (point: ChalkPoint) => number;
  readonly ends: readonly number[];
}

/** Puts points in halfway until straight lines between them keep to the run. */
function denser(run: readonly Curve[], axes: ChalkAxes, stretching: Stretching): ChalkPoint[] {
  const { from, to, mark, value } = stretching;
  const ordered = [...stretching.first].sort((a, b) => a.at - b.at);
  const placed = (point: ChalkPoint): Point => chalkedAt({ from, to }, point);
  const fill = (before: Node, after: Node, depth: number): Marked[] => {
    if (depth === 0 || keepsTo(run, before, after, axes)) return [];
    const middle = mark(rounded((before.value + after.value) / 2, axes.step));
    if (middle === undefined || middle.at <= before.at || middle.at >= after.at) return [];
    const node = { at: middle.at, place: placed(middle.point), value: value(middle.point) };
    return [...fill(before, node, depth - 1), middle, ...fill(node, after, depth - 1)];
  };
  const nodes: Node[] = [
    { at: 0, place: { x: from.across, y: from.down }, value: stretching.ends[0]! },
    ...ordered.map(({ at, point }) => ({ at, place: placed(point), value: value(point) })),
    { at: run.length, place: { x: to.across, y: to.down }, value: stretching.ends[1]! },
  ];
  return nodes
    .slice(1)
    .flatMap((node, index) => {
      const own = ordered[index];
      return [...fill(nodes[index]!, node, MOST_HALVINGS), ...(own === undefined ? [] : [own])];
    })
    .map(({ point }) => point);
}

interface Node {
  readonly at: RunPosition;
  readonly place: Point;
  readonly value: number;
}

const MOST_HALVINGS = 8;
const SAMPLES = 16;

/** Whether the run between two chalked points lies near enough to the straight line that joins them. */
function keepsTo(run: readonly Curve[], before: Node, after: Node, axes: ChalkAxes): boolean {
  // Between two marks on a straight line there is nothing that could leave it.
  if (run.length === 1 && run[0]!.kind === 'line') return true;
  const [a, b] = [before.place, after.place];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return true;
  for (let i = 1; i < SAMPLES; i++) {
    const point = pointOnRun(run, before.at + ((after.at - before.at) * i) / SAMPLES);
    const away = ((point.x - axes.x - a.x) * (b.y - a.y) - (point.y - axes.y - a.y) * (b.x - a.x)) / length;
    if (Math.abs(away) > KEEPS_TO) return false;
  }
  return true;
}

/** A little under what is promised, for what lies between two samples. */
const KEEPS_TO = 0.9 * CHALK_AGREES;

function chordOf(
  from: ChalkCorner,
  to: ChalkCorner,
): { origin: Point; direction: Point; outward: Point; length: number } {
  const origin = { x: from.across, y: from.down };
  const length = Math.hypot(to.across - from.across, to.down - from.down);
  const direction =
    length === 0 ? { x: 1, y: 0 } : { x: (to.across - origin.x) / length, y: (to.down - origin.y) / length };
  return { origin, direction, outward: { x: direction.y, y: -direction.x }, length };
}

function rounded(value: number, step: number): number {
  const result = Math.round(value / step) * step;
  return result === 0 ? 0 : result;
}

/** A, B … Z, AA, AB …; small on the seam line. */
function letter(index: number, capital: boolean): string {
  const last = String.fromCharCode((capital ? 65 : 97) + (index % 26));
  return index < 26 ? last : letter(Math.floor(index / 26) - 1, capital) + last;
}
