import type { GownDraft } from '../draft/draft-gown.ts';
import { halves, runsRound } from '../gown/lines.ts';
import { petticoatProfile } from '../gown/petticoat-profile.ts';
import type { Petticoat } from '../gown/sections.ts';
import type { Station } from '../gown/station.ts';
import { betweenLevels } from './between-levels.ts';
import {
  bodyOf,
  type Figure,
  figureInPetticoat,
  figureOf,
  figureOverTiers,
  type GirthBelow,
  scaledFigure,
  type TiersUnder,
} from './figure.ts';
import type { GorePleating } from './gore-folds.ts';
import { FINEST, type FlounceToHang, FOURS, flounceRows, withFlounce } from './gown-panels.ts';
import { type GodetToHang, type PlacedPanel, placedPanels } from './placed-panels.ts';
import type { Body, Closing, SewnCloth } from './sewn-cloth.ts';
import { type SewnEdge, sewnEdge } from './sewn-edge.ts';
import type { SpacePoint } from './space-point.ts';
import { clothToHang, type WornBeyond } from './start-of-cloth.ts';
import { outwards, tapeToFloor } from './tape.ts';
import { tiersToHang } from './tiers-to-hang.ts';

/** What is asked of a drafted gown to hang it. mm. */
export interface GownToHang {
  readonly draft: GownDraft;
  readonly petticoat?: Petticoat;
  readonly waist: number;
  readonly hip?: number;
  /** Of her body, below the waist. */
  readonly girths: readonly GirthBelow[];
  /** Worn under it, one over the other. */
  readonly tiers: readonly (TiersUnder & { readonly bendingLength: number })[];
  /** By station: from the sewn edge to the floor, along the cloth; undefined where nobody knows. */
  readonly floors: readonly (number | undefined)[];
  readonly heel: number;
  readonly bendingLength: number;
  readonly shearLength: number;
  readonly godets: readonly GodetToHang[];
  /** Sewn to the hem. */
  readonly flounce?: FlounceToHang;
  /** By gore: pleated rather than gathered. */
  readonly pleated: readonly boolean[];
  /** By gore: pleats that are hung fold by fold. */
  readonly pleating: readonly (GorePleating | undefined)[];
}

export interface GownHung {
  readonly cloth: SewnCloth;
  /** Where each column is sewn on: pleats lie over and under that. */
  readonly edge: readonly SpacePoint[];
  readonly body: Body;
  readonly closing: Closing;
  /** The last of a ring is the first again. */
  readonly stations: readonly HungStation[];
  /** In their order, without the godets between. */
  readonly gores: readonly HungGore[];
  /** Every seam once for each side that it lies on, as columns all the way round. */
  readonly seams: readonly HungSeam[];
  /** Rows along which strips are sewn together. */
  readonly joins: readonly number[];
  readonly waistHeight: number;
  /** Nobody measured how high the waist lies above the floor. */
  readonly assumedFloor: boolean;
}

export interface HungStation extends Pick<Station, 'name' | 'side'> {
  readonly column: number;
}

/** A gore's first column, and the columns of cloth across it. */
export interface HungGore extends Pick<Station, 'name' | 'side'> {
  readonly first: number;
  readonly across: number;
}

export interface HungSeam {
  /** The station that it stands at. */
  readonly station: number;
  readonly column: number;
  /** Below the sewn edge, mm: a godet's second seam begins at its point. */
  readonly from?: number;
  /** The cloth runs on here in one: a station, and no seam. */
  readonly onFold?: boolean;
}

/** Height of the level waist above the floor where nobody measured it, in bare feet: 168 tall (from memory). */
const USUAL_WAIST_HEIGHT = 1040;

/** The skirt, and the outermost of the tiers that are worn under it. */
export function clothOfGown(gown: GownToHang): { readonly sewn: GownHung; readonly under?: GownHung } {
  const { draft } = gown;
  const tops = draft.gown.gores.map(({ top }) => top);
  const length = tops.reduce((sum, top) => sum + top, 0);
  const partOfStation = [0];
  for (const top of tops) partOfStation.push(partOfStation[partOfStation.length - 1]! + top / length);
  const { waistHeight, worn, bare, edge } = standing(gown, partOfStation, length);
  const longest = Math.max(...draft.lengths);
  const down = FOURS * Math.max(2, Math.round(longest / FINEST / FOURS));
  const { flounce } = gown;
  const panels = placedPanels(draft, gown.godets, down, FINEST / (flounce?.fullness ?? 1), gown.pleating);
  const placed =
    flounce === undefined
      ? panels
      : panels.map((own) => ({ ...own, panel: withFlounce(own.panel, flounce, down) }));
  const all = down + (flounce === undefined ? 0 : flounceRows(flounce));
  const { cloth, edge: sewnOn } = clothToHang(
    draft,
    placed,
    all,
    edge,
    partOfStation,
    beyondEdge(worn),
    gown,
  );
  const sewn: GownHung = {
    cloth,
    edge: sewnOn,
    body: bodyOf(worn, waistHeight),
    closing: cloth.closing,
    stations: draft.gown.stations.map(({ name, side }, i) => ({
      name,
      ...(side && { side }),
      column: seamColumns(placed, i)[0],
    })),
    gores: placed
      .filter(({ from, to }) => from !== to)
      .map(({ panel: { name, across }, first, from }) => {
        const { side } = draft.gown.gores[from]!;
        return { name, ...(side && { side }), first, across };
      }),
    seams: seamsOf(gown, placed),
    joins: flounce === undefined ? [] : [down],
    waistHeight,
    assumedFloor: gown.floors.every((floor) => floor === undefined),
  };
  const tiers = gown.tiers[gown.tiers.length - 1];
  if (tiers === undefined) return { sewn };
  const facts = { bendingLength: tiers.bendingLength, shearLength: gown.shearLength };
  const net = tiersToHang(tiers, { bare, worn }, waistHeight, facts);
  return {
    sewn,
    under: { ...sewn, ...net, edge: [], closing: 'mirrored', stations: [], gores: [], seams: [] },
  };
}

/** Where the gore in front of a station ends and the one behind it begins: two columns where a godet lies between. */
function seamColumns(placed: readonly PlacedPanel[], station: number): [number, number] {
  const before = placed.find(({ from, to }) => from !== to && to === station);
  const after = placed.find(({ from, to }) => from !== to && from === station);
  const ends = before === undefined ? after!.first : before.first + before.panel.across;
  return [before === undefined && after!.first > 0 ? 0 : ends, after === undefined ? ends : after.first];
}

/** Every seam once for each side that it lies on; of the two seams of a godet the second begins at its point. */
function seamsOf({ draft, godets }: GownToHang, placed: readonly PlacedPanel[]): HungSeam[] {
  const { panel, first } = placed[placed.length - 1]!;
  const round = runsRound(draft.gown);
  const last = first + panel.across;
  const all = round ? last : 2 * last;
  const stations = round ? draft.gown.stations.slice(0, -1) : draft.gown.stations;
  return stations.flatMap((_, station): HungSeam[] => {
    const columns = new Set(seamColumns(placed, station));
    const point = godets.find((godet) => godet.station === station)?.from;
    const own = [...columns].filter(
      (column) => round || point === undefined || (column > 0 && column < last),
    );
    const mirrored = round
      ? []
      : own.filter((column) => column > 0 && column < last).map((column) => all - column);
    return [...own, ...mirrored].map((column, i) => ({
      station,
      column,
      ...(i > 0 && point !== undefined && { from: point }),
      ...(isOnFold(draft.gown, station) && { onFold: true }),
    }));
  });
}

function isOnFold({ gores, stations }: GownDraft['gown'], station: number): boolean {
  if (station === 0) return gores[0]?.fold === 'front';
  return station === stations.length - 1 && gores[gores.length - 1]?.fold === 'back';
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

/** How far a waist leans from front to back or side to side, mm. From memory. */
const LEVEL_WITHIN = 30;
/** A station that is lower than the highest by more than this is no floor but a hem set by hand, mm. */
const SET_BY_HAND = 80;

/** She as she stands, the edge of the bodice on her, and what the skirt hangs over. */
interface Standing {
  readonly waistHeight: number;
  readonly worn: Figure;
  /** Without tiers of net. */
  readonly bare: Figure;
  readonly edge: SewnEdge;
}

/** Rounds in which the height of a waist and the shape of what is worn below it settle; each gains a digit. */
const ROUNDS = 6;

/** She stands so high that at every station a tape from the bodice's edge reaches the floor in what was measured. */
function standing(gown: GownToHang, partOfStation: readonly number[], length: number): Standing {
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

function beyondEdge(worn: Figure): WornBeyond {
  return ({ x, y, outX, outY }, height) =>
    outwards(worn, Math.max(0, height), outX, outY) - Math.sqrt(x * x + y * y);
}

/**
 * A waist of a child's size stands as high as a child's: 104 cm tall with 53, 128 with 59 (EN 13402-3, from memory), the
 * waist at 0.6 of that (from memory).
 */
function usualWaistHeight(waist: number): number {
  return waist < CHILDS_WAIST ? 0.6 * (1040 + 4 * (waist - 530)) : USUAL_WAIST_HEIGHT;
}

const CHILDS_WAIST = 590;

/** Heights of a waist that leans no more than waists do; where nothing is known, as high as the nearest station or as usual. */
function levelled(known: readonly (number | undefined)[], usual: number): number[] {
  const highest = Math.max(...known.map((height) => height ?? 0));
  return known.map((height, i) => {
    if (height !== undefined) return height < highest - SET_BY_HAND ? highest - LEVEL_WITHIN : height;
    const nearest = known
      .map((other, k) => ({ other, apart: Math.abs(k - i) }))
      .filter(({ other }) => other !== undefined)
      .sort((a, b) => a.apart - b.apart)[0];
    return nearest?.other === undefined ? usual : Math.max(nearest.other, highest - LEVEL_WITHIN);
  });
}

function goreAt(partOfStation: readonly number[], part: number): number {
  const next = partOfStation.findIndex((own) => own > part);
  return next < 0 ? partOfStation.length - 2 : Math.max(0, next - 1);
}
