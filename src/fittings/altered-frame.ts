import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { fitCubics } from '../geometry/fit-cubics.ts';
import { hermiteProfile } from '../geometry/hermite-profile.ts';
import { integrate } from '../geometry/integrate.ts';
import { along, dot } from '../geometry/point.ts';
import { FIT } from '../geometry/tolerances.ts';
import { type AlteredSide, acrossAt, insetSide, sameSide } from './altered-side.ts';
import { lastKept } from './last-kept.ts';
import type { SeamInset } from './seam-inset.ts';

/** What one edge is moved inwards by, and the slant distance from which its length is kept. */
export interface AlteredEdge {
  readonly inset: SeamInset;
  readonly from: number;
}

/** The sides of a gore that are altered, each with the slant distance of the waist seam there. */
export interface AlteredEdges {
  readonly front?: AlteredEdge;
  readonly back?: AlteredEdge;
}

/**
 * A gore whose side edges were taken in or let out. Each edge keeps its length from the waist seam, so that partners
 * still agree, and every level is bent a little so that it meets both edges squarely, as the hem's truth needs.
 * @param bottom how far down it is wanted, slant distance, mm
 * @param top how far up
 */
export function alteredFrame(
  frame: GoreFrame,
  edges: AlteredEdges,
  bottom: number,
  top: number = highest(frame),
): GoreFrame {
  const sideOf = (side: 'front' | 'back'): AlteredSide => {
    const edge = edges[side];
    if (edge === undefined) return sameSide(frame, side);
    return insetSide(frame, side, edge.inset, { from: edge.from, top, bottom });
  };
  const sides = { front: sideOf('front'), back: sideOf('back') };
  const levelAt = lastKept((s) => levelBetween(frame, sides, s));
  const widthAt = widthTable((s) => lengthOf(levelAt(s)), top, bottom);
  const pointAt = (s: number, f: number): Point => {
    if (f === 0 || f === 1) return sides[f === 0 ? 'front' : 'back'].pointAt(s);
    const level = levelAt(s);
    return level.pointAt(partAtLength(level, f));
  };
  return {
    widthAt,
    pointAt,
    downAt: (s, f) => {
      const level = levelAt(s);
      const { x, y } = level.velocityAt(f === 0 || f === 1 ? f : partAtLength(level, f));
      return Math.atan2(-y, x);
    },
    bySlant: (s, f) => {
      if (f === 0 || f === 1) return sides[f === 0 ? 'front' : 'back'].downwards(s);
      const above = pointAt(s - NUDGE, f);
      const below = pointAt(s + NUDGE, f);
      return { x: (below.x - above.x) / (2 * NUDGE), y: (below.y - above.y) / (2 * NUDGE) };
    },
    levelAt: (s) => {
      const level = levelAt(s);
      return fitCubics({ pointAt: level.pointAt, derivativeAt: level.velocityAt }, 0, 1, FIT);
    },
    sideFrom: (side, from, to): readonly Curve[] => {
      if (edges[side] === undefined) return frame.sideFrom(side, from, to);
      const { pointAt: edgeAt, downwards } = sides[side];
      return fitCubics({ pointAt: edgeAt, derivativeAt: downwards }, from, to, FIT);
    },
  };
}

/** How far above the level waist edges are followed, slant distance, mm: room for a waist edge that goes up. */
const ABOVE = 100;
/** Part of the level waist's width that must be left up there: a full circle has its middle not far above. */
const LEAST_WIDTH = 0.3;

function highest(frame: GoreFrame): number {
  let top = -ABOVE;
  while (frame.widthAt(top) < LEAST_WIDTH * frame.widthAt(0)) top /= 2;
  return top;
}

/** Half of the step over which the movement of an inner point is measured, mm. */
const NUDGE = 0.05;

/** A level from the front edge to the back edge, over a part from 0 to 1 that is not quite its length. */
interface Level {
  readonly pointAt: (part: number) => Point;
  readonly velocityAt: (part: number) => Point;
}

/** The old levels, slid down or up a little across the gore: as far as each edge asks at its end, and square to both. */
function levelBetween(frame: GoreFrame, sides: { front: AlteredSide; back: AlteredSide }, s: number): Level {
  const front = sides.front.placeAt(s);
  const back = sides.back.placeAt(s);
  const span = back.part - front.part;
  const slideAt = (place: typeof front, downwards: Point): number =>
    (-span * dot(acrossAt(frame, place.slant, place.part), downwards)) /
    dot(frame.bySlant(place.slant, place.part), downwards);
  const slides = [slideAt(front, sides.front.downwards(s)), slideAt(back, sides.back.downwards(s))];
  const slant = hermiteProfile([0, 1], [front.slant, back.slant], slides);
  return {
    pointAt: (part) => frame.pointAt(slant.valueAt(part), front.part + span * part),
    velocityAt: (part) => {
      const at = slant.valueAt(part);
      const across = acrossAt(frame, at, front.part + span * part);
      const down = frame.bySlant(at, front.part + span * part);
      return along({ x: across.x * span, y: across.y * span }, down, slant.slopeAt(part));
    },
  };
}

function lengthOf(level: Level, to = 1): number {
  return integrate(
    (part) => {
      const { x, y } = level.velocityAt(part);
      return Math.hypot(x, y);
    },
    0,
    to,
    2,
  );
}

/** Newton, from the guess that the part is the length's. */
function partAtLength(level: Level, fraction: number): number {
  const wanted = fraction * lengthOf(level);
  let part = fraction;
  for (let step = 0; step < 12; step++) {
    const { x, y } = level.velocityAt(part);
    const change = (lengthOf(level, part) - wanted) / Math.hypot(x, y);
    part -= change;
    if (Math.abs(change) < 1e-13) break;
  }
  return part;
}

/** Slant distance between two measured widths, mm. */
const WIDTH_STEP = 5;

/** Widths measured once each few millimetres and read between them: a hem asks for thousands. */
function widthTable(measure: (s: number) => number, top: number, bottom: number): (s: number) => number {
  const count = Math.ceil((bottom - top) / WIDTH_STEP) + 1;
  const widths = Array.from({ length: count }, (_, i) => measure(top + i * WIDTH_STEP));
  const slopes = widths.map((_, i) => {
    const [before, after] = [Math.max(0, i - 1), Math.min(count - 1, i + 1)];
    return (widths[after]! - widths[before]!) / (after - before);
  });
  return (s) => {
    const i = Math.min(count - 2, Math.max(0, Math.floor((s - top) / WIDTH_STEP)));
    const t = (s - top) / WIDTH_STEP - i;
    const u = 1 - t;
    return (
      widths[i]! * u * u * (1 + 2 * t) +
      widths[i + 1]! * t * t * (3 - 2 * t) +
      t * u * (slopes[i]! * u - slopes[i + 1]! * t)
    );
  };
}
