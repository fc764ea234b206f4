import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { upright } from '../../src/draft/grain-line.ts';
import type { Point } from '../../src/geometry/curve.ts';
import { evenly } from '../evenly.ts';

/** Even-odd by the ray to the right: written here apart from the code that it tests. */
function isInside({ x, y }: Point, ring: readonly Point[]): boolean {
  return ring.reduce((inside, a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (a.y > y === b.y > y) return inside;
    return a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y) > x ? !inside : inside;
  }, false);
}

function edgesOf(ring: readonly Point[]) {
  const curves = ring.map((from, i) => ({ kind: 'line' as const, from, to: ring[(i + 1) % ring.length]! }));
  return [{ name: 'hem', curves }];
}

describe('a grain line', () => {
  // Long at the left, short at the right: half of the left side's length lies below the hem at the right.
  const skew = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 60 },
    { x: 0, y: 1000 },
  ];

  it('through a place inside takes the middle three fifths of the chord there', () => {
    // By hand: at x = 50 the hem is at y = 530.
    expect(upright({ x: 50, y: 200 }, edgesOf(skew))).toEqual({
      kind: 'line',
      from: { x: 50, y: expect.closeTo(106, 6) },
      to: { x: 50, y: expect.closeTo(424, 6) },
    });
  });

  it('keeps inside the stretch that the place lies in, where the outline has two there', () => {
    // A U on its side: at x = 50 there is cloth from 0 to 10 and from 30 to 100.
    const ring = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 10 },
      { x: 20, y: 10 },
      { x: 20, y: 30 },
      { x: 100, y: 30 },
      { x: 100, y: 100 },
      { x: 0, y: 100 },
    ];
    const ends = (y: number) => {
      const { from, to } = upright({ x: 50, y }, edgesOf(ring));
      return [from.y, to.y];
    };
    expect(ends(5)).toEqual([2, 8]);
    expect(ends(12)).toEqual([2, 8]);
    expect(ends(28)).toEqual([44, 86]);
    expect(ends(99)).toEqual([44, 86]);
  });

  it('lies inside wherever its place is, beside the outline too', () => {
    const place = fc.record({ x: evenly(-300, 400), y: evenly(-500, 2000) });
    const short = evenly(1, 990);
    fc.assert(
      fc.property(place, short, (through, y) => {
        const ring = skew.map((point, i) => (i === 2 ? { x: 100, y } : point));
        const { from, to } = upright(through, edgesOf(ring));
        expect(to.y).toBeGreaterThan(from.y);
        expect(to.x).toBe(from.x);
        for (const share of [0, 0.25, 0.5, 0.75, 1])
          expect(isInside({ x: from.x, y: from.y + (to.y - from.y) * share }, ring)).toBe(true);
      }),
    );
  });
});
