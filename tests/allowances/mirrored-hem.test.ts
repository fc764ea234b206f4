import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOutline } from '../../src/allowances/cut-outline.ts';
import { lengthened, mirroredBelowHem } from '../../src/allowances/mirror-hem.ts';
import type { Arc, Line, Point } from '../../src/geometry/curve.ts';
import { endOf, pointAt, startOf } from '../../src/geometry/evaluate.ts';
import { evenly } from '../evenly.ts';
import { distanceTo, sampled } from '../fittings/sampled.ts';

/** What a fitted line may miss by, mm: a tenth of the width of a chalk line and less. */
const NEAR = 0.02;

/** A hem all round a circle about the origin: across it, a point at radius r goes to 2R − r on its own ray. */
const round = (radius: number): Arc => ({
  kind: 'arc',
  centre: { x: 0, y: 0 },
  radius,
  start: Math.PI,
  sweep: -Math.PI,
});

const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });

/** The line through the lowest point of the hem, so far off square, from so far above. */
function sideOf(radius: number, offSquare: number, length: number): Line {
  const foot = { x: 0, y: radius };
  const top = { x: -length * Math.sin(offSquare), y: radius - length * Math.cos(offSquare) };
  return line(top, foot);
}

const fromOrigin = ({ x, y }: Point): number => Math.hypot(x, y);

/** Mirrored back across the circle. */
function back(point: Point, radius: number): Point {
  const r = fromOrigin(point);
  return { x: (point.x * (2 * radius - r)) / r, y: (point.y * (2 * radius - r)) / r };
}

describe('a side mirrored below a turned hem', () => {
  it('across a round hem, lies on the side when it is turned up, and ends at the depth of the allowance', () => {
    fc.assert(
      fc.property(evenly(300, 4000), evenly(-0.9, 0.9), evenly(5, 90), (radius, offSquare, depth) => {
        const side = sideOf(radius, offSquare, 250);
        // Leaning far across a tight hem, a side of 250 may not rise as high as the allowance is deep.
        fc.pre(radius - fromOrigin(side.from) > depth);
        const mirrored = mirroredBelowHem([side], [round(radius)], depth)!;
        for (const point of sampled(mirrored, 40)) {
          expect(distanceTo([side.from, side.to], back(point, radius))).toBeLessThan(NEAR);
          expect(fromOrigin(point)).toBeGreaterThan(radius - NEAR);
          expect(fromOrigin(point)).toBeLessThan(radius + depth + NEAR);
        }
        const first = startOf(mirrored[0]!);
        expect(Math.hypot(first.x, first.y - radius)).toBeLessThan(NEAR);
        expect(fromOrigin(endOf(mirrored.at(-1)!))).toBeGreaterThan(radius + depth - NEAR);
      }),
    );
  });

  it('goes on past a joint of the side', () => {
    const whole = sideOf(1000, 0.3, 250);
    const joint = { x: whole.to.x * 0.9 + whole.from.x * 0.1, y: whole.to.y * 0.9 + whole.from.y * 0.1 };
    const parts = [line(whole.from, joint), line(joint, whole.to)];
    const mirrored = mirroredBelowHem(parts, [round(1000)], 60)!;
    expect(mirrored.length).toBeGreaterThan(1);
    for (const point of sampled(mirrored, 40))
      expect(distanceTo([whole.from, whole.to], back(point, 1000))).toBeLessThan(NEAR);
    expect(fromOrigin(endOf(mirrored.at(-1)!))).toBeCloseTo(1060, 1);
  });

  it('has no image where the side is shorter than the allowance is deep', () => {
    expect(mirroredBelowHem([sideOf(1000, 0, 40)], [round(1000)], 60)).toBeUndefined();
    expect(mirroredBelowHem([sideOf(1000, 0, 70)], [round(1000)], 60)).toBeDefined();
  });

  it('across a straight hem, leans back by as much as the side leans', () => {
    const hem = [line({ x: -500, y: 0 }, { x: 500, y: 0 })];
    const mirrored = mirroredBelowHem([line({ x: -30, y: -100 }, { x: 0, y: 0 })], hem, 40)!;
    const end = endOf(mirrored.at(-1)!);
    expect(end.x).toBeCloseTo(-12, 2);
    expect(end.y).toBeCloseTo(40, 2);
  });
});

describe('a hem lengthened to mirror across', () => {
  const centre = { x: 500, y: -300 };
  const quarter: Arc = { kind: 'arc', centre, radius: 800, start: 2, sweep: -0.8 };
  const offCentre = ({ x, y }: Point): Point => ({ x: x - centre.x, y: y - centre.y });

  it('runs on round its own bend, as far as it is asked, at both ends', () => {
    const [before, , after] = lengthened([quarter], 200);
    for (const point of sampled([before!, after!], 40))
      expect(fromOrigin(offCentre(point))).toBeCloseTo(800, 6);
    const angle = (point: Point) => Math.atan2(offCentre(point).y, offCentre(point).x);
    expect(angle(startOf(before!)) - 2).toBeCloseTo(200 / 800, 6);
    expect(angle(endOf(before!))).toBeCloseTo(2, 6);
    expect(1.2 - angle(endOf(after!))).toBeCloseTo(200 / 800, 6);
  });

  it('runs on straight where it would come back on itself, and where it is straight', () => {
    const tight: Arc = { ...quarter, radius: 100 };
    const level = line({ x: 0, y: 10 }, { x: 300, y: 10 });
    for (const [hem, end, out] of [
      [tight, pointAt(tight, 1), { x: Math.sin(1.2), y: -Math.cos(1.2) }],
      [level, { x: 300, y: 10 }, { x: 1, y: 0 }],
    ] as const) {
      const after = lengthened([hem], 200).at(-1)!;
      const far = endOf(after);
      expect(far.x).toBeCloseTo(end.x + 200 * out.x, 6);
      expect(far.y).toBeCloseTo(end.y + 200 * out.y, 6);
    }
  });
});

describe('a hem far off square', () => {
  /** Down a side at right angles to the waist, then up along a straight hem: mirrored, a line across a line is a line. */
  it.each([60, 72, 80, -60, -72, -80])(
    '%s°: the side beyond it is its own image, one straight line',
    (degrees) => {
      const [width, hem] = [15, 30];
      const rise = 300 * Math.tan((degrees * Math.PI) / 180);
      const [right, left] = [Math.max(400, 400 - rise), Math.max(400, 400 + rise)];
      const corners = [
        { x: 0, y: 0 },
        { x: 300, y: 0 },
        { x: 300, y: right },
        { x: 0, y: left },
      ];
      const names = ['waist', 'back-seam', 'hem', 'front-seam'];
      const piece = {
        gore: 'steep',
        layers: [],
        edges: corners.map((from, i) => ({ name: names[i]!, curves: [line(from, corners[(i + 1) % 4]!)] })),
        frontEdge: 'front-seam',
        backEdge: 'back-seam',
        grain: line(corners[0]!, corners[3]!),
        cut: 'pair' as const,
      };
      const widths = { waist: width, 'back-seam': width, hem, 'front-seam': width };
      const cut = cutOutline(piece, { widths, roughCut: 0, waistCorner: 'plain', hemCorner: 'mirrored' });
      const side = cut.find(({ name }) => name === 'back-seam')!.curves;
      expect(side.length).toBeLessThan(4);
      // Across the hem through its corner, a point's distance from it to the other side.
      const unit = {
        x: Math.cos(Math.atan2(left - right, -300)),
        y: Math.sin(Math.atan2(left - right, -300)),
      };
      const across = ({ x, y }: Point): Point => {
        const along = (x - 300) * unit.x + (y - right) * unit.y;
        return { x: 600 + 2 * along * unit.x - x, y: 2 * right + 2 * along * unit.y - y };
      };
      const below = sampled(side, 200).filter(({ x }) => Math.abs(x - 300 - width) > NEAR);
      expect(below.length).toBeGreaterThan(0);
      for (const point of below) expect(Math.abs(across(point).x - 300 - width)).toBeLessThan(NEAR);
    },
  );
});
