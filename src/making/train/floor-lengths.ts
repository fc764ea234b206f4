import type { GownDraft } from '../../draft/draft-gown.ts';

/** Sewn edge of the bodice to the floor, along the cloth over the petticoat, mm. */
export interface FloorLength {
  readonly length: number;
  /** Worked out between its neighbours because nobody measured it. */
  readonly estimated: boolean;
}

/**
 * The floor at each station, as far as the file tells: as measured, or from the finished length where the hem's height
 * off the floor or the train's length on it is known, or between the neighbours.
 * @param offFloor height of the hem where the file gives it, mm
 * @param level gives the finished lengths without the train; asked only where they are needed
 */
export function floorLengths(
  offFloor: number | undefined,
  draft: GownDraft,
  level: () => readonly number[] | undefined,
): (FloorLength | undefined)[] {
  const { stations, round } = draft.gown;
  const known = stations.map(({ toFloor }, i) => toFloor ?? knownFloor(offFloor, draft, level, i));
  // Either half by itself, as it would be with the other its mirror image.
  const back = round === 'two-halves' ? (stations.length - 1) / 2 : stations.length - 1;
  return known.map((length, i) => {
    if (length !== undefined) return { length, estimated: false };
    const [first, last] = i <= back ? [0, back] : [back, stations.length - 1];
    return between(known, draft.hem.ways, i, first, last);
  });
}

function knownFloor(
  offFloor: number | undefined,
  { gown, lengths }: GownDraft,
  level: () => readonly number[] | undefined,
  i: number,
): number | undefined {
  const { length, inTrain, onFloor } = gown.stations[i]!;
  if (gown.lengths.measured === 'to-floor') {
    if (length !== undefined) return length;
    const without = level()?.[i];
    return without === undefined ? undefined : without + gown.lengths.offFloor;
  }
  // What was pinned up or down at a fitting does not move the floor.
  const hem = length ?? lengths[i]!;
  if (!inTrain) return offFloor === undefined ? undefined : hem + offFloor;
  return onFloor === undefined ? undefined : hem - onFloor;
}

function between(
  known: readonly (number | undefined)[],
  ways: readonly number[],
  i: number,
  first: number,
  last: number,
): FloorLength | undefined {
  const before = known.findLastIndex((length, k) => k >= first && k < i && length !== undefined);
  const after = known.findIndex((length, k) => k <= last && k > i && length !== undefined);
  if (before < 0 || after < 0) return undefined;
  const t = (ways[i]! - ways[before]!) / (ways[after]! - ways[before]!);
  return { length: known[before]! + (known[after]! - known[before]!) * t, estimated: true };
}
