import type { Curve, Line, Point } from '../../geometry/curve.ts';
import { pointAt, tangentAt } from '../../geometry/evaluate.ts';
import { along, leftOf, scaled } from '../../geometry/point.ts';
import type { TextMark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';
import type { LabelBox, Window } from '../text/label-place.ts';
import { textWidth } from '../text/text-width.ts';
import {
  CLEAR,
  crosses,
  grown,
  isIn,
  lieAcross,
  liesApart,
  meets,
  outlineOf,
  type PieceLines,
  type Segment,
  segmentsOf,
  within,
} from './lines-drawn.ts';

/** The name of a line where several layers' lines lie on one sheet, and what it covers. */
export interface LineName {
  readonly box: LabelBox;
  readonly mark: TextMark;
}

/** What the names of a pile's lines are found by, and nothing else. */
export interface Pile {
  readonly pieces: readonly NamedLines[];
  readonly grain: Line;
  readonly windows: readonly Window[];
}

export interface NamedLines extends PieceLines {
  readonly text: string;
  readonly waist: readonly Curve[];
  readonly hem: readonly Curve[];
}

export function placedNames({ pieces, grain, windows }: Pile): LineName[][] {
  const lines = pieces.flatMap((piece) => segmentsOf(piece));
  lines.push([grain.from, grain.to]);
  const taken: LabelBox[] = [];
  const sheets = windows.map((window) => {
    const whole = grown(window);
    return { window, whole, lines: lines.filter((line) => crosses(line, whole)) };
  });
  return pieces.map((piece, index) => {
    const corner = apartFromOthers(placesAlong(piece.waist), piece, pieces);
    const names: LineName[] = [];
    for (const { places, share } of [
      { places: placesAlong(piece.hem), share: SHARES[index % SHARES.length]! },
      { places: corner, share: 0.5 },
    ])
      for (const sheet of sheets) {
        const shown = places.filter(({ at }) => isIn(at, sheet.whole));
        const name = clearName(piece.text, inOrder(shown, share), sheet, taken);
        if (name === undefined) continue;
        taken.push(name.box);
        names.push(name);
      }
    return names;
  });
}

/** A place on a line, and the way to its inner side. */
interface NamePlace {
  readonly at: Point;
  readonly inward: Point;
}

/** A sheet that a name must stand on, and the lines there. */
interface Sheet {
  readonly window: Window;
  /** With its rim. */
  readonly whole: Window;
  readonly lines: readonly Segment[];
}

/** Which of the places along one sheet each of several hems would rather have. */
const SHARES = [0.5, 0.2, 0.8, 0.35, 0.65];

/** Ems of a name, mm, the largest that is clear. */
export const SIZES = [2.8, 2.2, 1.8, 1.5] as const;

/** Places that are looked at along one curve. */
const PLACES = 60;

/** Lines nearer than this are read as one, mm. */
const ONE_LINE = 0.5;

function placesAlong(curves: readonly Curve[]): NamePlace[] {
  return curves.flatMap((curve) =>
    Array.from({ length: PLACES }, (_, index) => {
      const t = (index + 0.5) / PLACES;
      return { at: pointAt(curve, t), inward: scaled(leftOf(tangentAt(curve, t)), -1) };
    }),
  );
}

/** Places where a piece's line at the waist lies apart from another's. */
function apartFromOthers(
  places: readonly NamePlace[],
  piece: PieceLines,
  pieces: readonly PieceLines[],
): NamePlace[] {
  const others = pieces.filter((other) => other !== piece).map(outlineOf);
  return places.filter(({ at }) =>
    others.some((other) => other.every((line) => liesApart(at, line, ONE_LINE))),
  );
}

function inOrder(places: readonly NamePlace[], share: number): NamePlace[] {
  const middle = share * places.length;
  return places
    .map((place, index) => ({ place, away: Math.abs(index - middle) }))
    .sort((a, b) => a.away - b.away)
    .map(({ place }) => place);
}

function clearName(
  text: string,
  places: readonly NamePlace[],
  { window, lines }: Sheet,
  taken: readonly LabelBox[],
): LineName | undefined {
  const farthest = textWidth(text, SIZES[0]) + SIZES[0] + GAPS[GAPS.length - 1]! + 2 * CLEAR;
  const linesNear = places.map((): readonly Segment[] | undefined => undefined);
  for (const gap of GAPS)
    for (const size of SIZES) {
      const width = textWidth(text, size);
      for (const [index, place] of places.entries()) {
        const box = boxBeside(place, width, size, gap);
        if (!within(box, window) || taken.some((other) => meets(box, other))) continue;
        linesNear[index] ??= linesAround(place.at, farthest, lines);
        const near = linesNear[index];
        if (near.some((line) => crosses(line, box)) || !isNext(place, box, near)) continue;
        return nameAt(text, box.x, box.y, size);
      }
    }
  return undefined;
}

export function nameAt(text: string, x: number, y: number, size: number): LineName {
  const box = { x, y, width: textWidth(text, size), height: HEIGHT * size };
  return { box, mark: textMark(text, { x, y: y + ASCENT * size }, size, { class: 'label' }) };
}

function linesAround({ x, y }: Point, reach: number, lines: readonly Segment[]): Segment[] {
  const box = { x: x - reach, y: y - reach, width: 2 * reach, height: 2 * reach };
  return lines.filter((line) => crosses(line, box));
}

/** Whether no other line lies between a name and its own line: else it would be read as the other's. */
function isNext({ at, inward }: NamePlace, box: LabelBox, lines: readonly Segment[]): boolean {
  const start = along(at, inward, ONE_LINE / 2);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  return !lines.some((line) => lieAcross(line, [start, middle]));
}

/** How far a name may stand from its line where that lies at the rim of a sheet, mm. */
const GAPS = [0, 3, 6, 9] as const;

/** Of an em: how far letters stand above and hang below their line. */
const ASCENT = 0.75;
const HEIGHT = 1;

/** Far enough in for the whole box to clear a line that slopes. */
function boxBeside({ at, inward }: NamePlace, width: number, size: number, gap: number): LabelBox {
  const height = HEIGHT * size;
  const reach = (Math.abs(inward.x) * width + Math.abs(inward.y) * height) / 2 + 2 * CLEAR + gap;
  const middle = along(at, inward, reach);
  return { x: middle.x - width / 2, y: middle.y - height / 2, width, height };
}
