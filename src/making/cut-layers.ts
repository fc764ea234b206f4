import { finishingLayers } from '../gown/finishing.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';

/** Whatever is cut of cloth, in the order in which it is cut: layers, parts, what is above the waist, overskirts. */
export function cutLayers(gown: Gown): Layer[] {
  const { layers, flounces, tiers, overskirts, askedBodice, straps, capes } = gown;
  return [
    ...(askedBodice?.layers ?? []),
    ...layers,
    ...finishingLayers(gown),
    ...[...flounces, ...tiers, ...straps].map(({ layer }) => layer),
    ...capes.flatMap((cape) => cape.layers),
    ...overskirts.flatMap((one) => [...one.gown.layers, ...finishingLayers(one.gown)]),
  ];
}
