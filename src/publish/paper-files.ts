import type { ChalkTable } from '../chalk/chalk.ts';
import { chalkCsv } from '../chalk/chalk-csv.ts';
import { chalkTables } from '../chalk/chalk-tables.ts';
import { sharedTables } from '../chalk/shared-tables.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import type { Kept } from '../kept/kept.ts';
import { LAY_CUT_SHORT } from '../lay/plan/lay-problems.ts';
import type { FlowedPages } from '../print/page/page-flow.ts';
import { chalkPages } from '../print/papers/chalk-pages.ts';
import { clientPages } from '../print/papers/client-pages.ts';
import { jobSheet } from '../print/papers/job-sheet.ts';
import type { PaperInput } from '../print/papers/paper-input.ts';
import type { PdfFile } from '../print/pdf/pdf-file.ts';
import { writePdf } from '../print/pdf/write-pdf.ts';
import type { Paper } from '../sheets/paper.ts';
import { english } from '../words/english.ts';
import { ENGLISH_PATTERN } from '../words/english-pattern.ts';
import type { Workroom } from '../workroom/workroom.ts';

export interface PaperOptions {
  readonly paper: Paper;
  /** Between the levels of the chalk tables, mm; 10 cm or 4 in when absent. */
  readonly every?: number;
  /** Not of a toile: the client approves the gown, and pays for it. Pages for her when absent. */
  readonly forClient?: boolean;
  readonly font?: () => Uint8Array | Promise<Uint8Array>;
  /** What was worked out before. */
  readonly kept?: Kept;
}

/** Drawings of other stages that the papers show. */
export type PaperDrawings = Pick<PaperInput, 'lays' | 'views'>;

export interface PaperFiles {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly missingGlyphs: readonly string[];
}

/** The workroom's papers, the client's pages and the chalk tables. */
export async function paperFiles(
  gown: DraftedGown,
  workroom: Workroom,
  drawings: PaperDrawings,
  diagnostics: readonly Diagnostic[],
  options: PaperOptions,
): Promise<PaperFiles> {
  const tables = chalkTables(
    gown.cut.pieces.filter(({ piece }) => piece.bySize !== true),
    gown.gown.units,
    options.every,
  );
  const input = paperInput(gown, workroom, drawings, diagnostics, options, tables);
  const { files } = input.words;
  const job = await written(input, files.job, jobSheet(input), options);
  const client =
    options.forClient === false ? undefined : await written(input, files.client, clientPages(input), options);
  const chalk = await written(input, files.chalk, chalkPages(input), options);
  return {
    files: new Map<string, string | Uint8Array>([
      [`job-sheet-${options.paper.name}.pdf`, job.bytes],
      ...(client === undefined ? [] : [[`client-${options.paper.name}.pdf`, client.bytes] as const]),
      [`chalk-${options.paper.name}.pdf`, chalk.bytes],
      ['chalk.csv', chalkCsv(tables)],
    ]),
    missingGlyphs: [...new Set([job, client, chalk].flatMap((one) => one?.missingGlyphs ?? []))],
  };
}

/** The client's pages alone. */
export function clientFile(
  gown: DraftedGown,
  workroom: Workroom,
  diagnostics: readonly Diagnostic[],
  options: PaperOptions & Pick<PaperDrawings, 'views'>,
): Promise<PdfFile> {
  const { views } = options;
  const input = paperInput(gown, workroom, { lays: [], ...(views && { views }) }, diagnostics, options);
  return written(input, input.words.files.client, clientPages(input), options);
}

function paperInput(
  { gown, measures, cut }: DraftedGown,
  workroom: Workroom,
  { lays, views }: PaperDrawings,
  diagnostics: readonly Diagnostic[],
  { paper }: PaperOptions,
  tables: readonly ChalkTable[] = [],
): PaperInput {
  return {
    gown,
    measures,
    cutPieces: cut.pieces,
    workroom,
    chalk: sharedTables(tables),
    ...(views === undefined ? {} : { views }),
    lays,
    diagnostics,
    cutShort: diagnostics.some(({ code }) => code === LAY_CUT_SHORT),
    words: english(gown.units),
    paper,
  };
}

function written(
  { gown }: PaperInput,
  title: string,
  { pages, bookmarks }: FlowedPages,
  { font, kept }: PaperOptions,
): Promise<PdfFile> {
  return writePdf(pages, {
    title: `${gown.name}: ${title}`,
    subject: ENGLISH_PATTERN.trace(gown.format, gown.content),
    bookmarks,
    ...(font === undefined ? {} : { font }),
    ...(kept === undefined ? {} : { kept }),
  });
}
