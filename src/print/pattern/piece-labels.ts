import type { CutPiece } from '../../draft/piece.ts';
import { boundsOfCurves } from '../../geometry/bounds.ts';
import type { Curve, Line, Point } from '../../geometry/curve.ts';
import { pointAt, tangentAt } from '../../geometry/evaluate.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import { lengthOfRun, placeOnRun } from '../../geometry/length.ts';
import type { TextMark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';
import { type FittedText, type LabelBox, LabelRoom, rowsInside, type Window } from '../text/label-place.ts';
import { textWidth } from '../text/text-width.ts';
import { wrapText } from '../text/wrap-text.ts';
import { type LabelLine, type PieceLabels, pieceText } from './piece-text.ts';
import type { LineName } from './placed-names.ts';

/** Beside the piece itself. */
export interface PieceSurroundings {
  /** The part of the grain line to draw; all of it when absent. */
  readonly grain?: Line;
  /** Sheets: each text stands within one of them. Anywhere inside the piece when absent. */
  readonly windows?: readonly Window[];
  /** Pieces that lie on this one and differ at the hem only. */
  readonly sharing?: readonly CutPiece[];
  /** This piece lies on a longer one, which has the text: only its lines are named. */
  readonly namesOnly?: true;
  /** Names of its own lines where pieces lie on one another. */
  readonly names?: readonly LineName[];
  /** Names of the others' lines. */
  readonly otherNames?: readonly LineName[];
}

/** All text on a piece, each within one window. */
export function pieceTexts(cutPiece: CutPiece, labels: PieceLabels, around: PieceSurroundings): TextMark[] {
  const seamLine = cutPiece.piece.edges.flatMap((edge) => edge.curves);
  const windows = around.windows ?? [windowAround(seamLine)];
  const { sharing = [], names = [], otherNames = [] } = around;
  const nameMarks = names.map(({ mark }) => mark);
  if (around.namesOnly === true) return nameMarks;
  const inside = rowsInside(flattenedRun(seamLine, 0.5));
  const grain = around.grain ?? cutPiece.piece.grain;
  const written = [...names, ...otherNames].map(({ box }) => box);
  const drawn = [cutPiece, ...sharing].flatMap(({ marks }) => marks.flatMap(boxesOfMark));
  const taken = [...written, ...drawn];
  const fold = foldText(cutPiece, labels.words.piece, new LabelRoom(inside, grain, windows, taken));
  if (fold !== undefined) taken.push(fold.box);
  const roomWith = (clear: number) => new LabelRoom(inside, grain, windows, taken, clear);
  const main = mainText(pieceText(cutPiece, labels, sharing), cutPiece.labelAt, roomWith);
  return [...main, ...(fold === undefined ? [] : [fold.mark]), ...nameMarks];
}

/** Lines inside a piece, as boxes that no text may stand on; what is as small as an eyelet is one box. */
function boxesOfMark({ curves }: CutPiece['marks'][number]): LabelBox[] {
  return curves.flatMap((curve) => {
    const { left, right, top, bottom } = boundsOfCurves([curve]);
    if (right - left < 3 * SLICE && bottom - top < 3 * SLICE)
      return [{ x: left, y: top - 0.5, width: right - left, height: bottom - top + 1 }];
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

/**
 * The block of text at the largest size that fits somewhere. A piece too small for all of it has its first lines: name,
 * how to cut it, of what; one too small for these has its name alone.
 */
function mainText(
  lines: readonly LabelLine[],
  near: Point,
  roomWith: (clear: number) => LabelRoom,
): TextMark[] {
  const room = roomWith(CLEAR_OF_LINES);
  const tight = roomWith(NEAR_LINES);
  for (const [where, count, sizes] of [
    [room, lines.length, SIZES],
    [tight, lines.length, SIZES.slice(4)],
    [tight, 3, SIZES.slice(4)],
    [tight, 1, SMALLEST],
  ] as const) {
    const some = lines.slice(0, count);
    for (const size of sizes) {
      const box = where.boxFor(near, fittedBlock(some, size));
      if (box !== undefined) return blockMarks(some, box, size);
    }
  }
  const size = SMALLEST.at(-1)!;
  return blockMarks(lines.slice(0, 1), { ...near, width: LEAST_EMS * size, height: 0 }, size);
}

/** Between text and lines, mm: where there is room, and on the smallest pieces. */
const CLEAR_OF_LINES = 3;
const NEAR_LINES = 1;

/** Ems of a name on a piece too small for more, mm. */
const SMALLEST = [2.6, 2.2, 1.8, 1.5, 1.2] as const;

/** Ems of the text on pieces, mm, the largest that fits. */
const SIZES = [6, 5, 4.2, 3.6, 3, 2.6, 2.2, 1.8] as const;

/** Narrower than this many ems, text is all hyphens. */
const LEAST_EMS = 9;
/** Wider than this many ems, lines are hard to read. */
const MOST_EMS = 24;
const LEADING = 1.3;

function fittedBlock(lines: readonly LabelLine[], size: number): FittedText {
  const run = lines.reduce((sum, { text, bold }) => sum + textWidth(text, size, bold), 0);
  const known = new Map<number, number>();
  const heightOf = (width: number) => {
    const wrapped = lines.reduce((sum, { text, bold }) => sum + wrapText(text, width, size, bold).length, 0);
    return wrapped * size * LEADING;
  };
  // Most boxes that are tried are as wide as text may be.
  const heightIn = (width: number) => {
    const inner = Math.min(width, MOST_EMS * size);
    const height = known.get(inner) ?? heightOf(inner);
    known.set(inner, height);
    return height;
  };
  const longest = Math.max(...lines.map(({ text, bold }) => textWidth(text, size, bold)));
  return { leastWidth: Math.min(longest + 0.1, LEAST_EMS * size), area: run * size * LEADING, heightIn };
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
