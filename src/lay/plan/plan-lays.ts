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

/**
 * Work of the search for a strip, by the pieces laid on it: counted in overlap look-ups, never in time. All figures are
 * shares of the thorough lay with one seed, of the gowns in `examples` and `templates`, on 2026-11-28.
 *
 * One layer alone: the more pieces, the more a lay hangs on the seed. With the cube throughout, eight seeds of each of 49
 * lays, the mean was 99.93 %, five of 392 under 98: two of six pieces, 97.9 with 4.8e6, which have 7.2e6 therefore, and
 * three of twelve, which with these come to 96.2 to 99.1: the thorough lay of those is 2372 or 2455 mm long itself.
 * Near 2.2e4 it is chance which seed comes out shorter: of 2.2, 2.25, 2.3 and 2.4 the second gives Lantern's organza its
 * shortest lay with the usual seed, 3791 mm, and no other lay of nine pieces one clearly longer than before.
 *
 * Several layers together: their lays end to end are known, so less serves. Lays of 8 to 24 pieces, 23 runs in all, came to
 * 99.7 %, the least 98.4; as it was before, each layer by itself with half its work, the joint search anew and with 1.2e7 for
 * each of at most three layers and as much again, to 99.6 and 98.0. All gowns together have 1.05 times the work that they had.
 */
const WORK: Readonly<Record<LayEffort, PackingEffort['work']>> = {
  quick: {
    cutting: (pieces, layers) =>
      layers === 1
        ? Math.min(4e7, Math.max(2.25e4 * pieces ** 3, Math.min(7.2e6, 2e5 * pieces * pieces)))
        : Math.min(4.8e7, 2e6 * pieces, 2e5 * pieces * pieces),
    comparing: (pieces) => Math.min(7e4, 2e3 * pieces * pieces),
  },
  thorough: {
    cutting: (pieces, layers) => Math.min(4e7 * (layers + 1), 6e5 * pieces * pieces),
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
