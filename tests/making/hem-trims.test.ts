import { describe, expect, it } from 'vitest';
import {
  clothForEdging,
  edgingFromOwnEdges,
  edgingRound,
  scallopHang,
  wholeRepeats,
} from '../../src/making/edging/edging.ts';
import { stripLength } from '../../src/making/hem/hem-strip.ts';
import { hemSurplus } from '../../src/making/hem/hem-surplus.ts';
import { made, skirt } from './made.ts';

describe('an edging with a repeat', () => {
  it('takes the next whole number of repeats and eases the rest in (closed form)', () => {
    // Hand: 5030 / 140 = 35.93, so 36 repeats, 5040, 10 to ease.
    expect(edgingRound(5030, 3.28, 140, 60)).toMatchObject({ repeats: 36, length: 5040, ease: 10 });
    expect(wholeRepeats(5041, 140)).toBe(37);
    expect(wholeRepeats(5040 + 1e-9, 140)).toBe(36);
  });

  it('is too long at its inner edge by flare × depth: a full turn of a ring, closed form', () => {
    // A flat ring, outer radius 1000, inner 940: 2π × 60 shorter inside.
    const plan = edgingRound(2 * Math.PI * 1000, 2 * Math.PI, 140, 60);
    expect(plan.innerSurplus).toBeCloseTo(2 * Math.PI * 1000 - 2 * Math.PI * 940, 9);
    expect(plan.overlapPerMotif! * plan.repeats).toBeCloseTo(plan.innerSurplus!, 9);
  });

  it('comes twice from a cloth, once off each edge', () => {
    expect(edgingFromOwnEdges(2600)).toBe(5200);
    expect(edgingFromOwnEdges(clothForEdging(5040))).toBe(5040);
  });

  it('hangs by its low points', () => {
    expect(scallopHang(20, 15)).toEqual({ lowPoints: 20, highPoints: 35 });
  });
});

describe('strips', () => {
  it('horsehair braid is the hem, 1.3 cm of overlap (textbook) and 5 % (common practice)', () => {
    // Hand: 5000 + 13 + 250 = 5263; 100 wide on a flare of 3 rad is drawn in by 300.
    expect(stripLength('horsehair', 5000, { flare: 3, width: 100, closed: true })).toEqual({
      edge: 5000,
      overlap: 13,
      spare: 250,
      length: 5263,
      drawnIn: 300,
    });
  });

  it('a tape along a seam neither meets itself nor is spared', () => {
    expect(stripLength('stay-tape', 740, { flare: 0, closed: false }).length).toBe(740);
  });
});

describe('the surplus of a turned hem (H11, geometry)', () => {
  it('is 16.69 cm for a hem of 360 over a waist of 68, 105 long and turned up 3', () => {
    const surplus = hemSurplus(3600, (3600 - 680) / 1050, 30);
    expect(surplus.toEase / 10).toBeCloseTo(16.69, 2);
    expect(surplus.beyondHemLine).toBeCloseTo(surplus.toEase / 2, 12);
    // Both arcs of the ring themselves: radius 3600/θ, the cut edge at +30, the place where it lies at −30.
    const flare = (3600 - 680) / 1050;
    expect(surplus.toEase).toBeCloseTo((3600 / flare + 30) * flare - (3600 / flare - 30) * flare, 9);
    expect(surplus.share).toBeCloseTo(16.686 / 360, 4);
  });
});

it('a braid that the edging names goes into the outermost hem that is faced', () => {
  const layers = ['inner', 'outer', 'net'].map(
    (name) => `  - {name: ${name}, cloth: crepe, hem: ${name === 'net' ? 'raw, edging: galloon' : 'faced'}}`,
  );
  const more = 'edging: {name: galloon, from: bought-in, depth: 6, repeat: 14, braid: 5}';
  const { facts } = made(skirt({ layers: layers.join('\n'), more }));
  expect(facts.strips.map(({ kind, layer, along, width }) => [kind, layer, along, width])).toEqual([
    ['horsehair', 'outer', 'hem', 50],
  ]);
});
