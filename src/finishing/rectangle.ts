import { upright } from '../draft/grain-line.ts';
import type { PartOfGown, Piece } from '../draft/piece.ts';
import { sectorFrame } from '../draft/sector-frame.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';

/** Names of a rectangle's edges: its upper end, its right side, its lower end, its left side. */
export type RectangleEdges = readonly [string, string, string, string];

/** What is sewn on along its left side and folded or left free along its right one. */
export const STRIP_EDGES: RectangleEdges = ['upper-end', 'long-edge', 'lower-end', 'sewn-edge'];
/** The same with a free edge that is neatened. */
export const FACING_EDGES: RectangleEdges = ['upper-end', 'inner-edge', 'lower-end', 'sewn-edge'];

/** A rectangle with its length along the thread: given by its size, and not printed. mm, sewn. */
export function rectangle(
  { name, part, copies = 1 }: { readonly name: string; readonly part: PartOfGown; readonly copies?: number },
  { along, across }: { readonly along: number; readonly across: number },
  [upper, right, lower, left]: RectangleEdges,
): Piece {
  const frame = sectorFrame(across, 0, 0);
  const edges: Edge[] = [
    { name: upper, curves: frame.levelAt(0) },
    { name: right, curves: frame.sideFrom('back', 0, along) },
    { name: lower, curves: reversedRun(frame.levelAt(along)) },
    { name: left, curves: reversedRun(frame.sideFrom('front', 0, along)) },
  ];
  return {
    gore: name,
    part,
    layers: [],
    edges,
    frontEdge: left,
    backEdge: right,
    grain: upright(frame.pointAt(along / 2, 0.5), edges),
    cut: 'single',
    copies,
    bySize: true,
  };
}
