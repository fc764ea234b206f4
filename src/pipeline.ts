/**
 * READ FIRST: the whole run, one call a stage.
 *
 * ```
 * spec text → Spec → Gown → Piece[] per layer → CutPiece[] → SheetPlan → Drawing → SVG, PDF
 *             read   ring    draft, fit, true   allowances   sheets │            report.json
 *                                                            └──────┤
 *                                                  lay plans, workroom figures → Drawing → SVG, PDF, CSV
 * ```
 *
 * Every stage is a pure function from product to product plus diagnostics; nothing here touches a file or a clock.
 */
import { tooDeepForCurve } from './allowances/allowance-problems.ts';
import { cutPieces } from './allowances/cut-pieces.ts';
import { type FoldedEdge, foldedEdges } from './allowances/folded-edges.ts';
import { overskirtPieces } from './allowances/overskirt-pieces.ts';
import type { Diagnostic, Source, Span } from './diagnostics/diagnostic.ts';
import { sortDiagnostics } from './diagnostics/place.ts';
import { draftLayers, type LayerDrafts, type LayersUndraftable } from './draft/draft-layers.ts';
import { cannotDraft } from './draft/draft-problems.ts';
import { flounceParts } from './draft/flounces.ts';
import { godetParts } from './draft/godets.ts';
import { partFindings, placeOfPart } from './draft/part-findings.ts';
import type { CutPiece } from './draft/piece.ts';
import { tierParts } from './draft/tiers.ts';
import { fitGown } from './fittings/fit-gown.ts';
import { gownOfSpec } from './gown/gown-of-spec.ts';
import { overskirtAsGown } from './gown/overskirt-as-gown.ts';
import type { ReadBase } from './gown-file/based-on.ts';
import { readSpec } from './gown-file/read-spec.ts';
import { type LayerSpec, placeOf, type Spec } from './gown-file/spec.ts';
import type { LaysPlanned } from './lay/plan/plan-lays.ts';
import { type Workroom, workroom, workroomFindings } from './making/workroom.ts';
import type { PaperOptions } from './publish/paper-files.ts';
import type { PatternReport } from './publish/pattern-files.ts';
import type { PatternOptions } from './publish/pattern-sheets.ts';
import { contentHash } from './report/content-hash.ts';
import { fittingReport } from './report/fitting-report.ts';
import { findingsOf, type GownReport, gownReport } from './report/gown-report.ts';
import { overskirtReport, partReport } from './report/part-report.ts';
import { type GownMeasures, measureGown } from './truing/measure-gown.ts';
import { trueOverPetticoat } from './truing/over-petticoat.ts';
import { trueGown } from './truing/true-gown.ts';

/** A gown that is drafted and trued: all that the outputs are made from. */
export interface DraftedGown {
  /** The gown as it is sewn: where a fitting takes in the waist, the bodice is taken in with it. */
  readonly spec: Spec;
  /** As it was read. */
  readonly written: Spec;
  readonly content: string;
  readonly drafts: LayerDrafts;
  readonly measures: GownMeasures;
  /** All that is cut: gores, flounces, strips and godets, and the pieces of every overskirt. Drawn when first asked for. */
  readonly cut: CutSet;
  /** Every layer that has pieces: the gown's, those that stand for a flounce or strips, and the overskirts'. */
  readonly layers: readonly LayerSpec[];
  /** Overskirts, each drafted and trued like a gown. */
  readonly overskirts: readonly DraftedGown[];
  readonly report: GownReport;
}

export interface CutSet {
  readonly pieces: readonly CutPiece[];
}

export interface Drafting {
  /** Absent where the spec is wrong or cannot be drafted. */
  readonly gown?: DraftedGown;
  /** Sorted by place. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads, drafts and trues one gown, and says what the workroom would find. `readBase` gives the specs that it may be based on. */
export function draft(source: Source, readBase?: ReadBase): Drafting {
  const { spec, contradicted, diagnostics } = readSpec(source, readBase);
  const readable = spec ?? contradicted;
  if (readable === undefined) return { diagnostics: sortDiagnostics(diagnostics) };
  const drafted = draftSpec(readable);
  const found = drafted.gown === undefined ? [] : workroomFindings(drafted.gown);
  // The reader has said of a contradiction what truing would say again.
  const trued = drafted.diagnostics.filter(
    ({ code }) => contradicted === undefined || code !== 'tops-miss-waist-seam',
  );
  const all = sortDiagnostics([...diagnostics, ...trued, ...found]);
  return spec === undefined || drafted.gown === undefined
    ? { diagnostics: all }
    : { gown: drafted.gown, diagnostics: all };
}

/** The same for a spec that is read already. */
export function draftSpec(written: Spec): Drafting {
  const drafted = draftLayers(gownOfSpec(written), written.layers);
  if ('reason' in drafted) return { diagnostics: [cannotDraft(placeOfTrouble(written, drafted), drafted)] };
  const fitted = fitGown(written, drafted);
  const { drafts } = fitted;
  const spec = withBodiceTakenIn(written, fitted.takenAtWaist);
  const measures = measureGown(drafts.gown);
  const parts = [...flounceParts(spec, drafts), ...tierParts(spec), ...godetParts(spec, drafts)];
  const diagnostics = [
    ...fitted.diagnostics,
    ...trueGown(spec, drafts.gown, measures),
    ...trueOverPetticoat(spec, drafts.gown),
    ...partFindings(spec, drafts, parts),
    ...foldedEdges(spec, drafts.layers, parts).map((folded) => tooDeep(spec, folded)),
  ];

  const overskirtDrafts = (spec.overskirts ?? []).map((_, i) => draftSpec(overskirtAsGown(spec, i)));
  diagnostics.push(...overskirtDrafts.flatMap((drafting) => drafting.diagnostics));
  const overskirts = overskirtDrafts.flatMap((drafting) => drafting.gown ?? []);
  if (overskirts.length < overskirtDrafts.length) return { diagnostics };

  let pieces: readonly CutPiece[] | undefined;
  const cut: CutSet = {
    get pieces() {
      pieces ??= [
        ...cutPieces(spec, drafts.layers, parts),
        ...overskirts.flatMap((gown, i) => overskirtPieces(spec.overskirts![i]!, gown.cut.pieces)),
      ];
      return pieces;
    },
  };
  const layers = [
    ...spec.layers,
    ...parts.map(({ layer }) => layer),
    ...overskirts.flatMap((gown) => gown.layers),
  ];
  const content = contentHash(written);
  const gown: DraftedGown = {
    spec,
    written,
    content,
    drafts,
    measures,
    cut,
    layers: layers.filter((layer, i) => layers.findIndex(({ name }) => name === layer.name) === i),
    overskirts,
    report: gownReport(spec, content, drafts, measures, {
      parts: parts.map(partReport),
      overskirts: overskirts.map(({ report }, i) => overskirtReport(spec.overskirts![i]!, report)),
      fittings: fitted.traces.map(fittingReport),
    }),
  };
  return { gown, diagnostics };
}

/** A seam that is taken in from the waist down runs on into the bodice. */
function withBodiceTakenIn(spec: Spec, taken: number): Spec {
  if (taken === 0) return spec;
  return { ...spec, bodice: { ...spec.bodice, waistSeam: spec.bodice.waistSeam - taken } };
}

function placeOfTrouble(spec: Spec, { gore, layer }: LayersUndraftable): Span {
  const index = spec.gores.findIndex(({ name }) => name === gore);
  return layer === undefined
    ? placeOf(spec, 'gores', ...(index < 0 ? [] : [index]))
    : placeOf(spec, 'layers', layer);
}

function tooDeep(spec: Spec, { gore, layer, edge, width }: FoldedEdge): Diagnostic {
  const index = spec.gores.findIndex(({ name }) => name === gore);
  const place = index < 0 ? placeOfPart(spec, gore) : placeOf(spec, 'gores', index);
  return tooDeepForCurve(place, gore, layer, edge, width);
}

/** All that a draft writes: files by name, and the report that goes with them. */
export interface DraftOutputs {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly report: Readonly<Record<string, unknown>> & { readonly pattern: PatternReport };
  readonly diagnostics: readonly Diagnostic[];
  readonly facts: Workroom;
}

/** Every output of a drafted gown. The report comes last, with the findings of all stages. */
export async function draftOutputs(
  gown: DraftedGown,
  diagnostics: readonly Diagnostic[],
  options: PatternOptions & Pick<PaperOptions, 'every'> & { readonly lays?: Promise<LaysPlanned> },
): Promise<DraftOutputs> {
  // Loaded here: a check draws nothing, and should not wait for what draws.
  const { patternFiles } = await import('./publish/pattern-files.ts');
  const { deskPaperOf } = await import('./publish/pattern-sheets.ts');
  const { paperFiles } = await import('./publish/paper-files.ts');
  const { lettersMissing } = await import('./publish/glyph-problems.ts');

  const { layFigures, layFiles } = await import('./publish/lay-files.ts');
  const { pageFile } = await import('./publish/page-file.ts');
  const { layReport } = await import('./report/lay-report.ts');

  // The pattern is drawn while the cloth is still being planned.
  const [pattern, { lays, diagnostics: laid }] = await Promise.all([
    patternFiles(gown, options),
    options.lays ?? { lays: [], diagnostics: [] },
  ]);
  const { facts, findings } = workroom(gown, lays);
  const found = sortDiagnostics([
    ...diagnostics,
    ...laid,
    ...findings.filter((finding) => !isAmong(diagnostics, finding)),
  ]);
  const paper = deskPaperOf(gown, options.paper);
  const figures = layFigures(gown.spec, lays, paper.width);
  const papers = await paperFiles(gown, facts, figures, found, { ...options, paper });

  const letters = [...new Set([...pattern.missingGlyphs, ...papers.missingGlyphs])];
  const all =
    letters.length === 0
      ? found
      : sortDiagnostics([...found, lettersMissing(placeOf(gown.spec, 'gown'), letters)]);
  const files = new Map([...pattern.files, ...layFiles(gown.spec, lays), ...papers.files]);
  const page = pageFile({ gown, facts, lays, files, sheets: pattern.report, findings: all });
  return {
    files: new Map([...files, ['gown.html', page]]),
    report: {
      ...gown.report,
      lays: layReport(gown.spec, lays),
      pattern: pattern.report,
      findings: findingsOf(all),
    },
    diagnostics: all,
    facts,
  };
}

/** The workroom's findings are known before the lays; with the lays it may find more. */
function isAmong(known: readonly Diagnostic[], { code, message, span }: Diagnostic): boolean {
  return known.some((one) => one.code === code && one.message === message && one.span.start === span.start);
}
