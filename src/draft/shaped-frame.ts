import type { Curve, Point } from '../geometry/curve.ts';
import type { GoreFrame } from './gore-frame.ts';
import { type HalfGore, halfGore } from './half-gore.ts';
import { across, runAcross } from './unfolded.ts';
import type { WidthDown } from './width-down.ts';

/** Where the straight axis of a shaped gore lies: both halves alike about the centre, or one straight edge. */
export type ShapedGrain = 'centre' | 'front-edge' | 'back-edge';

/** Half of the step over which the movement of an inner point is measured, mm. */
const NUDGE = 0.05;

/**
 * A gore shaped over hips or a petticoat: its width follows the body from level to level.
 * @param width of the whole piece along the level
 * @param length how far down it is wanted, mm
 */
export function shapedFrame(width: WidthDown, length: number, grain: ShapedGrain): GoreFrame | undefined {
  const share = grain === 'centre' ? 0.5 : 1;
  const half = halfGore(
    { valueAt: (s) => width.valueAt(s) * share, slopeAt: (s) => width.slopeAt(s) * share },
    length,
    grain === 'centre' ? 'middle' : 'edge',
  );
  if (half === undefined) return undefined;
  // Signed part of a half: negative in front of the axis, positive behind it.
  const sideOf = (f: number): number => (grain === 'centre' ? 2 * f - 1 : grain === 'front-edge' ? f : f - 1);
  const pointAt = (s: number, f: number): Point => {
    const side = sideOf(f);
    const point = half.pointAt(s, Math.abs(side));
    return side < 0 ? { x: -point.x, y: point.y } : point;
  };
  return {
    widthAt: width.valueAt,
    pointAt,
    downAt: (s, f) => Math.sign(sideOf(f)) * half.downAt(s, Math.abs(sideOf(f))),
    bySlant: (s, f) => {
      const above = pointAt(s - NUDGE, f);
      const below = pointAt(s + NUDGE, f);
      return { x: (below.x - above.x) / (2 * NUDGE), y: (below.y - above.y) / (2 * NUDGE) };
    },
    levelAt: (s) => levelOf(half, s, grain),
    sideFrom: (side, from, to) => {
      if (grain === `${side}-edge`) return [{ kind: 'line', from: { x: 0, y: from }, to: { x: 0, y: to } }];
      const seam = half.seamFrom(from, to);
      return side === 'back' ? seam : seam.map((curve) => across(curve, 0));
    },
  };
}

function levelOf(half: HalfGore, s: number, grain: ShapedGrain): Curve[] {
  const behind = half.levelAt(s);
  if (grain === 'front-edge') return behind;
  const before = runAcross(behind, 0);
  return grain === 'back-edge' ? before : [...before, ...behind];
}
