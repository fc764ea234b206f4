import type { Edge } from '../geometry/edge.ts';
import { tangentAt } from '../geometry/evaluate.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { angleBetween } from '../geometry/point.ts';
import type { Piece } from './piece.ts';

/** One side of a piece: its length, mm, and the angles inside the piece at its ends, radians. */
export interface SideCorners {
  readonly length: number;
  readonly upper: number;
  readonly lower: number;
}

export function backCorners(piece: Piece): SideCorners {
  const [top, back, bottom] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  return {
    length: lengthOfRun(back.curves),
    upper: insideAngle(top, back),
    lower: insideAngle(back, bottom),
  };
}

export function frontCorners(piece: Piece): SideCorners {
  const [top, , bottom, front] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  return {
    length: lengthOfRun(front.curves),
    upper: insideAngle(front, top),
    lower: insideAngle(bottom, front),
  };
}

/** Angle inside the piece between an edge and the one after it, radians. */
function insideAngle(before: Edge, after: Edge): number {
  const into = tangentAt(before.curves[before.curves.length - 1]!, 1);
  const out = tangentAt(after.curves[0]!, 0);
  return angleBetween({ x: -into.x, y: -into.y }, out);
}
