import type { ShapedSpec } from './shape/spec-shape.ts';
import type {
  FullnessSpec,
  GoreSpec,
  LayerSpec,
  LengthsSpec,
  MeasuredInSpec,
  PetticoatSpec,
  TrainSpec,
} from './spec.ts';

type Given = ShapedSpec['gores'][number];

export function goreOf({ halfShare, fullness, ...gore }: Given): GoreSpec {
  const share = halfShare ?? gore.share;
  return {
    ...gore,
    onFold: gore.onFold ?? false,
    grain: gore.grain ?? 'centre',
    ...(share !== undefined && { share }),
    ...(fullness !== undefined && { fullness: fullnessOf(fullness) }),
  };
}

export function layerOf({ fullness, ...layer }: ShapedSpec['layers'][number]): LayerSpec {
  const { shorter = 0, cutSmallerAcross = 0, cutSmallerAlong = 0, allowances = {} } = layer;
  return {
    ...layer,
    shorter,
    cutSmallerAcross,
    cutSmallerAlong,
    allowances,
    ...(fullness !== undefined && { fullness: fullnessOf(fullness) }),
  };
}

export function lengthsOf({ measuredIn, ...lengths }: ShapedSpec['lengths']): LengthsSpec {
  return {
    ...lengths,
    measured: lengths.measured ?? 'finished',
    ...(measuredIn && { measuredIn: measuredInOf(measuredIn) }),
  };
}

function measuredInOf({
  petticoat,
  ...given
}: NonNullable<ShapedSpec['lengths']['measuredIn']>): MeasuredInSpec {
  if (petticoat === undefined) return given;
  return { ...given, petticoat: petticoat === 'none' ? petticoat : petticoatOf(petticoat) };
}

export function petticoatOf(petticoat: NonNullable<ShapedSpec['petticoat']>): PetticoatSpec {
  const { measured = 'along', ease = 0, girths = [] } = petticoat;
  return { ...petticoat, measured, ease, girths };
}

export function trainOf(train: NonNullable<ShapedSpec['train']>): TrainSpec {
  return { ...train, shape: train.shape ?? 'round' };
}

function fullnessOf(fullness: NonNullable<Given['fullness']>): FullnessSpec {
  const given = typeof fullness === 'number' ? { ratio: fullness } : fullness;
  return { where: 'throughout', by: 'gathers', ...given };
}
