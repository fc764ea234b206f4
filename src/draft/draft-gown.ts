import type { Edge } from '../geometry/edge.ts';
import { areDrawable } from '../geometry/endless.ts';
import { reversedRun } from '../geometry/split.ts';
import { type LayerShape, PLAIN } from '../gown/layer.ts';
import type { Gore, GownLines } from '../gown/lines.ts';
import { dependsOnHem, linesOfLayer } from '../gown/lines-of-layer.ts';
import { acrossFrame } from './across-frame.ts';
import { closedExactly } from './closed-exactly.ts';
import type { EdgeProfile } from './edge-profiles.ts';
import type { GoreFrame } from './gore-frame.ts';
import { goreFrames, longestStation } from './gore-frames.ts';
import { upright } from './grain-line.ts';
import { hemProfile } from './hem-profile.ts';
import { linesOf, type Piece } from './piece.ts';
import { plainHems } from './plain-hem.ts';
import type { Undraftable } from './undraftable.ts';
import { waistProfile } from './waist-profile.ts';

export interface GownDraft {
  readonly gown: GownLines;
  readonly shape: LayerShape;
  readonly pieces: readonly Piece[];
  readonly frames: readonly GoreFrame[];
  readonly waist: EdgeProfile;
  readonly hem: EdgeProfile;
  /** Finished length at each station from the sewn edge of the bodice, mm: given or filled in. */
  readonly lengths: readonly number[];
  /** Let out by a fitting at the waist, of the half, mm as sewn: as much as the edge came to lie where the skirt is narrower. */
  readonly letOutAtWaist?: number;
  /** What is cut, where that is not the pieces one by one; each with the gore that it comes from. */
  readonly cutAs?: readonly { readonly piece: Piece; readonly gore: number }[];
}

/** Drafts the seam lines of every gore. */
export function draftGown(gown: GownLines, shape: LayerShape = PLAIN): GownDraft | Undraftable {
  const hems = dependsOnHem(gown, shape) ? plainHems(gown, shape) : [];
  if ('reason' in hems) return hems;
  const layer = linesOfLayer(gown, shape, hems);
  const waist = waistProfile(layer);
  if (waist === undefined) return { reason: 'waist-does-not-settle' };
  const frames = goreFrames(layer, waist);
  if ('reason' in frames) return frames;
  const hem = hemProfile(gown, frames, shape);
  if (hem === undefined) return narrowest(gown, frames) ?? { reason: 'hem-does-not-settle' };
  const depths = hem.ways.map((way) => hem.valueAt(way));
  const pinched = frames.findIndex((frame, i) => frame.widthAt(Math.max(depths[i]!, depths[i + 1]!)) <= 0);
  if (pinched >= 0) return { reason: 'narrows-to-nothing', gore: gown.gores[pinched]!.name };
  const lengths = gown.stations.map((_, i) => depths[i]! - waist.valueAt(waist.ways[i]!));
  const short = lengths.findIndex((length) => !(length > 0));
  if (short >= 0)
    return { reason: 'hem-above-waist', gore: gown.gores[Math.min(short, gown.gores.length - 1)]!.name };
  const pieces = gown.gores.map((_, i) => pieceOf(gown, i, frames[i]!, waist, hem));
  const endless = pieces.find((piece) => !areDrawable(linesOf(piece)));
  if (endless !== undefined) return { reason: 'at-no-place', gore: endless.gore };
  return { gown, shape, pieces, frames, waist, hem, lengths };
}

/** The first gore that has no width left at its longest station. */
function narrowest(gown: GownLines, frames: readonly GoreFrame[]): Undraftable | undefined {
  const longest = longestStation(gown);
  const i = frames.findIndex((frame) => frame.widthAt(longest) <= 0);
  if (i < 0) return undefined;
  return { reason: 'narrows-to-nothing', gore: gown.gores[i]!.name, at: longest };
}

/** The seam-line outline of one gore, laid flat in its frame. */
export function pieceOf(
  gown: GownLines,
  i: number,
  frame: GoreFrame,
  waist: EdgeProfile,
  hem: EdgeProfile,
): Piece {
  const gore = gown.gores[i]!;
  const depthsAt = (station: number): [number, number] => [
    waist.valueAt(waist.ways[station]!),
    hem.valueAt(hem.ways[station]!),
  ];
  const frontEdge = gore.fold === 'front' ? 'fold' : gown.stations[i]!.name;
  const backEdge = gore.fold === 'back' ? 'fold' : gown.stations[i + 1]!.name;
  const edges: Edge[] = [
    { name: 'waist', curves: acrossFrame(frame, waist, waist.ways[i]!, waist.ways[i + 1]!) },
    { name: backEdge, curves: frame.sideFrom('back', ...depthsAt(i + 1)) },
    { name: 'hem', curves: reversedRun(acrossFrame(frame, hem, hem.ways[i]!, hem.ways[i + 1]!)) },
    { name: frontEdge, curves: reversedRun(frame.sideFrom('front', ...depthsAt(i))) },
  ];
  return {
    gore: gore.name,
    layers: [],
    edges: closedExactly(edges),
    frontEdge,
    backEdge,
    grain: upright(frame.pointAt(hem.valueAt(hem.ways[i]!) / 2, grainPlace(gore)), edges),
    cut: gore.fold !== undefined ? 'on-fold' : gown.round === 'mirrored' ? 'pair' : 'single',
    ...(gore.side === undefined ? {} : { side: gore.side }),
  };
}

/** Across the gore; on a fold the grain line lies near the fold, where the maker lines it up. */
function grainPlace(gore: Gore): number {
  return gore.fold === undefined ? 0.5 : gore.fold === 'front' ? 0.15 : 0.85;
}
