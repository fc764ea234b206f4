import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Piece } from '../draft/piece.ts';
import type { BodiceEdge, BodiceFault } from './bodice-fault.ts';
import { type BodiceMeasures, bodiceStations } from './bodice-measures.ts';
import { measureFaults } from './check-measures.ts';
import { beyondGirths, edgeDepths, reachOf } from './edge-depths.ts';
import { edgeThrough } from './edge-through.ts';
import { panelFrames } from './panel-frames.ts';
import { panelPiece } from './panel-piece.ts';
import { panelWidths } from './panel-widths.ts';
import { type SewnLevel, sewnLevels } from './sewn-levels.ts';

/** One half of a bodice, drafted; the wearer's left as drawn. */
export interface HalfBodice {
  readonly stations: readonly string[];
  readonly levels: readonly SewnLevel[];
  /** Sewn width by panel and level, mm. */
  readonly widths: readonly (readonly number[])[];
  readonly frames: readonly GoreFrame[];
  readonly upper: EdgeProfile;
  readonly lower: EdgeProfile;
  readonly pieces: readonly Piece[];
}

export type HalfDrafted = HalfBodice | { readonly faults: readonly BodiceFault[] };

/** Drafts one half of a bodice over a body. */
export function draftHalf(measures: BodiceMeasures, side: 'left' | 'right' = 'left'): HalfDrafted {
  const wrong = measureFaults(measures);
  if (wrong.length > 0) return { faults: wrong };
  const { panels, girths } = measures;
  const stations = bodiceStations(panels);
  const depths = edgeDepths(measures, stations);
  const reach = reachOf(depths);
  const uncovered = beyondGirths(girths, stations, depths);
  const { levels, faults } = sewnLevels(measures, side);
  if (faults.length + uncovered.length > 0) return { faults: [...faults, ...uncovered] };
  const shared = panelWidths(measures, levels);
  if (shared.faults.length > 0) return { faults: shared.faults };
  const laid = panelFrames(panels, levels, shared.widths, reach);
  if (laid.faults.length > 0) return { faults: laid.faults };
  const { frames } = laid;
  const upper = edgeThrough(frames, depths.upper, pointsOf(measures.upperEdge.points, stations));
  if (upper === undefined) return unsettled('upper-edge', 'upper-edge');
  const lower = edgeThrough(frames, depths.lower, pointsOf(measures.lowerEdge.points, stations));
  if (lower === undefined) return unsettled('lower-edge', 'panels');
  const crossed = crossing(stations, upper, lower);
  if (crossed.length > 0) return { faults: crossed };
  const pieces = panels.map((_, p) => panelPiece(measures, p, frames[p]!, upper, lower));
  return { stations, levels, widths: shared.widths, frames, upper, lower, pieces };
}

function pointsOf(names: readonly string[], stations: readonly string[]): number[] {
  return names.map((name) => stations.indexOf(name));
}

function unsettled(edge: BodiceEdge, key: string): HalfDrafted {
  return { faults: [{ code: 'edge-does-not-settle', place: ['bodice', 'draft', key], edge }] };
}

function crossing(stations: readonly string[], upper: EdgeProfile, lower: EdgeProfile): BodiceFault[] {
  return stations.flatMap((station, i): BodiceFault[] => {
    const [high, low] = [upper.valueAt(upper.ways[i]!), lower.valueAt(lower.ways[i]!)];
    if (high < low) return [];
    const place = ['bodice', 'draft', 'upper-edge', station];
    return [{ code: 'edges-cross', place, station, upper: -high, lower: -low }];
  });
}
