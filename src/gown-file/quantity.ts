/**
 * Quantities as a maker writes them: `98cm`, `980mm`, `38in`, `5/8in`, `1 5/8 in`, `3%`, `17deg`, or a bare number.
 * Read exactly: whole numbers are multiplied and divided once at the end, so that `40in` and `1016mm` are the same
 * number inside, and a file that only changes its units changes nothing.
 */
export interface Quantity {
  /** Of the unit written: value = numerator / denominator. */
  readonly numerator: number;
  readonly denominator: number;
  /** As written, lower case; empty for a bare number. */
  readonly unit: string;
}

/** Number and unit, or nothing where the text is not a quantity. The unit is not judged here. */
export function parseQuantity(text: string): Quantity | undefined {
  const match = QUANTITY.exec(spellFractions(text.trim()));
  if (match === null) return undefined;
  const [, sign, decimal, exponent, whole, over, under, unit = ''] = match;
  const value =
    decimal !== undefined
      ? decimalParts(decimal, exponent === undefined ? 0 : Number(exponent))
      : fractionParts(whole, over!, under!);
  if (value === undefined) return undefined;
  const signed = sign === '-' || sign === '−' ? -value.numerator : value.numerator;
  return { numerator: signed, denominator: value.denominator, unit: unit.toLowerCase() };
}

/** In mm, or nothing for a unit that is no length. */
export function lengthOf(quantity: Quantity, bareUnit: string): number | undefined {
  const micrometres = MICROMETRES.get(quantity.unit === '' ? bareUnit : quantity.unit);
  if (micrometres === undefined) return undefined;
  return tidy((quantity.numerator * micrometres) / (quantity.denominator * 1000));
}

/** In radians; a bare number is in degrees. */
export function angleOf({ numerator, denominator, unit }: Quantity): number | undefined {
  if (unit === 'rad') return tidy(numerator / denominator);
  if (!['', 'deg', '°', 'degrees', 'degree'].includes(unit)) return undefined;
  return tidy(((numerator / denominator) * Math.PI) / 180);
}

/** A fraction of 1: `3%`, `0.03` or `1/8`. */
export function shareOf({ numerator, denominator, unit }: Quantity): number | undefined {
  if (unit === '%') return tidy(numerator / (denominator * 100));
  return unit === '' ? tidy(numerator / denominator) : undefined;
}

/** In g/m²; a bare number is in g/m². */
export function weightOf({ numerator, denominator, unit }: Quantity): number | undefined {
  if (['', 'g/m2', 'g/m²', 'gsm'].includes(unit)) return tidy(numerator / denominator);
  // 1 oz = 28.349523125 g and 1 yd = 0.9144 m, both by definition.
  return ['oz/yd2', 'oz/yd²'].includes(unit)
    ? (numerator / denominator) * (28.349523125 / 0.9144 ** 2)
    : undefined;
}

export const LENGTH_UNITS: readonly string[] = ['mm', 'cm', 'm', 'in', 'ft', 'yd'];

const MICROMETRES: ReadonlyMap<string, number> = new Map([
  ['mm', 1000],
  ['cm', 10_000],
  ['m', 1_000_000],
  ['in', 25_400],
  ['"', 25_400],
  ['″', 25_400],
  ['ft', 304_800],
  ['yd', 914_400],
]);

const QUANTITY =
  /^([+\-−]?)\s*(?:(\d{1,20}(?:\.\d{0,20})?|\.\d{1,20})(?:e([+-]?\d{1,2}))?|(?:(\d{1,9})(?:\s+|\s*-\s*))?(\d{1,9})\s*\/\s*(\d{1,9}))\s*([a-z%°"″²][a-z0-9²/]*)?$/i;

/** `5½` is five and a half, not fifty-one halves. */
function spellFractions(text: string): string {
  return text
    .replace(/(?<!\s)\s*([¼½¾⅐-⅞])/g, (_, fraction: string) => ` ${fraction.normalize('NFKD')}`)
    .replaceAll('⁄', '/')
    .trim();
}

function decimalParts(decimal: string, exponent: number): Omit<Quantity, 'unit'> {
  const [whole = '', rest = ''] = decimal.split('.');
  const digits = rest.replace(/(?<!0)0+$/, '');
  const scale = digits.length - exponent;
  const numerator = Number(whole + digits);
  return scale >= 0
    ? { numerator, denominator: 10 ** scale }
    : { numerator: numerator * 10 ** -scale, denominator: 1 };
}

function fractionParts(
  whole: string | undefined,
  over: string,
  under: string,
): Omit<Quantity, 'unit'> | undefined {
  const denominator = Number(under);
  if (denominator === 0) return undefined;
  return { numerator: Number(whole ?? '0') * denominator + Number(over), denominator };
}

/** No negative zero: it prints as `-0`. */
function tidy(value: number): number {
  return value === 0 ? 0 : value;
}
