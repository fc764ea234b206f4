import type { CutPiece } from '../../draft/piece.ts';
import type { Line, Point } from '../../geometry/curve.ts';
import type { Edge } from '../../geometry/edge.ts';
import { lengthOfRun } from '../../geometry/length.ts';
import { along, leftOf, subtract, unit } from '../../geometry/point.ts';
import type { GroupMark, LineStyle, PathMark } from '../drawing.ts';
import { type PieceSurroundings, pieceTexts } from './piece-labels.ts';
import type { PieceLabels } from './piece-text.ts';

/** The lines of a pattern: black hairlines, told apart by their dashes. */
export const PATTERN_LINES = {
  cut: { width: 0.35 },
  sew: { width: 0.25, dash: [5, 2.5] },
  fold: { width: 0.35, dash: [12, 2, 2, 2] },
  grain: { width: 0.25 },
  notch: { width: 0.35 },
  mark: { width: 0.25, dash: [1.5, 1.5] },
  pleatFold: { width: 0.3, dash: [9, 2] },
  arrow: { width: 0.25 },
  /** As wide as a dot is long. */
  stone: { width: 0.8 },
  motif: { width: 0.25, dash: [1, 1] },
} as const satisfies Record<string, LineStyle>;

/** Lines inside a piece that are not drawn as other marks are, by name. */
const MARKED: Readonly<Record<string, LineStyle>> = {
  'fold-line': PATTERN_LINES.pleatFold,
  'tuck-fold-line': PATTERN_LINES.pleatFold,
  'pleat-arrow': PATTERN_LINES.arrow,
  'stitched-to': PATTERN_LINES.notch,
  'bustle-anchor': PATTERN_LINES.notch,
  'bustle-pick-up': PATTERN_LINES.notch,
};

/**
 * A piece as it is printed, in the coordinates that it has: cut line, seam lines by edge, grain, notches, marks and
 * text.
 */
export function drawPiece(
  cutPiece: CutPiece,
  labels: PieceLabels,
  around: PieceSurroundings = {},
): GroupMark {
  const marks = [
    cutPath(cutPiece),
    ...cutPiece.piece.edges.map(sewPath),
    grainPath(around.grain ?? cutPiece.piece.grain),
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
        line: MARKED[name] ?? PATTERN_LINES.mark,
        class: 'mark',
        data: { mark: name },
      }),
    ),
    ...(cutPiece.stones ?? []).map(
      ({ name, runs }): PathMark => ({
        kind: 'path',
        runs,
        closed: false,
        line: runs.some((run) => run.length > 1) ? PATTERN_LINES.motif : PATTERN_LINES.stone,
        class: 'stone',
        data: { stones: name },
      }),
    ),
    ...pieceTexts(cutPiece, labels, around),
  ];
  const { part } = cutPiece.piece;
  const data = {
    gore: cutPiece.gore,
    layers: cutPiece.layers.join(' '),
    ...(part === undefined ? {} : { part }),
  };
  return { kind: 'group', class: 'piece', data, marks };
}

/** Front edges run up to the waist: their dashes are counted from there, so that those of layers that share them meet. */
function sewPath(edge: Edge, index: number): PathMark {
  const style = edge.name === 'fold' ? PATTERN_LINES.fold : PATTERN_LINES.sew;
  const period = style.dash.reduce((sum, length) => sum + length, 0);
  const isFront = index === 3;
  const dashPhase = period - (lengthOfRun(edge.curves) % period);
  const line = isFront ? { ...style, dashPhase } : style;
  return { kind: 'path', runs: [edge.curves], closed: false, line, class: 'sew', data: { edge: edge.name } };
}

function cutPath({ cutEdges }: CutPiece): PathMark {
  const run = cutEdges.flatMap((edge) => edge.curves);
  return { kind: 'path', runs: [run], closed: true, line: PATTERN_LINES.cut, class: 'cut' };
}

/** The grain line with an open arrowhead at both ends. */
export function grainPath(grain: Line): PathMark {
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
