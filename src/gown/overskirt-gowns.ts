import { placeAt, type Spec } from '../gown-file/spec.ts';
import type { Gown, Overskirt } from './gown.ts';
import type { Facing } from './layer.ts';
import { type LayersAsked, layerOf, TURNS_INSIDE, turningsOf } from './layers-of-spec.ts';
import { layerOfPieces } from './openings.ts';
import { linesOfOverskirt, overskirtAllowances } from './overskirts-of-spec.ts';
import type { PlaceIn } from './placed.ts';
import type { PlacesIn } from './places-in-spec.ts';

/** Overskirts as gowns of their own, on the lines of the gown that they are sewn to. */
export function overskirtsOf(
  spec: Spec,
  gown: Omit<Gown, 'overskirts'>,
  asked: LayersAsked,
  at: PlacesIn,
): Overskirt[] {
  return (spec.overskirts ?? []).map((overskirt, i) => {
    const place = at('overskirts', i);
    // What stands in the overskirt as in a gown; else the overskirt itself.
    const asInGown: PlaceIn<[]> = (...path) => placeAt(spec, ['overskirts', i, ...path]);
    const { name, from, to, fastened, edges, quickRelease, notes } = overskirt;
    const own: LayersAsked = {
      clothNamed: asked.clothNamed,
      ...turningsOf(spec, overskirt.lengths),
      gores: overskirt.gores.map((gore) => gore.name),
      allowances: overskirtAllowances(spec, overskirt, at('allowances')),
    };
    const { format, content, client, units, bodice } = gown;
    return {
      name,
      from,
      ...(to === undefined ? {} : { to }),
      fastened,
      edges,
      quickRelease,
      ...(notes === undefined ? {} : { notes }),
      place,
      gown: {
        ...linesOfOverskirt(spec, gown, overskirt, asInGown),
        format,
        content,
        ...(client === undefined ? {} : { client }),
        units,
        bodice,
        measuring: { ...overskirt.lengths, place: at('overskirts', i, 'lengths') },
        layers: overskirt.layers.map((layer, k) => layerOf(layer, own, at('overskirts', i, 'layers', k))),
        cloths: gown.cloths,
        flounces: [],
        stones: [],
        tiers: [],
        godets: [],
        pleats: [],
        overskirts: [],
        fittings: [],
        straps: [],
        ...(overskirt.edgeFacing && {
          edgeFacing: edgeFacingOf(overskirt, own, at('overskirts', i)),
        }),
        slits: [],
        pockets: [],
        loops: [],
        capes: [],
        trims: [],
        notions: [],
        cut: {},
        place: asInGown,
      },
    };
  });
}

/** As wide beyond the faced edge as the overskirt, its other edges as the gown's. */
function edgeFacingOf(
  { name, layers, edgeFacing }: NonNullable<Spec['overskirts']>[number],
  asked: LayersAsked,
  place: PlaceIn<['overskirts', number]>,
): Facing {
  const { depth, cloth } = edgeFacing!;
  const here = () => place('edge-facing');
  const own = layerOfPieces(`${name}-edge-facing`, cloth ?? layers[layers.length - 1]!.cloth, asked, here);
  const { seam, waist, hem, named } = asked.allowances;
  const ends = ['outer-edge', 'back-edge'].flatMap((end) => {
    const at = named[end];
    return at === undefined ? [] : [[end, { ...at, width: Math.max(0, at.width - TURNS_INSIDE) }] as const];
  });
  const edges = { ...named, ...own.allowances.named, ...Object.fromEntries(ends) };
  const allowances = { seam, waist, hem, named: edges };
  return { depth, layer: { ...own, allowances }, place: here };
}
