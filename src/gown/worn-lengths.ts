import { USUAL_OFF_FLOOR } from '../gown-file/shape/usual.ts';
import type { LengthsSpec, PetticoatSpec, TrainSpec } from '../gown-file/spec.ts';
import { petticoatProfile } from './petticoat-profile.ts';

/** What the tape went over: the lengths, the edge that they were measured from, and what she had on. mm. */
export interface Tape {
  /** Stations in order, each once. */
  readonly names: readonly string[];
  readonly lengths: LengthsSpec;
  /** The gown's sewn edge below the level waist, by station. */
  readonly drops: Readonly<Record<string, number>>;
  /** Round the waist. */
  readonly waist: number;
  readonly petticoat?: PetticoatSpec;
  readonly train?: TrainSpec;
}

/** The lengths as the gown is made: along the cloth, over the petticoat and in the shoes that she will wear. mm. */
export type WornLengths = Pick<LengthsSpec, 'at' | 'toFloor' | 'offFloor'>;

/**
 * Lengths move together: a change of heel, of petticoat or of the bodice's drop between the measuring and the wearing
 * moves every station by geometry. Where the petticoat's levels are heights, so are lengths to the floor, and they
 * become lengths along the cloth. Lengths that nothing moves stay exactly as given.
 */
export function wornLengths(tape: Tape): WornLengths {
  const { measured, at, toFloor, offFloor } = tape.lengths;
  const floors = toFloor && mapped(toFloor, (length, name) => floorMoved(tape, name, length).after);
  if (measured !== 'to-floor') {
    return {
      at: hemsMoved(tape),
      ...(floors && { toFloor: floors }),
      ...(offFloor !== undefined && { offFloor }),
    };
  }
  const moved = mapped(at, (length, name) => floorMoved(tape, name, length));
  // Off the floor is one number along the cloth; where it differs from station to station the length makes up for it.
  const off = Object.values(moved)[0]?.offFloor ?? 0;
  return {
    at: mapped(moved, (own, name) => (inTrain(tape, name) ? own.after : own.after - own.offFloor + off)),
    ...(floors && { toFloor: floors }),
    offFloor: off,
  };
}

/** What the tape went over: measured, and worn. */
interface Wearing {
  readonly petticoat: PetticoatSpec | undefined;
  readonly drop: number;
  readonly heel: number;
}

function wearings(tape: Tape, station: string): { measured: Wearing; worn: Wearing } {
  const { measuredIn, wornIn } = tape.lengths;
  const drop = tape.drops[station] ?? 0;
  const petticoat = measuredIn?.petticoat ?? tape.petticoat;
  const heel = wornIn?.heel ?? 0;
  return {
    measured: {
      petticoat: petticoat === 'none' ? undefined : petticoat,
      drop: measuredIn?.dropBelowWaist === undefined ? drop : (measuredIn.dropBelowWaist[station] ?? 0),
      heel: measuredIn?.heel ?? heel,
    },
    worn: { petticoat: tape.petticoat, drop, heel },
  };
}

/** A length from the sewn edge, along the cloth: as measured and as worn; and the hem off the floor there. */
interface Moved {
  readonly before: number;
  readonly after: number;
  readonly offFloor: number;
}

/** A length to the floor: plumb where the petticoat's levels are heights, else along the cloth. */
function floorMoved(tape: Tape, station: string, length: number): Moved {
  const { measured, worn } = wearings(tape, station);
  return moved(tape, measured, worn, length, measured.petticoat?.measured === 'vertical');
}

function moved(tape: Tape, measured: Wearing, worn: Wearing, length: number, isPlumb: boolean): Moved {
  const off = tape.lengths.offFloor ?? 0;
  if (!isPlumb && tape.lengths.measuredIn === undefined)
    return { before: length, after: length, offFloor: off };
  const waist = tape.waist;
  // Plumb from a dropped edge: only a hoop alone needs the floor before it has a profile, and there the drop is steep.
  const floor = isPlumb ? { height: measured.drop + length } : { slant: measured.drop + length };
  const before = petticoatProfile(measured.petticoat, waist, floor);
  const hangs = tape.lengths.measuredIn?.petticoat === undefined;
  const height = isPlumb ? before.heightAt(measured.drop) + length : before.heightAt(measured.drop + length);
  const lowered = height + worn.heel - measured.heel;
  // Hanging from the waist, the same petticoat is as steep in any shoes, and its hoop rises with the heel.
  const after = hangs ? before : petticoatProfile(worn.petticoat, waist, { height: lowered });
  const slant = after.slantAt(lowered);
  return {
    before: isPlumb ? before.slantAt(height) - measured.drop : length,
    after: slant - worn.drop,
    offFloor: worn.petticoat?.measured === 'vertical' ? slant - after.slantAt(lowered - off) : off,
  };
}

/** Finished and cut lengths: the hem keeps its height off the floor, and a train what lies on it. */
function hemsMoved(tape: Tape): Record<string, number> {
  const { at, measuredIn } = tape.lengths;
  if (measuredIn === undefined) return { ...at };
  const names = tape.names.filter((name) => at[name] !== undefined);
  const shifts = names.map((name) => hemShift(tape, name));
  return Object.fromEntries(names.map((name, i) => [name, at[name]! + (shifts[i] ?? between(shifts, i))]));
}

/** By how much the hem of a station moves; undefined inside a train whose floor is not known there. */
function hemShift(tape: Tape, station: string): number | undefined {
  const { at, toFloor } = tape.lengths;
  const floor = toFloor?.[station];
  const hem = inTrain(tape, station) ? hemLessTrain(tape, station) : at[station];
  if (floor === undefined && hem === undefined) return undefined;
  const { measured, worn } = wearings(tape, station);
  const { before, after } =
    floor === undefined
      ? moved(tape, measured, worn, hem! + (inTrain(tape, station) ? 0 : hemOffFloor(tape)), false)
      : floorMoved(tape, station, floor);
  return after - before;
}

/** How high a finished hem hangs off the floor, along the cloth: as at a station known to the floor too, else the usual. */
function hemOffFloor(tape: Tape): number {
  const { at, toFloor = {} } = tape.lengths;
  const known = Object.keys(toFloor).find((name) => at[name] !== undefined && !inTrain(tape, name));
  return known === undefined ? USUAL_OFF_FLOOR : floorMoved(tape, known, toFloor[known]!).before - at[known]!;
}

/**
 * The petticoat as it hangs in the shoes that she will wear: its hoop rises with the heel, unless its height was
 * measured under other lengths and so in these.
 */
export function petticoatAsWorn<Petticoat extends Pick<PetticoatSpec, 'hoopOffFloor'>>(
  petticoat: Petticoat,
  { measuredIn, wornIn }: Pick<LengthsSpec, 'measuredIn' | 'wornIn'>,
): Petticoat {
  const { hoopOffFloor } = petticoat;
  if (hoopOffFloor === undefined || measuredIn?.heel === undefined || measuredIn.petticoat !== undefined)
    return petticoat;
  return { ...petticoat, hoopOffFloor: hoopOffFloor + (wornIn?.heel ?? measuredIn.heel) - measuredIn.heel };
}

/** The length where it reaches the floor, along the cloth. */
function hemLessTrain(tape: Tape, station: string): number | undefined {
  const { onFloor, full = 'centre-back' } = tape.train ?? {};
  return onFloor === undefined || station !== full ? undefined : tape.lengths.at[station]! - onFloor;
}

/** Halfway values between the stations that are known, or the nearest one's. */
function between(shifts: readonly (number | undefined)[], i: number): number {
  const before = shifts.findLastIndex((shift, k) => k < i && shift !== undefined);
  const after = shifts.findIndex((shift, k) => k > i && shift !== undefined);
  if (before < 0 || after < 0) return shifts[Math.max(before, after)] ?? 0;
  return shifts[before]! + ((shifts[after]! - shifts[before]!) * (i - before)) / (after - before);
}

/** Stations behind the one where the train begins, and on a gown whose sides differ in front of where it ends. */
function inTrain(tape: Tape, station: string): boolean {
  if (tape.train === undefined) return false;
  const stations = tape.names;
  const { begins, ends } = tape.train;
  const last = ends === undefined || ends === stations[0] ? stations.length : stations.indexOf(ends);
  const place = stations.indexOf(station);
  return place > stations.indexOf(begins) && place < last;
}

function mapped<In, Out>(
  record: Readonly<Record<string, In>>,
  value: (own: In, name: string) => Out,
): Record<string, Out> {
  return Object.fromEntries(Object.entries(record).map(([name, own]) => [name, value(own, name)]));
}
