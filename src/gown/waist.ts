import type { WaistSpec } from '../gown-file/spec.ts';
import { type Layer, PLAIN } from './layer.ts';
import { type LayersAsked, NEATENED, TURNS_INSIDE } from './layers-of-spec.ts';
import type { Placed, PlaceIn } from './placed.ts';

/** What finishes the waist of a skirt that is sewn to no bodice. mm. */
export interface WaistFinish extends Omit<WaistSpec, 'cloth' | 'ease' | 'notes'>, Placed<['waist']> {
  /** What a band or a facing is cut as; a stay is bought. */
  readonly layer?: Layer;
}

/** Names of the layers that a band and a waist facing are cut as. */
export const WAIST_LAYERS = { band: 'waistband', facing: 'waist-facing' } as const;

export function waistFinishOf(
  { cloth, ease: _, notes: _n, ...rest }: WaistSpec,
  layers: readonly Layer[],
  asked: LayersAsked,
  place: PlaceIn<['waist']>,
): WaistFinish {
  const { finish } = rest;
  if (finish === 'stay') return { ...rest, place };
  const outermost = layers[layers.length - 1]!;
  const { seam, waist } = asked.allowances;
  const facing = {
    ...outermost.allowances,
    waist: {
      ...outermost.allowances.waist,
      width: Math.max(0, outermost.allowances.waist.width - TURNS_INSIDE),
    },
    named: { ...outermost.allowances.named, 'inner-edge': { width: NEATENED, place: place('width') } },
  };
  const layer: Layer = {
    name: WAIST_LAYERS[finish],
    cloth: cloth === undefined ? outermost.cloth : asked.clothNamed(cloth),
    hem: 'raw',
    shape: PLAIN,
    allowances: finish === 'facing' ? facing : { seam, waist, hem: { ...waist }, named: {} },
    gores: finish === 'facing' ? outermost.gores : [],
    seams: 'pressed-open',
    place: () => place(),
  };
  return { ...rest, layer, place };
}
