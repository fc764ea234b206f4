import type { Cloth } from './cloth.ts';
import type { Gown } from './gown.ts';
import type { Layer } from './layer.ts';

/** The same gown in other cloths: what its layers, parts, edging and overskirts are cut from, wherever it is named. */
export function inOtherCloths(gown: Gown, other: (cloth: Cloth) => Cloth): Gown {
  const cloths = new Map(gown.cloths.map((cloth) => [cloth.name, other(cloth)]));
  const changed = (layer: Layer): Layer => ({
    ...layer,
    cloth: cloths.get(layer.cloth.name)!,
    ...(layer.facing && { facing: { ...layer.facing, layer: changed(layer.facing.layer) } }),
  });
  const { edging, askedBodice } = gown;
  return {
    ...gown,
    cloths: [...cloths.values()],
    layers: gown.layers.map(changed),
    flounces: gown.flounces.map((flounce) => ({
      ...flounce,
      sewnTo: changed(flounce.sewnTo),
      layer: changed(flounce.layer),
    })),
    tiers: gown.tiers.map((tiers) => ({
      ...tiers,
      layer: changed(tiers.layer),
      ...(tiers.yokeLayer && { yokeLayer: changed(tiers.yokeLayer) }),
    })),
    ...(gown.waist?.layer && { waist: { ...gown.waist, layer: changed(gown.waist.layer) } }),
    ...(gown.wrap && {
      wrap: {
        ...gown.wrap,
        ...(gown.wrap.facing && { facing: { ...gown.wrap.facing, layer: changed(gown.wrap.facing.layer) } }),
        ...(gown.wrap.ties && { ties: { ...gown.wrap.ties, layer: changed(gown.wrap.ties.layer) } }),
      },
    }),
    ...(gown.edgeFacing && {
      edgeFacing: { ...gown.edgeFacing, layer: changed(gown.edgeFacing.layer) },
    }),
    ...(gown.closure?.piece && {
      closure: {
        ...gown.closure,
        piece: { ...gown.closure.piece, layer: changed(gown.closure.piece.layer) },
      },
    }),
    slits: gown.slits.map((slit) => ({
      ...slit,
      ...(slit.facing && { facing: { ...slit.facing, layer: changed(slit.facing.layer) } }),
      ...(slit.stayLayer && { stayLayer: changed(slit.stayLayer) }),
    })),
    pockets: gown.pockets.map((pocket) => ({ ...pocket, layer: changed(pocket.layer) })),
    loops: gown.loops.map((one) => ({ ...one, layer: changed(one.layer) })),
    trims: gown.trims.map((trim) => ({
      ...trim,
      layer: changed(trim.layer),
      ...(trim.bias && { bias: changed(trim.bias) }),
    })),
    ...(edging?.cloth && { edging: { ...edging, cloth: cloths.get(edging.cloth.name)! } }),
    ...(askedBodice && {
      askedBodice: {
        ...askedBodice,
        layers: askedBodice.layers.map(changed),
        ...(askedBodice.facing && {
          facing: { ...askedBodice.facing, layer: changed(askedBodice.facing.layer) },
        }),
      },
    }),
    straps: gown.straps.map((strap) => ({ ...strap, layer: changed(strap.layer) })),
    capes: gown.capes.map((cape) => ({ ...cape, layers: cape.layers.map(changed) })),
    overskirts: gown.overskirts.map((one) => ({ ...one, gown: inOtherCloths(one.gown, other) })),
  };
}
