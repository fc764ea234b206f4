import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import { WAIST_AGREES } from '../geometry/tolerances.ts';
import type { AskedBodice } from '../gown/above-waist.ts';
import { askedMeasures, boningOf, closingsOf } from './asked-measures.ts';
import type { BodiceFault } from './bodice-fault.ts';
import { bodiceProblem, halvesUnderOneSkirt, panelMissesTop } from './bodice-problems.ts';
import type { Bones } from './bones.ts';
import { type BodiceDraft, draftBodice } from './draft-bodice.ts';
import type { Lacing } from './lacing.ts';
import { type BodiceFigures, measureBodice } from './measure-bodice.ts';
import { bonesOf, lacingAt, type WaistTape, waistTape } from './supplies.ts';

/** A bodice as it is drafted and made up. */
export interface DraftedBodice {
  readonly asked: AskedBodice;
  readonly draft: BodiceDraft;
  readonly figures: BodiceFigures;
  readonly bones: readonly Bones[];
  readonly lacing?: Lacing;
  readonly tape: WaistTape;
}

/** Drafts the bodice that is asked for; nothing where it cannot be drafted. */
export function draftAsked(asked: AskedBodice): {
  readonly bodice?: DraftedBodice;
  readonly diagnostics: readonly Diagnostic[];
} {
  const draft = draftBodice(askedMeasures(asked));
  if ('faults' in draft) return { diagnostics: told(asked, draft.faults) };
  const rule = boningOf(asked);
  const closings = closingsOf(asked.draft);
  const boned = rule === undefined ? { bones: [], faults: [] } : bonesOf(draft, rule, closings);
  const laced = closings.flatMap((closing) => (closing.kind === 'lacing' ? [lacingAt(draft, closing)] : []));
  const faults = [...boned.faults, ...laced.flatMap((found) => ('faults' in found ? found.faults : []))];
  const lacing = laced.flatMap((found) => ('lacing' in found ? [found.lacing] : []))[0];
  const figures = measureBodice(draft);
  return {
    bodice: {
      asked,
      draft,
      figures,
      bones: boned.bones,
      ...(lacing === undefined ? {} : { lacing }),
      tape: waistTape(draft),
    },
    diagnostics: [...told(asked, faults), ...topsApart(asked, figures), ...halvesApart(asked, figures)],
  };
}

function told(asked: AskedBodice, faults: readonly BodiceFault[]): Diagnostic[] {
  return faults.map((fault) => bodiceProblem(fault, asked.placeAt(fault.place), sayIn(asked)));
}

function sayIn({ units }: AskedBodice): (length: number) => string {
  return (length) => tapeText(length, units);
}

/** Sewn lower edges of the panels, of one side of her; where her halves differ, the middle of the two. */
export function panelEdges({ panels }: BodiceFigures): Readonly<Record<string, number>> {
  const names = [...new Set(panels.map(({ name }) => name))];
  return Object.fromEntries(
    names.map((name) => {
      const own = panels.filter((panel) => panel.name === name);
      return [name, own.reduce((sum, { lower }) => sum + lower, 0) / own.length];
    }),
  );
}

/** A gore that says its own top meets its panel all the same. */
function topsApart(asked: AskedBodice, figures: BodiceFigures): Diagnostic[] {
  const edges = panelEdges(figures);
  const say = sayIn(asked);
  return asked.tops.flatMap(({ gore, key, top, index }) => {
    const panel = edges[gore];
    if (panel === undefined || Math.abs(top - panel) <= WAIST_AGREES) return [];
    return [panelMissesTop(asked.placeAt(['gores', index, key]), gore, key, say(top), say(panel))];
  });
}

/** Lower edges of the two sides that differ by more are said, mm: what a waist seam eases without a thought. */
const SIDES_AGREE = 1.5;

function halvesApart(asked: AskedBodice, { panels }: BodiceFigures): Diagnostic[] {
  const say = sayIn(asked);
  return asked.draft.panels.flatMap(({ name }, i) => {
    const [left, right] = panels.filter((panel) => panel.name === name);
    if (left === undefined || right === undefined || Math.abs(left.lower - right.lower) <= SIDES_AGREE)
      return [];
    const span = asked.placeAt(['bodice', 'draft', 'panels', i]);
    return [halvesUnderOneSkirt(span, name, say(left.lower), say(right.lower))];
  });
}
