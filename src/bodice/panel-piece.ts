import { closedExactly } from '../draft/closed-exactly.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { upright } from '../draft/grain-line.ts';
import type { Piece } from '../draft/piece.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import { type BodiceMeasures, bodiceStations } from './bodice-measures.ts';
import { flatEdge } from './flat-edge.ts';
import { panelGrain } from './panel-widths.ts';

/** Edges of a panel's outline beside its seams. */
export const UPPER_EDGE = 'upper-edge';
export const LOWER_EDGE = 'waist';

/** The seam-line outline of one panel, laid flat in its frame. */
export function panelPiece(
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
    { name: UPPER_EDGE, curves: flatEdge(frame, upper, p) },
    { name: backEdge, curves: frame.sideFrom('back', ...depthsAt(p + 1)) },
    {
      name: LOWER_EDGE,
      curves: reversedRun(flatEdge(frame, lower, p)),
    },
    { name: frontEdge, curves: reversedRun(frame.sideFrom('front', ...depthsAt(p))) },
  ]);
  const across = grainPlace(panels, p);
  const depthOf = (edge: EdgeProfile): number =>
    edge.valueAt(edge.ways[p]! + across * (edge.ways[p + 1]! - edge.ways[p]!));
  const middle = (depthOf(upper) + depthOf(lower)) / 2;
  return {
    gore: name,
    layers: [],
    edges,
    frontEdge,
    backEdge,
    grain: upright(frame.pointAt(middle, across), edges),
    cut: onFold ? 'on-fold' : 'pair',
  };
}

/** Across the panel; on a fold near it, where the maker lines it up. */
function grainPlace(panels: BodiceMeasures['panels'], p: number): number {
  if (!panels[p]!.onFold) return 0.5;
  return panelGrain(panels, p) === 'front-edge' ? 0.15 : 0.85;
}
