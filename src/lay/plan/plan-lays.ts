import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { CutPiece } from '../../draft/piece.ts';
import { type LayerSpec, placeOf, type Spec } from '../../gown-file/spec.ts';
import { clothFacts } from './cloth-facts.ts';
import type { LayPlan } from './lay-plan.ts';
import * as problems from './lay-problems.ts';
import type { LayerToLay } from './layer-to-lay.ts';
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
  /** Each shorter single lay found. */
  readonly onProgress?: (layer: string, length: number) => void;
}

export interface LaysPlanned {
  /** In the order of the layers; a layer that cannot be cut from its cloth has none. */
  readonly lays: readonly LayPlan[];
  readonly diagnostics: readonly Diagnostic[];
}

/** What lay planning needs of a drafted gown. */
export interface GownToLay {
  readonly spec: Spec;
  readonly layers: readonly LayerSpec[];
  readonly pieces: readonly CutPiece[];
}

/** Work of the search for a strip, by the pieces laid on it: counted in overlaps looked up, never in time. */
const WORK: Readonly<Record<LayEffort, Pick<PackingEffort, 'single' | 'section'>>> = {
  quick: {
    single: (pieces) => Math.min(8e6, 1.2e5 * pieces * pieces),
    section: (pieces) => Math.min(7e4, 2e3 * pieces * pieces),
  },
  thorough: {
    single: (pieces) => Math.min(8e7, 6e5 * pieces * pieces),
    section: (pieces) => Math.min(8e6, 6e4 * pieces * pieces),
  },
};

/** Allowance of a join along the grain where the spec gives none for seams, mm (5/8 in, as on paper patterns). */
const USUAL_SEAM = 15;

/** Plans the cloth of every layer. The same gown gives the same lays on any machine. */
export function planLays(gown: GownToLay, options: LayOptions): LaysPlanned {
  const tooLong = layersTooLong(gown, options.say);
  if (tooLong.length > 0) return { lays: [], diagnostics: tooLong };
  const effort: PackingEffort = {
    seed: options.seed ?? 1,
    ...WORK[options.effort ?? 'quick'],
    stopped: options.shouldStop ?? (() => false),
  };
  const planned = gown.layers
    .map((layer) => layerToLay(gown, layer, options.say))
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

function layerToLay({ spec, pieces }: GownToLay, layer: LayerSpec, say: (mm: number) => string): LayerToLay {
  const cloth = spec.cloths[layer.cloth];
  if (cloth === undefined) throw new Error(`no cloth is named ${layer.cloth}`);
  return {
    layer: layer.name,
    cloth: layer.cloth,
    pieces: pieces.filter(({ layers }) => layers.includes(layer.name)),
    spec: cloth,
    facts: clothFacts(spec, layer.cloth),
    seam: layer.allowances.seam ?? spec.allowances.seam ?? USUAL_SEAM,
    span: placeOf(spec, 'cloths', layer.cloth, 'width'),
    say,
  };
}

function patternNotes({ facts, layer, cloth, span }: LayerToLay): Diagnostic[] {
  const patterned = facts.repeatDown !== undefined || facts.repeatAcross !== undefined;
  return patterned ? [problems.repeatAssumed(span, { layer, cloth })] : [];
}
