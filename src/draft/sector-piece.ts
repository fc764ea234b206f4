import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import { upright } from './grain-line.ts';
import type { Piece } from './piece.ts';
import { sectorFrame } from './sector-frame.ts';

/** The two ends of a strip: the right end of one piece is sewn to the left end of the next. */
export const JOINS = { left: 'left-join', right: 'right-join' } as const;

/** What a plain ring sector or rectangle is made from; mm. */
export interface SectorMeasures {
  readonly name: string;
  /** Along the upper and the lower arc. */
  readonly top: number;
  readonly hem: number;
  readonly depth: number;
  readonly layers: readonly string[];
  readonly copies: number;
}

/** A flounce's or a strip's piece, its edges `top`, the two joins and `hem`: a sector of a ring, or a rectangle where its two edges are equal. */
export function sectorPiece(measures: SectorMeasures): Piece {
  const { top, hem, depth } = measures;
  const flare = (hem - top) / depth;
  const frame = sectorFrame(top, flare / 2, flare / 2);
  const edges: Edge[] = [
    { name: 'top', curves: frame.levelAt(0) },
    { name: JOINS.right, curves: frame.sideFrom('back', 0, depth) },
    { name: 'hem', curves: reversedRun(frame.levelAt(depth)) },
    { name: JOINS.left, curves: reversedRun(frame.sideFrom('front', 0, depth)) },
  ];
  return {
    gore: measures.name,
    layers: measures.layers,
    edges,
    frontEdge: JOINS.left,
    backEdge: JOINS.right,
    grain: upright(frame.pointAt(depth / 2, 0.5), edges),
    cut: 'single',
    copies: measures.copies,
    ...(flare === 0 ? { strip: true as const } : {}),
  };
}
