import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Kept } from '../../kept/kept.ts';
import type { LayPlan } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import type { GownToLay, LayerToLay } from './layer-to-lay.ts';
import { layersTooLong } from './layers-too-long.ts';
import type { PackingEffort } from './pack-section.ts';
import { planLayer } from './plan-layer.ts';

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
  readonly onProgress?: (layer: string, length: number) => void;
}

export interface LaysPlanned {
  /** In the order of the layers; a layer that cannot be cut from its cloth has none. */
  readonly lays: readonly LayPlan[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Work of the search for a strip, by the pieces laid on it: counted in overlap look-ups, never in time. Lantern's three
 * layers with two seeds, quick (2026-11-28): with 1.6e7 for their nine pieces and one or two starts the lays of one
 * layer differ by up to 2.2 %, with 2.4e7 and three starts by 0.2 %.
 */
const WORK: Readonly<Record<LayEffort, Pick<PackingEffort, 'forCutting' | 'forComparing'>>> = {
  quick: {
    forCutting: (pieces) => Math.min(2.4e7, 2e5 * pieces * pieces),
    forComparing: (pieces) => Math.min(7e4, 2e3 * pieces * pieces),
  },
  thorough: {
    forCutting: (pieces) => Math.min(8e7, 6e5 * pieces * pieces),
    forComparing: (pieces) => Math.min(8e6, 6e4 * pieces * pieces),
  },
};

/** Plans the cloth of every layer. The same gown gives the same lays on any machine. */
export function planLays(gown: GownToLay, options: LayOptions): LaysPlanned {
  const tooLong = layersTooLong(gown, options.say);
  if (tooLong.length > 0) return { lays: [], diagnostics: tooLong };
  const effort: PackingEffort = {
    seed: options.seed ?? 1,
    ...WORK[options.effort ?? 'quick'],
    stopped: options.shouldStop ?? (() => false),
    ...(options.kept === undefined ? {} : { kept: options.kept }),
  };
  const planned = gown.layers
    .map(
      (layer): LayerToLay => ({
        ...layer,
        pieces: gown.pieces.filter(({ layers }) => layers.includes(layer.layer)),
        say: options.say,
      }),
    )
    .filter(({ pieces }) => pieces.length > 0)
    .map((toLay) => ({
      toLay,
      ...planLayer(toLay, effort, (length) => options.onProgress?.(toLay.layer, length)),
    }));
  return {
    lays: planned.flatMap(({ plan }) => plan ?? []),
    diagnostics: planned.flatMap(({ toLay, diagnostics }) => [...diagnostics, ...patternNotes(toLay)]),
  };
}

function patternNotes({ facts, layer, cloth, span }: LayerToLay): Diagnostic[] {
  const patterned = facts.repeatDown !== undefined || facts.repeatAcross !== undefined;
  return patterned ? [problems.repeatAssumed(span, { layer, cloth })] : [];
}
