import type { CutPiece } from '../draft/piece.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import type { Gown } from '../gown/gown.ts';
import type { Kept } from '../kept/kept.ts';
import type { KeptPlace } from '../sheets/kept-places.ts';
import { layOutSheets } from '../sheets/lay-out-sheets.ts';
import { type Paper, paperNamed } from '../sheets/paper.ts';
import type { SheetOptions } from '../sheets/sheet-options.ts';
import type { SheetPlan } from '../sheets/sheet-plan.ts';

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
  /** Where the pieces came to lie on sheets before. */
  readonly kept?: Kept;
  /** Bytes of the font for names that the standard fonts cannot write. */
  readonly font?: () => Uint8Array | Promise<Uint8Array>;
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
  return layOutSheets(
    chosenPieces(drafted, options),
    sheetOptions(drafted.gown, paper, options),
    options.kept,
  );
}

/** How the pieces are to be laid on sheets: what was asked for, and what the spec says of the printer. */
export function sheetOptions(
  { paper: own }: Gown,
  paper: Paper,
  { endsOnly = false, layersApart = false, places }: PatternOptions = {},
): SheetOptions {
  const measured = own?.measured;
  return {
    paper,
    margins: own?.margin ?? PRINTER_MARGINS,
    lap: own?.lap ?? 0,
    endsOnly,
    layersApart,
    ...(places === undefined ? {} : { places }),
    scale:
      measured === undefined
        ? { across: 1, down: 1 }
        : { across: TEST_LENGTH / measured.across, down: TEST_LENGTH / measured.down },
  };
}

/** The pieces that are wanted on paper, all as a rule. */
export function chosenPieces(
  { cut }: DraftedGown,
  { gores, layers }: Pick<PatternOptions, 'gores' | 'layers'>,
): readonly CutPiece[] {
  return cut.pieces.filter(
    (piece) =>
      piece.piece.bySize !== true &&
      (piece.piece.strip !== true || gores !== undefined || layers !== undefined) &&
      (gores === undefined || gores.includes(piece.gore)) &&
      (layers === undefined || piece.layers.some((layer) => layers.includes(layer))),
  );
}

/**
 * Strips of net and frills: nobody tapes sheets for what a ruler draws. They stand on the whole drawing alone, and are
 * printed where their gore or layer is asked for.
 */
export function stripsBeside(
  { cut }: DraftedGown,
  { gores, layers }: Pick<PatternOptions, 'gores' | 'layers'>,
): readonly CutPiece[] {
  if (gores !== undefined || layers !== undefined) return [];
  return cut.pieces.filter(({ piece }) => piece.strip === true);
}

/** What printers leave white at most, mm; the contract's own figure. */
const PRINTER_MARGINS = { left: 10, right: 10, top: 10, bottom: 10 };
/** Side of the printed test square, mm. */
const TEST_LENGTH = 100;
