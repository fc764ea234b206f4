import { tapeText } from '../diagnostics/tape-text.ts';
import type { CutPiece } from '../draft/piece.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import type { Gown } from '../gown/gown.ts';
import { patternDrawing } from '../print/pattern/pattern-drawing.ts';
import type { PieceLabels } from '../print/pattern/piece-text.ts';
import { projectorPages } from '../print/pattern/projector-pages.ts';
import { type SheetPages, sheetPages } from '../print/pattern/sheet-pages.ts';
import { writePdf } from '../print/pdf/write-pdf.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import type { KeptPlace } from '../sheets/kept-places.ts';
import { layOutProjector } from '../sheets/lay-out-projector.ts';
import { layOutSheets } from '../sheets/lay-out-sheets.ts';
import { longChecks } from '../sheets/long-checks.ts';
import { type Paper, paperNamed } from '../sheets/paper.ts';
import type { SheetPlan } from '../sheets/sheet-plan.ts';
import { settingsText } from '../sheets/sheet-settings.ts';

export interface PatternOptions {
  /** Name of the paper; the spec's own, or A4 (Letter where the spec is in inches) when absent. */
  readonly paper?: string;
  /** Only the pieces of these gores, and of these layers; all when absent. */
  readonly gores?: readonly string[];
  readonly layers?: readonly string[];
  /** Leave out sheets that would show straight stretches only. */
  readonly endsOnly?: boolean;
  /** Every layer's piece apart, also where only the hems differ. */
  readonly layersApart?: boolean;
  /** Labels of sheets to print again, in a file of their own. */
  readonly again?: readonly string[];
  /** Where the pieces lay in an earlier version, to lie there again if they still can. */
  readonly places?: readonly KeptPlace[];
  /** A page for a projector too, each piece in each cloth a layer of it. */
  readonly projector?: boolean;
  /** Bytes of the font for names that the standard fonts cannot write. */
  readonly font?: () => Uint8Array | Promise<Uint8Array>;
}

/** `pattern` in `report.json`. */
export interface PatternReport {
  readonly paper: string;
  /** Millimetres on paper for one of the pattern: what undoes the printer's measured error. */
  readonly scale: { readonly across: number; readonly down: number };
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
  const plan = sheetPlan(gown, paper, options);
  const labels = labelsOf(gown);
  const pattern = patternDrawing(plan, labels);
  const write = ({ pages, bookmarks }: SheetPages) =>
    writePdf(pages, {
      title: `${gown.gown.name}: pattern, ${paper.name}`,
      subject: labels.trace,
      keywords: settingsText(plan.options, options),
      bookmarks,
      ...(options.font === undefined ? {} : { font: options.font }),
    });
  const checks = longChecks(plan.pieces);
  const pdf = await write(sheetPages(plan, pattern, labels, checks));
  const files = new Map<string, string | Uint8Array>([
    ['pattern.svg', writeSvg(pattern.whole)],
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

/** What decides the paper, of a gown or of a form for one. */
interface PaperAsked {
  readonly units: Gown['units'];
  readonly paper?: { readonly size?: string };
}

/** The paper that was asked for, the spec's, or the usual one where its units are at home. */
export function paperOf({ gown }: { readonly gown: PaperAsked }, asked?: string): Paper {
  const name = asked ?? gown.paper?.size ?? usualPaper(gown);
  const paper = paperNamed(name);
  if (paper === undefined) throw new RangeError(`no paper is named ${name}`);
  return paper;
}

/** The paper that is read at the table: that of the sheets, or the usual one where they are on a roll. */
export function deskPaperOf(drafted: { readonly gown: PaperAsked }, asked?: string): Paper {
  const paper = paperOf(drafted, asked);
  return paper.longest === undefined ? paper : paperOf(drafted, usualPaper(drafted.gown));
}

function usualPaper({ units }: PaperAsked): string {
  return units === 'in' ? 'letter' : 'a4';
}

export function sheetPlan(drafted: DraftedGown, paper: Paper, options: PatternOptions = {}): SheetPlan {
  const asked = drafted.gown.paper;
  const margins = asked?.margin ?? PRINTER_MARGINS;
  const measured = asked?.measured;
  return layOutSheets(chosenPieces(drafted, options), {
    paper,
    margins,
    lap: asked?.lap ?? 0,
    endsOnly: options.endsOnly ?? false,
    layersApart: options.layersApart ?? false,
    ...(options.places === undefined ? {} : { places: options.places }),
    scale:
      measured === undefined
        ? { across: 1, down: 1 }
        : { across: TEST_LENGTH / measured.across, down: TEST_LENGTH / measured.down },
  });
}

/** The pieces that are wanted on paper, all as a rule. */
export function chosenPieces(
  { cut }: DraftedGown,
  { gores, layers }: Pick<PatternOptions, 'gores' | 'layers'>,
): readonly CutPiece[] {
  return cut.pieces.filter(
    (piece) =>
      (gores === undefined || gores.includes(piece.gore)) &&
      (layers === undefined || piece.layers.some((layer) => layers.includes(layer))),
  );
}

/** What printers leave white at most, mm; the contract's own figure. */
const PRINTER_MARGINS = { left: 10, right: 10, top: 10, bottom: 10 };
/** Side of the printed test square, mm. */
const TEST_LENGTH = 100;

export function labelsOf({ gown }: Pick<DraftedGown, 'gown'>): PieceLabels {
  return {
    gown: gown.name,
    ...(gown.client === undefined ? {} : { client: gown.client }),
    trace: `spec format ${gown.format}, content ${gown.content}`,
    length: (mm) => tapeText(mm, gown.units),
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
