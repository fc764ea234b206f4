import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import { WAIST_TAKE_REACHES } from '../fittings/waist-takes.ts';
import { WAIST_AGREES } from '../geometry/tolerances.ts';
import type { AskedBodice, FittedPanels, PanelsApart } from '../gown/above-waist.ts';
import { askedMeasures, boningOf, closingsOf } from './asked-measures.ts';
import type { BodiceFault } from './bodice-fault.ts';
import { bodiceProblem, goresOfEachSide, goresTakenIn, panelMissesTop } from './bodice-problems.ts';
import type { Bones } from './bones.ts';
import { type BodiceDraft, draftBodice } from './draft-bodice.ts';
import { type BodiceTrace, fitBodice } from './fit-bodice.ts';
import type { Lacing } from './lacing.ts';
import { type BodiceFigures, measureBodice } from './measure-bodice.ts';
import { bonesOf, lacingAt, type WaistTape, waistTape } from './supplies.ts';

/** A bodice as it is drafted and made up. */
export interface DraftedBodice {
  readonly asked: AskedBodice;
  /** As it was fitted. */
  readonly draft: BodiceDraft;
  readonly figures: BodiceFigures;
  /** Before anything was pinned: the gores are drafted for it. */
  readonly drafted: BodiceFigures;
  readonly bones: readonly Bones[];
  readonly lacing?: Lacing;
  readonly tape: WaistTape;
  /** What each of its fittings did. */
  readonly fittings: readonly BodiceTrace[];
  /** By side: the seams that were pinned as far as the waist seam. */
  readonly pinned: Readonly<Record<'left' | 'right', readonly string[]>>;
}

/** Drafts the bodice that is asked for; nothing where it cannot be drafted. */
export function draftAsked(asked: AskedBodice): {
  readonly bodice?: DraftedBodice;
  readonly diagnostics: readonly Diagnostic[];
} {
  const drafted = draftBodice(askedMeasures(asked));
  if ('faults' in drafted) return { diagnostics: told(asked, drafted.faults) };
  const { draft, traces, pinned, diagnostics } = fitBodice(drafted, asked);
  const rule = boningOf(asked);
  const closings = closingsOf(asked.draft);
  const boned = rule === undefined ? { bones: [], faults: [] } : bonesOf(draft, rule, closings);
  const laced = closings.flatMap((closing) => (closing.kind === 'lacing' ? [lacingAt(draft, closing)] : []));
  const faults = [...boned.faults, ...laced.flatMap((found) => ('faults' in found ? found.faults : []))];
  const lacing = laced.flatMap((found) => ('lacing' in found ? [found.lacing] : []))[0];
  const figures = measureBodice(draft);
  const bodice: DraftedBodice = {
    asked,
    draft,
    drafted: draft === drafted ? figures : measureBodice(drafted),
    figures,
    bones: boned.bones,
    ...(lacing === undefined ? {} : { lacing }),
    tape: waistTape(draft),
    fittings: traces,
    pinned,
  };
  return {
    bodice,
    diagnostics: [
      ...diagnostics,
      ...told(asked, faults),
      ...topsApart(asked, bodice.drafted),
      ...goresFollow(asked, bodice),
    ],
  };
}

function told(asked: AskedBodice, faults: readonly BodiceFault[]): Diagnostic[] {
  return faults.map((fault) => bodiceProblem(fault, asked.placeAt(fault.place), sayIn(asked)));
}

function sayIn({ units }: AskedBodice): (length: number) => string {
  return (length) => tapeText(length, units);
}

/** Sewn lower edges of the panels, of one side of her; where her halves differ, the middle of the two. */
export function panelEdges({ panels }: Pick<BodiceFigures, 'panels'>): Readonly<Record<string, number>> {
  const names = [...new Set(panels.map(({ name }) => name))];
  return Object.fromEntries(
    names.map((name) => {
      const own = panels.filter((panel) => panel.name === name);
      return [name, own.reduce((sum, { lower }) => sum + lower, 0) / own.length];
    }),
  );
}

/** What her two sides, and what was pinned in them, make of the panels' lower edges; nothing where that is nothing. */
export function panelsApart({ drafted, figures, pinned }: DraftedBodice): PanelsApart | undefined {
  const middle = panelEdges(drafted);
  const of = (side: 'left' | 'right'): FittedPanels => ({
    less: Object.fromEntries(
      figures.panels
        .filter((panel) => panel.side === undefined || panel.side === side)
        .map(({ name, lower }) => [name, middle[name]! - lower] as const)
        .filter(([, by]) => Math.abs(by) > PANELS_AGREE),
    ),
    seams: pinned[side],
  });
  const apart = { left: of('left'), right: of('right') };
  const isNothing = [apart.left, apart.right].every(({ less }) => Object.keys(less).length === 0);
  return isNothing ? undefined : apart;
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

/** Lower edges that differ by less are alike, mm. */
const PANELS_AGREE = 0.005;

/** What the gores have to follow. */
function goresFollow(asked: AskedBodice, bodice: DraftedBodice): Diagnostic[] {
  const apart = panelsApart(bodice);
  if (apart === undefined) return [];
  const { left, right } = apart;
  const say = sayIn(asked);
  const below = say(WAIST_TAKE_REACHES);
  const names = asked.draft.panels.map(({ name }) => name);
  const differ = names.filter(
    (name) => Math.abs((left.less[name] ?? 0) - (right.less[name] ?? 0)) > PANELS_AGREE,
  );
  const by = bodice.drafted.lower - bodice.figures.lower;
  const last = asked.fittings.at(-1);
  return [
    ...(differ.length === 0 ? [] : [goresOfEachSide(asked.placeAt(['bodice', 'draft']), differ, below)]),
    ...(last === undefined || Math.abs(by) <= SAID_FROM
      ? []
      : [goresTakenIn(last.place(), by > 0 ? 'in' : 'out', say(Math.abs(by)), below)]),
  ];
}

/** Less than this of a waist is not worth a word, mm. */
const SAID_FROM = 0.05;
