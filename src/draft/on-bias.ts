import type { Line, Point } from '../geometry/curve.ts';
import { middle } from '../geometry/point.ts';
import { placedPoint, rotated } from '../geometry/transform.ts';
import { upright } from './grain-line.ts';
import { wholeOf } from './halves-apart.ts';
import type { Piece } from './piece.ts';

/** Half a right angle: true bias. */
const TILT = Math.PI / 4;

/**
 * A piece whose cloth lies on the bias: the straight thread runs across it at 45°, up to the right on her left half and up
 * to the left on her right, so that both halves hang alike. What would lie on the fold is cut whole, as no fold of cloth
 * runs that way.
 */
export function onBias(piece: Piece): Piece {
  const whole = piece.cut === 'on-fold' ? wholeOf(piece) : piece;
  const tilt = whole.side === 'right' ? -TILT : TILT;
  return {
    ...whole,
    grain: threadThrough(middle(piece.grain.from, piece.grain.to), whole, tilt),
    bias: true,
  };
}

/** A line along the thread: upright on the piece as it lies with the thread upright. */
function threadThrough(through: Point, { edges }: Piece, tilt: number): Line {
  const turn = (angle: number) => ({ mirror: false, angle, shift: { x: 0, y: 0 } });
  const laid = edges.map(({ name, curves }) => ({
    name,
    curves: curves.map((curve) => rotated(curve, -tilt)),
  }));
  return rotated(upright(placedPoint(turn(-tilt), through), laid), tilt) as Line;
}
