import { type PleatFacts, pleatFacts } from '../allowances/pleat-facts.ts';
import { pleatsOf } from '../allowances/pleats.ts';
import { topFullness } from '../allowances/top-fullness.ts';
import { allRound, edgeAllRound } from '../draft/all-round.ts';
import { draftGown, type GownDraft } from '../draft/draft-gown.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import { hemRound } from '../draft/flounces.ts';
import { hasGodet } from '../draft/godets.ts';
import type { Piece } from '../draft/piece.ts';
import { overlapOf, wrapEdgeOf } from '../draft/wrapped.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore, type Layer } from '../gown/layer.ts';
import { goresAt, halves, stationsOnce } from '../gown/lines.ts';
import type { Side, Station } from '../gown/station.ts';
import { type BiasFacts, biasFacts } from './bias/bias-facts.ts';
import { type HemTurn, hemTurns } from './edging/hem-turns.ts';
import { type FloorLength, floorLengths } from './train/floor-lengths.ts';

/** What the papers need to know of the drafted skirt, all measured on the draft. mm, mm², radians; all round. */
export interface Skirt {
  /** Sewn tops of the gores. */
  readonly waist: number;
  readonly hem: number;
  /** All the gores' flares at the hem together. */
  readonly flare: number;
  /** From the centre front round; on a ring of different sides each seam once. */
  readonly stations: readonly SkirtStation[];
  readonly layers: readonly SkirtLayer[];
  /** Gores with a side edge off the straight thread: it drops as it hangs. */
  readonly offThread: readonly string[];
  /** The front hem off the floor: as the spec says, or by the floor length at the centre front. */
  readonly offFloor: number | undefined;
}

export interface SkirtStation {
  readonly station: Station;
  readonly name: string;
  /** Where both sides of her have a station of this name, and they differ. */
  readonly side?: Side;
  /** Seams of this name in the whole skirt; 0 on a fold. */
  readonly seams: number;
  readonly drop: number;
  /** Sewn edge of the bodice to the hem, along the cloth. */
  readonly finished: number;
  readonly floor?: FloorLength;
}

export interface SkirtLayer {
  readonly layer: Layer;
  readonly gores: readonly string[];
  readonly waist: number;
  readonly hem: number;
  readonly flare: number;
  /** Cloth along the waist edge before it is gathered or pleated; the same as `waist` where it is not. */
  readonly clothAtWaist: number;
  readonly godets: readonly LayerGodet[];
  /** How the hem of each gore bends. */
  readonly hemTurns: readonly HemTurn[];
  readonly seams: readonly LayerSeam[];
  /** Tops that are pleated all along: how deep each fold comes out. */
  readonly pleatedTops: readonly { readonly gore: string; readonly depth: number }[];
  /** Of a skirt that wraps: one of its two edges. */
  readonly wrapEdge?: number;
  /** Of a layer on the bias. */
  readonly bias?: BiasFacts;
  /** Pleats that have their place. */
  readonly pleats: readonly PleatFacts[];
}

/** A wedge let into one of a layer's seams; where her sides differ, the longer one's figures stand for both. mm. */
export interface LayerGodet {
  readonly name: string;
  readonly seam: string;
  readonly copies: number;
  readonly from: number;
  readonly side: number;
  readonly width: number;
}

export interface LayerSeam {
  readonly name: string;
  /** Where both sides of her have a seam of this name, and they differ. */
  readonly side?: Side;
  readonly length: number;
  /** Seams of this name in the whole layer. */
  readonly copies: number;
  /** The layer on the other side, where this one has only one of the two gores. */
  readonly withLayer?: string;
}

export function skirtOf(gown: Gown, { gown: draft, layers }: LayerDrafts): Skirt {
  const every = (): boolean => true;
  const stations = skirtStations(gown, draft);
  return {
    waist: waistAllRound(draft, every),
    hem: edgeAllRound(draft, 'hem') + addedToHem(gown, layers),
    flare: flareAllRound(draft, every),
    stations,
    offThread: [...new Set(draft.pieces.filter(isOffThread).map(({ gore }) => gore))],
    offFloor: gown.measuring.offFloor ?? heightOffFloor(stations[0]!),
    layers: layers.map((own) => layerOf(own, gown)),
  };
}

/** What godets and an overlap add to the hem of the outermost layer: she walks in it, and it is levelled all round. */
function addedToHem({ godets }: Gown, layers: readonly LayerDraft[]): number {
  const outermost = layers.at(-1);
  if (outermost === undefined) return 0;
  const ofGores = edgeAllRound(outermost.draft, 'hem', (gore) => hasGore(outermost.layer, gore));
  return hemRound(outermost, godets) - ofGores;
}

/** More than this off the thread, as a slope: what cutting by the thread's own wobble leaves (common practice: 2°). */
const OFF_THREAD = Math.tan((2 * Math.PI) / 180);

function isOffThread({ edges }: Piece): boolean {
  return [edges[1]!, edges[3]!].some(({ name, curves }) => {
    if (name === 'fold') return false;
    const [from, to] = [startOf(curves[0]!), endOf(curves[curves.length - 1]!)];
    return Math.abs(to.x - from.x) > OFF_THREAD * Math.abs(to.y - from.y);
  });
}

/** Round the skirt at a level given as a slant distance below the level waist at each station, mm. */
export function sweepAt(draft: GownDraft, depths: readonly number[]): number {
  return draft.frames.reduce(
    (sum, frame, i) => sum + halves(draft.gown) * frame.widthAt((depths[i]! + depths[i + 1]!) / 2),
    0,
  );
}

function skirtStations({ measuring }: Gown, draft: GownDraft): SkirtStation[] {
  const floors = floorLengths(measuring.offFloor, draft, () => withoutTrain(draft));
  return stationsOnce(draft.gown).map((station, i) => ({
    station,
    name: station.name,
    ...(station.side === undefined ? {} : { side: station.side }),
    seams: station.seams,
    drop: station.drop,
    finished: draft.lengths[i]!,
    ...(floors[i] === undefined ? {} : { floor: floors[i] }),
  }));
}

function heightOffFloor({ floor, finished }: SkirtStation): number | undefined {
  return floor === undefined || floor.estimated ? undefined : floor.length - finished;
}

function withoutTrain(draft: GownDraft): readonly number[] | undefined {
  if (draft.gown.train === undefined) return draft.lengths;
  const { train: _, ...gown } = draft.gown;
  const level = draftGown(gown);
  return 'reason' in level ? undefined : level.lengths;
}

function layerOf({ layer, draft }: LayerDraft, gown: Gown): SkirtLayer {
  const bias = biasFacts({ layer, draft });
  const seams = seamsOf(draft, layer, gown.layers);
  const wrapEdge = wrapEdgeOf({ layer, draft });
  const godets = godetsOf(gown, layer, seams);
  const isOwn = (gore: { readonly name: string }): boolean => hasGore(layer, gore);
  const wedges = godets.reduce((sum, { copies, width, side }) => sum + (copies * width) / side, 0);
  return {
    layer,
    gores: layer.gores,
    waist: waistAllRound(draft, isOwn) + overlapOf({ layer, draft }, 'waist'),
    hem: hemRound({ layer, draft }, gown.godets),
    flare: flareAllRound(draft, isOwn) + wedges,
    clothAtWaist: edgeAllRound(draft, 'waist', isOwn),
    godets: oncePerName(godets),
    hemTurns: hemTurns({ layer, draft }),
    seams,
    ...(bias === undefined ? {} : { bias }),
    ...(wrapEdge === undefined ? {} : { wrapEdge }),
    pleatedTops: pleatedTops({ layer, draft }),
    pleats: pleatFacts(gown, { layer, draft }),
  };
}

function pleatedTops({ layer, draft }: LayerDraft): SkirtLayer['pleatedTops'] {
  return draft.gown.gores.flatMap((gore, i) => {
    const full = hasGore(layer, gore) ? topFullness(layer, draft, i) : undefined;
    return full?.rule.by === 'pleats' ? [{ gore: gore.name, depth: pleatsOf(full).depth }] : [];
  });
}

function godetsOf({ godets }: Gown, layer: Layer, seams: readonly LayerSeam[]): LayerGodet[] {
  return godets
    .filter((godet) => hasGodet(godet, layer))
    .flatMap(({ name, seam, from, width }) =>
      seams
        .filter((own) => own.name === seam)
        .map(({ copies, length }) => ({ name, seam, copies, from, side: length - from, width })),
    );
}

/** Of two that her sides have, the longer one, for both. */
function oncePerName(godets: readonly LayerGodet[]): LayerGodet[] {
  return godets
    .filter((godet, i) => godets.findIndex(({ name }) => name === godet.name) === i)
    .map((godet) => {
      const alike = godets.filter(({ name }) => name === godet.name);
      const copies = alike.reduce((sum, own) => sum + own.copies, 0);
      return { ...godet, copies, side: Math.max(...alike.map(({ side }) => side)) };
    });
}

/** Seams by their names alone: what both her sides have of one name together. */
export function seamsByName(
  seams: readonly LayerSeam[],
): { readonly name: string; readonly copies: number; readonly withLayer: string | undefined }[] {
  return [...new Set(seams.map(({ name }) => name))].map((name) => {
    const own = seams.filter((seam) => seam.name === name);
    const copies = own.reduce((sum, seam) => sum + seam.copies, 0);
    return { name, copies, withLayer: own[0]!.withLayer };
  });
}

/** Seams between gores that the layer has, and those to a layer that has the gore it lacks (named by the inner one). */
function seamsOf(draft: GownDraft, layer: Layer, layers: readonly Layer[]): LayerSeam[] {
  return stationsOnce(draft.gown).flatMap(({ name, side, seams: copies, free }, i) => {
    const [before, after] = goresAt(draft.gown, i);
    const seam = { name, ...(side === undefined ? {} : { side }), length: draft.lengths[i]!, copies };
    if (copies === 0 || free || (!hasGore(layer, before) && !hasGore(layer, after))) return [];
    if (hasGore(layer, before) && hasGore(layer, after)) return [seam];
    const [own, lacking] = hasGore(layer, before) ? [before, after] : [after, before];
    const other = layers
      .slice(layers.findIndex((one) => one.name === layer.name) + 1)
      .find((one) => hasGore(one, lacking) && !hasGore(one, own));
    return other === undefined ? [] : [{ ...seam, withLayer: other.name }];
  });
}

/** As sewn: cloth that is gathered or pleated to the edge counts by the edge. */
function waistAllRound(draft: GownDraft, chosen: (gore: { readonly name: string }) => boolean): number {
  return allRound(draft, chosen, (i) => draft.gown.gores[i]!.top);
}

function flareAllRound(draft: GownDraft, chosen: (gore: { readonly name: string }) => boolean): number {
  const depthAt = (station: number): number => draft.gown.stations[station]!.drop + draft.lengths[station]!;
  return allRound(
    draft,
    chosen,
    (i) => draft.frames[i]!.downAt(depthAt(i + 1), 1) - draft.frames[i]!.downAt(depthAt(i), 0),
  );
}
