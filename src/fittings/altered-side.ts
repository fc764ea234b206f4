import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Point } from '../geometry/curve.ts';
import { integrate } from '../geometry/integrate.ts';
import { along, scaled } from '../geometry/point.ts';
import { lastKept } from './last-kept.ts';
import type { SeamInset } from './seam-inset.ts';

/** A side edge of a gore as it runs now, by its own true length: s is what it was at `from`, and grows by 1 mm a mm. */
export interface AlteredSide {
  /** Where the edge's place at s lies in the gore as it was: slant distance, and part of the width. */
  readonly placeAt: (s: number) => { readonly slant: number; readonly part: number };
  readonly pointAt: (s: number) => Point;
  /** Unit vector down the edge. */
  readonly downwards: (s: number) => Point;
}

/** Slant distance between two computed places, mm. Larger blurs short alterations; smaller costs time. */
const STEP = 4;

/** An edge moved inwards along the levels, which meet it squarely. */
export function insetSide(
  frame: GoreFrame,
  side: 'front' | 'back',
  inset: SeamInset,
  reach: { readonly from: number; readonly top: number; readonly bottom: number },
): AlteredSide {
  const partAt = (slant: number): number => {
    const part = inset.valueAt(slant) / frame.widthAt(slant);
    return side === 'front' ? part : 1 - part;
  };
  const velocityAt = (slant: number): Point => {
    const width = frame.widthAt(slant);
    const moving = (inset.slopeAt(slant) - (inset.valueAt(slant) * widthSlope(frame, slant)) / width) / width;
    const part = partAt(slant);
    const across = acrossAt(frame, slant, part);
    return along(frame.bySlant(slant, part), across, side === 'front' ? moving : -moving);
  };
  const speedAt = (slant: number): number => {
    const { x, y } = velocityAt(slant);
    return Math.hypot(x, y);
  };
  const slantAt = lastKept(byLength(speedAt, reach));
  return {
    placeAt: (s) => {
      const slant = slantAt(s);
      return { slant, part: partAt(slant) };
    },
    pointAt: (s) => {
      const slant = slantAt(s);
      return frame.pointAt(slant, partAt(slant));
    },
    downwards: (s) => {
      const velocity = velocityAt(slantAt(s));
      return scaled(velocity, 1 / Math.hypot(velocity.x, velocity.y));
    },
  };
}

/** An edge that stays where it is. */
export function sameSide(frame: GoreFrame, side: 'front' | 'back'): AlteredSide {
  const part = side === 'front' ? 0 : 1;
  return {
    placeAt: (s) => ({ slant: s, part }),
    pointAt: (s) => frame.pointAt(s, part),
    downwards: (s) => {
      const down = frame.downAt(s, part);
      return { x: Math.sin(down), y: Math.cos(down) };
    },
  };
}

/** How the point moves with the part of the width, mm. */
export function acrossAt(frame: GoreFrame, slant: number, part: number): Point {
  const down = frame.downAt(slant, part);
  return scaled({ x: Math.cos(down), y: -Math.sin(down) }, frame.widthAt(slant));
}

const NUDGE = 0.05;

function widthSlope(frame: GoreFrame, slant: number): number {
  return (frame.widthAt(slant + NUDGE) - frame.widthAt(slant - NUDGE)) / (2 * NUDGE);
}

/** The slant distance at which an edge of this speed has run so far; `from` keeps its number. */
function byLength(
  speedAt: (slant: number) => number,
  { from, top, bottom }: { readonly from: number; readonly top: number; readonly bottom: number },
): (s: number) => number {
  const count = Math.ceil((bottom - top) / STEP);
  const runs = [0];
  for (let i = 0; i < count; i++)
    runs.push(runs[i]! + integrate(speedAt, top + i * STEP, top + (i + 1) * STEP, 1));
  const runTo = (slant: number): number => {
    const i = Math.min(count - 1, Math.max(0, Math.floor((slant - top) / STEP)));
    return runs[i]! + integrate(speedAt, top + i * STEP, slant, 1);
  };
  const start = runTo(from);
  return (s) => {
    const wanted = start + s - from;
    let slant = s;
    for (let step = 0; step < 20; step++) {
      const change = (runTo(slant) - wanted) / speedAt(slant);
      slant -= change;
      if (Math.abs(change) < 1e-11) break;
    }
    return slant;
  };
}
