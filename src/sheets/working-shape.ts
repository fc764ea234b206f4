import type { CutPiece } from '../draft/piece.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { type Placement, placed, placedPoint } from '../geometry/transform.ts';
import type { Polyline } from './touched-sheets.ts';

/**
 * A turned piece as the search for its place sees it: its cut line flattened, and for each row of `ROW` mm the stretch
 * that the piece takes, with the gap to its neighbours; all from the upper left corner of its bounding box.
 */
export interface WorkingShape {
  readonly turned: 0 | 90 | 180 | 270;
  /** Moves the piece so that its bounding box begins at 0 0. */
  readonly placement: Placement;
  readonly width: number;
  readonly height: number;
  /** The cut line, and the hems of pieces that lie on this one. */
  readonly lines: readonly Polyline[];
  /** All that is drawn. */
  readonly allLines: readonly Polyline[];
  readonly rowLeft: Float64Array;
  readonly rowRight: Float64Array;
}

/** Height of a row, mm. Larger keeps pieces farther apart than they need be; smaller costs time. */
export const ROW = 5;

/** White left between two pieces at least, mm: shears need it. */
const GAP = 4;

/** Chord height of the flattened line, mm; only the choice of a place rests on it, and the gap is larger. */
const COARSE = 1;

/**
 * `sharing` are pieces that lie on the first, apart from their hems. `shown` picks what must be printed of a piece; the
 * room that it takes is its whole cut line's.
 */
export function workingShape(
  cutPiece: CutPiece,
  sharing: readonly CutPiece[],
  turned: WorkingShape['turned'],
  shown: (piece: CutPiece) => ShownRuns,
): WorkingShape {
  const turn: Placement = { mirror: false, angle: (turned * Math.PI) / 180, shift: { x: 0, y: 0 } };
  const cutLines = [cutPiece, ...sharing].map(cutLine);
  const box = boundsOfCurves(cutLines.flat().map((curve) => placed(turn, curve)));
  const placement: Placement = { ...turn, shift: { x: -box.left, y: -box.top } };
  const flat = (run: readonly Curve[]) =>
    polylineOf(flattenedRun(run, COARSE).map((point) => placedPoint(placement, point)));
  return {
    turned,
    placement,
    width: box.right - box.left,
    height: box.bottom - box.top,
    lines: [...shown(cutPiece).cut.map(flat), ...sharing.map((piece) => flat(edgeNamed(piece, 'hem')))],
    allLines: [cutPiece, ...sharing].flatMap((piece) => shown(piece).all).map(flat),
    ...rowsOf(cutLines.map(flat), box.bottom - box.top),
  };
}

/** The runs of a piece that paper must show: those of the cut line, and all. */
export interface ShownRuns {
  readonly cut: readonly (readonly Curve[])[];
  readonly all: readonly (readonly Curve[])[];
}

/** All that is drawn, the grain line apart. */
export function everyRun(cutPiece: CutPiece): ShownRuns {
  return { cut: [cutLine(cutPiece)], all: drawnRuns(cutPiece) };
}

export function cutLine(cutPiece: CutPiece): Curve[] {
  return cutPiece.cutEdges.flatMap((edge) => [...edge.curves]);
}

function edgeNamed(cutPiece: CutPiece, name: string): Curve[] {
  return cutPiece.cutEdges.filter((edge) => edge.name === name).flatMap((edge) => [...edge.curves]);
}

/** Every run of curves that is drawn for a piece, the cut line first; the grain line apart. */
export function drawnRuns(cutPiece: CutPiece): Curve[][] {
  return [
    cutLine(cutPiece),
    ...cutPiece.piece.edges.map((edge) => [...edge.curves]),
    ...cutPiece.notches.flatMap((notch) => notch.ticks.map((tick) => [tick])),
    ...cutPiece.marks.map((mark) => [...mark.curves]),
  ];
}

export function polylineOf(points: readonly Point[]): Polyline {
  return Float64Array.from(points.flatMap((point) => [point.x, point.y]));
}

function rowsOf(outlines: readonly Polyline[], height: number): Pick<WorkingShape, 'rowLeft' | 'rowRight'> {
  const count = Math.ceil(height / ROW) + 1;
  const left = new Float64Array(count).fill(Infinity);
  const right = new Float64Array(count).fill(-Infinity);
  for (const outline of outlines) {
    for (let i = 0; i + 3 < outline.length; i += 2) {
      widenRows(left, right, outline[i]!, outline[i + 1]!, outline[i + 2]!, outline[i + 3]!);
    }
  }
  return withGap(left, right);
}

/** Widens each row that a segment passes through by the part of the segment in it. */
function widenRows(
  left: Float64Array,
  right: Float64Array,
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
): void {
  const top = Math.min(fromY, toY);
  const bottom = Math.max(fromY, toY);
  const xAt = (y: number) => (toY === fromY ? fromX : fromX + ((y - fromY) / (toY - fromY)) * (toX - fromX));
  const last = Math.min(left.length - 1, Math.floor(bottom / ROW));
  for (let row = Math.max(0, Math.floor(top / ROW)); row <= last; row++) {
    const level = toY === fromY;
    const a = level ? fromX : xAt(Math.max(top, row * ROW));
    const b = level ? toX : xAt(Math.min(bottom, (row + 1) * ROW));
    left[row] = Math.min(left[row]!, a, b);
    right[row] = Math.max(right[row]!, a, b);
  }
}

/** Each row as wide as its neighbours too, so that the gap holds up and down as well as across. */
function withGap(left: Float64Array, right: Float64Array): Pick<WorkingShape, 'rowLeft' | 'rowRight'> {
  const rowLeft = left.map((own, row) => Math.min(own, left[row - 1] ?? own, left[row + 1] ?? own) - GAP / 2);
  const rowRight = right.map(
    (own, row) => Math.max(own, right[row - 1] ?? own, right[row + 1] ?? own) + GAP / 2,
  );
  return { rowLeft, rowRight };
}
