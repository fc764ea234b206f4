import type { Bench } from './findings.ts';
import { type LayerWeight, layerWeight, weightInAll } from './weight.ts';

export interface WeightFacts {
  readonly layers: readonly LayerWeight[];
  /** Grams; undefined while any cloth's weight is missing. */
  readonly inAll: number | undefined;
}

export function weightFacts({ spec, skirt }: Bench): WeightFacts {
  const layers = skirt.layers.map(({ spec: layer, netArea, cutArea }) =>
    layerWeight({ name: layer.name, netArea, cutArea }, { name: layer.cloth, ...spec.cloths[layer.cloth] }),
  );
  return { layers, inAll: weightInAll(layers) };
}
