import type { Point } from '../../geometry/curve.ts';
import type { TrainFootprint } from '../../making/train/train-footprint.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { lineMark, polygonRun, textMark } from '../page/ruled-marks.ts';

/** What is written on the figure; from the papers' words. */
export interface FootprintWords {
  /** A length with its unit. */
  readonly length: (mm: number) => string;
  readonly skirt: string;
}

const OUTLINE: LineStyle = { width: 0.35 };
const SEAM: LineStyle = { width: 0.15 };
const SKIRT: LineStyle = { width: 0.2, dash: [1.2, 0.8] };
const MEASURE: LineStyle = { width: 0.15 };

/** Type, and the room round the figure for its measures, mm on paper. */
const TEXT = 2.8;
const ROOM = 12;
/** Length of a measure line's end stroke. */
const END = 2;

/** The train spread on the floor, from above, the wearer facing up the page, with its length and width. */
export function footprintDrawing(
  print: TrainFootprint,
  words: FootprintWords,
  width: number,
  height: number,
): Drawing {
  const xs = [...print.outline.map(({ x }) => x), -print.radius, print.radius];
  const ys = [...print.outline.map(({ y }) => y), -2 * print.radius];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min((width - 2 * ROOM - 20) / (right - left), (height - 2 * ROOM) / (bottom - top));
  const drawn = { width: (right - left) * scale, height: (bottom - top) * scale };
  const shift = { x: (width - drawn.width) / 2 - left * scale, y: ROOM / 2 - top * scale };
  const place = ({ x, y }: Point): Point => ({ x: x * scale + shift.x, y: y * scale + shift.y });
  return {
    x: 0,
    y: 0,
    width,
    height: drawn.height + 1.5 * ROOM,
    marks: [
      skirtCircle(print, place, scale),
      textMark(words.skirt, place({ x: 0, y: -print.radius }), TEXT, { anchor: 'middle' }),
      { kind: 'path', runs: [polygonRun(print.outline.map(place))], closed: true, line: OUTLINE },
      ...print.seams.map(([a, b]) => lineMark(place(a), place(b), SEAM)),
      ...measures(print, words, place, shift.y + bottom * scale),
    ],
  };
}

function skirtCircle(print: TrainFootprint, place: (point: Point) => Point, scale: number): Mark {
  const centre = place({ x: 0, y: -print.radius });
  const circle = { kind: 'arc', centre, radius: print.radius * scale, start: 0, sweep: 2 * Math.PI } as const;
  return { kind: 'path', runs: [[circle]], closed: false, line: SKIRT };
}

/** Its length at the right, from where the cloth meets the floor to its end; its width below. */
function measures(
  print: TrainFootprint,
  words: FootprintWords,
  place: (point: Point) => Point,
  bottom: number,
): Mark[] {
  const xs = print.outline.map((point) => place(point).x);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [floor, end] = [place({ x: 0, y: 0 }).y, place({ x: 0, y: print.length }).y];
  const beside = right + ROOM / 2;
  const below = bottom + ROOM / 3;
  return [
    ...measureLine({ x: beside, y: floor }, { x: beside, y: end }),
    textMark(words.length(print.length), { x: beside + END, y: (floor + end) / 2 + TEXT / 3 }, TEXT),
    ...measureLine({ x: left, y: below }, { x: right, y: below }),
    textMark(words.length(print.width), { x: (left + right) / 2, y: below + 1.3 * TEXT }, TEXT, {
      anchor: 'middle',
    }),
  ];
}

function measureLine(from: Point, to: Point): Mark[] {
  const upright = from.x === to.x;
  const ends = [from, to].map(({ x, y }) =>
    upright
      ? lineMark({ x: x - END / 2, y }, { x: x + END / 2, y }, MEASURE)
      : lineMark({ x, y: y - END / 2 }, { x, y: y + END / 2 }, MEASURE),
  );
  return [lineMark(from, to, MEASURE), ...ends];
}
