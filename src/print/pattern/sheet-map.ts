import type { CutPiece } from '../../draft/piece.ts';
import { boundsOfCurves } from '../../geometry/bounds.ts';
import type { Point } from '../../geometry/curve.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import { along, distance, subtract } from '../../geometry/point.ts';
import type { SheetPlan } from '../../sheets/sheet-plan.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
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
export function sheetMap(plan: SheetPlan, box: Box, words: PatternWords): Mark[] {
  if (plan.sheets.length === 0 || box.height < LEAST_HEIGHT) return [];
  const right = Math.max(...plan.sheets.map((sheet) => sheet.x + sheet.width));
  const bottom = Math.max(...plan.sheets.map((sheet) => sheet.y + sheet.height));
  const scale = Math.min(LARGEST_SCALE, box.width / right, box.height / bottom);
  const at = (point: Point): Point => ({ x: box.x + point.x * scale, y: box.y + point.y * scale });
  const drawn = plan.pieces.map(({ cutPiece }) =>
    flattenedRun(
      cutPiece.cutEdges.flatMap((edge) => edge.curves),
      0.3 / scale,
    ).map(at),
  );
  const dots = drawn.map(dotsAlong);
  const cells = plan.sheets.flatMap((sheet): Mark[] => {
    const corner = at(sheet);
    const size = Math.min(
      LARGEST_TEXT,
      0.28 * sheet.height * scale,
      sheetTextSize(sheet.label, sheet.width * scale),
    );
    const cell = { ...corner, width: sheet.width * scale, height: sheet.height * scale };
    return [
      boxMark(cell.x, cell.y, cell.width, cell.height, { width: 0.1 }),
      textMark(sheet.label, clearCorner(cell, sheet.label, size, dots), size),
    ];
  });
  // Labels stand in the corners of their sheets: what is written half-way up a row crosses none.
  const aboveLabels = (y: number): number => {
    const row = plan.sheets.find((sheet) => sheet.y <= y && y < sheet.y + sheet.height);
    return row === undefined ? y : row.y + row.height / 2;
  };
  const outlines = plan.pieces.flatMap(({ cutPiece, liesOn }, i): Mark[] => {
    const run = polygonRun(drawn[i]!);
    const outline: Mark = { kind: 'path', runs: [run], closed: true, line: { width: 0.35 } };
    return liesOn === undefined
      ? [outline, nameMark(cutPiece, pieceName(cutPiece, words), at, scale, box, aboveLabels)]
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

/** Where a label's baseline begins: the corner of its sheet that keeps farthest from every line of the pieces. */
function clearCorner(cell: Box, label: string, size: number, dots: readonly (readonly Point[])[]): Point {
  const width = textWidth(label, size);
  const [left, right] = [cell.x + 0.4, cell.x + cell.width - width - 0.4];
  const [low, high] = [cell.y + cell.height - 0.6, cell.y + 0.8 * size + 0.3];
  const corners = [
    { x: left, y: low },
    { x: right, y: low },
    { x: left, y: high },
    { x: right, y: high },
  ];
  const near = dots.flatMap((own) => own.filter((dot) => liesNear(dot, cell)));
  const clear = corners.map(({ x, y }) => {
    const box = { x, y: y - 0.75 * size, width, height: 0.75 * size };
    return near.reduce((least, dot) => Math.min(least, clearance(dot, box)), ENOUGH);
  });
  return corners[clear.indexOf(Math.max(...clear))]!;
}

function liesNear({ x, y }: Point, box: Box): boolean {
  return beyond(x, box.x, box.width) < ENOUGH && beyond(y, box.y, box.height) < ENOUGH;
}

function clearance({ x, y }: Point, box: Box): number {
  return Math.hypot(beyond(x, box.x, box.width), beyond(y, box.y, box.height));
}

/** How far a value lies outside of a stretch. */
function beyond(value: number, from: number, size: number): number {
  return Math.max(from - value, value - from - size, 0);
}

/** Points that lie close together along an outline. */
function dotsAlong(outline: readonly Point[]): Point[] {
  return outline.flatMap((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    const steps = Math.ceil(distance(from, to) / STEP);
    return Array.from({ length: steps }, (_, step) => along(from, subtract(to, from), step / steps));
  });
}

/** Between two places along an outline where a label's clearance is looked at, mm: less than a letter. */
const STEP = 0.4;

/** A label this far from every line is read at a glance, mm. */
const ENOUGH = 0.5;

/** The piece's name across its middle, half-way up a row of sheets, small enough for the piece's width there, and within the map. */
function nameMark(
  cutPiece: CutPiece,
  name: string,
  at: (point: Point) => Point,
  scale: number,
  map: Box,
  rowAt: (y: number) => number,
): Mark {
  const box = boundsOfCurves(cutPiece.cutEdges.flatMap((edge) => edge.curves));
  const room = 0.55 * (box.right - box.left) * scale;
  const size = Math.min(3.4, Math.max(1.6, room / textWidth(name, 1, true)));
  const width = textWidth(name, size, true);
  const middle = at({ x: cutPiece.labelAt.x, y: rowAt(cutPiece.labelAt.y) });
  const x = Math.max(map.x + 0.6, Math.min(middle.x - width / 2, map.x + map.width - width));
  return textMark(name, { x, y: middle.y }, size, { bold: true });
}
