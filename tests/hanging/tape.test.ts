import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/hanging/figure.ts';
import { tapeToFloor } from '../../src/hanging/tape.ts';

/** Round, with so far out at a height. */
const round = (outAt: (height: number) => number): Figure => ({
  girthAt: (height) => 2 * Math.PI * outAt(height),
  roundnessAt: () => 1,
});
const WAIST = { x: 0, y: -100, z: 1000, outX: 0, outY: -1 };

/** By geometry: straight stretches, each the hypotenuse of what it falls and goes out. */
describe('a tape to the floor', () => {
  it('over a cone to the floor is its slant', () => {
    const cone = round((height) => 100 + (1000 - height) * 0.4);
    expect(tapeToFloor(cone, WAIST)).toBeCloseTo(1000 * Math.hypot(1, 0.4), 3);
  });

  it('over a hoop 5 cm off the floor goes straight to it and plumb from there, whatever is narrower above and below', () => {
    const hooped = round((height) => (height >= 50 && height < 60 ? 480 : height < 50 ? 90 : 100));
    expect(tapeToFloor(hooped, WAIST)).toBeCloseTo(Math.hypot(950, 380) + 50, 3);
  });

  it('to the side of a waist that is wider than it is deep is shorter than in front', () => {
    const hoop: Figure = { girthAt: () => 2 * Math.PI * 400, roundnessAt: () => 1 };
    const side = tapeToFloor(hoop, { x: 130, y: 0, z: 1000, outX: 1, outY: 0 });
    const front = tapeToFloor(hoop, WAIST);
    // 10 mm down, where the hoop is already, and plumb from there.
    expect(front - side).toBeCloseTo(Math.hypot(10, 300) - Math.hypot(10, 270), 3);
  });
});
