import type { Gown } from './gown.ts';
import type { Layer } from './layer.ts';

/** What finishes a gown is cut as layers of its own: each of them once. */
export function finishingLayers(gown: Pick<Gown, 'layers' | 'capes' | 'waist'>): Layer[] {
  return [...facingLayers(gown), ...(gown.waist?.layer === undefined ? [] : [gown.waist.layer])];
}

/** Facings of hems. */
export function facingLayers({ layers, capes }: Pick<Gown, 'layers' | 'capes'>): Layer[] {
  return [...layers, ...capes.flatMap((cape) => cape.layers)].flatMap(({ facing }) => facing?.layer ?? []);
}
