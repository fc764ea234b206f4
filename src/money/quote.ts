import type { Labour, Trim } from '../gown/sections.ts';
import {
  type Fraction,
  fractionOfNumber,
  fractionOfText,
  minus,
  ONE,
  over,
  plus,
  times,
  ZERO,
} from './fraction.ts';
import type { HoursInAll } from './labour-hours.ts';
import { type Amount, less, moneyOf, moneyOfText, roundedToStep, shareOf, sumOf } from './money.ts';

/** One line of what the gown costs to make. */
export interface QuoteLine {
  readonly kind: 'cloth' | 'edging' | 'strip' | 'stones' | 'notion' | 'labour';
  readonly name: string;
  readonly strip?: StripPlace;
  /** Length in mm, a count, or hours: what the price is multiplied by. */
  readonly length?: number;
  readonly count?: number;
  readonly hours?: Fraction;
  /** As given: it may have more decimals than can be paid. */
  readonly price: Fraction;
  /** mm that the price is for, where it is a length's. */
  readonly pricedPer?: number;
  readonly amount: Amount;
}

/** A part of the price that falls due. */
export interface Stage {
  /** `deposit` and `balance`, or as the spec names it. */
  readonly name: string;
  readonly share: Fraction;
  readonly amount: Amount;
}

/** The maker's own reckoning; the client sees `net`, `tax`, `total` and the stages only. */
export interface Quote {
  readonly currency: string | undefined;
  readonly lines: readonly QuoteLine[];
  readonly materials: Amount;
  readonly labour: Amount;
  readonly overhead: Amount;
  readonly overheadShare: Fraction;
  /** Materials, labour and overhead: what the gown costs to make. */
  readonly cost: Amount;
  readonly margin: Amount;
  readonly marginShare: Fraction;
  /** What rounding to the maker's step adds or takes off. */
  readonly rounding: Amount;
  readonly net: Amount;
  readonly tax: Amount;
  readonly taxShare: Fraction;
  readonly total: Amount;
  readonly stages: readonly Stage[];
}

/** Which strip a line is for. */
export type StripPlace = Pick<Trim, 'kind' | 'along'> & { readonly layer: string };

export interface Priced {
  readonly kind: Exclude<QuoteLine['kind'], 'labour'>;
  readonly name: string;
  readonly strip?: StripPlace;
  readonly length?: number;
  readonly count?: number;
  /** As the spec writes it. */
  readonly price: string;
  readonly pricedPer?: number;
}

/**
 * Every line rounded to what can be paid, then: overhead on materials and labour, margin on cost, the net price rounded
 * to the maker's step, tax on that. Deposit and stages are shares of the total, and the balance is what they leave, so
 * that they add up.
 */
export function quoteOf(
  priced: readonly Priced[],
  hours: HoursInAll | undefined,
  labour: Labour | undefined,
  currency: string | undefined,
): Quote {
  const materialLines = priced.map((one) => materialLine(one, currency));
  const labourLines =
    hours === undefined || labour?.rate === undefined ? [] : labourLinesOf(hours, labour.rate, currency);
  const materials = sumOf(
    materialLines.map((line) => line.amount),
    currency,
  );
  const work = sumOf(
    labourLines.map((line) => line.amount),
    currency,
  );
  const overheadShare = fractionOfNumber(labour?.overhead ?? 0);
  const marginShare = fractionOfNumber(labour?.margin ?? 0);
  const taxShare = fractionOfNumber(labour?.tax ?? 0);
  const overhead = shareOf(sumOf([materials, work], currency), overheadShare);
  const cost = sumOf([materials, work, overhead], currency);
  const margin = shareOf(cost, marginShare);
  const exact = sumOf([cost, margin], currency);
  const net =
    labour?.rounding === undefined ? exact : roundedToStep(exact, moneyOfText(labour.rounding, currency));
  const tax = shareOf(net, taxShare);
  const total = sumOf([net, tax], currency);
  return {
    currency,
    lines: [...materialLines, ...labourLines],
    materials,
    labour: work,
    overhead,
    overheadShare,
    cost,
    margin,
    marginShare,
    rounding: less(net, exact),
    net,
    tax,
    taxShare,
    total,
    stages: stagesOf(total, labour),
  };
}

function materialLine(one: Priced, currency: string | undefined): QuoteLine {
  const price = fractionOfText(one.price);
  const quantity = quantityOf(one);
  const { price: _, ...rest } = one;
  return { ...rest, price, amount: moneyOf(times(price, quantity), currency) };
}

function quantityOf({ length, count, pricedPer }: Priced): Fraction {
  if (length === undefined) return fractionOfNumber(count ?? 1);
  return over(fractionOfNumber(length), fractionOfNumber(pricedPer ?? 1000));
}

function labourLinesOf(hours: HoursInAll, rate: string, currency: string | undefined): QuoteLine[] {
  return hours.tasks.map(({ task, hours: own }) => ({
    kind: 'labour' as const,
    name: task,
    hours: own,
    price: fractionOfText(rate),
    amount: moneyOf(times(fractionOfText(rate), own), currency),
  }));
}

function stagesOf(total: Amount, labour: Labour | undefined): Stage[] {
  const deposit = fractionOfNumber(labour?.deposit ?? 0);
  const named = Object.entries(labour?.stages ?? {}).map(([name, share]) => ({
    name,
    share: fractionOfNumber(share),
  }));
  const parts = [...(deposit.numerator > 0n ? [{ name: 'deposit', share: deposit }] : []), ...named];
  const whole = parts.reduce((sum, { share }) => plus(sum, share), ZERO);
  const isWhole = minus(whole, ONE).numerator === 0n;
  const paid = parts.map((part) => ({ ...part, amount: shareOf(total, part.share) }));
  if (isWhole) return lastTakesTheRest(total, paid);
  const rest = less(
    total,
    sumOf(
      paid.map((part) => part.amount),
      total.currency,
    ),
  );
  return [...paid, { name: 'balance', share: minus(ONE, whole), amount: rest }];
}

function lastTakesTheRest(total: Amount, stages: readonly Stage[]): Stage[] {
  const before = stages.slice(0, -1);
  const rest = less(
    total,
    sumOf(
      before.map((stage) => stage.amount),
      total.currency,
    ),
  );
  return [...before, { ...stages[stages.length - 1]!, amount: rest }];
}
