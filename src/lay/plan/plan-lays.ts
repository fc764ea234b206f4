import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Kept } from '../../kept/kept.ts';
import type { LayPlan } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import type { GownToLay, LayToPlan } from './lay-to-plan.ts';
import { laysTooLong } from './lays-too-long.ts';
import type { PackingEffort } from './pack-section.ts';
import { planLay } from './plan-lay.ts';

export type LayEffort = 'quick' | 'thorough';

export interface LayOptions {
  readonly effort?: LayEffort;
  readonly seed?: number;
  /** A length in the maker's units, for messages and remarks. */
  readonly say: (mm: number) => string;
  /** Asked often; once true, the best so far is kept. */
  readonly shouldStop?: () => boolean;
  /** Strips that were packed before. */
  readonly kept?: Kept;
  /** Each shorter single lay found. */
  readonly onProgress?: (lay: string, length: number) => void;
}

export interface LaysPlanned {
  /** In the order of the layers; none for a cloth that something cannot be cut from. */
  readonly lays: readonly LayPlan[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Layers of one cloth that are given work of their own. */
const MOST_LAYERS = 3;

/**
 * Work of the search for a strip, by the pieces laid on it: counted in overlap look-ups, never in time. Lantern's three
 * layers with two seeds, quick (2026-11-28): with 1.6e7 for their nine pieces and one or two starts the lays of one
 * layer differ by up to 2.2 %, with 2.4e7 and three starts by 0.2 %. Of several layers of one cloth each by itself gets
 * half as much, and all together half as much again for each: with three seeds Lantern's three layers, all of crepe,
 * came 0.6 to 2.5 % shorter than end to end. That ends at three: what finishes a gown counts as layers too, and a lay of
 * eight, most of them small pieces, took 5.7 s for 0.05 % less cloth than in 3.1 s.
 */
const WORK: Readonly<Record<LayEffort, PackingEffort['work']>> = {
  quick: {
    cutting: (pieces, layers) => Math.min(1.2e7 * (Math.min(layers, MOST_LAYERS) + 1), 2e5 * pieces * pieces),
    apart: (pieces) => Math.min(1.2e7, 1e5 * pieces * pieces),
    comparing: (pieces) => Math.min(7e4, 2e3 * pieces * pieces),
  },
  thorough: {
    cutting: (pieces, layers) => Math.min(4e7 * (layers + 1), 6e5 * pieces * pieces),
    apart: (pieces) => Math.min(4e7, 3e5 * pieces * pieces),
    comparing: (pieces) => Math.min(8e6, 6e4 * pieces * pieces),
  },
};

/** Plans every cloth. The same gown gives the same lays on any machine. */
export function planLays(gown: GownToLay, options: LayOptions): LaysPlanned {
  const tooLong = laysTooLong(gown, options.say);
  if (tooLong.length > 0) return { lays: [], diagnostics: tooLong };
  const effort: PackingEffort = {
    seed: options.seed ?? 1,
    work: WORK[options.effort ?? 'quick'],
    stopped: options.shouldStop ?? (() => false),
    ...(options.kept === undefined ? {} : { kept: options.kept }),
  };
  const planned = gown.lays.map((lay) => {
    const toLay: LayToPlan = { ...lay, pieces: gown.pieces, say: options.say };
    const own = planLay(toLay, effort, (length) => options.onProgress?.(lay.name, length));
    return { plan: own.plan, diagnostics: [...own.diagnostics, ...patternNotes(toLay)] };
  });
  return {
    lays: planned.flatMap(({ plan }) => plan ?? []),
    diagnostics: planned.flatMap(({ diagnostics }) => diagnostics),
  };
}

function patternNotes({ facts, layers, cloth, span }: LayToPlan): Diagnostic[] {
  const patterned = facts.repeatDown !== undefined || facts.repeatAcross !== undefined;
  return patterned ? [problems.repeatAssumed(span, { layers: layers.map(({ name }) => name), cloth })] : [];
}
