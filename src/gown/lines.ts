import type { Profile } from '../geometry/hermite-profile.ts';
import type { Fullness } from './cloth.ts';
import type { Placed } from './placed.ts';
import type { Side, Station } from './station.ts';

/**
 * How the gores stand for the whole skirt.
 *
 * - `mirrored`: they are the wearer's left half, from the centre front round to the centre back.
 * - `ring`: they run all the way round, by the wearer's left; every station has a name of its own.
 * - `two-halves`: a mirrored gown whose sides came to differ: the left half to the centre back and the right half back
 *   again. Stations off the centres come in twos of one name, told apart by their side.
 */
export type Round = 'mirrored' | 'ring' | 'two-halves';

/**
 * The gown's lines: the measures that its gores are drafted from, and which edge is sewn to which. Lengths in mm, angles
 * in radians; no coordinates yet.
 */
export interface GownLines {
  readonly name: string;
  readonly round: Round;
  readonly gores: readonly Gore[];
  /** One more than the gores: `stations[i]` is in front of gore i. All the way round the last is the first again. */
  readonly stations: readonly Station[];
  /** Station at which the bodice edge may come to a point. */
  readonly pointedAt?: number;
  /** The edge of another skirt that this one is sewn on, in place of one through its own stations' drops. */
  readonly edge?: SewnEdge;
  readonly lengths: LengthRule;
  readonly train?: Train;
  readonly waistSeam: number;
  readonly wrapped?: WrapLines;
}

/** A station at which nothing is sewn: both edges lie over it, each by half of the overlap, mm. */
export interface WrapLines {
  readonly at: string;
  readonly overlap: number;
  readonly overlapAtHem: number;
}

/** How deep a sewn edge lies below the level waist over the way round, and the way at each station; mm. */
export interface SewnEdge extends Profile {
  readonly ways: readonly number[];
}

export interface Gore extends Placed<['gores', number]> {
  readonly name: string;
  /** The wearer's side, all the way round: on the right the next gore lies towards the front. */
  readonly side?: Side;
  /** The side on which the piece lies on the fold; the gore is then one half of what is cut. */
  readonly fold?: 'front' | 'back';
  /** Sewn top edge, of the half on a fold. */
  readonly top: number;
  /** The bodice edge that the top meets, of the half on a fold. */
  readonly panel?: number;
  readonly width: WidthRule;
  readonly fullness?: Fullness;
  /** How the flare lies about the grain: part of it towards the front, 0 … 1, or two angles. */
  readonly grain: { readonly frontPart: number } | { readonly front: number; readonly back: number };
  /** Extra below the hem, cut off after hanging. */
  readonly roughCut: number;
  readonly notes?: string;
}

/** How wide a gore is below the level waist. */
export type WidthRule =
  | { readonly kind: 'flare'; readonly angle: number }
  | { readonly kind: 'hem'; readonly width: number; readonly at: number }
  | { readonly kind: 'girths'; readonly levels: readonly WidthLevel[]; readonly fading?: Fading };

/** Fullness at the waist that is gone at slant distance `to`, the hem; without it the level waist is `plain` wide. mm. */
export interface Fading {
  readonly plain: number;
  readonly to: number;
}

/** Finished width of a gore (of its half on a fold) at a slant distance below the level waist; down > 0. */
export interface WidthLevel {
  readonly down: number;
  readonly width: number;
}

export type LengthRule =
  | { readonly measured: 'finished' }
  | { readonly measured: 'to-floor'; readonly offFloor: number };

export interface Train {
  /** Station where the hem begins to fall behind. */
  readonly begins: number;
  /** Station where it is longest: the centre back of a gown whose sides are alike. */
  readonly full: number;
  /** Station where it has risen again, all the way round. */
  readonly ends?: number;
  readonly onFloor: number;
  readonly shape: 'round' | 'pointed' | 'square';
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
