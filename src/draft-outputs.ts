import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { sortDiagnostics } from './diagnostics/place.ts';
import type { DraftedGown } from './drafted-gown.ts';
import type { Hanging } from './hanging/hung-gown.ts';
import type { LaysPlanned } from './lay/plan/plan-lays.ts';
import type { DrawnViews } from './print/papers/views-drawing.ts';
import type { PaperOptions } from './publish/paper-files.ts';
import type { PatternReport } from './publish/pattern-files.ts';
import type { PatternOptions } from './publish/pattern-sheets.ts';
import { bustleReport } from './report/bustle-report.ts';
import { findingsOf } from './report/gown-report.ts';
import { type Workroom, workroom } from './workroom/workroom.ts';

/** All that a draft writes: files by name, and the report that goes with them. */
export interface DraftOutputs {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly report: Readonly<Record<string, unknown>> & { readonly pattern: PatternReport };
  readonly diagnostics: readonly Diagnostic[];
  readonly facts: Workroom;
  /** The gown as it hangs, where it was hung. */
  readonly views?: DrawnViews;
}

/** Stages that take their time, each in threads of its own; what is left out is neither written nor drawn. */
export interface LaterStages {
  readonly lays?: Promise<LaysPlanned>;
  readonly hanging?: Promise<Hanging>;
}

/** Every output of a drafted gown. The report comes last, with the findings of all stages. */
export async function draftOutputs(
  gown: DraftedGown,
  diagnostics: readonly Diagnostic[],
  options: PatternOptions & Pick<PaperOptions, 'every' | 'forClient'> & LaterStages,
): Promise<DraftOutputs> {
  // Loaded here: a check draws nothing, and should not wait for what draws.
  const { patternFiles } = await import('./publish/pattern-files.ts');
  const { deskPaperOf } = await import('./publish/pattern-sheets.ts');
  const { paperFiles } = await import('./publish/paper-files.ts');
  const { lettersMissing } = await import('./publish/glyph-problems.ts');

  const { layFigures, layFiles } = await import('./publish/lay-files.ts');
  const { pageFile } = await import('./publish/page-file.ts');
  const { layReport } = await import('./report/lay-report.ts');
  const { stoneReport } = await import('./report/stone-report.ts');

  const { viewsOf } = await import('./publish/views-file.ts');

  // The pattern is drawn while the cloth is still being planned and the gown is hung.
  const [pattern, { lays, diagnostics: laid }, hanging] = await Promise.all([
    patternFiles(gown, options),
    options.lays ?? { lays: [], diagnostics: [] },
    options.hanging,
  ]);
  const views = viewsOf(gown, hanging);
  const { facts: own, findings } = workroom(gown, lays);
  const facts = withAdvice(own, await options.hanging);
  const found = sortDiagnostics([
    ...diagnostics,
    ...laid,
    ...views.findings,
    ...findings.filter((finding) => !isAmong(diagnostics, finding)),
  ]);
  const paper = deskPaperOf(gown, options.paper);
  const figures = layFigures(gown.gown, lays, paper.width);
  const papers = await paperFiles(
    gown,
    facts,
    { lays: figures, ...(views.drawn && { views: views.drawn }) },
    found,
    { ...options, paper },
  );

  const letters = [...new Set([...pattern.missingGlyphs, ...papers.missingGlyphs])];
  const all =
    letters.length === 0
      ? found
      : sortDiagnostics([...found, lettersMissing(gown.gown.place('gown'), letters)]);
  const files = new Map([...pattern.files, ...layFiles(gown.gown, lays), ...views.files, ...papers.files]);
  const page = pageFile({
    gown,
    facts,
    lays,
    files,
    sheets: pattern.report,
    findings: all,
    ...(views.drawn && { views: views.drawn }),
  });
  return {
    files: new Map([...files, ['gown.html', page]]),
    report: {
      ...gown.report,
      ...(facts.bustle && { bustle: bustleReport(facts.bustle) }),
      lays: layReport(gown.gown, lays),
      stones: stoneReport(facts),
      hang: views.report,
      pattern: pattern.report,
      findings: findingsOf(all),
    },
    diagnostics: all,
    facts,
    ...(views.drawn && { views: views.drawn }),
  };
}

/** Points that the bustle wants more stand with its own on the papers, where the hem clears the floor with them. */
function withAdvice(facts: Workroom, hanging: Hanging | undefined): Workroom {
  const advice = hanging?.hung.bustled?.advice;
  if (facts.bustle === undefined || advice?.clears !== true) return facts;
  return { ...facts, bustle: { ...facts.bustle, more: advice.points } };
}

/** The workroom's findings are known before the lays; with the lays it may find more. */
function isAmong(known: readonly Diagnostic[], { code, message, span }: Diagnostic): boolean {
  return known.some((one) => one.code === code && one.message === message && one.span.start === span.start);
}
