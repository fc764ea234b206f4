import { goreOf, layerOf, lengthsOf, trainOf } from './build-gores.ts';
import type { ShapedSpec } from './shape/spec-shape.ts';
import type { FlounceSpec, OverskirtSpec, TiersSpec } from './spec.ts';

/** Cloth for one of the edge: half as much again (textbook). */
const USUAL_RUFFLE = 1.5;

export function flounceOf(flounce: NonNullable<ShapedSpec['flounces']>[number]): FlounceSpec {
  const { kind = 'straight', fullness = USUAL_RUFFLE, aboveHem = 0, allowances = {} } = flounce;
  return { ...flounce, kind, fullness, aboveHem, allowances };
}

export function tiersOf({ depths, ...tiers }: NonNullable<ShapedSpec['tiers']>[number]): TiersSpec {
  return {
    ...tiers,
    depths: typeof depths === 'number' ? [depths] : depths,
    allowances: tiers.allowances ?? {},
  };
}

export function overskirtOf(given: NonNullable<ShapedSpec['overskirts']>[number]): OverskirtSpec {
  const {
    gores,
    lengths,
    train,
    layers,
    fastened = 'hooks',
    edges = 'faced',
    quickRelease = false,
    ...rest
  } = given;
  return {
    ...rest,
    gores: gores.map(goreOf),
    lengths: lengthsOf(lengths),
    layers: layers.map(layerOf),
    fastened,
    edges,
    quickRelease,
    ...(train && { train: trainOf(train) }),
  };
}
