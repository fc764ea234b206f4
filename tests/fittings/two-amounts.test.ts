import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { draft } from '../../src/pipeline.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { edgeOf, lengthOf, sampled } from './sampled.ts';

const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;

/** Straight gores, so that a seam's distance from where it was is read straight off its x. */
function straight(units: keyof typeof SIZES, symmetry: string, seams: readonly Tree[]) {
  const by = (mm: number): number => mm / SIZES[units];
  const text = stringify({
    format: 1,
    gown: 'Two amounts',
    units,
    symmetry,
    bodice: { 'waist-seam': by(symmetry === 'none' ? 600 : 1200) },
    gores: ['a', 'b', 'c'].map((name) => ({ name, top: by(200), flare: 0 })),
    lengths: {
      at: Object.fromEntries(
        (symmetry === 'none' ? ['c/a', 'b/c'] : ['centre-front', 'centre-back']).map((name) => [
          name,
          by(1000),
        ]),
      ),
    },
    allowances: { seam: by(20), waist: by(15), hem: by(15) },
    layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
    cloths: { calico: { width: by(3000) } },
    fittings: [{ date: '2027-03-01', seams }],
  });
  const { gown, diagnostics } = draft({ name: 'two.yaml', text });
  const codes = diagnostics.filter(({ level }) => level !== 'note').map(({ code }) => code);
  return { text, codes, pieces: gown?.drafts.gown.pieces ?? [] };
}

/** t³(10 − 15t + 6t²): from 0 to 1 without a corner or a jump of curvature. */
const eased = (t: number): number => (t <= 0 ? 0 : t >= 1 ? 1 : t ** 3 * (10 - 15 * t + 6 * t * t));

const stretches = fc.record({
  units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
  symmetry: fc.constantFrom('mirrored', 'none'),
  amounts: fc.tuple(fc.integer({ min: -10, max: 15 }), fc.integer({ min: -10, max: 15 })),
  from: fc.constantFrom(0, 60, 200),
  over: fc.integer({ min: 150, max: 500 }),
});

describe('a seam taken in by two amounts', () => {
  it('runs by the first at the waist and by the second further down, smooth between, on both sides alike', () => {
    fc.assert(
      fc.property(stretches, ({ units, symmetry, amounts, from, over }) => {
        const size = SIZES[units];
        const [first, second] = [from === 0 ? amounts[0] : 0, amounts[1]];
        // What begins at nought may go anywhere; a second stretch brings it back.
        const low = Math.min(from + over, 700);
        const { text, codes, pieces } = straight(units, symmetry, [
          { seam: 'a/b', from: from / size, to: low / size, 'take-in': [first / size, second / size] },
          { seam: 'a/b', from: low / size, to: 950 / size, 'take-in': [second / size, 0] },
        ]);
        expect(codes, text).toEqual([]);
        const insetAt = (down: number): number =>
          down <= low
            ? first + (second - first) * eased((down - from) / (low - from))
            : second * (1 - eased((down - low) / (950 - low)));
        const sides = [edgeOf(pieces[0]!, 'a/b'), edgeOf(pieces[1]!, 'a/b')].map((curves) => sampled(curves));
        for (const [i, side] of sides.entries())
          for (const { x, y } of side) {
            const inset = i === 0 ? 100 - x : x + 100;
            expect(Math.abs(inset - insetAt(y)), `${y} down\n${text}`).toBeLessThan(0.01);
          }
        expect(Math.abs(lengthOf(sides[0]!) - lengthOf(sides[1]!))).toBeLessThan(0.001);
        expect(Math.abs(lengthOf(sides[0]!) - 1000)).toBeLessThan(0.01);
      }),
      { seed: 4, numRuns: 40, endOnFailure: true },
    );
  });

  it('may be another at the hem, and on from there', () => {
    const { codes, pieces } = straight('mm', 'mirrored', [
      { seam: 'a/b', from: 400, to: 1000, 'take-in': [0, 9] },
    ]);
    expect(codes).toEqual([]);
    const low = sampled(edgeOf(pieces[0]!, 'a/b')).reduce((a, b) => (b.y > a.y ? b : a));
    expect(100 - low.x).toBeCloseTo(9, 2);
  });

  it.each([
    ['begins below the waist at some amount', { from: 100, to: 400, 'take-in': [8, 0] }],
    ['ends above the hem at some amount', { from: 100, to: 400, 'take-in': [0, 8] }],
  ])('that %s would step, which is an error', (_what, stretch) => {
    expect(straight('mm', 'mirrored', [{ seam: 'a/b', ...stretch }]).codes).toEqual(['fitting-steps']);
  });

  it.each([
    [8, 240, true],
    [2, 240, false],
    [6, 600, false],
  ])('one amount of %d down to %d dents where it runs out: %s', (takeIn, to, dents) => {
    const { codes } = straight('mm', 'mirrored', [{ seam: 'a/b', from: 0, to, 'take-in': takeIn }]);
    // 1.875 × the amount over a third of the stretch (the steepest of t³(10 − 15t + 6t²)) against 1 in 10.
    expect(codes.includes('fitting-dents')).toBe(dents);
  });

  it('is two, not one or three', () => {
    for (const amounts of [[8], [8, 4, 0]])
      expect(
        straight('mm', 'mirrored', [{ seam: 'a/b', from: 0, to: 400, 'take-in': amounts }]).codes,
      ).not.toEqual([]);
  });
});
