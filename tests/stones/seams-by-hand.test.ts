import { describe, expect, it } from 'vitest';
import { evenRandom } from '../../src/stones/random.ts';
import { acrossSeam, beside, frameAt, seamLine } from '../../src/stones/seam-line.ts';
import { at, line } from '../quads.ts';

/** Points beside straight seams, and what lies beyond them once they are sewn: sides of 3, 4 and 5. mm. */

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });
/** Down by 100, then on by 50 along 3-4-5. */
const BENT = seamLine([line(at(10, 0), at(10, 100)), line(at(10, 100), at(40, 140))]);

describe('a place beside a seam', () => {
  it('its foot along the seam, and how far away it is; beyond an end from that end', () => {
    expect(beside(BENT, at(25, 30))).toEqual({ way: 30, away: 15 });
    // From (10, 100) by 25 along and 5 to its right.
    expect(beside(BENT, at(10 + 15 + 4, 100 + 20 - 3))).toEqual({
      way: expect.closeTo(125, 9),
      away: expect.closeTo(5, 9),
    });
    expect(beside(BENT, at(13, -4))).toEqual({ way: 0, away: 5 });
    expect(beside(BENT, at(46, 148))).toEqual({ way: 150, away: 10 });
  });

  it('a place down it, and which way it runs there; on past its end the way that it ended', () => {
    expect(frameAt(BENT, 40)).toEqual({ at: near(10, 40), down: near(0, 1) });
    expect(frameAt(BENT, 100)).toEqual({ at: near(10, 100), down: near(0, 1) });
    expect(frameAt(BENT, 125)).toEqual({ at: near(25, 120), down: near(0.6, 0.8) });
    expect(frameAt(BENT, 160)).toEqual({ at: near(46, 148), down: near(0.6, 0.8) });
    expect(frameAt(BENT, 0)).toEqual({ at: near(10, 0), down: near(0, 1) });
  });
});

describe('across a seam', () => {
  const upright = seamLine([line(at(100, 0), at(100, 100))]);
  const slanted = seamLine([line(at(0, 0), at(60, 80))]);

  it('the other piece is turned until its side runs alike: as far beyond, as far along', () => {
    // 10 to the right of the slanted side as it runs down, seen from above; and 20 on along it.
    const point = at(30 - 8, 40 + 6);
    expect(acrossSeam(upright, slanted, 50, point, false)).toEqual(near(90, 50));
    expect(acrossSeam(upright, slanted, 50, at(22 + 12, 46 + 16), false)).toEqual(near(90, 70));
    expect(acrossSeam(upright, slanted, 30, at(18 - 8, 24 + 6), false)).toEqual(near(90, 30));
    // The other way round.
    expect(acrossSeam(slanted, upright, 50, at(90, 50), false)).toEqual(near(22, 46));
  });

  it('a mirror image lies on the other side', () => {
    expect(acrossSeam(upright, upright, 40, at(88, 47), true)).toEqual(near(112, 47));
    expect(acrossSeam(upright, slanted, 50, at(22, 46), true)).toEqual(near(110, 50));
  });
});

it('numbers are mulberry32’s (T. Ettinger, from memory), worked out here in whole numbers of any size', () => {
  const M = 1n << 32n;
  const published = (seed: number) => {
    let state = BigInt(seed) % M;
    return () => {
      state = (state + 0x6d2b79f5n) % M;
      let z = state;
      z = ((z ^ (z >> 15n)) * (z | 1n)) % M;
      z ^= (z + (z ^ (z >> 7n)) * (z | 61n)) % M;
      return Number((z ^ (z >> 14n)) % M) / 2 ** 32;
    };
  };
  for (const seed of [1, 2, 12_345, 4_000_000_000]) {
    const [own, theirs] = [evenRandom(seed), published(seed)];
    for (let i = 0; i < 50; i++) expect(own()).toBe(theirs());
  }
});
