import { describe, expect, it } from 'vitest';
import { made, skirt } from './made.ts';

/** To buy for a metre sewn: 2.5 m (thread-consumption tables for ISO 4915 stitch 301) and 15 % of waste. */
const PER_METRE = 2.5 * 1.15;

const threadOf = (text: string, layer: string) => made(text).facts.thread.find((one) => one.layer === layer)!;
const FACED = '  - {name: shell, cloth: crepe, hem: faced}';

describe('thread of strips', () => {
  const strip = (along: string) => `trims: [{kind: stay-tape, layer: shell, along: ${along}, width: 1}]`;

  it.each([
    // Measured to the floor 104 and 106, hem 2.5 above it: 103.5 is the seam at the back; both sides of her have the others.
    ['centre-back', 1, 1035],
    ['waist', 1, 720],
  ])('along %s: two rows', (along, copies, length) => {
    const without = threadOf(skirt({ layers: FACED }), 'shell').need.toBuy;
    const with_ = threadOf(skirt({ layers: FACED, more: strip(along) }), 'shell').need.toBuy;
    expect(with_ - without).toBeCloseTo(2 * copies * length * PER_METRE, 3);
  });

  it('along a seam that she has on both sides: two rows each', () => {
    const { facts } = made(skirt({ layers: FACED, more: strip('side/back') }));
    const seam = facts.skirt.layers[0]!.seams.find(({ name }) => name === 'side/back')!;
    const without = threadOf(skirt({ layers: FACED }), 'shell').need.toBuy;
    expect(facts.thread[0]!.need.toBuy - without).toBeCloseTo(2 * 2 * seam.length * PER_METRE, 3);
    expect(seam.length).toBeGreaterThan(1015);
    expect(seam.length).toBeLessThan(1035);
  });
});

describe('thread of parts', () => {
  it('a straight flounce: joins, two rows of gathers, its seam, its hem', () => {
    const more = `flounces:
  - {name: frill, layer: shell, cloth: crepe, kind: straight, depth: 10, fullness: 2, pieces: 4, hem: turned}
`;
    const { facts } = made(skirt({ layers: FACED, more }));
    const edge = facts.skirt.layers[0]!.hem;
    const frill = facts.thread.find((one) => one.layer === 'frill')!;
    expect(frill.seams).toBeCloseTo(4 * 100, 6);
    // Gathered on two rows of twice the edge, sewn on by one row of the edge.
    expect(frill.waist).toBeCloseTo(2 * 2 * edge + edge, 3);
    expect(frill.hem).toBeCloseTo(2 * edge, 3);
    expect(frill.need.toBuy).toBeCloseTo((400 + 7 * edge) * PER_METRE, 2);
  });

  it('a circular one is not gathered, and its hem is its outer edge', () => {
    const more = `flounces:
  - {name: swirl, layer: shell, cloth: crepe, kind: circular, depth: 20, fullness: 1.5, pieces: 3, hem: rolled}
`;
    const { facts } = made(skirt({ layers: FACED, more }));
    const edge = facts.skirt.layers[0]!.hem;
    const swirl = facts.thread.find((one) => one.layer === 'swirl')!;
    expect([swirl.seams, swirl.waist, swirl.hem].map((mm) => Math.round(mm))).toEqual(
      [3 * 200, edge, 1.5 * edge].map((mm) => Math.round(mm)),
    );
  });

  it('tiers: each gathered on two rows and sewn to the edge above, joined into rounds', () => {
    const more = `tiers:
  - {name: net-skirt, cloth: crepe, yoke: 90, tiers: [200, 400], depths: 30}
`;
    const { facts } = made(skirt({ layers: FACED, more }));
    const tiers = facts.thread.find((one) => one.layer === 'net-skirt')!;
    expect(tiers.waist).toBeCloseTo(900 + 2 * 2000 + 2000 + 2 * 4000, 6);
    expect(tiers.hem).toBe(0);
    // A run of 6 m from a cloth whose usable width goes into it some five times: joins of 30 cm, one more for the cut.
    expect(tiers.seams % 300).toBe(0);
    const strips = Math.ceil(6000 / usable);
    expect(tiers.seams).toBe((strips - 1 + 2) * 300);
  });

  it('a faced hem is seamed to its facing, understitched, and the facing neatened', () => {
    const { facts } = made(skirt({ layers: FACED }));
    expect(facts.thread[0]!.hem).toBeCloseTo(3 * facts.skirt.layers[0]!.hem, 6);
  });
});

/** The trial's crepe is 140 wide with selvedges of 1. */
const usable = 1380;
