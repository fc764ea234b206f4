import { hermiteProfile } from '../geometry/hermite-profile.ts';
import { monotoneSlopes } from '../geometry/monotone-slopes.ts';
import type { OverskirtSpec, Spec } from '../gown-file/spec.ts';
import { endsOfOverskirt, stationsOf } from '../gown-file/stations.ts';
import { type GownAllowances, gownAllowances } from './layers-of-spec.ts';
import type { GownLines } from './lines.ts';
import { stationsOnce } from './lines.ts';
import type { LinesAsked } from './lines-asked.ts';
import { linesOf } from './lines-of-spec.ts';
import type { PlaceIn } from './placed.ts';

/**
 * An overskirt's own lines: a skirt whose outer edge stands where a gown has its centre front, whose back edge, if it
 * has one, stands where a gown has its centre back, and whose waist is what its tops make.
 */
export function linesOfOverskirt(
  spec: Spec,
  gown: GownLines,
  overskirt: OverskirtSpec,
  place: PlaceIn<[]>,
): GownLines {
  const [outer, last] = endsOfOverskirt(overskirt.to);
  const seams = stationsOf(
    overskirt.gores.map(({ name }) => name),
    'mirrored',
  ).slice(1, -1);
  const names = [outer, ...seams, last];
  const waist = waistUnder(gown, overskirt, names);
  const { lengths, train, sweep, gores } = overskirt;
  const asked: LinesAsked = {
    name: overskirt.name,
    round: 'mirrored',
    gores,
    lengths,
    ...(train === undefined ? {} : { train }),
    ...(sweep === undefined ? {} : { sweep }),
    waistSeam: waist.round,
    panels: {},
    drops: waist.drops,
    // The edge runs on past the overskirt's ends, so it need not be level there.
    ...(waist.isLevel ? {} : { point: outer }),
    turnings: spec.allowances.waist! + spec.allowances.hem!,
    roughCut: spec.roughCut,
    names,
    free: freeEnds(overskirt),
    tape: {
      names,
      lengths,
      drops: waist.drops,
      waist: gown.waistSeam,
      ...(spec.petticoat === undefined ? {} : { petticoat: spec.petticoat }),
      ...(train === undefined ? {} : { train }),
    },
    place,
  };
  return linesOf(asked);
}

/** Its free edges take what finishes them: nothing where they are bound, else the hem's allowance. */
export function overskirtAllowances(
  spec: Spec,
  overskirt: OverskirtSpec,
  place: PlaceIn<['allowances']>,
): GownAllowances {
  const own = gownAllowances(spec.allowances, place);
  const usual = overskirt.edges === 'bound' ? { width: 0, place: own.hem.place } : own.hem;
  const ends = freeEnds(overskirt).map((name) => [name, own.named[name] ?? usual] as const);
  return { ...own, named: { ...own.named, ...Object.fromEntries(ends) } };
}

function freeEnds({ to }: OverskirtSpec): string[] {
  return endsOfOverskirt(to).filter((name) => name !== 'centre-back');
}

interface WaistUnder {
  readonly round: number;
  readonly drops: Readonly<Record<string, number>>;
  readonly isLevel: boolean;
}

/** The stretch of the gown's sewn edge that the overskirt lies on, which may drop below the level waist there. */
function waistUnder(gown: GownLines, overskirt: OverskirtSpec, names: readonly string[]): WaistUnder {
  const tops = overskirt.gores.map((gore) => gore.top ?? gore.halfTop ?? 0);
  const half = tops.reduce((sum, top) => sum + top, 0);
  const level = { round: 2 * half, drops: {}, isLevel: true };
  const ways = stationWays(gown);
  const drop = dropOver(gown, ways);
  const end = ways[stationsOnce(gown).findIndex(({ name }) => name === (overskirt.to ?? 'centre-back'))];
  if (drop === undefined || end === undefined) return level;
  const own = names.map((_, i) => end - tops.slice(i).reduce((sum, top) => sum + top, 0));
  const drops = Object.fromEntries(names.map((name, i) => [name, Math.max(0, drop(own[i]!))]));
  const isLevel = Object.values(drops).every((depth) => depth === 0);
  return isLevel ? level : { round: 2 * half, drops, isLevel };
}

/** How far each station lies from the first one round the half, mm along the gores' tops. */
function stationWays(gown: GownLines): number[] {
  let way = 0;
  return stationsOnce(gown).map((_, i) => {
    if (i > 0) way += gown.gores[i - 1]!.top;
    return way;
  });
}

/** The sewn edge's drop over the way round; undefined where it is level. */
function dropOver(gown: GownLines, ways: readonly number[]): ((way: number) => number) | undefined {
  const drops = stationsOnce(gown).map(({ drop }) => drop);
  if (drops.every((drop) => drop === 0)) return undefined;
  return hermiteProfile(ways, drops, monotoneSlopes(ways, drops, 0, 0)).valueAt;
}
