import type { LayerDraft } from '../../draft/draft-layers.ts';
import { elasticDrop, shearStiffnessOf } from './elastic-drop.ts';

/** A layer on the bias. mm. */
export interface BiasFacts {
  readonly longest: number;
  /** By which its own weight draws it longer at once; unknown where its cloth's weight is. */
  readonly drop: number | undefined;
  /** Whether the cloth's shear stiffness is measured, or taken by its weave. */
  readonly measured: boolean;
}

/** Undefined of a layer that is cut on the straight thread. */
export function biasFacts({ layer, draft }: LayerDraft): BiasFacts | undefined {
  if (layer.grain !== 'bias') return undefined;
  const { cloth } = layer;
  const longest = Math.max(...draft.lengths);
  return {
    longest,
    drop:
      cloth.weight === undefined ? undefined : elasticDrop(cloth.weight, longest, shearStiffnessOf(cloth)),
    measured: cloth.shearStiffness !== undefined,
  };
}
