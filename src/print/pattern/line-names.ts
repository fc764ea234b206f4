import type { CutPiece } from '../../draft/piece.ts';
import type { Curve, Line, Point } from '../../geometry/curve.ts';
import { pointAt, tangentAt } from '../../geometry/evaluate.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import { along, cross, distance, leftOf, scaled, subtract } from '../../geometry/point.ts';
import type { TextMark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';
import type { LabelBox, Window } from '../text/label-place.ts';
import { textWidth } from '../text/text-width.ts';

/** The name of a line where several layers' lines lie on one sheet, and what it covers. */
export interface LineName {
  readonly box: LabelBox;
  readonly mark: TextMark;
}

type Segment = readonly [Point, Point];

/**
 * Names for the cut lines of pieces that lie on one another, a list for each piece: of its hem, once on each sheet that
 * the line crosses, and of a waist corner of its own. Each stands on the inner side of its line, in the largest letters
 * that touch no line and no other name.
 */
export function lineNames(
  pieces: readonly CutPiece[],
  { grain, windows }: { readonly grain: Line; readonly windows: readonly Window[] },
  nameOf: (layers: readonly string[]) => string,
): LineName[][] {
  const lines = pieces.flatMap((piece) => segmentsOf(piece));
  lines.push([grain.from, grain.to]);
  const taken: LabelBox[] = [];
  const sheets = windows.map((window) => ({
    window,
    lines: lines.filter((line) => crosses(line, grown(window))),
  }));
  return pieces.map((piece, index) => {
    const text = nameOf(piece.layers);
    const [waist, , hem] = piece.piece.edges.map(({ name }) => placesAlong(edgesNamed(piece, name)));
    const corner = apartFromOthers(waist!, piece, pieces);
    const names: LineName[] = [];
    for (const { places, share } of [
      { places: hem!, share: SHARES[index % SHARES.length]! },
      { places: corner, share: 0.5 },
    ])
      for (const sheet of sheets) {
        const shown = places.filter(({ at }) => isIn(at, grown(sheet.window)));
        const name = clearName(text, inOrder(shown, share), sheet, taken);
        if (name === undefined) continue;
        taken.push(name.box);
        names.push(name);
      }
    return names;
  });
}

/** A place on a line, and the way to its inner side. */
interface Place {
  readonly at: Point;
  readonly inward: Point;
}

/** A sheet that a name must stand on, and the lines there. */
interface Sheet {
  readonly window: Window;
  readonly lines: readonly Segment[];
}

/** Which of the places along one sheet each of several hems would rather have. */
const SHARES = [0.5, 0.2, 0.8, 0.35, 0.65];

/** Ems of a name, mm, the largest that is clear. */
const SIZES = [2.8, 2.2, 1.8, 1.5] as const;

/** Of a sheet, mm. */
const RIM = 7;

/** Places that are looked at along one curve. */
const PLACES = 60;

/** Between a name and any line, mm. */
const CLEAR = 0.3;

/** Lines nearer than this are read as one, mm. */
const ONE_LINE = 0.5;

function placesAlong(curves: readonly Curve[]): Place[] {
  return curves.flatMap((curve) =>
    Array.from({ length: PLACES }, (_, index) => {
      const t = (index + 0.5) / PLACES;
      return { at: pointAt(curve, t), inward: scaled(leftOf(tangentAt(curve, t)), -1) };
    }),
  );
}

function edgesNamed({ cutEdges }: CutPiece, name: string): Curve[] {
  return cutEdges.filter((edge) => edge.name === name).flatMap(({ curves }) => curves);
}

/** Places where a piece's line at the waist lies apart from another's. */
function apartFromOthers(places: readonly Place[], piece: CutPiece, pieces: readonly CutPiece[]): Place[] {
  const others = pieces.filter((other) => other !== piece).map(outlineOf);
  return places.filter(({ at }) =>
    others.some((other) => other.every(([from, to]) => awayFrom(at, from, to) > ONE_LINE)),
  );
}

function inOrder(places: readonly Place[], share: number): Place[] {
  const middle = share * places.length;
  return places
    .map((place, index) => ({ place, away: Math.abs(index - middle) }))
    .sort((a, b) => a.away - b.away)
    .map(({ place }) => place);
}

function clearName(
  text: string,
  places: readonly Place[],
  { window, lines }: Sheet,
  taken: readonly LabelBox[],
): LineName | undefined {
  const isClear = (box: LabelBox): boolean =>
    !taken.some((other) => meets(box, other)) && !lines.some((line) => crosses(line, box));
  for (const gap of GAPS)
    for (const size of SIZES)
      for (const place of places) {
        const box = boxBeside(place, textWidth(text, size), size, gap);
        if (!within(box, window) || !isClear(box) || !isNext(place, box, lines)) continue;
        const at = { x: box.x, y: box.y + ASCENT * size };
        return { box, mark: textMark(text, at, size, { class: 'label' }) };
      }
  return undefined;
}

/** Whether no other line lies between a name and its own line: else it would be read as the other's. */
function isNext({ at, inward }: Place, box: LabelBox, lines: readonly Segment[]): boolean {
  const start = along(at, inward, ONE_LINE / 2);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  return !lines.some(
    ([from, to]) => liesAcross([start, middle], from, to) && liesAcross([from, to], start, middle),
  );
}

/** Whether two points lie on different sides of the line through a segment. */
function liesAcross([from, to]: Segment, a: Point, b: Point): boolean {
  const way = subtract(to, from);
  return cross(way, subtract(a, from)) * cross(way, subtract(b, from)) < 0;
}

/** How far a name may stand from its line where that lies at the rim of a sheet, mm. */
const GAPS = [0, 3, 6, 9] as const;

/** Of an em: how far letters stand above and hang below their line. */
const ASCENT = 0.75;
const HEIGHT = 1;

/** Far enough in for the whole box to clear a line that slopes. */
function boxBeside({ at, inward }: Place, width: number, size: number, gap: number): LabelBox {
  const height = HEIGHT * size;
  const reach = (Math.abs(inward.x) * width + Math.abs(inward.y) * height) / 2 + 2 * CLEAR + gap;
  const middle = along(at, inward, reach);
  return { x: middle.x - width / 2, y: middle.y - height / 2, width, height };
}

function segmentsOf(piece: CutPiece): Segment[] {
  const runs = [
    ...piece.piece.edges.map(({ curves }) => curves),
    ...piece.marks.map(({ curves }) => curves),
    ...piece.notches.flatMap(({ ticks }) => ticks.map((tick) => [tick])),
  ];
  return [...outlineOf(piece), ...runs.flatMap(segments)];
}

function outlineOf({ cutEdges }: CutPiece): Segment[] {
  return segments(cutEdges.flatMap(({ curves }) => curves));
}

function segments(curves: readonly Curve[]): Segment[] {
  const points = flattenedRun(curves, 0.1);
  return points.slice(1).map((to, index) => [points[index]!, to]);
}

function awayFrom(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const held = Math.min(1, Math.max(0, share));
  return distance(point, { x: from.x + held * dx, y: from.y + held * dy });
}

/** Whether a line comes into a box or too near to it: the part of the line between the box's four sides. */
function crosses([from, to]: Segment, { x, y, width, height }: LabelBox): boolean {
  let [start, end] = [0, 1];
  const between = (at: number, way: number, low: number, high: number): boolean => {
    if (way === 0) return at >= low && at <= high;
    const [a, b] = [(low - at) / way, (high - at) / way];
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
    return start <= end;
  };
  return (
    between(from.x, to.x - from.x, x - CLEAR, x + width + CLEAR) &&
    between(from.y, to.y - from.y, y - CLEAR, y + height + CLEAR)
  );
}

function meets(a: LabelBox, b: LabelBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function isIn(at: Point, { x, y, width, height }: Window): boolean {
  return at.x >= x && at.x <= x + width && at.y >= y && at.y <= y + height;
}

/** With the rim of its sheet, where lines are but no names. */
function grown({ x, y, width, height }: Window): Window {
  return { x: x - RIM, y: y - RIM, width: width + 2 * RIM, height: height + 2 * RIM };
}

function within(box: LabelBox, window: Window): boolean {
  const end = { x: box.x + box.width, y: box.y + box.height };
  return isIn(box, window) && isIn(end, window);
}
