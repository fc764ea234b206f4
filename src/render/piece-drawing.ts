import type { CutPiece } from '../draft/piece.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import type { Line, Point } from '../geometry/curve.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { placeOnRun } from '../geometry/length.ts';
import { along, leftOf, subtract, unit } from '../geometry/point.ts';
import type { GroupMark, LineStyle, PathMark, TextMark } from './drawing.ts';
import { type FittedText, type LabelBox, LabelRoom, type Window } from './label-place.ts';
import { type LabelLine, type PieceLabels, pieceText } from './piece-text.ts';
import { textMark } from './ruled-marks.ts';
import { textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/** The lines of a pattern: black hairlines, told apart by their dashes. */
export const PATTERN_LINES = {
  cut: { width: 0.35 },
  sew: { width: 0.25, dash: [5, 2.5] },
  fold: { width: 0.35, dash: [12, 2, 2, 2] },
  grain: { width: 0.25 },
  notch: { width: 0.35 },
  mark: { width: 0.25, dash: [1.5, 1.5] },
} as const satisfies Record<string, LineStyle>;

/**
 * A piece as it is printed, in the coordinates that it has: cut line, seam lines by edge, grain, notches, marks and
 * text. Each text stands within one of the windows (sheets), or anywhere inside the piece without them.
 */
export function drawPiece(
  cutPiece: CutPiece,
  labels: PieceLabels,
  options: { readonly grain?: Line; readonly windows?: readonly Window[] } = {},
): GroupMark {
  const { piece } = cutPiece;
  const grain = options.grain ?? piece.grain;
  const marks = [
    cutPath(cutPiece),
    ...piece.edges.map((edge): PathMark => {
      const line = edge.name === 'fold' ? PATTERN_LINES.fold : PATTERN_LINES.sew;
      return {
        kind: 'path',
        runs: [edge.curves],
        closed: false,
        line,
        class: 'sew',
        data: { edge: edge.name },
      };
    }),
    grainPath(grain),
    ...cutPiece.notches.map(
      ({ edge, ticks }): PathMark => ({
        kind: 'path',
        runs: ticks.map((tick) => [tick]),
        closed: false,
        line: PATTERN_LINES.notch,
        class: 'notch',
        data: { edge },
      }),
    ),
    ...cutPiece.marks.map(
      ({ name, curves }): PathMark => ({
        kind: 'path',
        runs: [curves],
        closed: false,
        line: PATTERN_LINES.mark,
        class: 'mark',
        data: { mark: name },
      }),
    ),
    ...pieceTexts(cutPiece, labels, grain, options.windows),
  ];
  const data = { gore: cutPiece.gore, layers: cutPiece.layers.join(' ') };
  return { kind: 'group', class: 'piece', data, marks };
}

function cutPath({ cutEdges }: CutPiece): PathMark {
  const run = cutEdges.flatMap((edge) => edge.curves);
  return { kind: 'path', runs: [run], closed: true, line: PATTERN_LINES.cut, class: 'cut' };
}

/** The grain line with an open arrowhead at both ends. */
function grainPath(grain: Line): PathMark {
  const head = (tip: Point, from: Point): Line[] => {
    const back = unit(subtract(from, tip));
    const base = along(tip, back, 5);
    const side = (sign: number) => along(base, leftOf(back), 1.6 * sign);
    return [
      { kind: 'line', from: side(1), to: tip },
      { kind: 'line', from: tip, to: side(-1) },
    ];
  };
  const runs = [[grain], head(grain.from, grain.to), head(grain.to, grain.from)];
  return { kind: 'path', runs, closed: false, line: PATTERN_LINES.grain, class: 'grain' };
}

function pieceTexts(
  cutPiece: CutPiece,
  labels: PieceLabels,
  grain: Line,
  windows: readonly Window[] | undefined,
): TextMark[] {
  const seamLine = cutPiece.piece.edges.flatMap((edge) => edge.curves);
  const outline = flattenedRun(seamLine, 0.5);
  const box = boundsOfCurves(seamLine);
  const whole: Window = {
    x: box.left,
    y: box.top,
    width: box.right - box.left,
    height: box.bottom - box.top,
  };
  const within = windows ?? [whole];
  const fold = foldText(cutPiece, outline, grain, within);
  const taken = fold === undefined ? [] : [fold.box];
  const main = mainText(
    pieceText(cutPiece, labels),
    cutPiece.labelAt,
    new LabelRoom(outline, grain, within, taken),
  );
  return [...main, ...(fold === undefined ? [] : fold.marks)];
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

/** `place on fold`, beside the fold. */
function foldText(
  { piece }: CutPiece,
  outline: readonly Point[],
  grain: Line,
  windows: readonly Window[],
): { readonly box: LabelBox; readonly marks: TextMark[] } | undefined {
  const fold = piece.edges.find((edge) => edge.name === 'fold');
  if (fold === undefined) return undefined;
  const { curve, t } = placeOnRun(fold.curves, 0.3 * lengthHint(fold.curves));
  const size = 3;
  const width = textWidth(FOLD_TEXT, size);
  const room = new LabelRoom(outline, grain, windows);
  const box = room.boxFor(pointAt(curve, t), { leastWidth: width, area: 0, heightIn: () => size * LEADING });
  if (box === undefined) return undefined;
  const nearLeft = pointAt(curve, t).x < box.x + box.width / 2;
  const x = nearLeft ? box.x : box.x + box.width - width;
  const mark = textMark(FOLD_TEXT, { x, y: box.y + size }, size, { class: 'label' });
  return { box: { ...box, x, width }, marks: [mark] };
}

const FOLD_TEXT = 'this edge on the fold';

function lengthHint(curves: Parameters<typeof boundsOfCurves>[0]): number {
  const box = boundsOfCurves(curves);
  return Math.hypot(box.right - box.left, box.bottom - box.top);
}
