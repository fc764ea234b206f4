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
 * Every stage is a pure function from product to product plus diagnostics; nothing here touches a file or a clock. What
 * comes after the cut pieces stands in `draft-outputs.ts`.
 */
import { allowanceWiderThanGore, outlineCrosses, tooDeepForCurve } from './allowances/allowance-problems.ts';
import { crossedOutlines } from './allowances/crossed-outlines.ts';
import { cutPieces } from './allowances/cut-pieces.ts';
import { foldedEdges } from './allowances/folded-edges.ts';
import { pleatFindings } from './allowances/pleat-findings.ts';
import { wideAllowances } from './allowances/wide-allowances.ts';
import { bodiceParts } from './bodice/bodice-parts.ts';
import { capeParts, draftCapes } from './bodice/cape-parts.ts';
import { draftAsked, panelEdges, panelsApart } from './bodice/draft-asked.ts';
import { strapParts, strapProblems } from './bodice/strap-parts.ts';
import { fittedApart, trueBodice } from './bodice/true-bodice.ts';
import type { Diagnostic, Source, Span } from './diagnostics/diagnostic.ts';
import { sortDiagnostics } from './diagnostics/place.ts';
import type { GownDraft } from './draft/draft-gown.ts';
import { draftLayers, type LayersUndraftable } from './draft/draft-layers.ts';
import { cannotDraft } from './draft/draft-problems.ts';
import { flounceParts } from './draft/flounces.ts';
import { godetParts } from './draft/godets.ts';
import { type EdgeUnder, onSewnEdge } from './draft/on-sewn-edge.ts';
import { partFindings } from './draft/part-findings.ts';
import type { CutPiece } from './draft/piece.ts';
import { tierParts } from './draft/tiers.ts';
import { wrapFindings } from './draft/wrap-findings.ts';
import type { CutSet, DraftedGown } from './drafted-gown.ts';
import { finishingParts } from './finishing/finishing-parts.ts';
import { kicksInFacing } from './finishing/finishing-problems.ts';
import { fitGown } from './fittings/fit-gown.ts';
import { askedBodice, sewnToEdge, withHipOfBody } from './gown/above-waist-of-spec.ts';
import type { Gown } from './gown/gown.ts';
import { gownOfSpec } from './gown/gown-of-spec.ts';
import type { ReadBase } from './gown-file/based-on.ts';
import { readSpec } from './gown-file/read-spec.ts';
import type { Spec } from './gown-file/spec.ts';
import { bustleMarked } from './making/bustle/bustle-marks.ts';
import { bodiceReport, capeReport } from './report/bodice-report.ts';
import { finishingReport } from './report/finishing-report.ts';
import { fittingReport } from './report/fitting-report.ts';
import { gownReport } from './report/gown-report.ts';
import { partReport } from './report/part-report.ts';
import { pleatReport } from './report/pleat-report.ts';
import { stonesMarked } from './stones/stone-marks.ts';
import { measureGown } from './truing/measure-gown.ts';
import { measurePart } from './truing/measure-parts.ts';
import { trueOverBody } from './truing/over-body.ts';
import { trueOverPetticoat } from './truing/over-petticoat.ts';
import { trueGown } from './truing/true-gown.ts';
import { measureLayers, trueLayers } from './truing/true-layers.ts';
import { trueParts } from './truing/true-parts.ts';
import { type DraftFacts, draftFacts } from './workroom/draft-facts.ts';
import { workroomFindings } from './workroom/workroom.ts';

export { type DraftOutputs, draftOutputs } from './draft-outputs.ts';
export type { DraftedGown } from './drafted-gown.ts';

export interface Drafting {
  /** As it was read; there wherever `gown` is. */
  readonly spec?: Spec;
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
    : { spec, gown: drafted.gown, diagnostics: all };
}

/** The same for a spec that is read already. */
export function draftSpec(spec: Spec): Drafting {
  const { gown, diagnostics } = gownAsked(spec);
  return gown === undefined ? { diagnostics } : { spec, ...draftWhole(gown) };
}

/** The gown that a spec asks for. Where its bodice is to be drafted, that gives the edge that the skirt is sewn to. */
export function gownAsked(spec: Spec): {
  readonly gown?: Gown;
  readonly diagnostics: readonly Diagnostic[];
} {
  const measured = withHipOfBody(spec);
  const asked = askedBodice(measured);
  if (asked === undefined) return { gown: gownOfSpec(measured), diagnostics: [] };
  const { bodice, diagnostics } = draftAsked(asked);
  if (bodice === undefined) return { diagnostics };
  const sewn = sewnToEdge(measured, panelEdges(bodice.drafted), bodice.drafted.lower);
  const apart = panelsApart(bodice);
  return { gown: { ...gownOfSpec(sewn), ...(apart && { panelsApart: apart }) }, diagnostics };
}

/**
 * The same for a gown that is resolved already.
 * @param under the edge that it is sewn on, where it is an overskirt
 */
export function draftWhole(resolved: Gown, under?: EdgeUnder): Drafting {
  const asked = under === undefined ? resolved : onSewnEdge(resolved, under);
  const above = asked.askedBodice === undefined ? { diagnostics: [] } : draftAsked(asked.askedBodice);
  const { bodice } = above;
  const drafted = draftLayers(asked, asked.layers);
  if ('reason' in drafted) {
    const trouble = cannotDraft(placeOfTrouble(asked, drafted), drafted, asked.units);
    return { diagnostics: [...above.diagnostics, trouble] };
  }
  const fitted = fitGown(asked, drafted);
  const { gown, drafts } = fitted;
  const measures = measureGown(drafts.gown);
  const { capes, diagnostics: capesFound } = draftCapes(gown, bodice);
  const sewnOn = [
    ...flounceParts(gown, drafts),
    ...tierParts(gown),
    ...godetParts(gown, drafts),
    ...strapParts(gown.straps),
  ];
  const finishing = finishingParts(gown, drafts, { bodice, capes, sewnOn });
  const parts = [
    ...sewnOn,
    ...(bodice === undefined ? [] : bodiceParts(bodice)),
    ...capeParts(capes),
    ...finishing.parts,
  ];
  const layerMeasures = measureLayers(drafts, measures);
  const partMeasures = sewnOn.map((part) => ({ part, measures: measurePart(drafts, part) }));
  const diagnostics = [
    ...above.diagnostics,
    ...(bodice === undefined ? [] : [...trueBodice(bodice), ...fittedApart(bodice, gown)]),
    ...strapProblems(gown, bodice),
    ...capesFound,
    ...fitted.diagnostics,
    ...trueGown(gown, drafts.gown, measures),
    ...trueLayers(gown, drafts, layerMeasures),
    ...trueParts(gown, partMeasures),
    ...trueOverPetticoat(gown, drafts.gown),
    ...trueOverBody(gown, drafts.gown),
    ...partFindings(gown, drafts, parts),
    ...finishing.diagnostics,
    ...foldedEdges(drafts.layers, parts).map((folded) => tooDeepForCurve(folded, gown.units)),
    ...kicksInFacing(gown),
    ...pleatFindings(gown, drafts.layers),
    ...wrapFindings(gown, drafts.layers),
    ...wideAllowances(drafts.layers).map((wide) => allowanceWiderThanGore(wide, gown.units)),
  ];

  const overskirtDrafts = gown.overskirts.map((overskirt) =>
    draftWhole(overskirt.gown, edgeUnder(drafted.gown, overskirt.to)),
  );
  diagnostics.push(...overskirtDrafts.flatMap((drafting) => drafting.diagnostics));
  const overskirts = overskirtDrafts.flatMap((drafting) => drafting.gown ?? []);
  if (overskirts.length < overskirtDrafts.length) return { diagnostics };

  let facts: DraftFacts | undefined;
  const ownFacts = (): DraftFacts => {
    facts ??= draftFacts(gown, drafts);
    return facts;
  };
  // Of a gown with errors nothing is cut, and its lines may be past drawing.
  const isWrong = diagnostics.some(({ level }) => level === 'error');
  const own = isWrong
    ? undefined
    : cutPieces(
        gown,
        drafts.layers,
        parts,
        stonesMarked(gown, drafts),
        bustleMarked(gown, drafts, () => ownFacts().bustle.facts?.points ?? []),
      );
  diagnostics.push(...crossedOutlines(gown, own ?? [], parts).map(outlineCrosses));
  let pieces: readonly CutPiece[] | undefined;
  const cut: CutSet = {
    get pieces() {
      pieces ??= [
        ...(own ?? cutPieces(gown, drafts.layers, parts)),
        ...overskirts.flatMap((overskirt) => overskirt.cut.pieces),
      ];
      return pieces;
    },
  };
  const layers = [
    ...gown.layers,
    ...parts.map(({ layer }) => layer),
    ...overskirts.flatMap((overskirt) => overskirt.layers),
  ];
  const report = gownReport(
    gown,
    { drafts, measures, layers: layerMeasures },
    {
      ...(bodice === undefined ? {} : { bodice: bodiceReport(bodice) }),
      ...(capes.length === 0 ? {} : { capes: capes.map(capeReport) }),
      parts: partMeasures.map(partReport),
      finishing: finishing.parts.map(finishingReport),
      ...(gown.pleats.length === 0 ? {} : { pleats: pleatReport(gown, drafts.layers) }),
      overskirts: overskirts.map((overskirt) => overskirt.report),
      fittings: fitted.traces.map(fittingReport),
    },
  );
  return {
    gown: {
      gown,
      asked,
      drafts,
      measures,
      get facts() {
        return ownFacts();
      },
      ...(bodice === undefined ? {} : { bodice }),
      capeHems: capes.map(({ cape, hem }) => ({ name: cape.name, hem })),
      cut,
      layers: layers.filter((layer, i) => layers.findIndex(({ name }) => name === layer.name) === i),
      overskirts,
      report,
    },
    diagnostics,
  };
}

/** The edge that an overskirt is sewn to: the gown's own, before any fitting, up to the station where it ends. */
function edgeUnder({ gown, waist }: GownDraft, to = 'centre-back'): EdgeUnder | undefined {
  const end = gown.stations.findIndex(({ name }) => name === to);
  return end < 0 ? undefined : { edge: waist, end: waist.ways[end]! };
}

function placeOfTrouble(gown: Gown, { gore, layer }: LayersUndraftable): Span {
  if (layer !== undefined) return layer.place();
  const own = gown.gores.find(({ name }) => name === gore);
  return own === undefined ? gown.place('gores') : own.place();
}
