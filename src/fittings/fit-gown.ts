import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Undraftable } from '../draft/undraftable.ts';
import type { Gown } from '../gown/gown.ts';
import { halves, runsRound } from '../gown/lines.ts';
import type { Fitting } from '../gown/sections.ts';
import { onLines } from '../gown/two-halves.ts';
import { type Alterations, unaltered } from './alterations.ts';
import { bothSides } from './both-sides.ts';
import { fittedSide } from './fit-side.ts';
import * as problems from './fitting-problems.ts';
import { type FittingTrace, traceOf } from './fitting-trace.ts';
import { resolveFitting } from './resolve-fitting.ts';
import { WAIST_TAKE_REACHES } from './waist-takes.ts';

/** A gown as its fittings left it. */
export interface FittedGown {
  /** Where a seam is taken in from the waist down, the bodice is taken in with it: it is one seam. */
  readonly gown: Gown;
  readonly drafts: LayerDrafts;
  readonly traces: readonly FittingTrace[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The stage between draft and allowances: every fitting in turn on what the one before it left. Both sides of each seam
 * stay equal, and hem and waist run through them without a corner.
 */
export function fitGown(gown: Gown, drafts: LayerDrafts): FittedGown {
  if (gown.fittings.length === 0 && gown.panelsApart === undefined)
    return { gown, drafts, traces: [], diagnostics: [] };
  const fitter = new Fitter(gown, drafts);
  for (const fitting of gown.fittings) fitter.fit(fitting);
  return fitter.result();
}

interface Sides {
  readonly left: GownDraft;
  readonly right: GownDraft;
}

class Fitter {
  private readonly diagnostics: Diagnostic[] = [];
  private readonly traces: FittingTrace[] = [];
  /** What every layer has, and what single layers have: in the order of the fittings. */
  private readonly altered = new Map<string, Alterations>();

  /** Her two sides as the bodice has them, before anything was pinned. */
  private readonly unpinned: Alterations;
  private readonly drawn = new Map<Alterations, Map<GownDraft, Sides | Undraftable>>();

  constructor(
    private readonly gown: Gown,
    private readonly drafts: LayerDrafts,
  ) {
    this.unpinned = unaltered(drafts.gown.gown, gown.panelsApart);
  }

  fit(fitting: Fitting): void {
    const { layer } = fitting;
    const targets = layer === undefined ? [undefined, ...this.ownLayers()] : [layer];
    for (const target of targets) this.fitTarget(fitting, target, target === targets[0]);
  }

  result(): FittedGown {
    const gown = this.joined(undefined) ?? this.drafts.gown;
    const known = new Map<GownDraft, GownDraft>();
    const layers = this.drafts.layers.map(({ layer, draft }) => {
      const alone = this.altered.has(layer.name);
      const fitted = (alone ? undefined : known.get(draft)) ?? this.joined(layer.name) ?? draft;
      if (!alone) known.set(draft, fitted);
      return { layer, draft: fitted };
    });
    const before = this.drafts.gown.gown.gores.reduce((sum, gore) => sum + gore.top, 0);
    const after = gown.gown.gores.reduce((sum, gore) => sum + gore.top, 0);
    const taken = halves(this.drafts.gown.gown) * before - halves(gown.gown) * after;
    this.noteBodice(taken - this.takenInBodice());
    this.noteWaistEdge();
    const lines = { ...gown.gown, waistSeam: this.gown.waistSeam - taken };
    return {
      gown: onLines(this.gown, lines),
      drafts: { gown: { ...gown, gown: lines }, layers },
      traces: this.traces,
      diagnostics: this.diagnostics,
    };
  }

  /** Layers that have had a fitting of their own go on separately from then on. */
  private ownLayers(): string[] {
    return [...this.altered.keys()].filter((name) => name !== EVERY_LAYER);
  }

  /** @param speaks whether this target's faults are told: the others repeat them */
  private fitTarget(fitting: Fitting, layer: string | undefined, speaks: boolean): void {
    const before = this.alterationsOf(layer);
    const drafts = this.sides(layer, before);
    if ('reason' in drafts) return;
    const found = resolveFitting({ gown: this.gown, fitting, drafts }, before);
    if (speaks) this.diagnostics.push(...found.diagnostics);
    if (found.diagnostics.some(({ level }) => level === 'error')) return;
    const after = this.sides(layer, found.alterations);
    if ('reason' in after) {
      if (speaks) this.diagnostics.push(this.contradiction(fitting, after));
      return;
    }
    this.altered.set(layer ?? EVERY_LAYER, found.alterations);
    if (speaks) this.traces.push(traceOf(fitting, drafts, after));
  }

  private alterationsOf(layer: string | undefined): Alterations {
    const own = layer === undefined ? undefined : this.altered.get(layer);
    return own ?? this.altered.get(EVERY_LAYER) ?? this.unpinned;
  }

  private draftOf(layer: string | undefined): GownDraft {
    return this.drafts.layers.find((one) => one.layer.name === layer)?.draft ?? this.drafts.gown;
  }

  /** What one fitting leaves the next one begins with: drawn once. */
  private sides(layer: string | undefined, alterations: Alterations): Sides | Undraftable {
    const draft = this.draftOf(layer);
    const known = this.drawn.get(alterations)?.get(draft);
    if (known !== undefined) return known;
    const sides = sidesOf(draft, alterations);
    this.drawn.set(alterations, (this.drawn.get(alterations) ?? new Map()).set(draft, sides));
    return sides;
  }

  private joined(layer: string | undefined): GownDraft | undefined {
    const sides = this.sides(layer, this.alterationsOf(layer));
    if ('reason' in sides) return undefined;
    return sides.left === sides.right ? sides.left : bothSides(sides.left, sides.right);
  }

  private contradiction(fitting: Fitting, { reason, gore }: Undraftable): Diagnostic {
    const { gown } = this;
    const part = (['seams', 'hem', 'levelled', 'waist'] as const).find((key) => fitting[key] !== undefined);
    const place = fitting.place(...(part === undefined ? [] : [part]));
    const own = gown.gores.find(({ name }) => name === gore) ?? gown.gores[0]!;
    if (reason === 'hem-above-waist')
      return problems.fittingHemAboveWaist(place, gore ?? '', gown.place('lengths', 'at'));
    if (reason === 'narrows-to-nothing') return problems.fittingTakesAll(place, gore ?? '', own.place());
    const edge = reason === 'waist-does-not-settle' ? 'waist' : 'hem';
    return problems.fittingCannotBeDrawn(place, edge, gown.place('lengths', 'at'));
  }

  /** What the fitted panels themselves are shorter by, all round. */
  private takenInBodice(): number {
    const { left, right } = this.unpinned;
    return [...left.tops, ...right.tops].reduce((sum, by) => sum + by, 0);
  }

  private noteBodice(taken: number): void {
    if (Math.abs(taken) < SAID_FROM) return;
    const { fittings, units } = this.gown;
    const own = fittings.find(({ seams }) => seams?.some(({ from }) => from === 0)) ?? fittings[0]!;
    const by = lengthInUnits(Math.abs(taken), units);
    this.diagnostics.push(problems.bodiceTakenIn(own.place('seams'), by, taken > 0 ? 'in' : 'out'));
  }

  private noteWaistEdge(): void {
    const { fittings, units } = this.gown;
    const own = fittings.findLast(({ waist }) => waist !== undefined);
    const sides = this.sides(undefined, this.alterationsOf(undefined));
    if (own === undefined || 'reason' in sides) return;
    const of = ({ letOutAtWaist = 0 }: GownDraft): number => letOutAtWaist;
    const allRound = runsRound(sides.left.gown) ? of(sides.left) : of(sides.left) + of(sides.right);
    if (Math.abs(allRound) < SAID_FROM) return;
    const by = lengthInUnits(Math.abs(allRound), units);
    const words = allRound < 0 ? 'longer' : 'shorter';
    const below = lengthInUnits(WAIST_TAKE_REACHES, units);
    this.diagnostics.push(problems.waistEdgeMoved(own.place('waist'), by, words, below));
  }
}

function sidesOf(draft: GownDraft, { left, right }: Alterations): Sides | Undraftable {
  const one = fittedSide(draft, left, right);
  if ('reason' in one || left === right) return 'reason' in one ? one : { left: one, right: one };
  const other = fittedSide(draft, right, left);
  return 'reason' in other ? other : { left: one, right: other };
}

/** Less than this of a waist is not worth a word, mm. */
const SAID_FROM = 0.05;

/** Stands for all layers that have no fitting of their own; no layer has an empty name. */
const EVERY_LAYER = '';
