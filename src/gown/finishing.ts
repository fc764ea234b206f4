import type { Gown } from './gown.ts';
import type { Layer } from './layer.ts';

/** Sections of a gown that ask for pieces which finish it. */
export type Finished = Pick<
  Gown,
  | 'layers'
  | 'capes'
  | 'waist'
  | 'closure'
  | 'slits'
  | 'pockets'
  | 'loops'
  | 'trims'
  | 'askedBodice'
  | 'edgeFacing'
  | 'tiers'
  | 'wrap'
>;

/** What finishes a gown is cut as layers of its own: each of them once. */
export function finishingLayers(gown: Finished): Layer[] {
  const { waist, closure, slits, pockets, loops, trims, wrap } = gown;
  return [
    ...facingLayers(gown),
    ...[gown.askedBodice?.facing, gown.edgeFacing].flatMap((facing) => facing?.layer ?? []),
    ...[waist?.layer, closure?.piece?.layer, wrap?.facing?.layer, wrap?.ties?.layer].flatMap(
      (layer) => layer ?? [],
    ),
    ...slits.flatMap(({ facing, stayLayer }) => [facing?.layer, stayLayer].flatMap((layer) => layer ?? [])),
    ...[...pockets, ...loops].map(({ layer }) => layer),
    ...trims.flatMap(({ bias }) => bias ?? []),
    ...gown.tiers.flatMap(({ yokeLayer }) => yokeLayer ?? []),
  ];
}

/** Facings of hems. */
export function facingLayers({ layers, capes }: Pick<Gown, 'layers' | 'capes'>): Layer[] {
  return [...layers, ...capes.flatMap((cape) => cape.layers)].flatMap(({ facing }) => facing?.layer ?? []);
}
