import type { DraftedGown } from '../pipeline.ts';
import { patternDrawing } from '../render/pattern-drawing.ts';
import type { PieceLabels } from '../render/piece-text.ts';
import { sheetPages } from '../render/sheet-pages.ts';
import { writePdf } from '../render/write-pdf.ts';
import { writeSvg } from '../render/write-svg.ts';
import { layOutSheets } from '../sheets/lay-out-sheets.ts';
import { longChecks } from '../sheets/long-checks.ts';
import { type Paper, paperNamed } from '../sheets/paper.ts';
import type { SheetPlan } from '../sheets/sheet-plan.ts';
import { lengthText } from '../workroom/length-text.ts';

export interface PatternOptions {
  /** Name of the paper; the spec's own, or A4 (Letter where the spec is in inches) when absent. */
  readonly paper?: string;
  /** Bytes of the font for names that the standard fonts cannot write. */
  readonly font?: () => Uint8Array | Promise<Uint8Array>;
}

/** `pattern` in `report.json`. */
export interface PatternReport {
  readonly paper: string;
  readonly sheets: readonly {
    readonly page: number;
    readonly label: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly left: number;
    readonly bottom: number;
  }[];
  /** Sheets with a line on them; what a grid for each piece would take; and what the area alone would fill. */
  readonly count: number;
  readonly gridPerPiece: number;
  readonly areaBound: number;
}

export interface PatternFiles {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly report: PatternReport;
  /** Characters that no font at hand can draw. */
  readonly missingGlyphs: readonly string[];
}

/** `pattern.svg` and `pattern-<paper>.pdf`, from one plan of the sheets. */
export async function patternFiles(gown: DraftedGown, options: PatternOptions): Promise<PatternFiles> {
  const paper = paperOf(gown, options.paper);
  const plan = sheetPlan(gown, paper);
  const labels = labelsOf(gown);
  const pattern = patternDrawing(plan, labels);
  const pages = sheetPages(plan, pattern, labels, longChecks(plan.pieces));
  const pdf = await writePdf(pages.pages, {
    title: `${gown.spec.gown}: pattern, ${paper.name}`,
    subject: labels.trace,
    bookmarks: pages.bookmarks,
    ...(options.font === undefined ? {} : { font: options.font }),
  });
  return {
    files: new Map<string, string | Uint8Array>([
      ['pattern.svg', writeSvg(pattern.whole)],
      [`pattern-${paper.name}.pdf`, pdf.bytes],
    ]),
    report: patternReport(plan),
    missingGlyphs: pdf.missingGlyphs,
  };
}

/** The paper that was asked for, the spec's, or the usual one where its units are at home. */
export function paperOf({ spec }: Pick<DraftedGown, 'spec'>, asked?: string): Paper {
  const name = asked ?? spec.paper?.size ?? (spec.units === 'in' ? 'letter' : 'a4');
  const paper = paperNamed(name);
  if (paper === undefined) throw new RangeError(`no paper is named ${name}`);
  return paper;
}

export function sheetPlan({ spec, cut }: DraftedGown, paper: Paper): SheetPlan {
  const margin = spec.paper?.margin ?? PRINTER_MARGIN;
  const measured = spec.paper?.measured;
  return layOutSheets(cut.pieces, {
    paper,
    margins: { left: margin, right: margin, top: margin, bottom: margin },
    lap: spec.paper?.lap ?? 0,
    scale:
      measured === undefined
        ? { across: 1, down: 1 }
        : { across: TEST_LENGTH / measured.across, down: TEST_LENGTH / measured.down },
  });
}

/** What printers leave white at most, mm; the contract's own figure. */
const PRINTER_MARGIN = 10;
/** Side of the printed test square, mm. */
const TEST_LENGTH = 100;

export function labelsOf({ spec, content }: Pick<DraftedGown, 'spec' | 'content'>): PieceLabels {
  return {
    gown: spec.gown,
    ...(spec.client === undefined ? {} : { client: spec.client }),
    trace: `spec format ${spec.format}, content ${content}`,
    length: (mm) => lengthText(mm, spec.units),
  };
}

function patternReport(plan: SheetPlan): PatternReport {
  return {
    paper: plan.paper.name,
    sheets: plan.sheets.map(({ page, label, x, y, width, height, left, bottom }) => ({
      page,
      label,
      x,
      y,
      width,
      height,
      left,
      bottom,
    })),
    count: plan.sheets.length,
    gridPerPiece: plan.gridPerPiece,
    areaBound: plan.areaBound,
  };
}
