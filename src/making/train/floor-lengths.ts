import type { GownDraft } from '../../draft/draft-gown.ts';
import { wornLengths } from '../../gown/worn-lengths.ts';
import type { Spec } from '../../gown-file/spec.ts';

/** Sewn edge of the bodice to the floor, along the cloth over the petticoat, mm. */
export interface FloorLength {
  readonly length: number;
  /** Worked out between its neighbours because nobody measured it. */
  readonly estimated: boolean;
}

/**
 * The floor at each station, as far as the spec tells: as measured, or from the finished length where the hem's height
 * off the floor or the train's length on it is known, or between the neighbours.
 * @param level gives the finished lengths without the train; asked only where they are needed
 */
export function floorLengths(
  spec: Spec,
  draft: GownDraft,
  level: () => readonly number[] | undefined,
): (FloorLength | undefined)[] {
  const measured = wornLengths(spec).toFloor ?? {};
  const known = draft.gown.stations.map(({ name }, i) => measured[name] ?? knownFloor(spec, draft, level, i));
  return known.map((length, i) =>
    length === undefined ? between(known, draft.hem.ways, i) : { length, estimated: false },
  );
}

function knownFloor(
  spec: Spec,
  draft: GownDraft,
  level: () => readonly number[] | undefined,
  i: number,
): number | undefined {
  const { gown, lengths } = draft;
  const offFloor = spec.lengths.offFloor;
  if (gown.lengths.measured === 'to-floor') {
    const given = gown.stations[i]!.length;
    if (given !== undefined) return given;
    const without = level()?.[i];
    return without === undefined ? undefined : without + gown.lengths.offFloor;
  }
  const inTrain = gown.train !== undefined && i > gown.train.begins;
  if (!inTrain) return offFloor === undefined ? undefined : lengths[i]! + offFloor;
  const atEnd = i === gown.stations.length - 1;
  return atEnd && spec.train?.onFloor !== undefined ? lengths[i]! - spec.train.onFloor : undefined;
}

function between(
  known: readonly (number | undefined)[],
  ways: readonly number[],
  i: number,
): FloorLength | undefined {
  const before = known.findLastIndex((length, k) => k < i && length !== undefined);
  const after = known.findIndex((length, k) => k > i && length !== undefined);
  if (before < 0 || after < 0) return undefined;
  const t = (ways[i]! - ways[before]!) / (ways[after]! - ways[before]!);
  return { length: known[before]! + (known[after]! - known[before]!) * t, estimated: true };
}
