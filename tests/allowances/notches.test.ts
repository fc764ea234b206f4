import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notchDistances, notchesOf } from '../../src/allowances/notches.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { evenly } from '../evenly.ts';

/** Textbook: marks of different seams at least 1.3 cm apart, so that no wrong pair can match. */
const APART = 13;

describe('notch distances', () => {
  const skirts = fc.array(evenly(500, 2500), { minLength: 1, maxLength: 24 });

  it('belong to one seam only: no two seams of a skirt share a mark', () => {
    fc.assert(
      fc.property(skirts, (lengths) => {
        const marks = notchDistances(lengths).flatMap((own, seam) =>
          own.map((distance) => ({ seam, distance })),
        );
        for (const a of marks) {
          for (const b of marks) {
            if (a.seam < b.seam)
              expect(Math.abs(a.distance - b.distance)).toBeGreaterThanOrEqual(
                Math.min(APART, (Math.min(...lengths) * 0.6) / lengths.length),
              );
          }
        }
      }),
    );
  });

  it('lie on their seam, clear of both ends', () => {
    fc.assert(
      fc.property(skirts, (lengths) => {
        for (const [i, own] of notchDistances(lengths).entries()) {
          for (const distance of own) {
            expect(distance).toBeGreaterThan(20);
            expect(distance).toBeLessThan(lengths[i]! - 20);
          }
        }
      }),
    );
  });

  it('begin 12 cm down or a fifth of the shortest seam, each seam 2.5 cm lower than the one before where there is room', () => {
    expect(notchDistances([1000, 1000, 900])).toEqual([
      [120, 570],
      [145, 595],
      [170, 620],
    ]);
    expect(notchDistances([200, 220])).toEqual([[40], [65]]);
    // Twenty-four seams of 70 cm share 42 cm of it: every 1.75 cm.
    const many = notchDistances(Array.from({ length: 24 }, () => 700));
    for (const [seam, [own]] of many.entries()) expect(own).toBeCloseTo(120 + 17.5 * seam, 9);
  });

  it('come every 40 to 50 cm or so of seam (common practice): a metre has two or three', () => {
    for (const own of notchDistances([1000, 1000, 1000, 1000])) expect([2, 3]).toContain(own.length);
  });
});

describe('the ticks of a notch', () => {
  const line = (x1: number, y1: number, x2: number, y2: number) => ({
    curves: [{ kind: 'line', from: { x: x1, y: y1 }, to: { x: x2, y: y2 } }],
  });
  const piece = (more: object = {}) =>
    ({
      // A strip 100 wide and 1000 long: waist, back, hem, front.
      edges: [line(0, 0, 100, 0), line(100, 0, 100, 1000), line(100, 1000, 0, 1000), line(0, 1000, 0, 0)],
      frontEdge: 'a/b',
      backEdge: 'b/c',
      ...more,
    }) as unknown as Piece;
  const distances = new Map([
    ['a/b', [200]],
    ['b/c', [300]],
  ]);
  const ticks = (widths: Record<string, number>, more?: object) =>
    Object.fromEntries(
      notchesOf(piece(more), distances, widths).map((notch) => [
        notch.edge,
        notch.ticks.map(({ from, to }) =>
          [from.x, from.y, to.x, to.y].map((value) => Math.round(value * 1e6) / 1e6),
        ),
      ]),
    );

  it('go from the cut line inwards, 6 mm or to three fifths of the allowance, and never to the seam line', () => {
    expect(ticks({ 'a/b': 15, 'b/c': 5 })).toEqual({
      'a/b': [[-15, 200, -9, 200]],
      'b/c': [
        [105, 297, 102, 297],
        [105, 303, 102, 303],
      ],
    });
  });

  it('go 3 mm into the piece where there is no allowance', () => {
    expect(ticks({})).toEqual({
      'a/b': [[0, 200, 3, 200]],
      'b/c': [
        [100, 297, 97, 297],
        [100, 303, 97, 303],
      ],
    });
  });

  it('are double on the edge that lies towards the back: the first on her right, where pieces run the other way', () => {
    const counts = (more: object) => Object.values(ticks({}, more)).map((own) => own.length);
    expect(counts({ side: 'left' })).toEqual([1, 2]);
    expect(counts({ side: 'right' })).toEqual([2, 1]);
    expect(counts({ middle: 'front' })).toEqual([2, 2]);
    expect(counts({ middle: 'back' })).toEqual([1, 1]);
  });
});
