import type { TrainSpec } from '../gown-file/spec.ts';
import type { Gore, Round, Train } from './lines.ts';
import type { LinesAsked } from './lines-asked.ts';
import type { Station } from './station.ts';
import type { wornLengths } from './worn-lengths.ts';

interface StationAsked extends LinesAsked {
  readonly built: readonly Gore[];
  readonly trainAsked: TrainSpec | undefined;
}

export function stationOf(
  asked: Omit<StationAsked, 'train'> & { readonly train: Train | undefined },
  worn: ReturnType<typeof wornLengths>,
  name: string,
  i: number,
): Station {
  const { lengths, train, turnings } = asked;
  const [given, asWorn, toFloor] = [lengths.at[name], worn.at[name], worn.toFloor?.[name]];
  const onFloor = train?.full === i ? asked.trainAsked?.onFloor : undefined;
  return {
    name,
    seams: seamsAt(asked.round, asked.built, i),
    ...(asked.free.includes(name) ? { free: true } : {}),
    drop: asked.drops[name] ?? 0,
    ...(asWorn === undefined ? {} : { length: asWorn - (lengths.measured === 'cut' ? turnings : 0), asWorn }),
    ...(given === undefined ? {} : { given }),
    ...(toFloor === undefined ? {} : { toFloor }),
    inTrain: train !== undefined && i > train.begins && i < (train.ends ?? asked.names.length),
    ...(onFloor === undefined ? {} : { onFloor }),
    place: (...path) => asked.place('lengths', 'at', name, ...path),
  };
}

/** Seams of the whole skirt at a station: none on a fold. */
export function seamsAt(round: Round, gores: readonly Gore[], station: number): 0 | 1 | 2 {
  // All the way round a fold at a centre lies between two gores.
  if (round !== 'mirrored')
    return gores[station]?.fold === 'front' || gores[station - 1]?.fold === 'back' ? 0 : 1;
  if (station === 0) return gores[0]!.fold === 'front' ? 0 : 1;
  if (station === gores.length) return gores[gores.length - 1]!.fold === 'back' ? 0 : 1;
  return 2;
}
