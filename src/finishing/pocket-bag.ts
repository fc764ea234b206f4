import { upright } from '../draft/grain-line.ts';
import type { Piece } from '../draft/piece.ts';
import type { Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import type { Pocket } from '../gown/openings.ts';

/** How far a bag reaches above its opening, mm (common practice). */
export const BAG_ABOVE = 25;

/** Of the bag's lower corner, as a share of its width. */
const ROUNDED = 0.45;

/**
 * One side of a bag, its seam edge at the left; a pair for each pocket.
 *
 * ```
 *   ┌────────┐   top
 *   ╎        │   opening, between two notches of the seam edge
 *   ╎        │
 *   │        │   depth, from the upper end of the opening
 *   └──────╯
 * ```
 */
export function bagPiece({ depth, width }: Pocket, name: string): Piece {
  const low = BAG_ABOVE + depth;
  const round = ROUNDED * width;
  const at = (x: number, y: number): Point => ({ x, y });
  const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
  const edges: Edge[] = [
    { name: 'top', curves: [line(at(0, 0), at(width, 0))] },
    {
      name: 'bag-edge',
      curves: [
        line(at(width, 0), at(width, low - round)),
        {
          kind: 'arc',
          centre: at(width - round, low - round),
          radius: round,
          start: 0,
          sweep: Math.PI / 2,
        },
      ],
    },
    { name: 'bottom', curves: [line(at(width - round, low), at(0, low))] },
    { name: 'seam-edge', curves: [line(at(0, low), at(0, 0))] },
  ];
  return {
    gore: name,
    part: 'pocket',
    layers: [],
    edges,
    frontEdge: 'seam-edge',
    backEdge: 'bag-edge',
    grain: upright(at(width / 2, low / 2), edges),
    cut: 'pair',
  };
}
