import type { Edge } from '../geometry/edge.ts';
import { hermiteProfile, type Profile } from '../geometry/hermite-profile.ts';
import { reversedRun } from '../geometry/split.ts';
import type { GodetSpec, Spec } from '../spec/spec.ts';
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
export function godetParts(spec: Spec, drafts: LayerDrafts): Part[] {
  return (spec.godets ?? []).flatMap((godet) =>
    drafts.layers
      .filter(({ layer }) => godet.layers === undefined || godet.layers.includes(layer.name))
      .flatMap((layerDraft) => godetPart(spec, godet, layerDraft) ?? []),
  );
}

/**
 * A wedge whose two sides are as long as the seam below its point, and whose hem meets the seam's two gores at the
 * angles that let the sewn hem run straight through both of its seams.
 */
function godetPart(spec: Spec, godet: GodetSpec, { layer, draft }: LayerDraft): Part | undefined {
  const station = draft.gown.stations.findIndex(({ name }) => name === godet.seam);
  const side = (draft.lengths[station] ?? 0) - godet.from;
  if (!(side > 0)) return undefined;
  const flare = (godet.width - POINT) / side;
  const frame = sectorFrame(POINT, flare / 2, flare / 2);
  const slope = draft.hem.slopeAt(draft.hem.ways[station]!);
  const hem = godetHem(frame, side, slope);
  if (hem === undefined) return undefined;
  const [before, after] = godetSeams(godet, draft, station);
  const edges: Edge[] = [
    { name: 'point', curves: frame.levelAt(0) },
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
  };
  const seam =
    layer.allowances[godet.seam] ??
    spec.allowances[godet.seam] ??
    layer.allowances.seam ??
    spec.allowances.seam ??
    0;
  const marks = [side * NOTCH_AT];
  return {
    layer,
    piece,
    allowances: { point: seam, [before]: seam, [after]: seam },
    notches: new Map([
      [before, marks],
      [after, marks],
    ]),
    quartered: false,
  };
}

/** The hem between two seams of one length, with the gown's slope at both: an arc where the hem is level. */
function godetHem(frame: GoreFrame, side: number, slope: number): EdgeProfile | undefined {
  const over = (ways: readonly number[]): Profile => hermiteProfile(ways, [side, side], [slope, slope]);
  return settledProfile(
    [frame.widthAt(side)],
    over,
    (profile, _gore, from, to) =>
      integrateAlong(profile, (way) => 1 / frame.widthAt(profile.valueAt(way)), from, to),
    [1],
  );
}

/** The seams that a godet makes of one: `front/godet` and `godet/back`. */
function godetSeams(godet: GodetSpec, draft: GownDraft, station: number): [string, string] {
  const { gores, closed } = draft.gown;
  const before = gores[station - 1] ?? (closed ? gores[gores.length - 1] : gores[0]);
  const after = gores[station] ?? (closed ? gores[0] : gores[gores.length - 1]);
  return [`${before!.name}/${godet.name}`, `${godet.name}/${after!.name}`];
}

function isPaired(draft: GownDraft, station: number): boolean {
  return !draft.gown.closed && station > 0 && station < draft.gown.gores.length;
}
