import type { CutPiece } from '../../draft/piece.ts';
import type { Curve, Line } from '../../geometry/curve.ts';
import type { Edge } from '../../geometry/edge.ts';
import { rotated } from '../../geometry/transform.ts';

/** A piece on the bias turned until its thread runs along the cloth: all of it, and then laid like the rest. */
export function toThread(cut: CutPiece): CutPiece {
  const turn = turnToThread(cut);
  const turned = <Own extends Curve>(curve: Own): Own => rotated(curve, turn) as Own;
  const edges = (all: readonly Edge[]): Edge[] =>
    all.map(({ name, curves }) => ({ name, curves: curves.map(turned) }));
  const label: Line = turned({ kind: 'line', from: cut.labelAt, to: cut.labelAt });
  return {
    ...cut,
    piece: { ...cut.piece, edges: edges(cut.piece.edges), grain: turned(cut.piece.grain) },
    cutEdges: edges(cut.cutEdges),
    notches: cut.notches.map((notch) => ({ ...notch, ticks: notch.ticks.map(turned) })),
    marks: cut.marks.map((mark) => ({ ...mark, curves: mark.curves.map(turned) })),
    labelAt: label.from,
  };
}

/** Radians, clockwise as drawn, that bring a piece's grain upright: nought off the bias. */
function turnToThread({ piece: { grain } }: CutPiece): number {
  return Math.atan2(grain.to.x - grain.from.x, grain.to.y - grain.from.y);
}
