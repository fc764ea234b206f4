import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meeting, straightOn } from '../../src/geometry/corner.ts';
import { chordsCross, crossingsOf } from '../../src/geometry/crossings.ts';
import type { Arc, Curve, Line } from '../../src/geometry/curve.ts';
import { endOf, pointAt, startOf } from '../../src/geometry/evaluate.ts';
import { partOf } from '../../src/geometry/split.ts';
import { evenly } from '../evenly.ts';

const line = (x1: number, y1: number, x2: number, y2: number): Line => ({
  kind: 'line',
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
});
const circle = (x: number, y: number, radius: number, start = 0, sweep = 2 * Math.PI): Arc => ({
  kind: 'arc',
  centre: { x, y },
  radius,
  start,
  sweep,
});
const close = (value: number) => expect.closeTo(value, 7);

describe('two chords', () => {
  const chords = (a: Line, b: Line, ...slacks: number[]) =>
    chordsCross(a.from, a.to, b.from, b.to, ...slacks);

  it('cross at so much of each, in order', () => {
    expect(chords(line(0, 0, 10, 0), line(2, -3, 2, 1))).toEqual([0.2, 0.75]);
    expect(chords(line(2, -3, 2, 1), line(0, 0, 10, 0))).toEqual([0.75, 0.2]);
    expect(chords(line(0, 0, 10, 0), line(0, 4, 10, 4))).toBeUndefined();
    expect(chords(line(0, 0, 10, 0), line(0, 0, 10, 0))).toBeUndefined();
  });

  it('count their very ends, and as far beyond as is allowed: no farther, on either end of either', () => {
    const across = line(0, 0, 10, 0);
    const at = (x: number, ...slacks: number[]) => chords(across, line(x, -5, x, 5), ...slacks)?.[0];
    const from = (x: number, ...slacks: number[]) => chords(line(x, -5, x, 5), across, ...slacks)?.[1];
    expect([at(0), at(10), from(0), from(10)]).toEqual([0, 1, 0, 1].map(close));
    expect([at(-0.1), at(10.1), from(-0.1), from(10.1)]).toEqual(new Array(4).fill(undefined));
    expect([at(-2, 0.2), at(12, 0.2), from(-2, 0, 0.2), from(12, 0, 0.2)]).toEqual([-0.2, 1.2, -0.2, 1.2]);
    expect([at(-2.1, 0.2), at(12.1, 0.2), from(-2.1, 0, 0.2), from(12.1, 0, 0.2)]).toEqual(
      new Array(4).fill(undefined),
    );
    // The slack of the one is not that of the other.
    expect([at(-2, 0, 0.2), from(-2, 0.2, 0)]).toEqual([undefined, undefined]);
  });
});

describe('crossings by closed form', () => {
  it('two lines cross once, at their ends too; beside their ends they do not', () => {
    const crossed = (b: Line) => crossingsOf(line(0, 0, 100, 0), b);
    expect(crossed(line(30, -10, 30, 40))).toEqual([
      { t: close(0.3), u: close(0.2), point: { x: close(30), y: close(0) } },
    ]);
    expect(crossed(line(100, 0, 100, 40))).toEqual([{ t: 1, u: 0, point: { x: 100, y: 0 } }]);
    expect(crossed(line(0, 40, 0, 0))).toEqual([{ t: 0, u: 1, point: { x: 0, y: 0 } }]);
    // A thousandth of a millimetre short, on each side.
    for (const short of [
      line(100.001, -5, 100.001, 5),
      line(-0.001, -5, -0.001, 5),
      line(50, 0.001, 50, 5),
      line(50, -5, 50, -0.001),
    ]) {
      expect(crossed(short)).toEqual([]);
      expect(crossingsOf(short, line(0, 0, 100, 0))).toEqual([]);
    }
    expect(crossed(line(20, 0, 60, 0))).toEqual([]);
  });

  it('what is meant to meet end to end meets, whatever the last digit says; parameters stay on the curve', () => {
    for (const off of [-5e-9, 5e-9]) {
      const [found, ...rest] = crossingsOf(line(0, 0, 100, 0), line(100 + off, 0 + off, 100 + off, 40));
      expect(rest).toEqual([]);
      expect(found!.t).toBeLessThanOrEqual(1);
      expect(found!.u).toBeGreaterThanOrEqual(0);
      const [other] = crossingsOf(line(off, off, 100, 0), line(0, 40, 0, 0));
      expect(other!.t).toBeGreaterThanOrEqual(0);
      expect(other!.u).toBeLessThanOrEqual(1);
    }
  });

  it('a line through a circle crosses it twice, at half a chord each side of its middle', () => {
    fc.assert(
      fc.property(
        evenly(-0.9, 0.9),
        evenly(0, 6.28),
        evenly(0, 6.28),
        evenly(20, 400),
        (share, turn, start, radius) => {
          const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
          const foot = { x: 40 - radius * share * sin, y: -9 + radius * share * cos };
          const through = line(
            foot.x - 500 * cos,
            foot.y - 500 * sin,
            foot.x + 500 * cos,
            foot.y + 500 * sin,
          );
          const half = radius * Math.sqrt(1 - share * share);
          const round = circle(40, -9, radius, start);
          const found = crossingsOf(through, round);
          // Where the circle begins and ends in one point that point may be found on both.
          const ways = found.map(({ t }) => t * 1000 - 500).sort((a, b) => a - b);
          expect(ways[0]).toBeCloseTo(-half, 5);
          expect(ways.at(-1)).toBeCloseTo(half, 5);
          expect(found.length).toBeLessThan(4);
          for (const { t, u, point } of found) {
            expect(Math.hypot(pointAt(round, u).x - point.x, pointAt(round, u).y - point.y)).toBeLessThan(
              1e-5,
            );
            expect(Math.hypot(pointAt(through, t).x - point.x, pointAt(through, t).y - point.y)).toBeLessThan(
              1e-9,
            );
          }
          const turned = crossingsOf(round, through).map(({ u }) => u * 1000 - 500);
          expect([Math.min(...turned), Math.max(...turned)]).toEqual([
            expect.closeTo(-half, 5),
            expect.closeTo(half, 5),
          ]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('two circles cross on their radical line, and not where they lie apart or in one another', () => {
    // Radii 50 and 40, 60 apart: x = (60² + 50² − 40²)/(2·60) = 37.5, y = ±√(50² − 37.5²).
    const found = crossingsOf(circle(0, 0, 50, 0.1), circle(60, 0, 40, 0.2));
    expect(found.map(({ point }) => point).sort((a, b) => a.y - b.y)).toEqual([
      { x: close(37.5), y: close(-Math.sqrt(1093.75)) },
      { x: close(37.5), y: close(Math.sqrt(1093.75)) },
    ]);
    // An arc has only what lies on it.
    expect(crossingsOf(circle(0, 0, 50, 0, 1.5), circle(60, 0, 40))).toHaveLength(1);
    for (const [x, y] of [
      [91, 0],
      [-91, 0],
      [0, 91],
      [0, -91],
      [5, 0],
      [70, 70],
    ] as const)
      expect(crossingsOf(circle(0, 0, 50), circle(x, y, 40))).toEqual([]);
  });

  it('is one crossing, also where chords meet at it and each finds it', () => {
    // A circle read as chords begins one at each of its quarters.
    for (const start of [0, Math.PI / 2, Math.PI]) {
      const half = circle(0, 0, 100, start - Math.PI / 2, Math.PI);
      const through = line(0, 0, 200 * Math.cos(start), 200 * Math.sin(start));
      expect(crossingsOf(half, through)).toEqual([
        {
          t: close(0.5),
          u: close(0.5),
          point: { x: close(100 * Math.cos(start)), y: close(100 * Math.sin(start)) },
        },
      ]);
    }
  });
});

describe('where two runs are brought together', () => {
  const before: Curve[] = [line(-60, 0, 0, 0), line(0, 0, 100, 0)];

  it('the crossing next to the corner counts, of several', () => {
    const zig: Curve[] = [line(20, -10, 20, 10), line(20, 10, 70, 10), line(70, 10, 70, -10)];
    expect(endOf(meeting(before, zig, 5)!.before.at(-1)!)).toEqual({ x: close(70), y: close(0) });
    expect(meeting(before, zig, 5)!.after).toEqual(
      [line(70, 0, 70, -10)].map((one) => ({ ...one, from: { x: close(70), y: close(0) } })),
    );
    const named = meeting(before, zig, 5, { x: 15, y: 0 })!;
    expect(endOf(named.before.at(-1)!)).toEqual({ x: close(20), y: close(0) });
    expect(startOf(named.after[0]!)).toEqual({ x: close(20), y: close(0) });
    expect(named.after).toHaveLength(3);
  });

  it('what lies beyond the crossing is gone from both, and nothing else', () => {
    const corner = meeting(
      [line(-60, 30, 0, 0), line(0, 0, 100, 0)],
      [line(-30, -40, -30, 40), line(-30, 40, 9, 70)],
      5,
    )!;
    // It crosses the first of the two: the second is gone.
    expect(corner.before).toEqual([
      { kind: 'line', from: { x: -60, y: 30 }, to: { x: close(-30), y: close(15) } },
    ]);
    expect(corner.after.map((curve) => endOf(curve))).toEqual([
      { x: -30, y: 40 },
      { x: 9, y: 70 },
    ]);
  });

  it('both run on straight from where they end, no farther than they may', () => {
    const far = (x: number): Curve[] => [line(x, 10, x, 50)];
    expect(meeting(before, far(114), 15)).toBeDefined();
    expect(meeting(before, far(116), 15)).toBeUndefined();
    expect(meeting(before, [line(114, 16, 114, 50)], 15)).toBeUndefined();
    const on = straightOn([circle(0, 0, 10, 0, Math.PI / 2)], 7);
    // A quarter clockwise as drawn from the right ends at the bottom, on its way to the left.
    expect([on.from.x, on.to.y]).toEqual([close(0), close(10)]);
    expect(on.to.x).toBeCloseTo(-7, 9);
    expect(on.from.y).toBeCloseTo(10, 9);
  });

  it('a part of a curve cut at the crossing ends on both', () => {
    const arc = circle(0, 0, 100, -Math.PI / 2, Math.PI / 2);
    const { before: cut, after } = meeting([arc], [line(60, -200, 60, 200)], 3)!;
    expect(endOf(cut.at(-1)!)).toEqual({ x: close(60), y: close(-80) });
    expect(startOf(after[0]!)).toEqual({ x: close(60), y: close(-80) });
    expect(partOf(arc, 0, 0.5)).toMatchObject({ start: -Math.PI / 2, sweep: Math.PI / 4 });
  });
});
