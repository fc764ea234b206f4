import type { CutPiece, Piece } from '../draft/piece.ts';
import type { Curve, Line } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { type Placement, placed, placedPoint } from '../geometry/transform.ts';

/** A piece with every coordinate moved: seam lines, cut lines, notches, marks and grain alike. */
export function movedPiece(cutPiece: CutPiece, placement: Placement): CutPiece {
  const curves = (list: readonly Curve[]) => list.map((curve) => placed(placement, curve));
  const edges = (list: readonly Edge[]) => list.map((edge) => ({ ...edge, curves: curves(edge.curves) }));
  const piece: Piece = {
    ...cutPiece.piece,
    edges: edges(cutPiece.piece.edges),
    grain: movedLine(cutPiece.piece.grain, placement),
  };
  return {
    ...cutPiece,
    piece,
    cutEdges: edges(cutPiece.cutEdges),
    notches: cutPiece.notches.map((notch) => ({
      ...notch,
      ticks: notch.ticks.map((tick) => movedLine(tick, placement)),
    })),
    marks: cutPiece.marks.map((mark) => ({ ...mark, curves: curves(mark.curves) })),
    ...(cutPiece.stones === undefined
      ? {}
      : { stones: cutPiece.stones.map((set) => ({ ...set, runs: set.runs.map(curves) })) }),
    labelAt: placedPoint(placement, cutPiece.labelAt),
  };
}

function movedLine(line: Line, placement: Placement): Line {
  return { kind: 'line', from: placedPoint(placement, line.from), to: placedPoint(placement, line.to) };
}
