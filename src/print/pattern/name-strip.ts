import type { Point } from '../../geometry/curve.ts';
import type { Neighbours, Sheet, SheetPlan } from '../../sheets/sheet-plan.ts';
import type { Mark } from '../drawing.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';
import { fitText } from '../text/wrap-text.ts';
import { sheetPieceNames } from './pattern-drawing.ts';
import type { PieceLabels } from './piece-text.ts';

/**
 * The strip below a sheet's frame: row and column, page, gown, pieces, and arrows to the neighbours. It lies under
 * the next sheet when they are taped.
 */
export function nameStrip(sheet: Sheet, plan: SheetPlan, labels: PieceLabels, pageCount: number): Mark[] {
  const { frame } = plan;
  const top = sheet.pageHeight - sheet.bottom;
  const right = frame.left + frame.width + frame.right;
  const label = textMark(sheet.label, { x: frame.left, y: top + 7.8 }, 6, { bold: true });
  const textLeft = frame.left + textWidth(sheet.label, 6, true) + 3;
  const arrows = arrowMarks(sheet.neighbours, right, top + 5.6);
  const room = arrows.left - 3 - textLeft;
  const gown = [labels.gown, ...(labels.client === undefined ? [] : [labels.client])].join(' · ');
  const page = labels.words.pageOf(sheet.page, pageCount);
  const long = ` · ${page} · ${labels.trace}`;
  const tail = textWidth(long, SIZE) + LEAST_NAME < room ? long : ` · ${page}`;
  const first = fitText(gown, Math.max(0, room - textWidth(tail, SIZE)), SIZE, SMALLEST);
  const second = fitText(sheetPieceNames(plan, sheet, labels.words).join('; '), room, SIZE, SMALLEST);
  return [
    label,
    textMark(first.text + tail, { x: textLeft, y: top + 5 }, first.size),
    textMark(second.text, { x: textLeft, y: top + 8.4 }, second.size),
    ...arrows.marks,
  ];
}

/** Ems, mm. */
const SIZE = 2.7;
const SMALLEST = 1.6;

/** What the gown's name must have before the spec's content is named too, mm. */
const LEAST_NAME = 15;
const ARROW = 4;

const DIRECTIONS = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  above: { x: 0, y: -1 },
  below: { x: 0, y: 1 },
} as const;

/** From the right end of the strip inwards. */
function arrowMarks(neighbours: Neighbours, right: number, y: number): { marks: Mark[]; left: number } {
  const marks: Mark[] = [];
  let left = right;
  for (const side of ['below', 'above', 'right', 'left'] as const) {
    const label = neighbours[side];
    if (label === undefined) continue;
    left -= textWidth(label, SIZE, true);
    marks.push(textMark(label, { x: left, y: y + 1 }, SIZE, { bold: true }));
    left -= 1 + ARROW;
    marks.push(...arrow({ x: left + ARROW / 2, y }, DIRECTIONS[side]));
    left -= 2.5;
  }
  return { marks, left: left + 2.5 };
}

function arrow(middle: Point, way: Point): Mark[] {
  const at = (along: number, aside: number): Point => ({
    x: middle.x + way.x * along - way.y * aside,
    y: middle.y + way.y * along + way.x * aside,
  });
  const tip = at(ARROW / 2, 0);
  const line = { width: 0.35 };
  return [
    lineMark(at(-ARROW / 2, 0), tip, line),
    lineMark(at(0.5, -1.2), tip, line),
    lineMark(at(0.5, 1.2), tip, line),
  ];
}
