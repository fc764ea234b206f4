import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { layFaults } from '../../src/lay/plan/lay-faults.ts';
import type { LayItem } from '../../src/lay/plan/lay-items.ts';
import { waysOf } from '../../src/lay/plan/ways.ts';
import { trueOutline, workingOutline } from '../../src/lay/plan/working-outline.ts';
import { evenly } from '../evenly.ts';

const outlineOf = (corners: readonly (readonly [number, number])[]): Curve[] =>
  corners.map(([x, y], i) => {
    const [toX, toY] = corners[(i + 1) % corners.length]!;
    return { kind: 'line', from: { x, y }, to: { x: toX, y: toY } };
  });
const box = (x: number, y: number, width: number, height: number): [number, number][] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
const placed = (gore: string, corners: readonly [number, number][]) =>
  ({ gore, copy: 1, outline: outlineOf(corners) }) as never;

describe('a finished lay', () => {
  const facts = { width: 1000, selvedge: 10, edgingDepth: 0 } as never;
  const faults = (...pieces: never[]) => layFaults(pieces, facts, 500);

  it('pieces may touch, and run into each other by less than chalk is wide', () => {
    const at = (x: number, y = 10) =>
      faults(placed('a', box(20, 10, 200, 300)), placed('b', box(x, y, 100, 100)));
    expect([at(220), at(220 - 0.04), at(600)]).toEqual([[], [], []]);
    expect(at(220 - 3)).toEqual(['b 1 and a 1 overlap by 3.00 mm']);
    expect(at(20 - 0, 310 - 0.06)).toEqual(['b 1 and a 1 overlap by 0.06 mm']);
    // One wholly within the other, and two that cross without a corner of either inside.
    expect(at(100, 60)).toEqual(['b 1 and a 1 overlap by 80.00 mm']);
    expect(faults(placed('a', box(100, 200, 400, 20)), placed('b', box(290, 20, 20, 400)))).toEqual([
      'b 1 and a 1 overlap by 10.00 mm',
    ]);
    // The same place twice, and side by side at a slant.
    expect(faults(placed('a', box(20, 10, 200, 300)), placed('a', box(20, 10, 200, 300)))).toHaveLength(1);
    const [wedge, other] = [
      placed('a', [
        [20, 20],
        [220, 20],
        [20, 220],
      ]),
      placed('b', [
        [220, 20],
        [220, 220],
        [20, 220],
      ]),
    ];
    expect(faults(wedge, other)).toEqual([]);
  });

  it('no piece lies past the selvedge, before the cloth begins or after it ends', () => {
    const out = (x: number, y: number) => faults(placed('a', box(x, y, 200, 300)));
    expect([out(10, 0), out(790, 200), out(9.96, 0)]).toEqual([[], [], []]);
    expect([out(8, 0), out(793, 200), out(10, -4), out(10, 205)]).toEqual(
      [2, 3, 4, 5].map((by) => [`a 1 lies ${by}.00 mm outside the cloth`]),
    );
    const edged = { width: 1000, selvedge: 10, edgingDepth: 25 } as never;
    expect(layFaults([placed('a', box(30, 0, 200, 300))], edged, 500)).toEqual([
      'a 1 lies 5.00 mm outside the cloth',
    ]);
    expect(layFaults([placed('a', box(770, 0, 200, 300))], edged, 500)).toEqual([
      'a 1 lies 5.00 mm outside the cloth',
    ]);
  });
});

describe('the outline that is packed', () => {
  const area = (ring: readonly Point[]) =>
    ring.reduce((sum, a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      return sum + (a.x * b.y - b.x * a.y) / 2;
    }, 0);
  const inside = ({ x, y }: Point, ring: readonly Point[]) =>
    ring.reduce((is, a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x) ? !is : is;
    }, false);
  const away = ({ x, y }: Point, ring: readonly Point[]) =>
    Math.min(
      ...ring.map((a, i) => {
        const b = ring[(i + 1) % ring.length]!;
        const [dx, dy] = [b.x - a.x, b.y - a.y];
        const t = Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy)));
        return Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
      }),
    );

  it('of a polygon with nothing to give up is that polygon', () => {
    const corners = box(3, 4, 120, 80);
    const packed = workingOutline(outlineOf(corners));
    expect(packed).toHaveLength(4);
    for (const [x, y] of corners) expect(packed).toContainEqual({ x, y });
    expect(trueOutline(outlineOf(corners))).toHaveLength(4);
  });

  it('is never inside the true one, stands at most a millimetre outside, keeps to its bounds, and has few corners', () => {
    const gores = fc.record({
      top: evenly(80, 200),
      flare: evenly(0.1, 0.9),
      radius: evenly(150, 500),
      length: evenly(500, 1200),
      dip: evenly(0, 30),
    });
    fc.assert(
      fc.property(gores, ({ flare, radius, length, dip }) => {
        const at = (r: number, f: number) => ({ x: r * Math.sin(f), y: r * Math.cos(f) });
        const [a, b] = [-flare / 2, flare / 2];
        const outer = radius + length;
        const outline: Curve[] = [
          { kind: 'arc', centre: { x: 0, y: 0 }, radius, start: Math.PI / 2 - a, sweep: -flare },
          { kind: 'line', from: at(radius, b), to: at(outer, b) },
          {
            kind: 'cubic',
            from: at(outer, b),
            control1: at(outer + dip, b / 3),
            control2: at(outer - dip, a / 3),
            to: at(outer, a),
          },
          { kind: 'line', from: at(outer, a), to: at(radius, a) },
        ];
        const [truth, packed] = [trueOutline(outline), workingOutline(outline)];
        expect(packed.length).toBeLessThan(truth.length / 2);
        expect(area(packed)).toBeGreaterThanOrEqual(area(truth) - 1e-3);
        for (const point of truth) expect(inside(point, packed) || away(point, packed) < 1e-3).toBe(true);
        for (const point of packed) expect(inside(point, truth) || away(point, truth) < 1.001).toBe(true);
        for (const axis of ['x', 'y'] as const) {
          const [own, all] = [packed, truth].map((ring) => ring.map((point) => point[axis]));
          expect(Math.min(...own!)).toBeGreaterThanOrEqual(Math.min(...all!) - 1e-3);
          expect(Math.max(...own!)).toBeLessThanOrEqual(Math.max(...all!) + 1e-3);
        }
      }),
      { numRuns: 12 },
    );
  });
});

describe('ways to fold a cloth', () => {
  const item = (gore: string, kind: string, part?: string) =>
    ({ kind, cut: { gore }, ...(part === undefined ? {} : { part }) }) as unknown as LayItem;
  const told = (...items: LayItem[]) =>
    waysOf(items).map(({ fold, sections }) => [
      fold,
      ...sections.map((own) => `${own.fold} ${own.items.map(({ cut }) => cut.gore).join('+')}`),
    ]);

  it('of a pair: flat, along the length, across it', () => {
    expect(told(item('side', 'pair'))).toEqual([
      ['single', 'single side'],
      ['lengthwise', 'lengthwise side'],
      ['crosswise', 'crosswise side'],
    ]);
  });

  it('of what is cut once: flat only', () => {
    expect(told(item('left', 'single'), item('right', 'single'))).toEqual([['single', 'single left+right']]);
  });

  it('of a front on the fold and two pairs: every change of fold on the way round', () => {
    expect(told(item('front', 'on-fold'), item('side', 'pair'), item('back', 'pair'))).toEqual([
      ['single', 'single front+side+back'],
      ['lengthwise', 'lengthwise front+side+back'],
      ['sections', 'lengthwise front', 'crosswise side+back'],
      ['sections', 'single front', 'crosswise side+back'],
      ['sections', 'lengthwise front', 'single side+back'],
      ['sections', 'lengthwise front+side', 'single back'],
      ['sections', 'lengthwise front+side', 'crosswise back'],
    ]);
  });

  it('with a piece that is cut once beside them: that lies flat', () => {
    expect(told(item('side', 'pair'), item('belt', 'single'))).toEqual([
      ['single', 'single side+belt'],
      ['sections', 'lengthwise side', 'single belt'],
      ['sections', 'single belt', 'crosswise side'],
    ]);
  });
});
