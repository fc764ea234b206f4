import type { LongCheck } from '../../sheets/long-checks.ts';
import type { Sheet, SheetPlan } from '../../sheets/sheet-plan.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
import type { Drawing, Mark } from '../drawing.ts';
import type { Bookmark } from '../pdf/pdf-outline.ts';
import { firstPage } from './first-page.ts';
import { gapNotes } from './gap-notes.ts';
import { joinMarks } from './join-marks.ts';
import { nameStrip } from './name-strip.ts';
import { laidPieceName, type PatternDrawing } from './pattern-drawing.ts';
import type { PieceLabels } from './piece-text.ts';

export interface SheetPages {
  readonly pages: readonly Drawing[];
  /** The first page, and every sheet under the pieces that begin on it. */
  readonly bookmarks: readonly Bookmark[];
}

/**
 * The pages of `pattern-<paper>.pdf`: instructions first, then the sheets in the order of the plan. `only` are labels of
 * sheets to print again: these alone, numbered as they were.
 */
export function sheetPages(
  plan: SheetPlan,
  pattern: PatternDrawing,
  labels: PieceLabels,
  checks: readonly LongCheck[],
  only?: readonly string[],
): SheetPages {
  const pageCount = Math.max(0, ...plan.sheets.map((sheet) => sheet.page));
  if (only !== undefined) {
    const again = plan.sheets.filter((sheet) => only.includes(sheet.label));
    const pages = again.map((sheet) => sheetPage(sheet, plan, pattern, labels, pageCount));
    return { pages, bookmarks: again.map((sheet, page) => ({ title: sheet.label, page, level: 1 })) };
  }
  const sheets = plan.sheets.map((sheet) => sheetPage(sheet, plan, pattern, labels, pageCount));
  return {
    pages: [firstPage(plan, labels, checks), ...sheets],
    bookmarks: [
      { title: labels.words.firstPage.title, page: 0, level: 1 },
      ...pieceBookmarks(plan, labels.words),
    ],
  };
}

function sheetPage(
  sheet: Sheet,
  plan: SheetPlan,
  pattern: PatternDrawing,
  labels: PieceLabels,
  pageCount: number,
): Drawing {
  const { paper, frame, scale } = plan;
  const height = sheet.height * scale.down;
  const onPage = {
    x: sheet.left,
    y: sheet.pageHeight - sheet.bottom - height,
    width: sheet.width * scale.across,
    height,
  };
  const offset = { x: onPage.x - sheet.x * scale.across, y: onPage.y - sheet.y * scale.down };
  const pieces = sheet.pieces.map(
    (index): Mark => ({
      kind: 'use',
      drawing: pattern.pieces[index]!,
      offset,
      scale: { x: scale.across, y: scale.down },
      clip: onPage,
    }),
  );
  const marks = [
    ...pieces,
    ...joinMarks(sheet.neighbours, onPage, frame),
    ...gapNotes(sheet, plan, labels, onPage),
    ...nameStrip(sheet, plan, labels, pageCount),
  ];
  return { x: 0, y: 0, width: paper.width, height: sheet.pageHeight, title: sheet.label, marks };
}

/** One entry a piece, its sheets below it. */
function pieceBookmarks(plan: SheetPlan, words: PatternWords): Bookmark[] {
  return plan.pieces.flatMap((_, index) => {
    const own = plan.sheets.filter((sheet) => sheet.pieces.includes(index));
    const first = own[0];
    if (first === undefined) return [];
    return [
      { title: laidPieceName(plan, index, words), page: first.page - 1, level: 1 },
      ...own.map((sheet) => ({
        title: words.sheetOnPage(sheet.label, sheet.page),
        page: sheet.page - 1,
        level: 2,
      })),
    ];
  });
}
