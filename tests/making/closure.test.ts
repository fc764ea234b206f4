import { describe, expect, it } from 'vitest';
import {
  boneClearance,
  girthThatPasses,
  openingFor,
  passageOf,
  pliesAtWaist,
  STOCK_ZIPS,
  zipToBuy,
} from '../../src/making/closure/closure.ts';

describe('getting in', () => {
  it('passes waist + 2D (closed form)', () => {
    // Hand: 740 + 2 × 230 = 1200.
    expect(girthThatPasses(740, 230)).toBe(1200);
    // Hand: (1010 − 740) / 2 = 135; a hip smaller than the waist needs no opening.
    expect(openingFor(740, 1010)).toBe(135);
    expect(openingFor(740, 700)).toBe(0);
    for (const girth of [741, 900, 1333])
      expect(girthThatPasses(740, openingFor(740, girth))).toBeCloseTo(girth, 9);
  });

  it('is judged by the hip stepping in and by the shoulders over the head', () => {
    const body = { hip: 1010, shoulders: 1080 };
    // 740 + 2 × 150 = 1040: between the two.
    expect(passageOf(740, 150, { ...body, entry: 'steps-in' })).toMatchObject({ clear: true, needed: 135 });
    expect(passageOf(740, 150, { ...body, entry: 'over-the-head' })).toMatchObject({
      clear: false,
      needed: 170,
    });
    expect(passageOf(740, 150, body)).toMatchObject({ clear: true, needed: 135 });
    expect(passageOf(740, 150, {}).clear).toBeUndefined();
    expect(passageOf(740, 150, { shoulders: 1080, entry: 'steps-in' }).clear).toBeUndefined();
  });
});

describe('the zip', () => {
  it('comes in the lengths that shops keep (common practice) and is bought longer and shortened (textbook)', () => {
    expect(STOCK_ZIPS.map((mm) => mm / 10)).toEqual([20, 22, 25, 30, 35, 40, 50, 55, 60]);
    expect(zipToBuy(230)).toEqual({ stock: 250, shortenBy: 20 });
    expect(zipToBuy(250)).toEqual({ stock: 250, shortenBy: 0 });
    expect(zipToBuy(251)).toEqual({ stock: 300, shortenBy: 49 });
    expect(zipToBuy(601)).toBeUndefined();
  });
});

describe('under the needle', () => {
  it('counts every ply, and twice as many where pressed-open seams cross', () => {
    // Hand: 2 layers and 3 plies of bodice are 5; each seam lies double where they meet.
    expect(pliesAtWaist(2, 3)).toEqual({ skirt: 2, together: 5, atCrossings: 10 });
  });

  it('leaves between needle and bone what a second row has not used up', () => {
    expect(boneClearance(13, 3)).toBe(10);
    expect(boneClearance(2, 3)).toBe(-1);
  });
});
