import type { Units } from './units.ts';

const MM_PER_INCH = 25.4;

/** A length as read off a tape, in the spec's units and with its unit: `101.5 cm`, `25 cm`, `40 5/8 in`, `1015 mm`. To 1 mm, or to 1/16 in. */
export function tapeText(mm: number, units: Units): string {
  return `${tapeNumber(mm, units).replace(/\.0$/, '')} ${units}`;
}

/** Without its unit, for a column that names it once; whole centimetres keep their nought there. */
export function tapeNumber(mm: number, units: Units, partsOfInch = 16): string {
  if (units === 'in') return inches(mm / MM_PER_INCH, partsOfInch);
  const places = units === 'cm' ? 1 : 0;
  return withoutMinusZero((mm / (units === 'cm' ? 10 : 1)).toFixed(places));
}

/** Whole inches and a fraction in lowest terms; `parts` is a power of two. */
function inches(value: number, parts: number): string {
  const counted = Math.round(Math.abs(value) * parts);
  const sign = value < 0 && counted > 0 ? '-' : '';
  const whole = Math.floor(counted / parts);
  let top = counted % parts;
  if (top === 0) return `${sign}${whole}`;
  let bottom = parts;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
}

function withoutMinusZero(text: string): string {
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}
