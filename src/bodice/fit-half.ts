import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { type AlteredEdge, alteredFrame } from '../fittings/altered-frame.ts';
import { bentEdge, keptEdge } from '../fittings/kept-edge.ts';
import { type SeamInset, seamInset } from '../fittings/seam-inset.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { type BodiceMeasures, bodiceStations } from './bodice-measures.ts';
import type { HalfBodice } from './draft-half.ts';
import { panelPiece } from './panel-piece.ts';
import type { HalfTakes } from './pinned-bodice.ts';

/** How far beyond its edges an altered panel is followed, mm: its edges may go up and down. */
const BEYOND = 40;
/** A panel narrower than this is nothing that can be sewn, mm. */
const LEAST_WIDTH = 1;
/** Between two places down a panel where its width is looked at, mm. */
const LOOK_EVERY = 5;

export type HalfFitted =
  | { readonly half: HalfBodice }
  | { readonly reason: 'takes-all'; readonly panel: string }
  | { readonly reason: 'crosses'; readonly station: string }
  | { readonly reason: 'does-not-settle' };

/**
 * A half with what was pinned in it. Heights keep their numbers from the level waist along every seam, so that partners
 * stay as long as each other; a panel that nobody pinned stays the very same, and so does its part of both edges.
 * @param other what was pinned on her other side, which the edges run on into
 */
export function fitHalf(
  measures: BodiceMeasures,
  half: HalfBodice,
  own: HalfTakes,
  other: HalfTakes,
): HalfFitted {
  const insets = own.seams.map((takes) => seamInset(takes));
  const [top, bottom] = [highest(half), lowest(half)];
  const empty = measures.panels.findIndex((_, p) =>
    depths(top, bottom).some((s) => !(half.frames[p]!.widthAt(s) - taken(insets, p, s) > LEAST_WIDTH)),
  );
  if (empty >= 0) return { reason: 'takes-all', panel: measures.panels[empty]!.name };
  const frames = half.frames.map((frame, p) => fittedFrame(frame, own, insets, p, [top, bottom]));
  const upper = movedEdge(half, frames, own, other);
  const lower = keptEdge({
    edge: half.lower,
    frames: { before: half.frames, after: frames },
    altered: (kept) => kept,
  });
  if (upper === undefined || lower === undefined) return { reason: 'does-not-settle' };
  const crossed = bodiceStations(measures.panels).find(
    (_, i) => !(upper.valueAt(upper.ways[i]!) < lower.valueAt(lower.ways[i]!)),
  );
  if (crossed !== undefined) return { reason: 'crosses', station: crossed };
  const pieces = half.pieces.map((piece, p) => {
    const isSame = frames[p] === half.frames[p] && sameEdge(half.upper, upper, p);
    return isSame ? piece : panelPiece(measures, p, frames[p]!, upper, lower);
  });
  const widths = half.widths.map((across, p) =>
    across.map((width, l) => {
      const s = -half.levels[l]!.above;
      if (frames[p] === half.frames[p]) return width;
      return s < top || s > bottom ? width - taken(insets, p, s) : lengthOfRun(frames[p]!.levelAt(s));
    }),
  );
  const levels = half.levels.map((level, l) => fittedLevel(half, level, widths, l));
  return { half: { ...half, levels, widths, frames, upper, lower, pieces } };
}

function fittedFrame(
  frame: GoreFrame,
  { seams }: HalfTakes,
  insets: readonly SeamInset[],
  p: number,
  [top, bottom]: readonly [number, number],
): GoreFrame {
  const edge = (station: number): AlteredEdge | undefined =>
    seams[station]!.length === 0 ? undefined : { inset: insets[station]!, from: 0 };
  const [front, back] = [edge(p), edge(p + 1)];
  if (front === undefined && back === undefined) return frame;
  return alteredFrame(
    frame,
    { ...(front && { front }), ...(back && { back }) },
    bottom + BEYOND,
    top - BEYOND,
  );
}

function movedEdge(
  half: HalfBodice,
  frames: readonly GoreFrame[],
  own: HalfTakes,
  other: HalfTakes,
): EdgeProfile | undefined {
  return bentEdge(
    { edge: half.upper, frames: { before: half.frames, after: frames } },
    { own: own.upper, other: other.upper, closed: false },
  );
}

/** Whether an edge runs over a panel as it did. */
function sameEdge(before: EdgeProfile, after: EdgeProfile, p: number): boolean {
  const [from, to] = [before.ways[p]!, before.ways[p + 1]!];
  const shift = after.ways[p]! - from;
  return [0, 0.25, 0.5, 0.75, 1].every((part) => {
    const way = from + (to - from) * part;
    return Math.abs(before.valueAt(way) - after.valueAt(way + shift)) < SAME;
  });
}

/** Edges nearer than this are one, mm. */
const SAME = 1e-6;

function taken(insets: readonly SeamInset[], p: number, s: number): number {
  return insets[p]!.valueAt(s) + insets[p + 1]!.valueAt(s);
}

/** As wide as its panels are now; how much of it lies in front is for the draft alone. */
function fittedLevel(
  half: HalfBodice,
  { at, above, half: across }: HalfBodice['levels'][number],
  widths: readonly (readonly number[])[],
  l: number,
): HalfBodice['levels'][number] {
  const change = widths.reduce((sum, own, p) => sum + own[l]! - half.widths[p]![l]!, 0);
  return { at, above, half: across + change };
}

function depths(top: number, bottom: number): number[] {
  return Array.from({ length: Math.ceil((bottom - top) / LOOK_EVERY) + 1 }, (_, i) =>
    Math.min(bottom, top + i * LOOK_EVERY),
  );
}

function highest({ upper }: HalfBodice): number {
  return Math.min(...upper.ways.map((way) => upper.valueAt(way)));
}

function lowest({ lower }: HalfBodice): number {
  return Math.max(...lower.ways.map((way) => lower.valueAt(way)));
}
