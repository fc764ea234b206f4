import { expect, it } from 'vitest';
import {
  heightUnderSlant,
  leastHoop,
  slantOverHoop,
  sweepOverHoop,
} from '../../src/making/petticoat/petticoat.ts';

it('asks for a skirt 1.3 times its hoop (common practice)', () => {
  // Hand: 1.3 × 3100 = 4030.
  expect(sweepOverHoop(4030, 3100)).toMatchObject({ wideEnough: true });
  expect(sweepOverHoop(4029, 3100).wideEnough).toBe(false);
  expect(sweepOverHoop(4030, 2500).widestHoop).toBeCloseTo(3100, 9);
});

it('finds the slant from waist and hoop as the long side of a right triangle (5-12-13, geometry)', () => {
  // Radii 50 and 550 apart by 500, height 1200: 1300.
  const [waist, hoop] = [2 * Math.PI * 50, 2 * Math.PI * 550];
  expect(slantOverHoop(1200, waist, hoop)).toBeCloseTo(1300, 9);
  expect(heightUnderSlant(1300, waist, hoop)).toBeCloseTo(1200, 9);
  expect(heightUnderSlant(499, waist, hoop)).toBeUndefined();
  // S3, analyzemath.com, conical frustum: radii 10 and 20 cm, height 25 cm, slant R − r = √725 cm.
  expect(slantOverHoop(250, 2 * Math.PI * 100, 2 * Math.PI * 200)).toBeCloseTo(10 * Math.sqrt(725), 9);
});

it('knows the smallest comfortable hoops (common practice)', () => {
  expect([leastHoop(false), leastHoop(true)]).toEqual([2500, 3000]);
});
