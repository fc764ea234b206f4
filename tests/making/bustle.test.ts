import { describe, expect, it } from 'vitest';
import {
  bustleLift,
  bustlePoint,
  isUsualNumber,
  pointsIn,
  seamsAdvised,
} from '../../src/making/bustle/bustle.ts';

const centre = { name: 'centre-back', copies: 1, length: 1760, toFloor: 1115 };
const inner = { name: 'side-back/back', copies: 2, length: 1390, toFloor: 1115 };
const outer = { name: 'side/side-back', copies: 2, length: 1120, toFloor: 1105 };

describe('pick-up − anchor = seam length − (floor − clearance), closed form', () => {
  it('by hand for three seams', () => {
    // 1760 − (1115 − 20) = 665; 1390 − 1095 = 295; 1120 − (1105 − 20) = 35.
    expect(bustleLift(1760, 1115, 20)).toBe(665);
    expect(bustleLift(1390, 1115, 20)).toBe(295);
    expect(bustleLift(1120, 1105, 20)).toBe(35);
    expect(bustleLift(1000, 1105, 20)).toBe(0);
  });

  it('puts the pick-up that far below the anchor, so that the fold hangs at the clearance', () => {
    const point = bustlePoint(centre, 150, 20, 25);
    expect(point).toMatchObject({ pickUp: 815, loopBottom: 840, aboveHem: 920, copies: 1 });
    // Below the pick-up hangs length − pickUp; from the anchor it ends at the clearance above the floor.
    expect(point.anchor + (centre.length - point.pickUp)).toBe(centre.toFloor - 20);
  });
});

describe('how many points', () => {
  it('advises an odd number from the centre outwards (common practice)', () => {
    const advised = seamsAdvised([outer, inner, centre], 20, false);
    expect(advised.map((seam) => seam.name)).toEqual(['centre-back', 'side-back/back', 'side/side-back']);
    expect(pointsIn(advised)).toBe(5);
    expect(seamsAdvised([{ ...outer, length: 1100 }, inner, centre], 20, false)).toEqual([centre, inner]);
  });

  it('knows three and five as usual, seven to nine on a heavy train', () => {
    expect([1, 2, 3, 4, 5, 6, 7].filter((n) => isUsualNumber(n, false))).toEqual([3, 5]);
    expect([5, 6, 7, 8, 9, 10].filter((n) => isUsualNumber(n, true))).toEqual([7, 9]);
  });
});
