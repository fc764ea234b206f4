import type { Gore, GownLines, Side } from './gown.ts';
import type { Placed } from './sections.ts';

/**
 * A place on the waist where one gore ends and the next begins: a seam, or a fold of the cloth at a centre. mm.
 * Its name and its side together are its identity: see `isSame`.
 */
export interface Station extends Placed {
  readonly name: string;
  /** Where each half of her has a station of this name. */
  readonly side?: Side;
  /** Seams of the whole skirt that it stands for: 2 off the centres of a mirrored gown, 0 on a fold. */
  readonly seams: 0 | 1 | 2;
  /** An end of an overskirt: finished by itself and sewn to nothing. */
  readonly free?: true;
  /** Sewn edge of the bodice below the level waist. */
  readonly drop: number;
  /** What the hem is drawn through, before any train: along the cloth from the sewn edge of the bodice. */
  readonly length?: number;
  /** Length as the file gives it; and the same over the petticoat and in the shoes that she will wear. */
  readonly given?: number;
  readonly asWorn?: number;
  /** Sewn edge of the bodice to the floor as measured, worn in the same way. */
  readonly toFloor?: number;
  /** Between where the train begins and where it ends. */
  readonly inTrain: boolean;
  /** What lies on the floor here, where the file says it: at the longest station of the train. */
  readonly onFloor?: number;
}

export function isSame(a: Pick<Station, 'name' | 'side'>, b: Pick<Station, 'name' | 'side'>): boolean {
  return a.name === b.name && a.side === b.side;
}

/** Every station once: all the way round the last is the first again. */
export function stationsOnce({ stations, round }: Pick<GownLines, 'stations' | 'round'>): readonly Station[] {
  return round === 'mirrored' ? stations : stations.slice(0, -1);
}

/** Every gore of the file once: where her sides differ, those of her left. */
export function goresOnce({ gores, round }: Pick<GownLines, 'gores' | 'round'>): readonly Gore[] {
  return round === 'two-halves' ? gores.slice(0, gores.length / 2) : gores;
}

/** Whether the gores run all the way round. */
export function runsRound({ round }: Pick<GownLines, 'round'>): boolean {
  return round !== 'mirrored';
}

/** How often the drafted gores stand in the whole skirt. */
export function halves({ round }: Pick<GownLines, 'round'>): 1 | 2 {
  return round === 'mirrored' ? 2 : 1;
}

/** Stations of one name: one, or one for each side of her where she has two that differ. */
export function stationsNamed(
  lines: Pick<GownLines, 'stations' | 'round'>,
  name: string,
): readonly Station[] {
  return stationsOnce(lines).filter((station) => station.name === name);
}

/** The one of that name: on her left where nothing else is said, as a mirrored gown is drafted. */
export function stationNamed(
  lines: Pick<GownLines, 'stations' | 'round'>,
  name: string,
  side: Side = 'left',
): Station | undefined {
  const all = stationsNamed(lines, name);
  return all.find((station) => station.side === side) ?? all[0];
}

/** Where a station stands in these lines. */
export function placeInRing({ stations }: Pick<GownLines, 'stations'>, station: Station): number {
  const place = stations.findIndex((own) => isSame(own, station));
  if (place < 0) throw new RangeError(`the gown has no station ${station.name}`);
  return place;
}

/** The gores in front of a station and behind it; at a centre of a mirrored gown the one gore and its mirror image. */
export function goresAt<T = Gore>(
  { round, gores }: Pick<GownLines, 'round'> & { readonly gores: readonly T[] },
  station: number,
): [T, T] {
  const last = gores.length;
  const around = round === 'mirrored' ? 0 : last;
  const before = gores[station - 1] ?? gores[around === 0 ? 0 : last - 1]!;
  const after = gores[station] ?? gores[around === 0 ? last - 1 : 0]!;
  return [before, after];
}
