import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { GownDraft, Undraftable } from '../draft/draft-gown.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import { lengthText } from '../gown-file/length-in-units.ts';
import { placeOf, type Spec } from '../gown-file/spec.ts';
import { type Alterations, unaltered } from './alterations.ts';
import { bothSides } from './both-sides.ts';
import { fittedSide } from './fit-side.ts';
import * as problems from './fitting-problems.ts';
import { type FittingTrace, traceOf } from './fitting-trace.ts';
import { resolveFitting } from './resolve-fitting.ts';
import { WAIST_TAKE_REACHES } from './waist-takes.ts';

/** A gown as its fittings left it. */
export interface FittedGown {
  readonly drafts: LayerDrafts;
  /** Taken in at the waist all round, with the bodice, mm; negative is let out. */
  readonly takenAtWaist: number;
  readonly traces: readonly FittingTrace[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The stage between draft and allowances: every fitting in turn on what the one before it left. Both sides of each seam
 * stay equal, and hem and waist run through them without a corner.
 */
export function fitGown(spec: Spec, drafts: LayerDrafts): FittedGown {
  const fittings = spec.fittings ?? [];
  if (fittings.length === 0) return { drafts, takenAtWaist: 0, traces: [], diagnostics: [] };
  const fitter = new Fitter(spec, drafts);
  for (const index of fittings.keys()) fitter.fit(index);
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

  private readonly drawn = new Map<Alterations, Map<GownDraft, Sides | Undraftable>>();

  constructor(
    private readonly spec: Spec,
    private readonly drafts: LayerDrafts,
  ) {}

  fit(index: number): void {
    const { layer } = this.spec.fittings![index]!;
    const targets = layer === undefined ? [undefined, ...this.ownLayers()] : [layer];
    for (const target of targets) this.fitTarget(index, target, target === targets[0]);
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
    const times = (draft: GownDraft): number => (draft.gown.closed ? 1 : 2);
    const takenAtWaist = times(this.drafts.gown) * before - times(gown) * after;
    this.noteBodice(takenAtWaist);
    this.noteWaistEdge();
    return {
      drafts: { gown, layers },
      takenAtWaist,
      traces: this.traces,
      diagnostics: this.diagnostics,
    };
  }

  /** Layers that have had a fitting of their own go on separately from then on. */
  private ownLayers(): string[] {
    return [...this.altered.keys()].filter((name) => name !== EVERY_LAYER);
  }

  /** @param speaks whether this target's faults are told: the others repeat them */
  private fitTarget(index: number, layer: string | undefined, speaks: boolean): void {
    const before = this.alterationsOf(layer);
    const drafts = this.sides(layer, before);
    if ('reason' in drafts) return;
    const found = resolveFitting({ spec: this.spec, index, drafts }, before);
    if (speaks) this.diagnostics.push(...found.diagnostics);
    if (found.diagnostics.some(({ level }) => level === 'error')) return;
    const after = this.sides(layer, found.alterations);
    if ('reason' in after) {
      if (speaks) this.diagnostics.push(this.contradiction(index, after));
      return;
    }
    this.altered.set(layer ?? EVERY_LAYER, found.alterations);
    if (speaks) this.traces.push(traceOf(this.spec, index, drafts, after));
  }

  private alterationsOf(layer: string | undefined): Alterations {
    const own = layer === undefined ? undefined : this.altered.get(layer);
    return own ?? this.altered.get(EVERY_LAYER) ?? unaltered(this.drafts.gown.gown.stations.length);
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

  private contradiction(index: number, { reason, gore }: Undraftable): Diagnostic {
    const { spec } = this;
    const fitting = spec.fittings![index]!;
    const part = (['seams', 'hem', 'levelled', 'waist'] as const).find((key) => fitting[key] !== undefined);
    const own = placeOf(spec, 'fittings', index, ...(part === undefined ? [] : [part]));
    const gores = spec.gores.findIndex(({ name }) => name === gore);
    if (reason === 'hem-above-waist')
      return problems.fittingHemAboveWaist(own, gore ?? '', placeOf(spec, 'lengths', 'at'));
    if (reason === 'narrows-to-nothing')
      return problems.fittingTakesAll(own, gore ?? '', placeOf(spec, 'gores', Math.max(0, gores)));
    const edge = reason === 'waist-does-not-settle' ? 'waist' : 'hem';
    return problems.fittingCannotBeDrawn(own, edge, placeOf(spec, 'lengths', 'at'));
  }

  private noteBodice(taken: number): void {
    if (Math.abs(taken) < SAID_FROM) return;
    const { spec } = this;
    const index = spec.fittings!.findIndex(({ seams }) => seams?.some(({ from }) => from === 0));
    const by = lengthText(Math.abs(taken), spec.units);
    const place = placeOf(spec, 'fittings', Math.max(0, index), 'seams');
    this.diagnostics.push(problems.bodiceTakenIn(place, by, taken > 0 ? 'in' : 'out'));
  }

  private noteWaistEdge(): void {
    const { spec } = this;
    const index = spec.fittings!.findLastIndex(({ waist }) => waist !== undefined);
    const sides = this.sides(undefined, this.alterationsOf(undefined));
    if (index < 0 || 'reason' in sides) return;
    const of = ({ letOutAtWaist = 0 }: GownDraft): number => letOutAtWaist;
    const allRound = sides.left.gown.closed ? of(sides.left) : of(sides.left) + of(sides.right);
    if (Math.abs(allRound) < SAID_FROM) return;
    const by = lengthText(Math.abs(allRound), spec.units);
    const place = placeOf(spec, 'fittings', index, 'waist');
    const words = allRound < 0 ? 'longer' : 'shorter';
    const below = lengthText(WAIST_TAKE_REACHES, spec.units);
    this.diagnostics.push(problems.waistEdgeMoved(place, by, words, below));
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
