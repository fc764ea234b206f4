import type { GownDraft } from '../draft/draft-gown.ts';
import { halves, runsRound } from '../gown/lines.ts';
import { petticoatProfile } from '../gown/petticoat-profile.ts';
import { betweenLevels } from './between-levels.ts';
import { type Figure, figureInPetticoat, figureOf, figureOverTiers, scaledFigure } from './figure.ts';
import { type SewnEdge, sewnEdge } from './sewn-edge.ts';
import type { GownToHang } from './sewn-gown.ts';
import { tapeToFloor } from './tape.ts';
import { levelled, usualWaistHeight } from './waist-heights.ts';

/** She as she stands, the edge of the bodice on her, and what the skirt hangs over. */
export interface Standing {
  readonly waistHeight: number;
  readonly worn: Figure;
  /** Without tiers of net. */
  readonly bare: Figure;
  readonly edge: SewnEdge;
}

/** Rounds in which the height of a waist and the shape of what is worn below it settle; each gains a digit. */
const ROUNDS = 6;

/** She stands so high that at every station a tape from the bodice's edge reaches the floor in what was measured. */
export function standing(gown: GownToHang, partOfStation: readonly number[], length: number): Standing {
  const { draft, floors, heel, waist } = gown;
  const usual = usualWaistHeight(waist) + heel;
  let heights = levelled(
    draft.gown.stations.map(({ drop }, i) => (floors[i] === undefined ? undefined : drop + floors[i]!)),
    usual,
  );
  let stands = standingAt(gown, heights, partOfStation, length);
  for (let round = 0; round < ROUNDS; round++) {
    const { worn, edge } = stands;
    heights = levelled(
      heights.map((height, i) => {
        const floor = floors[i];
        return floor === undefined
          ? undefined
          : height + floor - tapeToFloor(worn, edge.placeAt(partOfStation[i]!));
      }),
      usual,
    );
    stands = standingAt(gown, heights, partOfStation, length);
  }
  return stands;
}

/** @param heights how high the level waist lies at each station */
function standingAt(
  gown: GownToHang,
  heights: readonly number[],
  partOfStation: readonly number[],
  length: number,
): Standing {
  const { draft, petticoat, waist, hip, girths, tiers } = gown;
  const waistHeight = heights.reduce((sum, height) => sum + height, 0) / heights.length;
  const profile = petticoatProfile(petticoat, waist, { height: waistHeight });
  const own = figureOf(waist, hip, waistHeight, girths);
  const inPetticoat =
    petticoat === undefined ? own : figureInPetticoat(own, petticoat, profile, waist, waistHeight);
  const figure = tiers.reduce((worn, under) => figureOverTiers(worn, under, waistHeight), inPetticoat);
  const edge = sewnEdge(
    figure,
    (part) => {
      const gore = goreAt(partOfStation, part);
      const across = (part - partOfStation[gore]!) / (partOfStation[gore + 1]! - partOfStation[gore]!);
      const way = draft.waist.ways[gore]! + across * (draft.waist.ways[gore + 1]! - draft.waist.ways[gore]!);
      const level = heights[gore]! + (heights[gore + 1]! - heights[gore]!) * across;
      return level - profile.heightAt(draft.waist.valueAt(way));
    },
    length,
    !runsRound(draft.gown),
  );
  const roomAt = betweenLevels((below) => girthAt(draft, profile.slantAt(below)) * ROOM);
  const closenessAt = (height: number): number => {
    const below = waistHeight - height;
    return Math.min(easedIn(edge.closeness, below), roomAt(Math.max(0, below)) / figure.girthAt(height));
  };
  return { waistHeight, worn: scaledFigure(figure, closenessAt), bare: inPetticoat, edge };
}

function goreAt(partOfStation: readonly number[], part: number): number {
  const next = partOfStation.findIndex((own) => own > part);
  return next < 0 ? partOfStation.length - 2 : Math.max(0, next - 1);
}

/** Part of the cloth's girth that she fills at most: a skirt that is too tight is shown as if it went on. */
const ROOM = 0.985;

/** Cloth all round at a slant distance below the level waist, mm. */
function girthAt({ frames, gown, hem, waist }: GownDraft, slant: number): number {
  const bottom = Math.max(...hem.ways.map((way) => hem.valueAt(way)));
  const top = Math.min(...waist.ways.map((way) => waist.valueAt(way)));
  const at = Math.min(bottom, Math.max(top, slant));
  return halves(gown) * frames.reduce((sum, frame) => sum + Math.max(0, frame.widthAt(at)), 0);
}

/** How far below the waist she is again as she is, mm. */
const EASED_BELOW = 200;

function easedIn(closeness: number, below: number): number {
  if (closeness >= 1) return 1;
  return closeness + (1 - closeness) * Math.min(1, Math.max(0, below / EASED_BELOW));
}
