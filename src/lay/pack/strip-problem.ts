import type { Point } from '../../geometry/curve.ts';

/**
 * Irregular strip packing: all items are to lie on a strip of fixed width, none over another, and the strip is to be as
 * short as possible. x runs across the strip, y along it, in any unit that the outlines have too.
 */
export interface StripProblem {
  readonly width: number;
  /** Simple polygons, running either way. They are never changed; a copy that is turned or mirrored is an `Attitude`. */
  readonly shapes: readonly (readonly Point[])[];
  readonly items: readonly StripItem[];
  /**
   * Least distance between two items. A little above zero, so that rounding never makes them overlap; or a little below,
   * so that shapes which fill the strip exactly can find their place.
   */
  readonly gap: number;
  /** Where a pattern on the strip lets items lie; anywhere when absent. */
  readonly repeat?: StripRepeat;
}

/** A pattern that every item must meet alike. */
export interface StripRepeat {
  /** Anchors of items lie whole steps from `origin` across the strip. */
  readonly across?: { readonly step: number; readonly origin: number };
  /** The nearer end of every item lies a whole number of steps down the strip. */
  readonly down?: number;
  /** By shape, as drawn: how far the line that is laid on the pattern stands to the right of the middle of its bounds. */
  readonly anchors: readonly number[];
}

/** One thing to place. */
export interface StripItem {
  /** The ways in which it may lie; one is chosen. */
  readonly attitudes: readonly Attitude[];
  /** Where the middle of its bounds must lie across the strip; free when absent. */
  readonly middleAt?: number;
}

/** A shape as it lies: first mirrored (x flipped), then turned by half a turn. */
export interface Attitude {
  readonly shape: number;
  readonly mirrored: boolean;
  readonly turned: boolean;
}

/** Where an item lies: the middle of its bounds. */
export interface StripPlacement {
  readonly attitude: Attitude;
  readonly x: number;
  readonly y: number;
}

/** A finished packing; `placements` are in the order of the problem's items. */
export interface StripPacking {
  readonly length: number;
  readonly placements: readonly StripPlacement[];
}

/** An attitude as signs by which x and y are multiplied, about the middle of the bounds. */
export function signsOf(attitude: Attitude): { readonly x: 1 | -1; readonly y: 1 | -1 } {
  return { x: attitude.mirrored === attitude.turned ? 1 : -1, y: attitude.turned ? -1 : 1 };
}

/** The polygon of a placed item. */
export function placedOutline(problem: StripProblem, placement: StripPlacement): Point[] {
  const outline = problem.shapes[placement.attitude.shape]!;
  const middle = middleOfBounds(outline);
  const signs = signsOf(placement.attitude);
  return outline.map((point) => ({
    x: placement.x + signs.x * (point.x - middle.x),
    y: placement.y + signs.y * (point.y - middle.y),
  }));
}

export function middleOfBounds(outline: readonly Point[]): Point {
  const half = halfBounds(outline);
  return { x: half.left + half.width, y: half.top + half.height };
}

/** Half the width and height of the bounds, and their corner. */
export function halfBounds(outline: readonly Point[]): {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
} {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const point of outline) {
    left = Math.min(left, point.x);
    right = Math.max(right, point.x);
    top = Math.min(top, point.y);
    bottom = Math.max(bottom, point.y);
  }
  return { left, top, width: (right - left) / 2, height: (bottom - top) / 2 };
}

/** Area by the shoelace formula: positive where the outline runs clockwise as drawn (y down). */
export function signedArea(outline: readonly Point[]): number {
  let twice = 0;
  for (let i = 0; i < outline.length; i++) {
    const a = outline[i]!;
    const b = outline[(i + 1) % outline.length]!;
    twice += a.x * b.y - b.x * a.y;
  }
  return twice / 2;
}
