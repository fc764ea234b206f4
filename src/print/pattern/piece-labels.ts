import type { CutPiece } from '../../draft/piece.ts';
import { boundsOfCurves } from '../../geometry/bounds.ts';
import type { Curve, Line, Point } from '../../geometry/curve.ts';
import { pointAt, tangentAt } from '../../geometry/evaluate.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import { lengthOfRun, placeOnRun } from '../../geometry/length.ts';
import { along, leftOf, scaled } from '../../geometry/point.ts';
import type { TextMark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';
import { type FittedText, type LabelBox, LabelRoom, type Window } from '../text/label-place.ts';
import { textWidth } from '../text/text-width.ts';
import { wrapText } from '../text/wrap-text.ts';
import { type LabelLine, type PieceLabels, pieceText } from './piece-text.ts';

/** Beside the piece itself. */
export interface PieceSurroundings {
  /** The part of the grain line to draw; all of it when absent. */
  readonly grain?: Line;
  /** Sheets: each text stands within one of them. Anywhere inside the piece when absent. */
  readonly windows?: readonly Window[];
  /** Pieces that lie on this one and differ at the hem only. */
  readonly sharing?: readonly CutPiece[];
  /** This piece lies on a longer one, which has the text: only its hem is named. Its place among those that do. */
  readonly hemOnly?: number;
}

/** All text on a piece, each within one window. */
export function pieceTexts(cutPiece: CutPiece, labels: PieceLabels, around: PieceSurroundings): TextMark[] {
  const seamLine = cutPiece.piece.edges.flatMap((edge) => edge.curves);
  const windows = around.windows ?? [windowAround(seamLine)];
  const { sharing = [], hemOnly } = around;
  const hasPartners = hemOnly !== undefined || sharing.length > 0;
  const hems = hasPartners ? hemNames(cutPiece, labels.words.piece, windows, hemOnly ?? 0) : [];
  const hemMarks = hems.map(({ mark }) => mark);
  if (hemOnly !== undefined) return hemMarks;
  const outline = flattenedRun(seamLine, 0.5);
  const grain = around.grain ?? cutPiece.piece.grain;
  const taken = [...hems.map(({ box }) => box), ...cutPiece.marks.flatMap(boxesOfMark)];
  const fold = foldText(cutPiece, labels.words.piece, new LabelRoom(outline, grain, windows, taken));
  if (fold !== undefined) taken.push(fold.box);
  const room = new LabelRoom(outline, grain, windows, taken);
  const main = mainText(pieceText(cutPiece, labels, sharing), cutPiece.labelAt, room);
  return [...main, ...(fold === undefined ? [] : [fold.mark]), ...hemMarks];
}

/** Long lines inside a piece, as boxes that no text may stand on. */
function boxesOfMark({ name, curves }: CutPiece['marks'][number]): LabelBox[] {
  if (!name.endsWith('-line')) return [];
  return curves.flatMap((curve) => {
    const [from, to] = [pointAt(curve, 0), pointAt(curve, 1)];
    const count = 1 + Math.ceil(Math.abs(to.x - from.x) / SLICE);
    const at = (share: number): Point => pointAt(curve, share);
    return Array.from({ length: count }, (_, i) => {
      const [a, b] = [at(i / count), at((i + 1) / count)];
      const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
      // A level line has some height too, or it would slip between two rows.
      return { x, y: y - 0.5, width: Math.abs(b.x - a.x), height: Math.abs(b.y - a.y) + 1 };
    });
  });
}

/** A slanting line is boxed in slices of this width, mm. */
const SLICE = 4;

function windowAround(curves: readonly Curve[]): Window {
  const box = boundsOfCurves(curves);
  return { x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top };
}

/** The block of text at the largest size that fits somewhere; beside its place at the smallest where none does. */
function mainText(lines: readonly LabelLine[], near: Point, room: LabelRoom): TextMark[] {
  for (const size of SIZES) {
    const box = room.boxFor(near, fittedBlock(lines, size));
    if (box !== undefined) return blockMarks(lines, box, size);
  }
  const size = SIZES.at(-1)!;
  return blockMarks(lines, { ...near, width: LEAST_EMS * size, height: 0 }, size);
}

/** Ems of the text on pieces, mm, the largest that fits. */
const SIZES = [6, 5, 4.2, 3.6, 3, 2.6, 2.2, 1.8] as const;

/** Narrower than this many ems, text is all hyphens. */
const LEAST_EMS = 9;
/** Wider than this many ems, lines are hard to read. */
const MOST_EMS = 24;
const LEADING = 1.3;

function fittedBlock(lines: readonly LabelLine[], size: number): FittedText {
  const run = lines.reduce((sum, { text, bold }) => sum + textWidth(text, size, bold), 0);
  const heightIn = (width: number) => {
    const inner = Math.min(width, MOST_EMS * size);
    return (
      lines.reduce((sum, { text, bold }) => sum + wrapText(text, inner, size, bold).length, 0) *
      size *
      LEADING
    );
  };
  return { leastWidth: LEAST_EMS * size, area: run * size * LEADING, heightIn };
}

function blockMarks(lines: readonly LabelLine[], box: LabelBox, size: number): TextMark[] {
  const width = Math.min(box.width, MOST_EMS * size);
  const wrapped = lines.flatMap(({ text, bold }) =>
    wrapText(text, width, size, bold).map((line) => ({ line, bold })),
  );
  const widest = Math.max(...wrapped.map(({ line, bold }) => textWidth(line, size, bold)));
  const x = box.x + Math.max(0, (box.width - widest) / 2);
  return wrapped.map(({ line, bold }, index) =>
    textMark(line, { x, y: box.y + size * (1 + index * LEADING) }, size, { bold, class: 'label' }),
  );
}

type PieceWords = PieceLabels['words']['piece'];

interface PlacedText {
  readonly box: LabelBox;
  readonly mark: TextMark;
}

/** Says that the piece is half of one, right beside the fold. */
function foldText({ piece }: CutPiece, { besideFold }: PieceWords, room: LabelRoom): PlacedText | undefined {
  const fold = piece.edges.find((edge) => edge.name === 'fold');
  if (fold === undefined) return undefined;
  const { curve, t } = placeOnRun(fold.curves, 0.3 * lengthOfRun(fold.curves));
  const near = pointAt(curve, t);
  const way = tangentAt(curve, t);
  const isUpright = Math.abs(way.y) > Math.abs(way.x);
  for (const size of [SIDE_SIZE, 2.2, 1.8]) {
    const width = textWidth(besideFold, size);
    const accepts = (box: LabelBox) =>
      isUpright ? isBeside(box.x, box.width, near.x) : isBeside(box.y, box.height, near.y);
    const box = room.boxFor(near, { leastWidth: width, area: 0, heightIn: () => size * LEADING, accepts });
    if (box === undefined) continue;
    const isAtRight = isUpright && Math.abs(box.x - near.x) >= BESIDE;
    const x = isAtRight ? box.x + box.width - width : box.x;
    const mark = textMark(besideFold, { x, y: box.y + size }, size, { class: 'label' });
    return { box: { ...box, x, width }, mark };
  }
  return undefined;
}

/** Whether a stretch begins or ends right at a line. */
function isBeside(start: number, length: number, line: number): boolean {
  return Math.min(Math.abs(start - line), Math.abs(start + length - line)) < BESIDE;
}

/** Farther from the fold than this, mm, the text would seem to speak of another line. */
const BESIDE = 6;

/** Em of the text at an edge, mm. */
const SIDE_SIZE = 2.8;

/**
 * The name of a hem's cut line, on its inner side, once on each sheet that the line crosses. Each of several hems has
 * its own part of the way along, so that the names do not meet.
 */
function hemNames(
  cutPiece: CutPiece,
  words: PieceWords,
  windows: readonly Window[],
  place: number,
): PlacedText[] {
  const hem = cutPiece.cutEdges.filter((edge) => edge.name === 'hem').flatMap((edge) => edge.curves);
  const text = words.hemCut(cutPiece.layers);
  const width = textWidth(text, SIDE_SIZE);
  const boxes = hem.flatMap((curve) => boxesAlong(curve, width));
  return windows.flatMap((window) => {
    const shown = boxes.filter((box) => within(box, window));
    const box = shown[Math.floor(shown.length * HEM_PARTS[place % HEM_PARTS.length]!)];
    if (box === undefined) return [];
    const at = { x: box.x, y: box.y + 0.8 * SIDE_SIZE };
    return [{ box, mark: textMark(text, at, SIDE_SIZE, { class: 'label' }) }];
  });
}

/** Places for a text beside a curve, far enough in for the whole of it to clear a line that slopes. */
function boxesAlong(curve: Curve, width: number): LabelBox[] {
  return Array.from({ length: HEM_PLACES }, (_, index) => {
    const t = (index + 0.5) / HEM_PLACES;
    const inward = scaled(leftOf(tangentAt(curve, t)), -1);
    const reach = (Math.abs(inward.x) * width + Math.abs(inward.y) * SIDE_SIZE) / 2 + 0.6;
    const middle = along(pointAt(curve, t), inward, reach);
    return { x: middle.x - width / 2, y: middle.y - SIDE_SIZE / 2, width, height: SIDE_SIZE };
  });
}

/** Places along a curve that are looked at, and which of those on one sheet each of several hems takes. */
const HEM_PLACES = 24;
const HEM_PARTS = [0.5, 0.2, 0.8, 0.35, 0.65];

function within(box: LabelBox, window: Window): boolean {
  return (
    box.x >= window.x &&
    box.y >= window.y &&
    box.x + box.width <= window.x + window.width &&
    box.y + box.height <= window.y + window.height
  );
}
