import { describe, expect, it } from 'vitest';
import type { Arc, Curve, Line } from '../../src/geometry/curve.ts';
import { endOf, startOf } from '../../src/geometry/evaluate.ts';
import { offsetRun } from '../../src/geometry/offset-run.ts';
import { reversedRun } from '../../src/geometry/split.ts';

const line = (x1: number, y1: number, x2: number, y2: number): Line => ({
  kind: 'line',
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
});
const places = (run: readonly Curve[] | undefined) =>
  run === undefined || run.length === 0
    ? []
    : [startOf(run[0]!), ...run.map(endOf)].map(({ x, y }) => [expect.closeTo(x, 8), expect.closeTo(y, 8)]);
const at = (...list: readonly [number, number][]) => list;

/** To the right, a quarter turn to the left of the radius, and up: y grows down. */
function turned(radius: number): [Line, Arc, Line] {
  return [
    line(-100, 0, 0, 0),
    { kind: 'arc', centre: { x: 0, y: -radius }, radius, start: Math.PI / 2, sweep: -Math.PI / 2 },
    line(radius, -radius, radius, -radius - 100),
  ];
}
const moved = (run: readonly Curve[], distance: number) => offsetRun(run, distance, 0.004);

describe('a run with a turn, moved', () => {
  it('stays as it is, or keeps its turn where that has room', () => {
    const run = turned(20);
    expect(moved(run, 0)).toBe(run);
    expect(at([-100, -15], [0, -15], [5, -20], [5, -120])).toEqual(places(moved(run, 15)));
    expect(moved(run, 15)![1]).toEqual({ ...run[1], radius: 5 });
    expect(at([-100, 15], [0, 15], [35, -20], [35, -120])).toEqual(places(moved(run, -15)));
  });

  it('loses a turn that is tighter than the way moved: its two sides meet', () => {
    expect(at([-100, -15], [-5, -15], [-5, -110])).toEqual(places(moved(turned(10), 15)));
    // Run the other way it lies to the right.
    expect(at([-5, -110], [-5, -15], [-100, -15])).toEqual(places(moved(reversedRun(turned(10)), -15)));
    expect(moved([turned(10)[1]], 15)).toBeUndefined();
    expect(places(moved([turned(10)[1]], -15))).toHaveLength(2);
  });

  it('that begins with such a turn is cut off where it would have come from', () => {
    const [, turn, last] = turned(10);
    expect(at([-5.1, -15], [-5, -15], [-5, -110])).toEqual(places(moved([turn, last], 15)));
  });

  it('is worked out once for each way and each accuracy', () => {
    const run = turned(20);
    const [one, other, finer] = [moved(run, 15), moved(run, 16), offsetRun(run, 15, 0.001)];
    expect(moved(run, 15)).toBe(one);
    expect(moved(run, 16)).toBe(other);
    expect(offsetRun(run, 15, 0.001)).toBe(finer);
    expect(finer).not.toBe(one);
    expect(at([-100, -16], [0, -16], [4, -20], [4, -120])).toEqual(places(other));
    // Another run of the same lines is itself.
    expect(moved(turned(20), 15)).not.toBe(one);
  });
});

describe('a run with a corner, moved', () => {
  const bent = (degrees: number): Line[] => {
    const angle = (degrees * Math.PI) / 180;
    return [line(-400, 0, 0, 0), line(0, 0, 400 * Math.cos(angle), 400 * Math.sin(angle))];
  };

  it('runs on outside until its sides meet, up to four times the way moved; past that it is cut off straight', () => {
    // Each side runs on by d·tan(half the turn): four times d at 151.9°.
    const half = (degrees: number) => (degrees * Math.PI) / 360;
    const near = moved(bent(151), 15)!;
    expect(near).toHaveLength(2);
    expect(endOf(near[0]!).x).toBeCloseTo(15 * Math.tan(half(151)), 8);
    const far = moved(bent(153), 15)!;
    const angle = (153 * Math.PI) / 180;
    const [nx, ny] = [15 * Math.sin(angle), -15 * Math.cos(angle)];
    expect(
      at([-400, -15], [0, -15], [nx, ny], [400 * Math.cos(angle) + nx, 400 * Math.sin(angle) + ny]),
    ).toEqual(places(far));
  });

  it('of less than a thousandth of a radian goes on as it is', () => {
    const slight = (angle: number): Line[] => [
      line(-400, 0, 0, 0),
      line(0, 0, 400 * Math.cos(angle), 400 * Math.sin(angle)),
    ];
    const kept = moved(slight(0.0005), 15)!;
    expect(endOf(kept[0]!)).toEqual({ x: 0, y: -15 });
    expect(startOf(kept[1]!).x).toBeCloseTo(15 * Math.sin(0.0005), 9);
    const met = moved(slight(0.002), 15)!;
    expect(endOf(met[0]!).x).toBeCloseTo(15 * Math.tan(0.001), 9);
    expect(startOf(met[1]!).x).toBeCloseTo(15 * Math.tan(0.001), 9);
  });

  it('several of them, to both sides: a step', () => {
    const step = [line(-100, 0, 0, 0), line(0, 0, 0, 60), line(0, 60, 100, 60), line(100, 60, 100, 20)];
    expect(at([-100, -10], [10, -10], [10, 50], [90, 50], [90, 20])).toEqual(places(moved(step, 10)));
    expect(at([-100, 10], [-10, 10], [-10, 70], [110, 70], [110, 20])).toEqual(places(moved(step, -10)));
    const notch = [
      line(-100, 0, 0, 0),
      line(0, 0, 0, 50),
      line(0, 50, 12, 50),
      line(12, 50, 12, 0),
      line(12, 0, 100, 0),
    ];
    expect(at([-100, 4], [-4, 4], [-4, 54], [16, 54], [16, 4], [100, 4])).toEqual(places(moved(notch, -4)));
  });
});
