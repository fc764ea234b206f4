import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { reversedRun } from '../geometry/split.ts';
import { FIT, FLAT, LEVEL } from '../geometry/tolerances.ts';
import type { Gore, Gown, LayerShape } from '../gown/gown.ts';
import { gownOfLayer } from '../gown/gown-of-layer.ts';
import { type EdgeProfile, integrateAlong } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { goreFrames, longestStation } from './gore-frames.ts';
import { hemProfile } from './hem-profile.ts';
import type { Piece } from './piece.ts';
import { waistProfile } from './waist-profile.ts';

/** Why a gown cannot be drafted from its measures, and at which gore. */
export interface Undraftable {
  readonly gore?: string;
  readonly reason:
    | 'waist-does-not-settle'
    | 'narrows-to-nothing'
    | 'widens-too-fast'
    | 'hem-does-not-settle'
    | 'hem-above-waist';
  /** Slant distance at which the gore has no width left. */
  readonly at?: number;
}

export interface GownDraft {
  readonly gown: Gown;
  readonly shape: LayerShape;
  readonly pieces: readonly Piece[];
  readonly frames: readonly GoreFrame[];
  readonly waist: EdgeProfile;
  readonly hem: EdgeProfile;
  /** Finished length at each station from the sewn edge of the bodice, mm: given or filled in. */
  readonly lengths: readonly number[];
}

/** The gown's own lines, nothing taken off. */
export const PLAIN: LayerShape = { shorter: 0, smallerAcross: 0, smallerAlong: 0 };

/** Drafts the seam lines of every gore. */
export function draftGown(gown: Gown, shape: LayerShape = PLAIN): GownDraft | Undraftable {
  const layer = gownOfLayer(gown, shape);
  const waist = waistProfile(layer);
  if (waist === undefined) return { reason: 'waist-does-not-settle' };
  const frames = goreFrames(layer, waist);
  if ('reason' in frames) return frames;
  const hem = hemProfile(gown, frames, shape);
  if (hem === undefined) return narrowest(gown, frames) ?? { reason: 'hem-does-not-settle' };
  const lengths = gown.stations.map((_, i) => hem.valueAt(hem.ways[i]!) - waist.valueAt(waist.ways[i]!));
  const short = lengths.findIndex((length) => !(length > 0));
  if (short >= 0)
    return { reason: 'hem-above-waist', gore: gown.gores[Math.min(short, gown.gores.length - 1)]!.name };
  const pieces = gown.gores.map((_, i) => pieceOf(gown, i, frames[i]!, waist, hem));
  return { gown, shape, pieces, frames, waist, hem, lengths };
}

/** The first gore that has no width left at its longest station. */
function narrowest(gown: Gown, frames: readonly GoreFrame[]): Undraftable | undefined {
  const longest = longestStation(gown);
  const i = frames.findIndex((frame) => frame.widthAt(longest) <= 0);
  if (i < 0) return undefined;
  return { reason: 'narrows-to-nothing', gore: gown.gores[i]!.name, at: longest };
}

function pieceOf(gown: Gown, i: number, frame: GoreFrame, waist: EdgeProfile, hem: EdgeProfile): Piece {
  const gore = gown.gores[i]!;
  const depthsAt = (station: number): [number, number] => [
    waist.valueAt(waist.ways[station]!),
    hem.valueAt(hem.ways[station]!),
  ];
  const frontEdge = gore.fold === 'front' ? 'fold' : gown.stations[i]!.name;
  const backEdge = gore.fold === 'back' ? 'fold' : gown.stations[i + 1]!.name;
  const edges: Edge[] = [
    { name: 'waist', curves: acrossGore(frame, waist, i) },
    { name: backEdge, curves: frame.sideFrom('back', ...depthsAt(i + 1)) },
    { name: 'hem', curves: reversedRun(acrossGore(frame, hem, i)) },
    { name: frontEdge, curves: reversedRun(frame.sideFrom('front', ...depthsAt(i))) },
  ];
  return {
    gore: gore.name,
    layers: [],
    edges: closedExactly(edges),
    frontEdge,
    backEdge,
    grain: grainLine(gore, edges, frame, hem.valueAt(hem.ways[i]!)),
    cut: gore.fold !== undefined ? 'on-fold' : gown.closed ? 'single' : 'pair',
    ...(gore.side === undefined ? {} : { side: gore.side }),
  };
}

/** An edge that crosses the gore from its front to its back: an exact arc or line where level, cubics elsewhere. */
function acrossGore(frame: GoreFrame, profile: EdgeProfile, gore: number): Curve[] {
  const from = profile.ways[gore]!;
  const to = profile.ways[gore + 1]!;
  const stops = [from, ...profile.joins.filter((join) => join > from && join < to), to];
  const level = profile.valueAt(from);
  const isLevel = [...stops, ...stops.slice(1).map((stop, k) => (stop + stops[k]!) / 2)].every(
    (way) => Math.abs(profile.slopeAt(way)) < LEVEL && Math.abs(profile.valueAt(way) - level) < LEVEL,
  );
  if (isLevel) return [...frame.levelAt(level)];
  const fractionAt = (way: number): number =>
    integrateAlong(profile, (at) => 1 / frame.widthAt(profile.valueAt(at)), from, way);
  const curve = {
    pointAt: (way: number): Point => frame.pointAt(profile.valueAt(way), way === to ? 1 : fractionAt(way)),
    derivativeAt: (way: number): Point => {
      const depth = profile.valueAt(way);
      const fraction = way === to ? 1 : fractionAt(way);
      const down = frame.downAt(depth, fraction);
      const bySlant = frame.bySlant(depth, fraction);
      const slope = profile.slopeAt(way);
      return { x: Math.cos(down) + slope * bySlant.x, y: -Math.sin(down) + slope * bySlant.y };
    },
  };
  return stops.slice(1).flatMap((stop, k) => fitCubics(curve, stops[k]!, stop, FIT));
}

/** Ends that agree to rounding are made one point, so that the outline is closed to the last bit. */
function closedExactly(edges: readonly Edge[]): Edge[] {
  return edges.map((edge, i) => {
    const next = edges[(i + 1) % edges.length]!.curves[0]!;
    const last = edge.curves[edge.curves.length - 1]!;
    if (last.kind === 'arc') return edge;
    return { ...edge, curves: [...edge.curves.slice(0, -1), { ...last, to: startOf(next) }] };
  });
}

/** Part of the vertical chord through the gore's middle that the grain line takes. */
const GRAIN_FROM = 0.2;
const GRAIN_TO = 0.8;

/** A vertical line well inside the piece; on a fold it lies near the fold, where the maker lines it up. */
function grainLine(gore: Gore, edges: readonly Edge[], frame: GoreFrame, hem: number): Line {
  const across = gore.fold === undefined ? 0.5 : gore.fold === 'front' ? 0.15 : 0.85;
  const middle = frame.pointAt(hem * 0.5, across);
  const outline = flattenedRun(
    edges.flatMap((edge) => edge.curves),
    FLAT * 10,
  );
  const crossings = outline.flatMap((point, i) => {
    const next = outline[(i + 1) % outline.length]!;
    if (point.x > middle.x === next.x > middle.x) return [];
    return [point.y + ((middle.x - point.x) / (next.x - point.x)) * (next.y - point.y)];
  });
  const top = Math.max(...crossings.filter((y) => y <= middle.y));
  const bottom = Math.min(...crossings.filter((y) => y >= middle.y));
  const at = (part: number): Point => ({ x: middle.x, y: top + (bottom - top) * part });
  return { kind: 'line', from: at(GRAIN_FROM), to: at(GRAIN_TO) };
}

/** Where an edge begins and ends. */
export function endsOf(edge: Edge): { readonly from: Point; readonly to: Point } {
  return { from: startOf(edge.curves[0]!), to: endOf(edge.curves[edge.curves.length - 1]!) };
}
