import type { LengthsSpec, Spec, TrainSpec } from '../gown-file/spec.ts';
import { stationsOf } from '../gown-file/stations.ts';
import { goreOf, topOf } from './gore-of-spec.ts';
import type { GownLines, LengthRule, Train, WrapLines } from './lines.ts';
import type { LinesAsked } from './lines-asked.ts';
import { stationOf } from './station-of-spec.ts';
import { wornLengths } from './worn-lengths.ts';

export function linesOf(asked: LinesAsked): GownLines {
  const { name, round, train, point, waistSeam } = asked;
  const names = round === 'ring' ? [...asked.names, asked.names[0]!] : asked.names;
  const tops = asked.gores.map((gore) => topOf(asked, gore));
  const gores = asked.gores.map((gore, index) => goreOf(asked, gore, index, tops));
  const worn = wornLengths(asked.tape);
  const own = train === undefined ? undefined : trainOf(train, names);
  const stations = asked.names.map((station, i) =>
    stationOf({ ...asked, built: gores, train: own, trainAsked: train }, worn, station, i),
  );
  const pointedAt = point === undefined ? -1 : names.indexOf(point);
  return {
    name,
    round,
    gores,
    stations: round === 'ring' ? [...stations, stations[0]!] : stations,
    ...(pointedAt >= 0 ? { pointedAt } : {}),
    lengths: lengthRule(asked.lengths, worn.offFloor),
    ...(own === undefined ? {} : { train: own }),
    waistSeam,
    ...(asked.wrap && { wrapped: wrapLines(asked.wrap) }),
  };
}

function wrapLines({ at, overlap, overlapAtHem }: WrapLines): WrapLines {
  return { at, overlap, overlapAtHem };
}

/** The names of the gown's stations, in order. */
export function namesOfStations({ gores, symmetry }: Pick<Spec, 'gores' | 'symmetry'>): string[] {
  return stationsOf(
    gores.map((gore) => gore.name),
    symmetry,
  );
}

function lengthRule({ measured }: LengthsSpec, offFloor: number | undefined): LengthRule {
  return measured === 'to-floor'
    ? { measured: 'to-floor', offFloor: offFloor ?? 0 }
    : { measured: 'finished' };
}

function trainOf({ begins, full, ends, onFloor, shape }: TrainSpec, names: readonly string[]): Train {
  const last = names.length - 1;
  return {
    begins: names.indexOf(begins),
    full: full === undefined ? last : names.indexOf(full),
    ...(ends === undefined ? {} : { ends: ends === names[last] ? last : names.indexOf(ends) }),
    onFloor: onFloor ?? 0,
    shape,
  };
}
