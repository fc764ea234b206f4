import { expect, it } from 'vitest';
import { tapeNumber, tapeText } from '../../src/diagnostics/tape-text.ts';

it('writes a length in the units of the spec, by the definition of the inch as 25.4 mm', () => {
  expect(tapeText(1015, 'cm')).toBe('101.5 cm');
  expect(tapeText(250, 'cm')).toBe('25 cm');
  expect(tapeText(1015.2, 'mm')).toBe('1015 mm');
  expect(tapeText(40.625 * 25.4, 'in')).toBe('40 5/8 in');
  expect(tapeText(25.4 / 2, 'in')).toBe('1/2 in');
  expect(tapeText(25.4 * 3.999, 'in')).toBe('4 in');
  expect(tapeNumber(-25.4 * 1.25, 'in')).toBe('-1 1/4');
  expect(tapeNumber(-0.01, 'cm')).toBe('0.0');
  expect(tapeNumber(-0.01, 'in')).toBe('0');
});
