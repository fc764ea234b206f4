import { describe, expect, it } from 'vitest';
import { likelyMeant } from '../../../src/gown-file/slips/likely-meant.ts';

/** What stands in the file, what is expected there, and what a reader would say was meant. */
const SLIPS: readonly (readonly [written: string, expected: number, meant: string, units?: string])[] = [
  ['1030', 104, '103'],
  ['130', 104, '103'],
  ['17', 106, '107'],
  ['103.5cm', 10, '10.35cm'],
  ['1035', 104, '103.5'],
  ['1103', 104, '103'],
  ['1003', 104, '103'],
  ['460', 44, '46'],
  ['.15', 1.5, '1.5'],
  ['15', 1.5, '1.5'],
  ['38', 98, '38in', 'cm'],
  ['98', 38, '98cm', 'in'],
  ['2.55', 25, '25.5'],
];

describe('what was likely meant', () => {
  for (const [written, expected, meant, units] of SLIPS)
    it(`${written} where about ${expected} is expected: ${meant}`, () => {
      const value = Number.parseFloat(written);
      const near = (factor: number) => Math.abs(Math.log((value * factor) / expected)) < Math.log(1.1);
      expect(likelyMeant(written, expected / value, near, units, true)).toBe(meant);
    });

  it('says nothing of what no single slip explains, nor of fractions', () => {
    const never = (written: string, expected: number) => {
      const value = Number.parseFloat(written);
      const near = (factor: number) => Math.abs(Math.log((value * factor) / expected)) < Math.log(1.1);
      return likelyMeant(written, expected / value, near, 'mm', true);
    };
    expect(never('88', 104)).toBeUndefined();
    expect(never('1 5/8', 104)).toBeUndefined();
    expect(never('0', 104)).toBeUndefined();
  });

  it('adds a digit only where it is known what to expect', () => {
    const wide = () => true;
    expect(likelyMeant('17', 107 / 17, wide, 'cm', false)).toBe('71');
    expect(likelyMeant('17', 107 / 17, wide, 'cm', true)).toBe('107');
  });
});
