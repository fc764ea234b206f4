import { acrossFrame } from '../draft/across-frame.ts';
import { closedExactly } from '../draft/closed-exactly.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { upright } from '../draft/grain-line.ts';
import type { Piece } from '../draft/piece.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import type { BodiceFault } from './bodice-fault.ts';
import { type BodiceMeasures, bodiceStations } from './bodice-measures.ts';
import { measureFaults } from './check-measures.ts';
import { edgeThrough } from './edge-through.ts';
import { panelFrames, type Reach } from './panel-frames.ts';
import { panelGrain, panelWidths } from './panel-widths.ts';
import { type SewnLevel, sewnLevels } from './sewn-levels.ts';

/** Edges of a panel's outline beside its seams. */
export const UPPER_EDGE = 'upper-edge';
export const LOWER_EDGE = 'waist';

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
  if (upper === undefined) return unsettled('upper edge', 'upper-edge');
  const lower = edgeThrough(frames, depths.lower, pointsOf(measures.lowerEdge.points, stations));
  if (lower === undefined) return unsettled('lower edge', 'panels');
  const crossed = crossing(stations, upper, lower);
  if (crossed.length > 0) return { faults: crossed };
  const pieces = panels.map((_, p) => panelPiece(measures, p, frames[p]!, upper, lower));
  return { stations, levels, widths: shared.widths, frames, upper, lower, pieces };
}

interface EdgeDepths {
  readonly upper: readonly (number | undefined)[];
  readonly lower: readonly number[];
}

/** Slant distances below the level waist, by station; the lower edge lies at the waist where nothing is said. */
function edgeDepths({ upperEdge, lowerEdge }: BodiceMeasures, stations: readonly string[]): EdgeDepths {
  return {
    upper: stations.map((name) => {
      const above = upperEdge.above[name];
      return above === undefined ? undefined : -above;
    }),
    lower: stations.map((name) => 0 - (lowerEdge.above[name] ?? 0)),
  };
}

function reachOf({ upper, lower }: EdgeDepths): Reach {
  const highest = Math.min(...upper.map((depth) => depth ?? Number.POSITIVE_INFINITY));
  return { top: -highest, bottom: -Math.max(...lower) };
}

/** Below the lowest girth nothing says how wide she is; a body widens there. */
function beyondGirths(
  girths: BodiceMeasures['girths'],
  stations: readonly string[],
  { lower }: EdgeDepths,
): BodiceFault[] {
  const lowest = girths.reduce((low, level) => (level.above < low.above ? level : low));
  return stations.flatMap((station, i): BodiceFault[] => {
    if (lower[i]! <= -lowest.above + WITHIN_GIRTHS) return [];
    return [
      {
        code: 'no-girth-so-low',
        place: ['bodice', 'drop-below-waist', station],
        station,
        below: lower[i]!,
        lowest: lowest.at,
        at: -lowest.above,
      },
    ];
  });
}

/** An edge may run this far below the lowest girth, mm: rounding of inches, not cloth. */
const WITHIN_GIRTHS = 0.5;

function pointsOf(names: readonly string[], stations: readonly string[]): number[] {
  return names.map((name) => stations.indexOf(name));
}

function unsettled(edge: string, key: string): HalfDrafted {
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

/** The seam-line outline of one panel, laid flat in its frame. */
function panelPiece(
  { panels }: BodiceMeasures,
  p: number,
  frame: GoreFrame,
  upper: EdgeProfile,
  lower: EdgeProfile,
): Piece {
  const { name, onFold } = panels[p]!;
  const stations = bodiceStations(panels);
  const foldsBack = onFold && p > 0;
  const frontEdge = onFold && p === 0 ? 'fold' : stations[p]!;
  const backEdge = foldsBack ? 'fold' : stations[p + 1]!;
  const depthsAt = (station: number): [number, number] => [
    upper.valueAt(upper.ways[station]!),
    lower.valueAt(lower.ways[station]!),
  ];
  const edges: Edge[] = closedExactly([
    { name: UPPER_EDGE, curves: acrossFrame(frame, upper, upper.ways[p]!, upper.ways[p + 1]!) },
    { name: backEdge, curves: frame.sideFrom('back', ...depthsAt(p + 1)) },
    {
      name: LOWER_EDGE,
      curves: reversedRun(acrossFrame(frame, lower, lower.ways[p]!, lower.ways[p + 1]!)),
    },
    { name: frontEdge, curves: reversedRun(frame.sideFrom('front', ...depthsAt(p))) },
  ]);
  const middle = (depthsAt(p)[0] + depthsAt(p)[1] + depthsAt(p + 1)[0] + depthsAt(p + 1)[1]) / 4;
  return {
    gore: name,
    layers: [],
    edges,
    frontEdge,
    backEdge,
    grain: upright(frame.pointAt(middle, grainPlace(panels, p)), edges),
    cut: onFold ? 'on-fold' : 'pair',
  };
}

/** Across the panel; on a fold near it, where the maker lines it up. */
function grainPlace(panels: BodiceMeasures['panels'], p: number): number {
  if (!panels[p]!.onFold) return 0.5;
  return panelGrain(panels, p) === 'front-edge' ? 0.15 : 0.85;
}
