import type { Spec, WrapSpec } from '../gown-file/spec.ts';
import type { Facing, Layer } from './layer.ts';
import { type GownAllowances, type LayersAsked, TURNS_INSIDE } from './layers-of-spec.ts';
import type { WrapLines } from './lines.ts';
import { layerOfPieces } from './openings.ts';
import type { Placed, PlaceIn } from './placed.ts';

/** A wrap: its edges, how they are finished, and what holds them. mm. */
export interface Wrap extends WrapLines, Omit<WrapSpec, 'edgeFacing' | 'ties' | 'notes'>, Placed<['wrap']> {
  readonly facing?: Facing;
  readonly ties?: { readonly length: number; readonly width: number; readonly layer: Layer };
}

/** What both its edges are called on a piece. */
export const WRAP_EDGE = 'wrap-edge';

export function wrapOf(
  { edgeFacing, ties, notes: _, ...rest }: WrapSpec,
  layers: readonly Layer[],
  asked: LayersAsked,
  place: PlaceIn<['wrap']>,
): Wrap {
  const outermost = layers[layers.length - 1]!.cloth.name;
  return {
    ...rest,
    ...(edgeFacing && { facing: facingOf(edgeFacing, outermost, asked, place) }),
    ...(ties && {
      ties: {
        length: ties.length,
        width: ties.width,
        layer: layerOfPieces('ties', ties.cloth ?? outermost, asked, () => place('ties')),
      },
    }),
    place,
  };
}

/** As wide beyond the faced edge as the wrap, 2 mm smaller there, its other edges as the gown's. */
function facingOf(
  { depth, cloth = '' }: NonNullable<WrapSpec['edgeFacing']>,
  outermost: string,
  asked: LayersAsked,
  place: PlaceIn<['wrap']>,
): Facing {
  const here = () => place('edge-facing');
  const own = layerOfPieces('wrap-facing', cloth || outermost, asked, here);
  const { seam, waist, hem, named } = asked.allowances;
  const edge = named[WRAP_EDGE] ?? hem;
  const smaller = { ...edge, width: Math.max(0, edge.width - TURNS_INSIDE) };
  const edges = { ...named, ...own.allowances.named, [WRAP_EDGE]: smaller };
  return { depth, layer: { ...own, allowances: { seam, waist, hem, named: edges } }, place: here };
}

/** The edges of a wrap take what finishes them: nothing where they are bound, else the hem's allowance. */
export function withWrapEdge(own: GownAllowances, wrap: Spec['wrap']): GownAllowances {
  if (wrap === undefined || own.named[WRAP_EDGE] !== undefined) return own;
  const edge = wrap.edges === 'bound' ? { ...own.hem, width: 0 } : own.hem;
  return { ...own, named: { ...own.named, [WRAP_EDGE]: edge } };
}
