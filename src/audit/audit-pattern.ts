import type { SheetPlan } from '../sheets/sheet-plan.ts';
import type { AuditFault } from './audit-fault.ts';
import { LineIndex, spread } from './nearest-line.ts';
import type { ReadPage } from './page-lines.ts';
import type { Stroke, XY } from './plane.ts';
import { frameOnPage, onPage, plannedLines } from './planned-lines.ts';
import { readSquare } from './read-square.ts';

/** What an audit found. */
export interface Audit {
  readonly faults: readonly AuditFault[];
  /** Sheets compared, and the metres of line on them. */
  readonly sheets: number;
  readonly metres: number;
  /** The farthest that any line of the draft lies from its line on paper, mm. */
  readonly farthest: number;
  /** The test square as drawn, mm. */
  readonly square?: { readonly across: number; readonly down: number };
}

/** A line off by more than this is a fault, mm: a third of a hairline's width. */
export const AUDIT_AGREES = 0.1;

/**
 * Compares the pages of a PDF with the draft, sheet by sheet: every line of the draft must lie on a line of the page,
 * and every line of the page within the frame must be one of the draft's, join marks and arrowheads apart.
 */
export function auditPattern(pages: readonly ReadPage[], plan: SheetPlan): Audit {
  const faults: AuditFault[] = [...squareFaults(pages[0], plan)];
  let metres = 0;
  let farthest = 0;
  for (const sheet of plan.sheets) {
    const page = pages[sheet.page - 1];
    if (page === undefined) {
      faults.push({ kind: 'sheet-missing', sheet: sheet.label, page: sheet.page });
      continue;
    }
    const { paper } = plan;
    if (
      Math.abs(page.width - paper.width) > AUDIT_AGREES ||
      Math.abs(page.height - sheet.pageHeight) > AUDIT_AGREES
    ) {
      const found = { width: page.width, height: page.height };
      const planned = { width: paper.width, height: sheet.pageHeight };
      faults.push({ kind: 'page-resized', sheet: sheet.label, page: sheet.page, found, planned });
    }
    const compared = compareSheet(page, plan, sheet);
    faults.push(...compared.faults);
    metres += compared.length / 1000;
    farthest = Math.max(farthest, compared.farthest);
  }
  const last = Math.max(0, ...plan.sheets.map((sheet) => sheet.page));
  if (pages.length > last) faults.push({ kind: 'pages-too-many', found: pages.length, planned: last });
  const square = pages[0] === undefined ? undefined : readSquare(pages[0].strokes);
  return {
    faults,
    sheets: plan.sheets.length,
    metres,
    farthest,
    ...(square === undefined ? {} : { square }),
  };
}

type Sheet = SheetPlan['sheets'][number];

function squareFaults(page: ReadPage | undefined, { scale }: SheetPlan): AuditFault[] {
  const square = page === undefined ? undefined : readSquare(page.strokes);
  if (square === undefined) return [{ kind: 'square-missing' }];
  const planned = { across: 100 * scale.across, down: 100 * scale.down };
  const isOff = (way: 'across' | 'down') => Math.abs(square[way] - planned[way]) > AUDIT_AGREES;
  return isOff('across') || isOff('down') ? [{ kind: 'square-off', found: square, planned }] : [];
}

function compareSheet(
  page: ReadPage,
  plan: SheetPlan,
  sheet: Sheet,
): { faults: AuditFault[]; length: number; farthest: number } {
  const planned = plannedLines(plan, sheet);
  const drawn = new LineIndex(page.strokes);
  const worst = new Map<number, number>();
  let length = 0;
  for (const line of planned) {
    length += Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y);
    const off = farthestOf(line, drawn);
    worst.set(line.piece, Math.max(worst.get(line.piece) ?? 0, off));
  }
  const where = { sheet: sheet.label, page: sheet.page };
  const faults = [...worst].flatMap(([piece, off]): AuditFault[] =>
    off > AUDIT_AGREES ? [{ kind: 'line-off', ...where, piece: nameOf(plan, piece), off }] : [],
  );
  const stray = strayLines(page, plan, sheet, new LineIndex(planned));
  if (stray.length > 0)
    faults.push({
      kind: 'line-too-many',
      ...where,
      pieces: sheet.pieces.map((piece) => nameOf(plan, piece)),
      at: stray[0]!,
    });
  return { faults, length, farthest: Math.max(0, ...worst.values()) };
}

/** Points are looked at so far apart, mm. */
const STEP = 2;

function farthestOf(line: Stroke, others: LineIndex): number {
  return Math.max(...spread(line, STEP).map((point) => others.distanceTo(point)));
}

/** Points of lines within the frame that no line of the draft accounts for. */
function strayLines(page: ReadPage, plan: SheetPlan, sheet: Sheet, planned: LineIndex): XY[] {
  const frame = frameOnPage(plan, sheet);
  const arrowheads = sheet.pieces.flatMap((piece) => {
    const { grain } = plan.pieces[piece]!;
    return [onPage(plan, sheet, grain.from), onPage(plan, sheet, grain.to)];
  });
  const isRim = ({ x, y }: XY) =>
    x < frame.left + RIM || x > frame.right - RIM || y < frame.bottom + RIM || y > frame.top - RIM;
  const isArrowhead = ({ x, y }: XY) =>
    arrowheads.some((tip) => Math.hypot(tip.x - x, tip.y - y) < ARROWHEAD);
  return page.strokes
    .flatMap((line) => spread(line, STEP))
    .filter((point) => !isRim(point) && !isArrowhead(point) && planned.distanceTo(point) > AUDIT_AGREES);
}

/** Join marks and cut-off ticks reach so far into a frame, mm. */
const RIM = 5;
/** And arrowheads so far from the tip of the grain line. */
const ARROWHEAD = 7;

function nameOf(plan: SheetPlan, piece: number): string {
  const { gore, layers } = plan.pieces[piece]!.cutPiece;
  return `${gore} (${layers.join(', ')})`;
}
