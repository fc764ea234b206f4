import { draftGown, type GownDraft } from '../draft/draft-gown.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import { godetHems } from '../draft/godets.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { LayerSpec, Spec } from '../gown-file/spec.ts';
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
  /** The front hem off the floor: as the spec says, or by the floor length at the centre front. */
  readonly offFloor: number | undefined;
}

export interface SkirtStation {
  readonly name: string;
  /** Where both sides of her have a station of this name, and they differ. */
  readonly side?: 'left' | 'right';
  /** Seams of this name in the whole skirt; 0 on a fold. */
  readonly seams: number;
  readonly drop: number;
  /** Sewn edge of the bodice to the hem, along the cloth. */
  readonly finished: number;
  readonly floor?: FloorLength;
}

export interface SkirtLayer {
  readonly spec: LayerSpec;
  readonly gores: readonly string[];
  readonly waist: number;
  readonly hem: number;
  readonly flare: number;
  /** Cloth along the waist edge before it is gathered or pleated; the same as `waist` where it is not. */
  readonly clothAtWaist: number;
  readonly godets: readonly LayerGodet[];
  readonly seams: readonly LayerSeam[];
}

/** A wedge let into one of a layer's seams. mm. */
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
  readonly side?: 'left' | 'right';
  readonly length: number;
  /** Seams of this name in the whole layer. */
  readonly copies: number;
  /** The layer on the other side, where this one has only one of the two gores. */
  readonly withLayer?: string;
}

export function skirtOf(spec: Spec, draft: GownDraft, layers: readonly LayerDraft[]): Skirt {
  const all = spec.gores.map((gore) => gore.name);
  const stations = skirtStations(spec, draft);
  return {
    waist: waistAllRound(draft, all),
    hem: edgeAllRound(draft, 'hem', all),
    flare: flareAllRound(draft, all),
    stations,
    offFloor: spec.lengths.offFloor ?? heightOffFloor(stations[0]!),
    layers: layers.map((layer) => layerOf(layer, spec)),
  };
}

/** Round the skirt at a level given as a slant distance below the level waist at each station, mm. */
export function sweepAt(draft: GownDraft, depths: readonly number[]): number {
  return draft.frames.reduce(
    (sum, frame, i) => sum + copies(draft) * frame.widthAt((depths[i]! + depths[i + 1]!) / 2),
    0,
  );
}

/** Drafted gores stand for both halves unless the gown's sides differ. */
function copies(draft: GownDraft): number {
  return draft.gown.closed ? 1 : 2;
}

function skirtStations(spec: Spec, draft: GownDraft): SkirtStation[] {
  const floors = floorLengths(spec, draft, () => withoutTrain(draft));
  const count = draft.gown.closed ? draft.gown.gores.length : draft.gown.stations.length;
  return draft.gown.stations.slice(0, count).map((station, i) => ({
    name: station.name,
    ...sideAt(draft, i),
    seams: seamsAt(draft, i),
    drop: station.drop,
    finished: draft.lengths[i]!,
    ...(floors[i] === undefined ? {} : { floor: floors[i] }),
  }));
}

/** On a ring of two halves that were alike once, a station of each has the same name. */
function sideAt({ gown }: GownDraft, station: number): Pick<SkirtStation, 'side'> {
  if (!gown.closed) return {};
  const { name } = gown.stations[station]!;
  const places = gown.stations.slice(0, -1).filter((other) => other.name === name);
  const side = gown.gores[station]?.side;
  return places.length > 1 && side !== undefined ? { side } : {};
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

function seamsAt(draft: GownDraft, station: number): number {
  const { gores, closed } = draft.gown;
  // On a ring made of two halves a fold at the centre lies between two gores.
  if (closed) return gores[station]?.fold === 'front' || gores[station - 1]?.fold === 'back' ? 0 : 1;
  if (station === 0) return gores[0]!.fold === 'front' ? 0 : 1;
  if (station === gores.length) return gores[gores.length - 1]!.fold === 'back' ? 0 : 1;
  return 2;
}

function layerOf({ layer, draft }: LayerDraft, spec: Spec): SkirtLayer {
  const gores = layer.gores ?? spec.gores.map((gore) => gore.name);
  const seams = seamsOf(draft, layer, spec.layers);
  const godets = godetsOf(spec, layer, seams);
  const overGodets = (measure: (godet: LayerGodet) => number): number =>
    godets.reduce((sum, godet) => sum + godet.copies * measure(godet), 0);
  return {
    spec: layer,
    gores,
    waist: waistAllRound(draft, gores),
    hem: edgeAllRound(draft, 'hem', gores) + godetHems(spec, { layer, draft }),
    flare: flareAllRound(draft, gores) + overGodets((godet) => godet.width / godet.side),
    clothAtWaist: edgeAllRound(draft, 'waist', gores),
    godets,
    seams,
  };
}

function godetsOf(spec: Spec, layer: LayerSpec, seams: readonly LayerSeam[]): LayerGodet[] {
  return (spec.godets ?? []).flatMap((godet) => {
    const seam = seams.find((own) => own.name === godet.seam);
    if (seam === undefined || !(godet.layers?.includes(layer.name) ?? true)) return [];
    const { name, from, width } = godet;
    return [{ name, seam: seam.name, copies: seam.copies, from, side: seam.length - from, width }];
  });
}

/** Seams between gores that the layer has, and those to a layer that has the gore it lacks (named by the inner one). */
function seamsOf(draft: GownDraft, layer: LayerSpec, layers: readonly LayerSpec[]): LayerSeam[] {
  const { gown } = draft;
  const last = gown.gores.length;
  const has = (own: LayerSpec, i: number): boolean => own.gores?.includes(gown.gores[i]!.name) ?? true;
  return gown.stations.slice(0, gown.closed ? last : last + 1).flatMap((station, i) => {
    const before = i > 0 ? i - 1 : gown.closed ? last - 1 : i;
    const after = i < last ? i : i - 1;
    const seam = {
      name: station.name,
      ...sideAt(draft, i),
      length: draft.lengths[i]!,
      copies: seamsAt(draft, i),
    };
    if (seam.copies === 0 || (!has(layer, before) && !has(layer, after))) return [];
    if (has(layer, before) && has(layer, after)) return [seam];
    const [own, lacking] = has(layer, before) ? [before, after] : [after, before];
    const other = layers
      .slice(layers.indexOf(layer) + 1)
      .find((one) => one.gores !== undefined && has(one, lacking) && !has(one, own));
    return other === undefined ? [] : [{ ...seam, withLayer: other.name }];
  });
}

/** As sewn: cloth that is gathered or pleated to the edge counts by the edge. */
function waistAllRound(draft: GownDraft, gores: readonly string[]): number {
  return copies(draft) * sumOver(draft, gores, (i) => draft.gown.gores[i]!.top);
}

function edgeAllRound(draft: GownDraft, edge: string, gores: readonly string[]): number {
  const curves = (i: number) => draft.pieces[i]!.edges.find((own) => own.name === edge)!.curves;
  return copies(draft) * sumOver(draft, gores, (i) => lengthOfRun(curves(i)));
}

function flareAllRound(draft: GownDraft, gores: readonly string[]): number {
  const depthAt = (station: number): number => draft.gown.stations[station]!.drop + draft.lengths[station]!;
  return (
    copies(draft) *
    sumOver(
      draft,
      gores,
      (i) => draft.frames[i]!.downAt(depthAt(i + 1), 1) - draft.frames[i]!.downAt(depthAt(i), 0),
    )
  );
}

function sumOver(draft: GownDraft, gores: readonly string[], measure: (gore: number) => number): number {
  return draft.gown.gores.reduce((sum, gore, i) => (gores.includes(gore.name) ? sum + measure(i) : sum), 0);
}
