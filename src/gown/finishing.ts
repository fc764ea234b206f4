import type { Gown } from './gown.ts';
import type { Layer } from './layer.ts';

/** What finishes a gown is cut as layers of its own: each of them once. */
export function finishingLayers({
  layers,
  capes,
  askedBodice,
}: Pick<Gown, 'layers' | 'capes' | 'askedBodice'>): Layer[] {
  const hems = [...layers, ...capes.flatMap((cape) => cape.layers)];
  return [
    ...hems.flatMap(({ facing }) => facing?.layer ?? []),
    ...(askedBodice?.facing ? [askedBodice.facing.layer] : []),
  ];
}
