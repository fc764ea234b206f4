import type { CutPiece } from '../draft/piece.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import type { Sheet, SheetPlan } from './sheet-plan.ts';
import { drawnRuns } from './working-shape.ts';

/** Which sheets of a pattern have to be printed again, where an earlier version of it is printed already. */
export interface ChangedSheets {
  /** Labels of the new plan's sheets that show something else than the old ones of the same label. */
  readonly again: readonly string[];
  /** Labels of old sheets that the new plan does not have. */
  readonly gone: readonly string[];
  /** Sheets of the new plan. */
  readonly count: number;
}

/** A pattern's plan, and what is written on a piece of it beside its name and figures. */
export interface PatternOnSheets {
  readonly plan: SheetPlan;
  readonly remarksOn: (cut: CutPiece) => readonly string[];
}

/**
 * Compares what the sheets show: lines, notches, grain, and the words on pieces. The content hash that is printed on
 * every sheet is left out: it changes with every word of a spec.
 */
export function changedSheets(old: PatternOnSheets, now: PatternOnSheets): ChangedSheets {
  const { sheets } = now.plan;
  const labels = new Set(sheets.map(({ label }) => label));
  const gone = old.plan.sheets.flatMap(({ label }) => (labels.has(label) ? [] : [label]));
  const again = hasSameGrid(old.plan, now.plan)
    ? sheets.filter((sheet) => !showsSame(old, now, sheet)).map(({ label }) => label)
    : sheets.map(({ label }) => label);
  return { again, gone, count: sheets.length };
}

function hasSameGrid(a: SheetPlan, b: SheetPlan): boolean {
  return (
    JSON.stringify([a.paper, a.margins, a.frame, a.scale]) ===
    JSON.stringify([b.paper, b.margins, b.frame, b.scale])
  );
}

function showsSame(old: PatternOnSheets, now: PatternOnSheets, sheet: Sheet): boolean {
  const was = old.plan.sheets.find(({ label }) => label === sheet.label);
  if (was === undefined) return false;
  if (
    JSON.stringify([was.neighbours, was.pageHeight]) !== JSON.stringify([sheet.neighbours, sheet.pageHeight])
  )
    return false;
  if (wordsOn(old, was) !== wordsOn(now, sheet)) return false;
  const before = linesOn(old.plan, was);
  const after = linesOn(now.plan, sheet);
  return covers(before, after) && covers(after, before);
}

/** What is written on the pieces whose text lies on this sheet, and the names of all that have a line on it. */
function wordsOn({ plan: { pieces }, remarksOn }: PatternOnSheets, sheet: Sheet): string {
  return JSON.stringify(
    sheet.pieces
      .map((index) => pieces[index]!)
      .map(({ cutPiece, turned }) => [
        cutPiece.gore,
        turned,
        isOn(cutPiece.labelAt, sheet) ? [figuresOf(cutPiece), remarksOn(cutPiece)] : '',
      ]),
  );
}

function figuresOf({ piece, layers, allowances, roughCut }: CutPiece): unknown {
  return [layers, piece.cut, piece.side, piece.copies, allowances, roughCut];
}

function isOn({ x, y }: Point, sheet: Sheet): boolean {
  return x >= sheet.x && x <= sheet.x + sheet.width && y >= sheet.y && y <= sheet.y + sheet.height;
}

type Segment = readonly [number, number, number, number];

/** Chord height of lines that are compared, and how far they may lie apart and still print alike, mm. */
const CHORD = 0.02;
const PRINTS_ALIKE = 0.1;
/** Between two compared points of a line, mm. */
const EVERY = 4;

function linesOn({ pieces }: SheetPlan, sheet: Sheet): Segment[] {
  return sheet.pieces.flatMap((index) => {
    const { cutPiece, grain } = pieces[index]!;
    return [...drawnRuns(cutPiece), [grain]].flatMap((run) => clipped(run, sheet));
  });
}

function clipped(run: readonly Curve[], sheet: Sheet): Segment[] {
  const points = flattenedRun(run, CHORD);
  return points.slice(1).flatMap((to, i) => clippedSegment(points[i]!, to, sheet) ?? []);
}

/** The part of a segment on the sheet (Liang and Barsky's way), as a list of one. */
function clippedSegment(from: Point, to: Point, sheet: Sheet): [Segment] | undefined {
  let enter = 0;
  let leave = 1;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const sides = [
    [-dx, from.x - sheet.x],
    [dx, sheet.x + sheet.width - from.x],
    [-dy, from.y - sheet.y],
    [dy, sheet.y + sheet.height - from.y],
  ] as const;
  for (const [speed, room] of sides) {
    if (speed === 0 && room < 0) return undefined;
    if (speed < 0) enter = Math.max(enter, room / speed);
    if (speed > 0) leave = Math.min(leave, room / speed);
  }
  if (enter > leave) return undefined;
  return [[from.x + dx * enter, from.y + dy * enter, from.x + dx * leave, from.y + dy * leave]];
}

/** Whether every point of one set of lines lies on the other. */
function covers(lines: readonly Segment[], covered: readonly Segment[]): boolean {
  return covered.every(([ax, ay, bx, by]) => {
    const parts = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / EVERY));
    for (let i = 0; i <= parts; i++) {
      const [x, y] = [ax + ((bx - ax) * i) / parts, ay + ((by - ay) * i) / parts];
      if (!lines.some((line) => distanceTo(line, x, y) <= PRINTS_ALIKE)) return false;
    }
    return true;
  });
}

function distanceTo([ax, ay, bx, by]: Segment, x: number, y: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const size = dx * dx + dy * dy;
  const part = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / size));
  return Math.hypot(ax + dx * part - x, ay + dy * part - y);
}
