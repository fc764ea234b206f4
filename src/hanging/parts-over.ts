import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import { edgeBetween } from './above-waist.ts';
import { bendingLengthOf, SHEAR_LENGTH } from './bending-lengths.ts';
import { outermostLayer } from './outermost-layer.ts';
import { overskirtToHang } from './overskirt-to-hang.ts';
import type { ClothOver, FlounceOver } from './part-to-hang.ts';
import type { GownHung } from './sewn-gown.ts';

/** Flounces above the hem of the layer that is seen; those of a layer inside are hidden. */
export function flouncesOver({ flounces }: Gown, layer: string): FlounceOver[] {
  return flounces
    .filter(({ sewnTo, aboveHem }) => sewnTo.name === layer && aboveHem > 0)
    .map(({ name, depth, fullness, kind, aboveHem, layer: own }) => ({
      is: 'flounce' as const,
      name,
      depth,
      fullness,
      kind,
      aboveHem,
      bendingLength: bendingLengthOf(own.cloth),
      shearLength: SHEAR_LENGTH,
    }))
    .sort((a, b) => a.aboveHem - b.aboveHem);
}

/** Overskirts and trains that come off, on the gown's edge between their stations. */
export function overskirtsOver(
  gown: Gown,
  overskirts: readonly { readonly drafts: LayerDrafts }[],
  sewn: GownHung,
): ClothOver[] {
  return gown.overskirts.flatMap(({ name, from, to = 'centre-back' }, i) => {
    const drafts = overskirts[i]?.drafts;
    const outer = drafts && outermostLayer(drafts);
    const on = edgeBetween(sewn, from, to);
    if (outer === undefined || on === undefined) return [];
    const { draft, layer } = outer;
    const facts = { bendingLength: bendingLengthOf(layer.cloth), shearLength: SHEAR_LENGTH };
    return [overskirtToHang({ name, draft, ...on }, facts)];
  });
}
