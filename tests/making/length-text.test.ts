import { expect, it } from 'vitest';
import { lengthNumber, lengthText } from '../../src/words/length-text.ts';

it('writes a length in the units of the spec, by the definition of the inch as 25.4 mm', () => {
  expect(lengthText(1015, 'cm')).toBe('101.5 cm');
  expect(lengthText(250, 'cm')).toBe('25 cm');
  expect(lengthText(1015.2, 'mm')).toBe('1015 mm');
  expect(lengthText(40.625 * 25.4, 'in')).toBe('40 5/8 in');
  expect(lengthText(25.4 / 2, 'in')).toBe('1/2 in');
  expect(lengthText(25.4 * 3.999, 'in')).toBe('4 in');
  expect(lengthNumber(-25.4 * 1.25, 'in')).toBe('-1 1/4');
  expect(lengthNumber(-0.01, 'cm')).toBe('0.0');
  expect(lengthNumber(-0.01, 'in')).toBe('0');
});
