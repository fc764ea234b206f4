import { describe, expect, it } from 'vitest';
import { laidOn } from '../../src/compare/best-shift.ts';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { regionOf } from '../../src/geometry/region.ts';

/** Squares laid on a square of 100: where they fit, how far they are moved, how far they stick out; by hand. mm. */

const corners = (left: number, top: number, size: number): Point[] => [
  { x: left, y: top },
  { x: left + size, y: top },
  { x: left + size, y: top + size },
  { x: left, y: top + size },
];
const lines = (ring: readonly Point[]): Line[] =>
  ring.map((from, i) => ({ kind: 'line', from, to: ring[(i + 1) % ring.length]! }));
/** Its corners and every tenth between them. */
const points = (ring: readonly Point[]): Point[] =>
  lines(ring).flatMap(({ from, to }) =>
    Array.from({ length: 10 }, (_, i) => ({
      x: from.x + ((to.x - from.x) * i) / 10,
      y: from.y + ((to.y - from.y) * i) / 10,
    })),
  );
const region = (ring: readonly Point[]) =>
  regionOf(lines(ring).map((line, edge) => ({ curves: [line], edge })));
const cloth = region(corners(0, 0, 100));
const laid = (left: number, top: number, size: number, onFold = false) =>
  laidOn(points(corners(left, top, size)), cloth, { x: 0, y: 0 }, onFold);
const near = (value: number, places = 1) => expect.closeTo(value, places);

describe('an outline laid on cloth', () => {
  it('stays where it fits, with as much room as there is at its shallowest point', () => {
    expect(laid(3, 20, 60)).toEqual({ shift: { x: 0, y: 0 }, depth: near(3, 6) });
    expect(laidOn(points(corners(1003, 20, 60)), cloth, { x: -1000, y: 0 }, false)).toEqual({
      shift: { x: -1000, y: 0 },
      depth: near(3, 6),
    });
  });

  it('is moved towards where it lies deepest, along and across no farther than makes it fit', () => {
    // Out by 5 at the right and by 3 below; deepest at −7, −5.
    const { shift, depth } = laid(9, 7, 96);
    expect(shift).toEqual({ x: near(-5), y: near(-3) });
    // Out below alone it has no way to the side to go, nor out at the side a way up.
    expect(laid(2, 7, 96).shift).toEqual({ x: 0, y: near(-3) });
    expect(laid(9, 2, 96).shift).toEqual({ x: near(-5), y: 0 });
    expect(depth).toBeGreaterThan(-0.01);
    expect(depth).toBeLessThan(0.05);
  });

  it('on the fold only along it', () => {
    // Out by 3 below, deepest at −5; across it stays.
    const { shift } = laid(2, 7, 96, true);
    expect(shift).toEqual({ x: 0, y: near(-3) });
    // Out at the side it cannot be helped.
    const out = laid(9, 2, 96, true);
    expect([out.shift.x, out.depth]).toEqual([0, near(-5)]);
  });

  it('too large, it sticks out as little as can be, alike on all sides', () => {
    const { shift, depth } = laid(1, -9, 104);
    expect(shift).toEqual({ x: near(-3), y: near(7) });
    // At its corners.
    expect(depth).toBeCloseTo(-2 * Math.SQRT2, 1);
    // From far away, in more than one step.
    const far = laid(150, 0, 90);
    expect(far.shift.x).toBeCloseTo(-140, 0);
    expect(far.depth).toBeGreaterThan(-0.01);
  });

  it('no corner of the cloth may stand into it between two of its points', () => {
    // A notch of 20 by 20 from above in the middle of the cloth: two corners of the outline alone would pass it by.
    const notched = region([
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 20 },
      { x: 60, y: 20 },
      { x: 60, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 100 },
      { x: 0, y: 100 },
    ]);
    const ring = corners(10, 10, 80);
    const without = laidOn(ring, notched, { x: 0, y: 0 }, false);
    expect(without.shift).toEqual({ x: 0, y: 0 });
    // Its upper edge lies 10 above the notch's lower one.
    expect(laidOn(ring, notched, { x: 0, y: 0 }, true, region(ring)).depth).toBeCloseTo(-10, 6);
  });
});
