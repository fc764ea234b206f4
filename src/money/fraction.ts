/** An exact number: numerator over a positive denominator, in lowest terms. Nothing here is ever a binary float. */
export interface Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

export const ZERO: Fraction = { numerator: 0n, denominator: 1n };
export const ONE: Fraction = { numerator: 1n, denominator: 1n };

/** A plain decimal such as `24.50`, `-3` or `.5`. Throws RangeError on anything else. */
export function fractionOfText(text: string): Fraction {
  const match = /^([+-]?)(\d*)(?:\.(\d*))?$/.exec(text.trim());
  const digits = `${match?.[2] ?? ''}${match?.[3] ?? ''}`;
  if (match === null || digits === '') throw new RangeError(`'${text}' is not a plain decimal number`);
  const sign = match[1] === '-' ? -1n : 1n;
  return lowest(sign * BigInt(digits), 10n ** BigInt((match[3] ?? '').length));
}

/**
 * A measured number, rounded half up to a millionth: a length in mm to a nanometre, a share to a ten-thousandth of
 * a per cent. Every number that a spec can hold in decimals comes through unchanged. Throws RangeError if not finite.
 */
export function fractionOfNumber(value: number): Fraction {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is not a finite number`);
  return lowest(BigInt(Math.round(value * 1e6)), 1_000_000n);
}

export function plus(a: Fraction, b: Fraction): Fraction {
  return lowest(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator);
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { numerator: -b.numerator, denominator: b.denominator });
}

export function times(a: Fraction, b: Fraction): Fraction {
  return lowest(a.numerator * b.numerator, a.denominator * b.denominator);
}

/** Throws RangeError on division by zero. */
export function over(a: Fraction, b: Fraction): Fraction {
  if (b.numerator === 0n) throw new RangeError('division by zero');
  const sign = b.numerator < 0n ? -1n : 1n;
  return lowest(sign * a.numerator * b.denominator, sign * a.denominator * b.numerator);
}

/** Nearest whole number; a half goes away from zero, as on an invoice. */
export function roundedHalfUp(value: Fraction): bigint {
  const size = value.numerator < 0n ? -value.numerator : value.numerator;
  const whole = (2n * size + value.denominator) / (2n * value.denominator);
  return value.numerator < 0n ? -whole : whole;
}

/** `value` to `places` decimals, a half away from zero: `3.25`, `-0.5`; trailing zeros kept. */
export function decimalText(value: Fraction, places: number): string {
  const scaled = roundedHalfUp(times(value, { numerator: 10n ** BigInt(places), denominator: 1n }));
  const sign = scaled < 0n ? '-' : '';
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, '0');
  return places === 0 ? sign + digits : `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

function lowest(numerator: bigint, denominator: bigint): Fraction {
  const divisor = greatestCommonDivisor(numerator < 0n ? -numerator : numerator, denominator);
  return { numerator: numerator / divisor, denominator: denominator / divisor };
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}
