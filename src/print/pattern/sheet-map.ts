import type { CutPiece } from '../../draft/piece.ts';
import { boundsOfCurves } from '../../geometry/bounds.ts';
import type { Curve, Point } from '../../geometry/curve.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import type { SheetPlan } from '../../sheets/sheet-plan.ts';
import type { Mark } from '../drawing.ts';
import { boxMark, polygonRun, textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';
import { pieceName } from './piece-text.ts';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The printed sheets with their labels and the pieces on them, as large as `box` allows; mm on paper. */
export function sheetMap(plan: SheetPlan, box: Box): Mark[] {
  if (plan.sheets.length === 0 || box.height < LEAST_HEIGHT) return [];
  const right = Math.max(...plan.sheets.map((sheet) => sheet.x + sheet.width));
  const bottom = Math.max(...plan.sheets.map((sheet) => sheet.y + sheet.height));
  const scale = Math.min(LARGEST_SCALE, box.width / right, box.height / bottom);
  const at = (point: Point): Point => ({ x: box.x + point.x * scale, y: box.y + point.y * scale });
  const cells = plan.sheets.flatMap((sheet): Mark[] => {
    const corner = at(sheet);
    const size = Math.min(
      LARGEST_TEXT,
      0.28 * sheet.height * scale,
      sheetTextSize(sheet.label, sheet.width * scale),
    );
    return [
      boxMark(corner.x, corner.y, sheet.width * scale, sheet.height * scale, { width: 0.1 }),
      textMark(sheet.label, { x: corner.x + 0.4, y: corner.y + sheet.height * scale - 0.6 }, size),
    ];
  });
  // Labels stand at the foot of each row: what is written half-way up it crosses none.
  const aboveLabels = (y: number): number => {
    const row = plan.sheets.find((sheet) => sheet.y <= y && y < sheet.y + sheet.height);
    return row === undefined ? y : row.y + row.height / 2;
  };
  const outlines = plan.pieces.flatMap(({ cutPiece, liesOn }): Mark[] => {
    const curves = cutPiece.cutEdges.flatMap((edge) => edge.curves);
    const run = polygonRun(flattenedRun(curves, 0.3 / scale).map(at));
    const outline: Mark = { kind: 'path', runs: [run], closed: true, line: { width: 0.35 } };
    return liesOn === undefined
      ? [outline, nameMark(cutPiece, curves, at, scale, box, aboveLabels)]
      : [outline];
  });
  return [...cells, ...outlines];
}

/** mm of paper for one of the pattern: no need for a map larger than a tenth. */
const LARGEST_SCALE = 0.1;
const LARGEST_TEXT = 3;
const LEAST_HEIGHT = 25;

function sheetTextSize(label: string, width: number): number {
  return (0.8 * width) / textWidth(label, 1);
}

/** The piece's name across its middle, half-way up a row of sheets, small enough for the piece's width there, and within the map. */
function nameMark(
  cutPiece: CutPiece,
  curves: readonly Curve[],
  at: (point: Point) => Point,
  scale: number,
  map: Box,
  rowAt: (y: number) => number,
): Mark {
  const name = pieceName(cutPiece);
  const box = boundsOfCurves(curves);
  const room = 0.55 * (box.right - box.left) * scale;
  const size = Math.min(3.4, Math.max(1.6, room / textWidth(name, 1, true)));
  const width = textWidth(name, size, true);
  const middle = at({ x: cutPiece.labelAt.x, y: rowAt(cutPiece.labelAt.y) });
  const x = Math.max(map.x + 0.6, Math.min(middle.x - width / 2, map.x + map.width - width));
  return textMark(name, { x, y: middle.y }, size, { bold: true });
}
