import type { Point } from '../../geometry/curve.ts';
import type { LineGap } from '../../sheets/gaps.ts';
import type { Sheet, SheetPlan } from '../../sheets/sheet-plan.ts';
import type { Mark } from '../drawing.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';
import type { PieceLabels } from './piece-text.ts';

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * At each point of a sheet where a straight line is cut off: a tick along the edge of the frame to measure from, how
 * far the line runs on, and to which sheet. `frame` on the page, mm.
 */
export function gapNotes(sheet: Sheet, plan: SheetPlan, labels: PieceLabels, frame: Rectangle): Mark[] {
  const isHere = ([row, column]: LineGap['fromCell']) => row === sheet.row && column === sheet.column;
  return plan.gaps.flatMap((gap) => {
    const outside = sideAwayFromGrain(gap, plan);
    const note = (point: Point, other: LineGap['fromCell']) =>
      noteMarks(
        onPage(point, sheet, plan, frame),
        noteLines(gap, labelOf(other, plan), labels),
        frame,
        outside,
      );
    return [
      ...(isHere(gap.fromCell) ? note(gap.from, gap.toCell) : []),
      ...(isHere(gap.toCell) ? note(gap.to, gap.fromCell) : []),
    ];
  });
}

function labelOf([row, column]: LineGap['fromCell'], plan: SheetPlan): string {
  return plan.sheets.find((sheet) => sheet.row === row && sheet.column === column)!.label;
}

function onPage(point: Point, sheet: Sheet, { scale }: SheetPlan, frame: Rectangle): Point {
  return { x: frame.x + (point.x - sheet.x) * scale.across, y: frame.y + (point.y - sheet.y) * scale.down };
}

function noteLines(gap: LineGap, other: string, { length, words }: PieceLabels): string[] {
  return gap.line === 'grain'
    ? words.gap.grain(length(gap.length), other)
    : words.gap.cut(length(gap.length), other, length(gap.alongGrain));
}

/** -1 where the white outside the piece lies to the left of the line, 1 to the right. */
function sideAwayFromGrain(gap: LineGap, plan: SheetPlan): -1 | 1 {
  const { grain } = plan.pieces[gap.piece]!;
  return gap.line === 'cut' && gap.from.x + gap.to.x < grain.from.x + grain.to.x ? -1 : 1;
}

const SIZE = 2.7;

function noteMarks(at: Point, lines: readonly string[], frame: Rectangle, outside: -1 | 1): Mark[] {
  const right = frame.x + frame.width;
  const bottom = frame.y + frame.height;
  const isLevel = Math.min(at.y - frame.y, bottom - at.y) < Math.min(at.x - frame.x, right - at.x);
  const way = isLevel ? { x: 4, y: 0 } : { x: 0, y: 4 };
  const tick = lineMark(
    { x: at.x - way.x, y: at.y - way.y },
    { x: at.x + way.x, y: at.y + way.y },
    { width: 0.35 },
  );
  const width = Math.max(...lines.map((line) => textWidth(line, SIZE)));
  const room = outside < 0 ? at.x - frame.x : right - at.x;
  const side = room > width + 2 * AWAY ? outside : -outside;
  const left = clamp(side < 0 ? at.x - AWAY - width : at.x + AWAY, frame.x + 1, right - 1 - width);
  const height = lines.length * SIZE * 1.25;
  const top = clamp(
    at.y < frame.y + frame.height / 2 ? at.y + AWAY : at.y - AWAY - height,
    frame.y + 1,
    bottom - 1 - height,
  );
  return [
    tick,
    ...lines.map((line, index) => textMark(line, { x: left, y: top + SIZE * (0.9 + 1.25 * index) }, SIZE)),
  ];
}

/** From the cut-off point to its text, mm. */
const AWAY = 3;

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
