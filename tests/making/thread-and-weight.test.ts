import { describe, expect, it } from 'vitest';
import { threadFor, threadRatio } from '../../src/making/supplies/thread.ts';
import { gramsOf, layerWeight, weightInAll } from '../../src/making/supplies/weight.ts';

describe('thread (P6: thread-consumption tables for ISO 4915 stitch 301)', () => {
  it('draws 2.5 m for each metre of seam: 220 cm takes 550', () => {
    expect(threadFor(2200).needle + threadFor(2200).bobbin).toBeCloseTo(5500, 9);
    expect(threadFor(2200).needle).toBe(threadFor(2200).bobbin);
    // 10 to 15 % of waste, the upper taken: 550 × 1.15 = 632.5.
    expect(threadFor(2200).toBuy).toBeCloseTo(6325, 9);
  });

  it('draws more with shorter stitches and never less than twice the seam', () => {
    // Hand, from the ratio's form: 2 + 1.25/1 = 3.25 at 1 mm; towards 2 as the stitch grows.
    expect(threadRatio(1)).toBeCloseTo(3.25, 12);
    expect(threadRatio(5)).toBeCloseTo(2.25, 12);
    expect(threadRatio(1e6)).toBeGreaterThan(2);
  });
});

describe('weight', () => {
  it('is area times the cloth’s weight', () => {
    // Hand: 3.24 m² of 210 g/m² weigh 680.4 g.
    expect(gramsOf(3.24e6, 210)).toBeCloseTo(680.4, 9);
  });

  it('has no sum while one weight is missing', () => {
    const known = layerWeight({ name: 'shell', netArea: 3e6, cutArea: 4e6 }, { name: 'crepe', weight: 200 });
    const unknown = layerWeight({ name: 'net', netArea: 3e6, cutArea: 4e6 }, { name: 'net' });
    expect(weightInAll([known, known])).toBe(1600);
    expect(weightInAll([known, unknown])).toBeUndefined();
  });
});
