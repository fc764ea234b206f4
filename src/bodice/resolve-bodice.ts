import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { WAIST_AGREES } from '../geometry/tolerances.ts';
import { type GoreSpec, placeOf, type Spec } from '../gown-file/spec.ts';
import { tapeText } from '../gown-file/tape-text.ts';
import type { BodiceFault } from './bodice-fault.ts';
import { bodiceMeasures, boningOf, closingsOf, type DraftingSpec, hasBodiceDraft } from './bodice-of-spec.ts';
import { bodiceProblem, halvesUnderOneSkirt, panelMissesTop } from './bodice-problems.ts';
import type { Bones } from './bones.ts';
import { type BodiceDraft, draftBodice } from './draft-bodice.ts';
import type { Lacing } from './lacing.ts';
import { type BodiceFigures, measureBodice } from './measure-bodice.ts';
import { bonesOf, lacingAt, type WaistTape, waistTape } from './supplies.ts';

/** A bodice as it is drafted and made up. */
export interface DraftedBodice {
  readonly spec: DraftingSpec;
  readonly draft: BodiceDraft;
  readonly figures: BodiceFigures;
  readonly bones: readonly Bones[];
  readonly lacing?: Lacing;
  readonly tape: WaistTape;
}

export interface BodiceResolved {
  /** Its bodice's sewn edge known, whether it was measured or is drafted; absent where it cannot be drafted. */
  readonly spec?: Spec;
  readonly bodice?: DraftedBodice;
  readonly diagnostics: readonly Diagnostic[];
}

/** Drafts the bodice where the spec asks for it: its lower edge becomes the edge that the skirt is sewn to. */
export function resolveBodice(spec: Spec): BodiceResolved {
  if (!hasBodiceDraft(spec)) return { spec, diagnostics: [] };
  const draft = draftBodice(bodiceMeasures(spec));
  if ('faults' in draft) return { diagnostics: told(spec, draft.faults) };
  const rule = boningOf(spec.bodice.draft);
  const closings = closingsOf(spec.bodice.draft);
  const boned = rule === undefined ? { bones: [], faults: [] } : bonesOf(draft, rule, closings);
  const laced = closings.flatMap((closing) => (closing.kind === 'lacing' ? [lacingAt(draft, closing)] : []));
  const faults = [...boned.faults, ...laced.flatMap((found) => ('faults' in found ? found.faults : []))];
  const lacing = laced.flatMap((found) => ('lacing' in found ? [found.lacing] : []))[0];
  const bodice: DraftedBodice = {
    spec,
    draft,
    figures: measureBodice(draft),
    bones: boned.bones,
    ...(lacing === undefined ? {} : { lacing }),
    tape: waistTape(draft),
  };
  const diagnostics = [...told(spec, faults), ...topsApart(spec, bodice), ...halvesApart(spec, bodice)];
  return { spec: sewnTo(spec, bodice), bodice, diagnostics };
}

function told(spec: Spec, faults: readonly BodiceFault[]): Diagnostic[] {
  const say = (length: number): string => tapeText(length, spec.units);
  return faults.map((fault) => bodiceProblem(fault, placeOf(spec, ...fault.place), say));
}

/** Sewn lower edge of a gore's panel on one side of her; on both alike but where her halves differ. */
function panelOver(gore: GoreSpec, { panels }: BodiceFigures): number {
  const own = panels.filter(({ name }) => name === gore.name);
  return own.reduce((sum, { lower }) => sum + lower, 0) / own.length;
}

function sewnTo(spec: DraftingSpec, { figures }: DraftedBodice): Spec {
  const panels = spec.gores.map((gore) => {
    const lower = panelOver(gore, figures);
    return [gore.name, gore.onFold ? 2 * lower : lower] as const;
  });
  return {
    ...spec,
    bodice: { ...spec.bodice, waistSeam: figures.lower, panels: Object.fromEntries(panels) },
  };
}

/** A gore that says its own top meets its panel all the same. */
function topsApart(spec: DraftingSpec, bodice: DraftedBodice): Diagnostic[] {
  return spec.gores.flatMap((gore, i) => {
    const top = gore.onFold ? gore.halfTop : gore.top;
    const panel = panelOver(gore, bodice.figures);
    if (top === undefined || Math.abs(top - panel) <= WAIST_AGREES) return [];
    const say = (length: number): string => tapeText(length, spec.units);
    const key = gore.onFold ? 'half-top' : 'top';
    return [panelMissesTop(placeOf(spec, 'gores', i, key), gore.name, key, say(top), say(panel))];
  });
}

/** Lower edges of the two sides that differ by more are said, mm: what a waist seam eases without a thought. */
const SIDES_AGREE = 1.5;

function halvesApart(spec: DraftingSpec, { figures }: DraftedBodice): Diagnostic[] {
  const say = (length: number): string => tapeText(length, spec.units);
  return spec.bodice.draft.panels.flatMap(({ name }, i) => {
    const [left, right] = figures.panels.filter((panel) => panel.name === name);
    if (left === undefined || right === undefined || Math.abs(left.lower - right.lower) <= SIDES_AGREE)
      return [];
    const span = placeOf(spec, 'bodice', 'draft', 'panels', i);
    return [halvesUnderOneSkirt(span, name, say(left.lower), say(right.lower))];
  });
}
