import { decimalText, type Fraction, fractionOfText, ONE, over, roundedHalfUp, times } from './fraction.ts';

/**
 * An amount that can be paid: a whole number of the currency's smallest unit. Every line of a quote is rounded to
 * one of these, half away from zero, and sums are taken over the rounded lines, so that the column adds up.
 */
export interface Amount {
  readonly minor: bigint;
  /** ISO 4217 code; without one, amounts have two decimals and print bare. */
  readonly currency: string | undefined;
}

/** Rounds an exact number of whole units (pounds, yen) to what can be paid, half away from zero. */
export function moneyOf(value: Fraction, currency: string | undefined): Amount {
  return {
    minor: roundedHalfUp(times(value, { numerator: minorPerUnit(currency), denominator: 1n })),
    currency,
  };
}

/** A decimal as a spec writes it. Throws RangeError where the text is not a plain decimal. */
export function moneyOfText(text: string, currency: string | undefined): Amount {
  return moneyOf(fractionOfText(text), currency);
}

/** The exact number of whole units. */
export function unitsIn(money: Amount): Fraction {
  return over(
    { numerator: money.minor, denominator: 1n },
    { numerator: minorPerUnit(money.currency), denominator: 1n },
  );
}

export function sumOf(amounts: readonly Amount[], currency: string | undefined): Amount {
  return { minor: amounts.reduce((sum, amount) => sum + amount.minor, 0n), currency };
}

export function less(a: Amount, b: Amount): Amount {
  return { minor: a.minor - b.minor, currency: a.currency };
}

/** Share of an amount, rounded to what can be paid. */
export function shareOf(money: Amount, share: Fraction): Amount {
  return moneyOf(times(unitsIn(money), share), money.currency);
}

/** To the nearest multiple of `step`, half away from zero. A step that is not above zero changes nothing. */
export function roundedToStep(money: Amount, step: Amount): Amount {
  if (step.minor <= 0n) return money;
  const steps = roundedHalfUp(over({ ...ONE, numerator: money.minor }, { ...ONE, numerator: step.minor }));
  return { minor: steps * step.minor, currency: money.currency };
}

/** `1234.50`: no thousands sign, so that any script and any reader takes it for the same number. */
export function amountText(money: Amount): string {
  return decimalText(unitsIn(money), minorDigits(money.currency));
}

/** A price as written, with more decimals than can be paid where it has them: `0.0125`. */
export function exactAmountText(price: Fraction, currency: string | undefined): string {
  const places = [minorDigits(currency), 4].find((count) => isWhole(price, count)) ?? 6;
  return decimalText(price, places);
}

function isWhole(value: Fraction, places: number): boolean {
  return times(value, { numerator: 10n ** BigInt(places), denominator: 1n }).denominator === 1n;
}

/** `GBP 1234.50`; bare where there is no currency. */
export function moneyText(money: Amount): string {
  return money.currency === undefined ? amountText(money) : `${money.currency} ${amountText(money)}`;
}

/** Digits after the point by ISO 4217, for the codes that do not have two. Source: the standard's list one, from memory. */
const MINOR_DIGITS: Readonly<Record<string, number>> = {
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  ISK: 0,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  PYG: 0,
  RWF: 0,
  UGX: 0,
  UYI: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
  CLF: 4,
  UYW: 4,
};

export function minorDigits(currency: string | undefined): number {
  return (currency === undefined ? undefined : MINOR_DIGITS[currency]) ?? 2;
}

function minorPerUnit(currency: string | undefined): bigint {
  return 10n ** BigInt(minorDigits(currency));
}
