import type { Units } from '../spec/spec.ts';

const MM_PER_INCH = 25.4;

/** A length in the spec's units, with its unit: `101.5 cm`, `25 cm`, `40 5/8 in`, `1015 mm`. To 1 mm, or to 1/16 in. */
export function lengthText(mm: number, units: Units): string {
  return `${lengthNumber(mm, units).replace(/\.0$/, '')} ${units}`;
}

/** Without its unit, for a column that names it once; whole centimetres keep their nought there. */
export function lengthNumber(mm: number, units: Units): string {
  if (units === 'in') return inches(mm / MM_PER_INCH);
  const places = units === 'cm' ? 1 : 0;
  return withoutMinusZero((mm / (units === 'cm' ? 10 : 1)).toFixed(places));
}

/** Whole inches and a fraction in lowest terms, to 1/16. */
function inches(value: number): string {
  const sixteenths = Math.round(Math.abs(value) * 16);
  const sign = value < 0 && sixteenths > 0 ? '-' : '';
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  if (top === 0) return `${sign}${whole}`;
  let bottom = 16;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
}

function withoutMinusZero(text: string): string {
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}
