import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldPlaces, pleatMarks, pleatsOf } from '../../src/allowances/pleats.ts';
import type { TopFullness } from '../../src/allowances/top-fullness.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { evenly } from '../evenly.ts';

const top = (towards: string, depth: number, cut: number, sewn: number): TopFullness =>
  ({ rule: { towards, depth }, cut, sewn }) as unknown as TopFullness;

describe('pleats that take a top in', () => {
  it('knife: a metre to sixty centimetres by 2 cm folds is ten pleats, each in the middle of its ten centimetres', () => {
    const full = top('left', 20, 1000, 600);
    expect(pleatsOf(full)).toEqual({ count: 10, depth: 20 });
    expect(foldPlaces(full)).toEqual(
      Array.from({ length: 10 }, (_, i) => [30, 50, 70].map((x) => 100 * i + x)).flat(),
    );
  });

  it('box: three times the width is eight pleats side by side, their faces meeting', () => {
    const full = top('box', 25, 1200, 400);
    expect(pleatsOf(full)).toEqual({ count: 8, depth: 25 });
    const one = [0, 25, 50, 100, 125, 150];
    expect(foldPlaces(full)).toEqual(Array.from({ length: 8 }, (_, i) => one.map((x) => 150 * i + x)).flat());
  });

  it('box, apart: the face is twice a fold, and flat cloth shows between', () => {
    // 1000 to 800 by 2.5 cm: two pleats of 100 each under; a face of 50, 350 of flat cloth in each share of 500.
    expect(foldPlaces(top('box', 25, 1000, 800))).toEqual(
      [0, 500].flatMap((share) => [0, 25, 50, 100, 125, 150].map((x) => share + 175 + x)),
    );
  });

  it('whole pleats fill the top whatever the depth asked: folded away, what is left is what is sewn', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('left', 'box'),
        evenly(8, 60),
        evenly(200, 1500),
        evenly(1.2, 3),
        (towards, depth, sewn, times) => {
          const full = top(towards, depth, sewn * times, sewn);
          const { count, depth: made } = pleatsOf(full);
          const folds = towards === 'box' ? 4 : 2;
          expect(full.cut - count * folds * made).toBeCloseTo(sewn, 6);
          const places = foldPlaces(full);
          expect(places).toHaveLength(count * (towards === 'box' ? 6 : 3));
          for (const [i, place] of places.entries()) {
            expect(place).toBeGreaterThanOrEqual(i === 0 ? -1e-9 : places[i - 1]! - 1e-9);
            expect(place).toBeLessThanOrEqual(full.cut + 1e-9);
          }
        },
      ),
    );
  });

  it('are marked 4 cm down into the piece from the top edge', () => {
    const line = { kind: 'line', from: { x: 0, y: 7 }, to: { x: 1000, y: 7 } } as const;
    const piece = { edges: [{ name: 'waist', curves: [line] }] } as unknown as Piece;
    const marks = pleatMarks(piece, top('left', 20, 1000, 600)).flatMap(({ curves }) => curves);
    expect(marks).toHaveLength(30);
    for (const [i, mark] of marks.entries()) {
      const x = 100 * Math.floor(i / 3) + [30, 50, 70][i % 3]!;
      if (mark.kind !== 'line') throw new Error('a mark is a line');
      for (const [value, expected] of [
        [mark.from.x, x],
        [mark.from.y, 7],
        [mark.to.x, x],
        [mark.to.y, 47],
      ] as const)
        expect(value).toBeCloseTo(expected, 9);
    }
  });
});
