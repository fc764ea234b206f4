import { expect, it } from 'vitest';
import {
  heightUnderSlant,
  leastHoop,
  slantToHoop,
  sweepOverHoop,
} from '../../src/making/petticoat/petticoat.ts';
import { made, skirt } from './made.ts';

it('asks for a skirt 1.3 times its hoop (common practice)', () => {
  // Hand: 1.3 × 3100 = 4030.
  expect(sweepOverHoop(4030, 3100)).toMatchObject({ wideEnough: true });
  expect(sweepOverHoop(4029, 3100).wideEnough).toBe(false);
  expect(sweepOverHoop(4030, 2500).widestHoop).toBeCloseTo(3100, 9);
});

it('finds the height of a hoop under its slant as the long side of a right triangle (5-12-13, geometry)', () => {
  // Radii 50 and 550 apart by 500, height 1200: 1300.
  const [waist, hoop] = [2 * Math.PI * 50, 2 * Math.PI * 550];
  expect(heightUnderSlant(1300, waist, hoop)).toBeCloseTo(1200, 9);
  expect(heightUnderSlant(499, waist, hoop)).toBeUndefined();
  // S3, analyzemath.com, conical frustum: radii 10 and 20 cm, height 25 cm, slant R − r = √725 cm.
  expect(heightUnderSlant(10 * Math.sqrt(725), 2 * Math.PI * 100, 2 * Math.PI * 200)).toBeCloseTo(250, 9);
});

it('finds the hoop on a length that goes on to the floor, by similar triangles (5-12-13, geometry)', () => {
  const [waist, hoop] = [2 * Math.PI * 50, 2 * Math.PI * 550];
  // 60 high takes 60 × 13/12 = 65 of the cloth: 1365 to the floor leaves 1300, where subtraction gives 1305.
  expect(slantToHoop(1365, 60, waist, hoop)).toBeCloseTo(1300, 6);
  expect(slantToHoop(1000, 40, waist, waist)).toBeCloseTo(960, 9);
});

it("asks less of a child's hoop, as she is shorter", () => {
  // From memory: in proportion to a woman's 105 cm from waist to floor.
  expect(leastHoop(false, 560, 840)).toBeCloseTo(2000, 9);
  expect(leastHoop(true, 560, 840)).toBeCloseTo(2400, 9);
  expect(leastHoop(false, 740, 840)).toBe(2500);
  expect(leastHoop(false, 560)).toBe(2500);
});

it('never advises a hoop that it would call too small', () => {
  // 344 round at most: a hoop of 264 at 1.3 times, and a train wants 300.
  const train = 'train: {on-floor: 60, begins: front/side, shape: round}';
  const { findings } = made(skirt({ train, more: 'petticoat: {hoop: 280, hoop-off-floor: 5}' }));
  const told = findings.filter(({ code }) => /hoop/.test(code));
  expect(told.map(({ code }) => code).sort()).toEqual(['hoop-small', 'sweep-narrow-over-hoop']);
  const most = told
    .map(({ hint }) => /at most ([\d.]+)/.exec(hint)?.[1])
    .find((figure) => figure !== undefined);
  expect(most).toBeUndefined();
  // 1.3 × 300.
  expect(told.find(({ code }) => code === 'sweep-narrow-over-hoop')?.hint).toContain('390 cm');
});

it('knows the smallest comfortable hoops (common practice)', () => {
  expect([leastHoop(false), leastHoop(true)]).toEqual([2500, 3000]);
});
