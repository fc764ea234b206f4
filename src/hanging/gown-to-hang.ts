import { topFullness } from '../allowances/top-fullness.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import type { Flounce, Tiers } from '../gown/parts.ts';
import { isSame } from '../gown/station.ts';
import type { Skirt } from '../making/skirt.ts';
import { bendingLengthOf, SHEAR_LENGTH } from './bending-lengths.ts';
import { pleatingOf } from './gore-folds.ts';
import type { GodetToHang } from './placed-panels.ts';
import type { GownToHang } from './sewn-gown.ts';

/** What hanging asks of a gown, read from it as it is drafted: of the layer that is seen, and of what is worn under it. */
export function gownToHang(gown: Gown, outer: LayerDraft, skirt: Skirt): GownToHang {
  const { layer, draft } = outer;
  const { hip } = gown.closure ?? {};
  const flounce = flounceAtHem(gown, layer.name);
  return {
    draft,
    ...(gown.petticoat === undefined ? {} : { petticoat: gown.petticoat }),
    waist: gown.waistSeam,
    ...(hip === undefined ? {} : { hip }),
    girths: (gown.body?.girths ?? []).flatMap(({ below, girth }) =>
      below === undefined ? [] : [{ below, girth }],
    ),
    tiers: gown.tiers.map(tiersUnder),
    floors: draft.gown.stations.map((_, i) => skirt.stations[i % skirt.stations.length]?.floor?.length),
    heel: gown.measuring.wornIn?.heel ?? 0,
    bendingLength: bendingLengthOf(layer.cloth),
    shearLength: SHEAR_LENGTH,
    godets: godetsOf(gown, outer),
    ...(flounce === undefined ? {} : { flounce }),
    pleated: draft.gown.gores.map((gore) => (gore.fullness ?? layer.fullness)?.by === 'pleats'),
    pleating: pleatingOf(draft.gown, gown.pleats, layer, (gore) => topFullness(layer, draft, gore)),
  };
}

function tiersUnder({ yoke, tiers, depths, layer }: Tiers): GownToHang['tiers'][number] {
  const last = depths[depths.length - 1] ?? 0;
  return {
    bendingLength: bendingLengthOf(layer.cloth),
    yoke,
    tiers: tiers.map((girth, i) => ({ girth, depth: depths[i] ?? last })),
  };
}

/** The one flounce that is sewn to the hem itself; those above it hang over the skirt. */
function flounceAtHem({ flounces }: Gown, layer: string): Flounce | undefined {
  return flounces.find(({ sewnTo, aboveHem }) => sewnTo.name === layer && aboveHem === 0);
}

function godetsOf({ godets }: Gown, { layer, draft }: LayerDraft): GodetToHang[] {
  return godets
    .filter(({ layers }) => layers.includes(layer.name))
    .flatMap(({ name, from, width, stations }) =>
      stations.map((own) => ({
        station: draft.gown.stations.findIndex((station) => isSame(station, own)),
        name,
        from,
        width,
      })),
    )
    .filter(({ station }) => station >= 0 && draft.lengths[station]! > 0);
}
