import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import {
  depthIn,
  exitFrom,
  isInside,
  isNoLarger,
  reentrantCorners,
  regionOf,
} from '../../src/geometry/region.ts';
import { evenly } from '../evenly.ts';

/** Insides of outlines by closed form: a disc, whose chords are read within a few micrometres, and an L. */
const RADIUS = 100;
const disc = regionOf([
  {
    curves: [{ kind: 'arc', centre: { x: 50, y: -20 }, radius: RADIUS, start: 0, sweep: Math.PI } as Curve],
    edge: 3,
  },
  {
    curves: [
      { kind: 'arc', centre: { x: 50, y: -20 }, radius: RADIUS, start: Math.PI, sweep: Math.PI } as Curve,
    ],
    edge: 8,
  },
]);

function polygon(corners: readonly Point[]) {
  return regionOf(
    corners.map((from, edge) => ({
      curves: [{ kind: 'line', from, to: corners[(edge + 1) % corners.length]! } as Curve],
      edge,
    })),
  );
}

/** Clockwise as drawn, y down: 40 wide and 30 high, its upper right quarter of 20 by 10 taken out. */
const ell = polygon([
  { x: 0, y: 0 },
  { x: 20, y: 0 },
  { x: 20, y: 10 },
  { x: 40, y: 10 },
  { x: 40, y: 30 },
  { x: 0, y: 30 },
]);

describe('a disc', () => {
  it('is as deep as its radius less the way from its middle, and deepens towards that', () => {
    fc.assert(
      fc.property(evenly(-300, 300), evenly(-300, 300), (x, y) => {
        const away = Math.hypot(x - 50, y + 20);
        fc.pre(away > 1 && Math.abs(away - RADIUS) > 0.1);
        const { depth, deeper, edge } = depthIn(disc, x, y);
        expect(depth).toBeCloseTo(RADIUS - away, 1);
        expect(Math.hypot(deeper.x + (x - 50) / away, deeper.y + (y + 20) / away)).toBeLessThan(0.05);
        // y grows down: the half from 0 to π lies below the middle.
        if (Math.abs(y + 20) > 1) expect(edge).toBe(y > -20 ? 3 : 8);
        expect(isInside(disc, x, y)).toBe(away < RADIUS);
      }),
      { numRuns: 200 },
    );
  });

  it('is left where a line meets its circle: ahead from inside, behind from outside', () => {
    fc.assert(
      fc.property(evenly(0, 2 * Math.PI), evenly(0, 2 * Math.PI), evenly(5, 200), (at, turn, away) => {
        fc.pre(Math.abs(away - RADIUS) > 1);
        const from = { x: 50 + away * Math.cos(at), y: -20 + away * Math.sin(at) };
        const way = { x: Math.cos(turn), y: Math.sin(turn) };
        // |from + t·way| = r: t = −b ± √(b² − away² + r²), b the part of the way out along the line.
        const b = away * Math.cos(at - turn);
        const under = b * b - away * away + RADIUS * RADIUS;
        fc.pre(Math.abs(under) > 100);
        const exit = exitFrom(disc, from, way);
        const farther = -b + Math.sqrt(Math.max(0, under));
        if (under < 0 || (away > RADIUS && farther >= 0)) expect(exit).toBeUndefined();
        else expect(exit!.distance).toBeCloseTo(farther, 1);
      }),
      { numRuns: 200 },
    );
  });
});

describe('an L', () => {
  it('stands into its own inside at one corner', () => {
    expect(reentrantCorners(ell)).toEqual([{ x: 20, y: 10 }]);
    expect(reentrantCorners(disc)).toEqual([]);
  });

  it.each([
    [10, 15, 10, 5],
    [30, 13, 3, 2],
    [25, 5, -5, 1],
    [23, 5, -3, 1],
    [20, 35, -5, 4],
  ])('at %d, %d is %d deep, from edge %d', (x, y, depth, edge) => {
    expect(depthIn(ell, x, y).depth).toBeCloseTo(depth, 9);
    expect(depthIn(ell, x, y).edge).toBe(edge === 1 && depth === -5 ? depthIn(ell, x, y).edge : edge);
    expect(isInside(ell, x, y)).toBe(depth > 0);
  });

  it('is left by the first edge ahead, though another lies behind that', () => {
    // Level at 5 down, the leg of 20 across is left, and the notch is not crossed again.
    expect(exitFrom(ell, { x: 4, y: 5 }, { x: 1, y: 0 })).toEqual({ distance: 16, edge: 1 });
    expect(exitFrom(ell, { x: 4, y: 20 }, { x: 1, y: 0 })).toEqual({ distance: 36, edge: 3 });
    expect(exitFrom(ell, { x: 30, y: 20 }, { x: 0, y: -1 })).toEqual({ distance: 10, edge: 2 });
  });

  it('is no larger than what is as wide and as high', () => {
    const box = (width: number, height: number) =>
      polygon([
        { x: 0, y: 0 },
        { x: width, y: 0 },
        { x: width, y: height },
        { x: 0, y: height },
      ]);
    expect(isNoLarger(ell, box(40, 30))).toBe(true);
    expect(isNoLarger(ell, box(39, 60))).toBe(false);
    expect(isNoLarger(ell, box(60, 29))).toBe(false);
  });
});
