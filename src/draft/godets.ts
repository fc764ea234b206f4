import type { Edge } from '../geometry/edge.ts';
import { hermiteProfile, type Profile } from '../geometry/hermite-profile.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { reversedRun } from '../geometry/split.ts';
import { LEVEL } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import { allowanceAt, type Layer } from '../gown/layer.ts';
import { goresAt, runsRound, stationsOnce } from '../gown/lines.ts';
import type { Godet } from '../gown/parts.ts';
import { acrossFrame } from './across-frame.ts';
import type { GownDraft } from './draft-gown.ts';
import type { LayerDraft, LayerDrafts } from './draft-layers.ts';
import { type EdgeProfile, integrateAlong, settledProfile } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { upright } from './grain-line.ts';
import type { Part } from './part.ts';
import type { Piece } from './piece.ts';
import { sectorFrame } from './sector-frame.ts';

/** Width of a godet at its point, mm: a thread, so that it has a top edge to measure from. */
const POINT = 0.5;

/** One balance mark half-way down a godet; the point itself is the other (common practice). */
export const NOTCH_AT = 0.5;

/** Godets as parts of the layers that have them. */
export function godetParts({ godets }: Pick<Gown, 'godets'>, drafts: LayerDrafts): Part[] {
  return godets.flatMap((godet) => drafts.layers.flatMap((layerDraft) => godetPartsOf(godet, layerDraft)));
}

/** None, one part, or one for each side of her where both have a seam of that name and they differ. */
function godetPartsOf(godet: Godet, layerDraft: LayerDraft): Part[] {
  if (!hasGodet(godet, layerDraft.layer)) return [];
  const { gown } = layerDraft.draft;
  return stationsOnce(gown).flatMap((own, station) =>
    own.name === godet.seam ? (godetPart(godet, layerDraft, station) ?? []) : [],
  );
}

/** Hems of all the godets of one layer, as sewn into it all round, mm. */
export function godetHems(godets: readonly Godet[], layerDraft: LayerDraft): number {
  return godets
    .flatMap((godet) => godetPartsOf(godet, layerDraft))
    .reduce(
      (sum, { piece }) => sum + (piece.cut === 'pair' ? 2 : 1) * lengthOfRun(piece.edges[2]!.curves),
      0,
    );
}

export function hasGodet({ layers }: Godet, { name }: Layer): boolean {
  return layers.includes(name);
}

/**
 * A wedge whose two sides are as long as the seam below its point, and whose hem meets the seam's two gores at the
 * angles that let the sewn hem run straight through both of its seams.
 */
function godetPart(godet: Godet, { layer, draft }: LayerDraft, station: number): Part | undefined {
  const own = draft.gown.stations[station]!;
  const side = (draft.lengths[station] ?? 0) - godet.from;
  if (!(side > 0)) return undefined;
  const flare = (godet.width - POINT) / side;
  const frame = sectorFrame(POINT, flare / 2, flare / 2);
  const hem = godetHem(frame, side, hemSlopes(draft, station));
  if (hem === undefined) return undefined;
  const [before, after] = godetSeams(godet, draft, station);
  const edges: Edge[] = [
    { name: 'point', curves: [{ kind: 'line', from: frame.pointAt(0, 0), to: frame.pointAt(0, 1) }] },
    { name: after, curves: frame.sideFrom('back', 0, side) },
    { name: 'hem', curves: reversedRun(acrossFrame(frame, hem, 0, hem.ways[1]!)) },
    { name: before, curves: reversedRun(frame.sideFrom('front', 0, side)) },
  ];
  const piece: Piece = {
    gore: godet.name,
    layers: [layer.name],
    edges,
    frontEdge: before,
    backEdge: after,
    grain: upright(frame.pointAt(side * 0.6, 0.5), edges),
    cut: isPaired(draft, station) ? 'pair' : 'single',
    ...(own.side === undefined ? {} : { side: own.side }),
  };
  const seam = allowanceAt(layer, own.name);
  const marks = [side * NOTCH_AT];
  return {
    of: { kind: 'godet', godet },
    layer,
    piece,
    allowances: { point: seam, [before]: seam, [after]: seam },
    notches: new Map([
      [before, marks],
      [after, marks],
    ]),
    quartered: false,
    pointed: true,
    roughCut: godet.roughCut,
    place: godet.place,
  };
}

/** How far from a seam the hem's slope there is taken, mm: on its own side of a point. */
const BESIDE = 1e-6;

/**
 * The hem's slope in front of a seam and behind it: one number, except at the point of a train. At a centre of a
 * mirrored gown the gore on the other side is the mirror image.
 */
function hemSlopes({ hem, gown }: GownDraft, station: number): [number, number] {
  const last = gown.gores.length;
  const before = (): number => hem.slopeAt(hem.ways[station === 0 ? last : station]! - BESIDE);
  const after = (): number => hem.slopeAt(hem.ways[station === last ? 0 : station]! + BESIDE);
  if (runsRound(gown) || (station > 0 && station < last)) return [before(), after()];
  return station === 0 ? [-after(), after()] : [before(), -before()];
}

/** The hem between two seams of one length, with the gown's slopes at both: an arc where the hem is level. */
function godetHem(
  frame: GoreFrame,
  side: number,
  slopes: readonly [number, number],
): EdgeProfile | undefined {
  const level = slopes.every((slope) => Math.abs(slope) < LEVEL);
  const over = (ways: readonly number[]): Profile =>
    hermiteProfile(ways, [side, side], level ? [0, 0] : slopes);
  return settledProfile(
    [frame.widthAt(side)],
    over,
    (profile, _gore, from, to) =>
      integrateAlong(profile, (way) => 1 / frame.widthAt(profile.valueAt(way)), from, to),
    [1],
  );
}

/** The seams that a godet makes of one: `front/godet` and `godet/back`. */
function godetSeams(godet: Godet, draft: GownDraft, station: number): [string, string] {
  const [before, after] = goresAt(draft.gown, station);
  return [`${before.name}/${godet.name}`, `${godet.name}/${after.name}`];
}

function isPaired({ gown }: GownDraft, station: number): boolean {
  return gown.stations[station]!.seams === 2;
}
