import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import type { Drawing } from '../print/drawing.ts';
import { patternDrawing } from '../print/pattern/pattern-drawing.ts';
import type { PieceLabels } from '../print/pattern/piece-text.ts';
import { projectorPages } from '../print/pattern/projector-pages.ts';
import { type SheetPages, sheetPages } from '../print/pattern/sheet-pages.ts';
import { writePdf } from '../print/pdf/write-pdf.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import { layOutProjector } from '../sheets/lay-out-projector.ts';
import { longChecks } from '../sheets/long-checks.ts';
import type { Sheet, SheetPlan } from '../sheets/sheet-plan.ts';
import { settingsText } from '../sheets/sheet-settings.ts';
import { ENGLISH_PATTERN } from '../words/english-pattern.ts';
import { chosenPieces, type PatternOptions, paperOf, sheetPlan, stripsBeside } from './pattern-sheets.ts';
import { withStrips } from './whole-pattern.ts';

/** `pattern` in `report.json`. */
export interface PatternReport {
  readonly paper: string;
  /** Millimetres on paper for one of the pattern: what undoes the printer's measured error. */
  readonly scale: { readonly across: number; readonly down: number };
  readonly sheets: readonly Pick<
    Sheet,
    'page' | 'label' | 'x' | 'y' | 'width' | 'height' | 'left' | 'bottom'
  >[];
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

/** `pattern.svg` alone, and where the sheets will lie: what can be shown while nothing is printed yet. */
export function patternAtFirst(
  gown: DraftedGown,
  options: Pick<PatternOptions, 'kept'>,
): Pick<PatternFiles, 'files' | 'report'> {
  const plan = sheetPlan(gown, paperOf(gown), options);
  const labels = labelsOf(gown);
  const whole = wholePattern(gown, patternDrawing(plan, labels, options.kept).whole, {}, labels);
  return { files: new Map([['pattern.svg', writeSvg(whole)]]), report: patternReport(plan) };
}

/** `pattern.svg` and `pattern-<paper>.pdf`, from one plan of the sheets. */
export async function patternFiles(gown: DraftedGown, options: PatternOptions): Promise<PatternFiles> {
  const paper = paperOf(gown, options.paper);
  const plan = sheetPlan(gown, paper, options);
  const labels = labelsOf(gown);
  const pattern = patternDrawing(plan, labels, options.kept);
  const write = ({ pages, bookmarks }: SheetPages) =>
    writePdf(pages, {
      title: `${gown.gown.name}: pattern, ${paper.name}`,
      subject: labels.trace,
      keywords: settingsText(plan.options, options),
      bookmarks,
      ...(options.font === undefined ? {} : { font: options.font }),
      ...(options.kept === undefined ? {} : { kept: options.kept }),
    });
  const checks = longChecks(plan.pieces);
  const pdf = await write(sheetPages(plan, pattern, labels, checks));
  const files = new Map<string, string | Uint8Array>([
    ['pattern.svg', writeSvg(wholePattern(gown, pattern.whole, options, labels))],
    [`pattern-${paper.name}.pdf`, pdf.bytes],
  ]);
  if (options.again !== undefined) {
    const again = await write(sheetPages(plan, pattern, labels, checks, options.again));
    files.set(`pattern-${paper.name}-again.pdf`, again.bytes);
  }
  if (options.projector === true) {
    const over = layOutProjector(chosenPieces(gown, options));
    const clothOf = (layer: string) => gown.layers.find(({ name }) => name === layer)?.cloth.name ?? layer;
    const projected = await write({ pages: projectorPages(over, labels, clothOf), bookmarks: [] });
    files.set('pattern-projector.pdf', projected.bytes);
  }
  return {
    files,
    report: patternReport(plan),
    missingGlyphs: pdf.missingGlyphs,
  };
}

/** What is printed and what is not, in the order of the pieces. */
function wholePattern(
  gown: DraftedGown,
  whole: Drawing,
  options: Pick<PatternOptions, 'gores' | 'layers'>,
  labels: PieceLabels,
): Drawing {
  const strips = stripsBeside(gown, options);
  const shown = [...chosenPieces(gown, options), ...strips];
  return withStrips(
    whole,
    gown.cut.pieces.filter((piece) => shown.includes(piece)),
    strips,
    labels,
  );
}

export function labelsOf({ gown }: Pick<DraftedGown, 'gown'>): PieceLabels {
  return {
    gown: gown.name,
    ...(gown.client === undefined ? {} : { client: gown.client }),
    trace: ENGLISH_PATTERN.trace(gown.format, gown.content),
    length: (mm) => tapeText(mm, gown.units),
    words: ENGLISH_PATTERN,
  };
}

function patternReport(plan: SheetPlan): PatternReport {
  return {
    paper: plan.paper.name,
    scale: { across: plan.scale.across, down: plan.scale.down },
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
