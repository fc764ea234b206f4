import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notchDistances } from '../../src/allowances/notches.ts';

/** Textbook: marks of different seams at least 1.3 cm apart, so that no wrong pair can match. */
const APART = 13;

describe('notch distances', () => {
  const skirts = fc.array(fc.double({ min: 500, max: 2500, noNaN: true }), { minLength: 1, maxLength: 24 });

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
