import { describe, expect, it } from 'vitest';
import { hangCloth, type Settling } from '../../src/hanging/hang-cloth.ts';
import { placeOf, plainCloth, sewnCone } from './plain-cloth.ts';

const NOTHING_AROUND = { floorGrip: 0, bodyGrip: 0 };

function settlings(strides: readonly number[], fall: number): Settling[] {
  return [
    ...strides.map((stride) => ({ stride, steps: 1500, fall, keeps: 0.98 })),
    { stride: 1, steps: 600, fall: fall / 10, keeps: 0.95 },
  ];
}

describe('a heavy strip clamped level at one end', () => {
  /** Chord below level and slope at the tip, degrees: the exact elastica by Runge-Kutta (derived); not Peirce's formula. */
  it.each([
    { lengths: 1, chord: 7.1, tip: 9.46 },
    { lengths: 1.5, chord: 22.176, tip: 29.361 },
    { lengths: 2, chord: 41.487, tip: 53.865 },
    { lengths: 2.5, chord: 56.892, tip: 71.679 },
    { lengths: 3, chord: 66.959, tip: 81.602 },
  ])('overhanging $lengths bending lengths', ({ lengths, chord, tip }) => {
    const bendingLength = 40;
    // The clamp lies halfway between the two held rows: a bend at a row stands for half a step on both sides of it.
    const step = (lengths * bendingLength) / (DOWN + 0.5);
    const strip = plainCloth({
      across: 1,
      down: DOWN + 1,
      closing: 'open',
      flat: (column, row) => [column * 10, row * step],
      start: (column, row) => [column * 10, (row - 0.5) * step, 0],
      isHeld: (_column, row) => row <= 1,
      bendingLength,
    });
    const hung = hangCloth(strip, NOTHING_AROUND, [{ stride: 1, steps: 48000, fall: 0.0001, keeps: 0.99 }]);
    const [end, before] = [placeOf(hung, 0, DOWN + 1), placeOf(hung, 0, DOWN)];
    const degrees = (down: number, along: number): number => (Math.atan2(down, along) * 180) / Math.PI;
    expect(Math.abs(degrees(-end[2], end[1]) - chord)).toBeLessThan(0.2);
    expect(Math.abs(degrees(before[2] - end[2], end[1] - before[1]) - tip)).toBeLessThan(0.3);
  });
  const DOWN = 8;
});

describe('a chain between two nails of one height', () => {
  /** Sag for a span of 1: the catenary (derived). */
  it.each([
    { length: 1.05, sag: 0.1393 },
    { length: 1.2, sag: 0.29234 },
    { length: 1.5, sag: 0.50263 },
    { length: 2, sag: 0.79639 },
  ])('$length long', ({ length, sag }) => {
    const [span, down] = [400, 48];
    const step = (length * span) / down;
    const chain = plainCloth({
      across: 1,
      down,
      closing: 'open',
      flat: (column, row) => [column * 10, row * step],
      start: (column, row) => [column * 10, (span * row) / down, -Math.min(row, down - row) * step * 0.5],
      isHeld: (_column, row) => row === 0 || row === down,
      bendingLength: 0.5,
    });
    const hung = hangCloth(chain, NOTHING_AROUND, settlings([1], 0.05));
    expect(-placeOf(hung, 0, down / 2)[2] / span).toBeCloseTo(sag, 2);
  });
});

describe('cloth sewn to a cone', () => {
  it('from a half disc, too stiff to fold, hangs at 0.866 of its slant whatever it started as (geometry)', () => {
    const cone = sewnCone(Math.PI, 40, 400, { across: 24, down: 12 }, 300, 0.3);
    const hung = hangCloth(cone, NOTHING_AROUND, settlings([1], 0.05));
    for (const column of [0, 5, 12, 19]) {
      expect(-placeOf(hung, column, 12)[2] / 360).toBeCloseTo(Math.sqrt(0.75), 2);
    }
  });

  it('from a full disc, limp, falls in folds that hang nearly its own length', () => {
    const cone = sewnCone(2 * Math.PI, 300, 900, { across: 96, down: 16 }, 2, 0.6);
    const hung = hangCloth(cone, NOTHING_AROUND, settlings([4, 2, 1], 0.2));
    const drops = Array.from({ length: 96 }, (_, column) => -placeOf(hung, column, 16)[2] / 600);
    const mean = drops.reduce((sum, drop) => sum + drop, 0) / drops.length;
    expect(mean).toBeGreaterThan(0.95);
    expect(Math.max(...drops)).toBeLessThan(1.001);
  });
});
