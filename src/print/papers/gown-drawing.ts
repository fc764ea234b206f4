import type { Curve, Point } from '../../geometry/curve.ts';
import type { Silhouette, View, ViewLine } from '../../making/train/silhouette.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';

/** What the views are called and how a length is written; from the papers' words. */
export interface ViewWords {
  readonly front: string;
  readonly back: string;
  readonly side: string;
  readonly above: string;
  readonly floor: string;
  readonly number: (mm: number) => string;
}

const OUTLINE: LineStyle = { width: 0.35 };
const SEAM: LineStyle = { width: 0.2 };
const FLOOR: LineStyle = { width: 0.2, dash: [1.2, 0.8] };
const OPENING: LineStyle = { width: 0.9 };

/** Type in the figures, mm on paper; the length of seams stands at the hem. */
const TEXT = 2.8;
const GAP = 10;

/** Front and back side by side, as wide as `width` mm on paper, at one scale. */
export function frontAndBack(
  silhouette: Silhouette,
  words: ViewWords,
  width: number,
  height: number,
): Drawing {
  const views = [
    { view: silhouette.front, name: words.front },
    { view: silhouette.back, name: words.back },
  ];
  const boxes = views.map(({ view }) => boxOf([view.waist, view.hem, ...view.outlines]));
  const wide = boxes.reduce((sum, box) => sum + box.width, 0);
  const tall = Math.max(...boxes.map((box) => box.bottom)) - Math.min(...boxes.map((box) => box.top));
  const scale = Math.min((width - 3 * GAP) / wide, (height - 4 * TEXT) / tall);
  const top = Math.min(...boxes.map((box) => box.top));
  let left = GAP;
  const marks = views.flatMap(({ view, name }, i) => {
    const box = boxes[i]!;
    const place = placer(scale, { x: left - box.left * scale, y: 2 * TEXT - top * scale });
    const middle = left + (box.width * scale) / 2;
    left += box.width * scale + GAP;
    return [
      textMark(name, { x: middle, y: TEXT }, TEXT, { anchor: 'middle', bold: true }),
      ...viewMarks(view, place, words),
    ];
  });
  return { x: 0, y: 0, width, height: tall * scale + 4 * TEXT, marks };
}

/** From her left with the floor, and the hem from above; undefined where the floor is not known. */
export function sideAndAbove(
  silhouette: Silhouette,
  words: ViewWords,
  width: number,
  height: number,
): Drawing | undefined {
  const { side } = silhouette;
  if (side === undefined) return undefined;
  const profile = boxOf([side.front, side.back, side.waist]);
  const print = boxOf([side.footprint]);
  const room = width - 3 * GAP;
  const scale = Math.min(
    room / (profile.width + print.width),
    (height - 5 * TEXT) / Math.max(profile.height, print.height),
  );
  const down = 2 * TEXT;
  const place = placer(scale, { x: GAP - profile.left * scale, y: down - profile.top * scale });
  const printLeft = 2 * GAP + profile.width * scale;
  const placePrint = placer(scale, { x: printLeft - print.left * scale, y: down - print.top * scale });
  const floorY = place({ x: 0, y: side.floor }).y;
  const floorEnds = [profile.left, profile.right].map((x) => place({ x, y: side.floor }));
  const marks: Mark[] = [
    textMark(words.side, { x: GAP + (profile.width * scale) / 2, y: TEXT }, TEXT, {
      anchor: 'middle',
      bold: true,
    }),
    lineOf(
      [
        { x: floorEnds[0]!.x - GAP / 2, y: floorY },
        { x: floorEnds[1]!.x + GAP / 2, y: floorY },
      ],
      FLOOR,
    ),
    textMark(words.floor, { x: floorEnds[0]!.x - GAP / 2, y: floorY + 1.2 * TEXT }, TEXT),
    ...[side.front, side.back, side.waist].map((line) => lineOf(line.map(place), OUTLINE)),
    textMark(words.above, { x: printLeft + (print.width * scale) / 2, y: TEXT }, TEXT, {
      anchor: 'middle',
      bold: true,
    }),
    {
      kind: 'path',
      runs: [smooth([...side.footprint, side.footprint[0]!].map(placePrint))],
      closed: true,
      line: OUTLINE,
    },
    textMark(
      `${words.number(print.width)} × ${words.number(print.height)}`,
      { x: printLeft + (print.width * scale) / 2, y: down + print.height * scale + 1.4 * TEXT },
      TEXT,
      { anchor: 'middle' },
    ),
  ];
  return {
    x: 0,
    y: 0,
    width,
    height: down + Math.max(profile.height, print.height) * scale + 3 * TEXT,
    marks,
  };
}

function viewMarks(view: View, place: (point: Point) => Point, words: ViewWords): Mark[] {
  const lines = [view.waist, view.hem, ...view.outlines].map((line) => lineOf(line.map(place), OUTLINE));
  const seams = view.seams.map(({ line }) => lineOf(line.map(place), SEAM));
  const opening = view.opening === undefined ? [] : [lineOf(view.opening.map(place), OPENING)];
  return [...lines, ...seams, ...opening, ...lengthMarks(view, place, words)];
}

/** Each length below the hem where it holds, below one another where they would touch. */
function lengthMarks(view: View, place: (point: Point) => Point, words: ViewWords): Mark[] {
  const hem = view.hem.map(place);
  const taken: { readonly left: number; readonly right: number; readonly y: number }[] = [];
  return [...view.lengths]
    .sort((a, b) => a.at.x - b.at.x)
    .map(({ at, length }) => {
      const text = words.number(length);
      const end = place(at);
      const half = textWidth(text, TEXT) / 2 + 0.6;
      const [left, right] = [end.x - half, end.x + half];
      let y = lowestWithin(hem, left, right, end.y) + 1.25 * TEXT;
      while (taken.some((one) => one.left < right && left < one.right && Math.abs(one.y - y) < TEXT))
        y += TEXT;
      taken.push({ left, right, y });
      return textMark(text, { x: end.x, y }, TEXT, { anchor: 'middle' });
    });
}

/** The lowest that a line lies between two places across. */
function lowestWithin(line: readonly Point[], left: number, right: number, least: number): number {
  let lowest = least;
  for (const [i, to] of line.entries()) {
    const from = line[i - 1];
    if (from === undefined || Math.max(from.x, to.x) < left || Math.min(from.x, to.x) > right) continue;
    for (const x of [from.x, to.x, left, right]) {
      const part = to.x === from.x ? 1 : (x - from.x) / (to.x - from.x);
      if (x >= left && x <= right && part >= 0 && part <= 1)
        lowest = Math.max(lowest, from.y + (to.y - from.y) * part);
    }
  }
  return lowest;
}

function placer(scale: number, shift: Point): (point: Point) => Point {
  return ({ x, y }) => ({ x: x * scale + shift.x, y: y * scale + shift.y });
}

function lineOf(points: readonly Point[], line: LineStyle): Mark {
  return { kind: 'path', runs: [smooth(points)], closed: false, line };
}

/** Straight between points that lie close together. */
function smooth(points: readonly Point[]): Curve[] {
  return points.slice(1).map((to, i) => ({ kind: 'line', from: points[i]!, to }));
}

interface ViewBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

function boxOf(lines: readonly ViewLine[]): ViewBox {
  const points = lines.flat();
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { left, right, top, bottom, width: right - left, height: bottom - top };
}
