/**
 * READ FIRST: the whole run, one call a stage.
 *
 * ```
 * spec text → Spec → Gown → Piece[] per layer → CutPiece[] → SheetPlan → Drawing → SVG, PDF
 *             read   ring    draft, true        allowances   sheets │            report.json
 *                                                            └──────┤
 *                                                  lay plans, workroom figures → Drawing → SVG, PDF, CSV
 * ```
 *
 * Every stage is a pure function from product to product plus diagnostics; nothing here touches a file or a clock.
 */
import { tooDeepForCurve } from './allowances/allowance-problems.ts';
import { type CutPieces, cutPieces } from './allowances/cut-pieces.ts';
import type { Diagnostic, Source } from './diagnostics/diagnostic.ts';
import { sortDiagnostics } from './diagnostics/place.ts';
import { draftLayers, type LayerDrafts } from './draft/draft-layers.ts';
import { cannotDraft } from './draft/draft-problems.ts';
import { gownOfSpec } from './gown/gown-of-spec.ts';
import { type PatternOptions, patternFiles } from './outputs/pattern-files.ts';
import { contentHash } from './report/content-hash.ts';
import { findingsOf, type GownReport, gownReport } from './report/gown-report.ts';
import { readSpec } from './spec/read-spec.ts';
import { placeOf, type Spec } from './spec/spec.ts';
import { type GownMeasures, measureGown } from './truing/measure-gown.ts';
import { trueGown } from './truing/true-gown.ts';

/** A gown that is drafted and trued: all that the outputs are made from. */
export interface DraftedGown {
  readonly spec: Spec;
  readonly content: string;
  readonly drafts: LayerDrafts;
  readonly measures: GownMeasures;
  readonly cut: CutPieces;
  readonly report: GownReport;
}

export interface Drafting {
  /** Absent where the spec is wrong or cannot be drafted. */
  readonly gown?: DraftedGown;
  /** Sorted by place. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads, drafts, trues and allows one gown. */
export function draft(source: Source): Drafting {
  const read = readSpec(source);
  if (read.spec === undefined) return { diagnostics: sortDiagnostics(read.diagnostics) };
  const drafted = draftSpec(read.spec);
  return { ...drafted, diagnostics: sortDiagnostics([...read.diagnostics, ...drafted.diagnostics]) };
}

/** The same for a spec that is read already. */
export function draftSpec(spec: Spec): Drafting {
  const drafts = draftLayers(gownOfSpec(spec), spec.layers);
  if ('reason' in drafts) {
    const index = spec.gores.findIndex((gore) => gore.name === drafts.gore);
    const place =
      drafts.layer !== undefined
        ? placeOf(spec, 'layers', drafts.layer)
        : placeOf(spec, 'gores', ...(index < 0 ? [] : [index]));
    return { diagnostics: [cannotDraft(place, drafts)] };
  }
  const measures = measureGown(drafts.gown);
  const cut = cutPieces(spec, drafts.layers);
  const diagnostics = [
    ...trueGown(spec, drafts.gown, measures),
    ...cut.folded.map(({ gore, layer, edge, width }) =>
      tooDeepForCurve(
        placeOf(
          spec,
          'gores',
          spec.gores.findIndex(({ name }) => name === gore),
        ),
        gore,
        layer,
        edge,
        width,
      ),
    ),
  ];
  const content = contentHash(spec);
  const report = gownReport(spec, content, drafts, measures);
  return { gown: { spec, content, drafts, measures, cut, report }, diagnostics };
}

/** All that a draft writes: files by name, and the report that goes with them. */
export interface DraftOutputs {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly report: object;
  readonly diagnostics: readonly Diagnostic[];
}

/** Every output of a drafted gown. The report comes last, with the findings of all stages. */
export async function draftOutputs(
  gown: DraftedGown,
  diagnostics: readonly Diagnostic[],
  options: PatternOptions,
): Promise<DraftOutputs> {
  const pattern = await patternFiles(gown, options);
  return {
    files: pattern.files,
    report: { ...gown.report, pattern: pattern.report, findings: findingsOf(diagnostics) },
    diagnostics,
  };
}
