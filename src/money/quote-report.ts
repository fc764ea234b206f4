import type { Gown } from '../gown/gown.ts';
import { decimalText, type Fraction } from './fraction.ts';
import { type Amount, amountText, exactAmountText } from './money.ts';
import type { Pricing } from './pricing.ts';
import type { Quote } from './quote.ts';

/** A quote for scripts: every amount a decimal text in whole units of the currency, so that no reader loses a digit. */
export interface QuoteReport {
  readonly gown: string;
  readonly client?: string;
  readonly currency: string | null;
  readonly lines: readonly {
    readonly kind: string;
    readonly name: string;
    /** mm, a count, or hours. */
    readonly length?: number;
    readonly count?: number;
    readonly hours?: string;
    readonly price: string;
    readonly pricedPer?: number;
    readonly amount: string;
  }[];
  readonly materials: string;
  readonly labour: string;
  readonly overhead: string;
  readonly cost: string;
  readonly margin: string;
  readonly rounding: string;
  readonly net: string;
  readonly tax: string;
  readonly total: string;
  readonly stages: readonly { readonly name: string; readonly share: string; readonly amount: string }[];
  readonly fittingsIncluded?: number;
  readonly expires?: string;
  /** What has no price yet, and cloths that no lay gives a length for. */
  readonly withoutPrice: readonly string[];
  readonly withoutLength: readonly string[];
  readonly actual?: {
    readonly paid?: string;
    readonly balance?: string;
    readonly revisedTotal?: string;
  };
}

/** Undefined where the spec has no price at all. */
export function quoteReport(gown: Gown, pricing: Pricing): QuoteReport | undefined {
  const { quote, materials, record } = pricing;
  if (quote === undefined) return undefined;
  const { fittingsIncluded, expires } = gown.labour ?? {};
  return {
    gown: gown.name,
    ...(gown.client === undefined ? {} : { client: gown.client }),
    currency: quote.currency ?? null,
    lines: linesOf(quote),
    ...amountsOf(quote),
    stages: quote.stages.map(({ name, share, amount }) => ({
      name,
      share: decimal(share),
      amount: amountText(amount),
    })),
    ...(fittingsIncluded === undefined ? {} : { fittingsIncluded }),
    ...(expires === undefined ? {} : { expires }),
    withoutPrice: materials.withoutPrice,
    withoutLength: materials.withoutLength,
    ...(record === undefined ? {} : { actual: actualOf(record) }),
  };
}

function linesOf(quote: Quote): QuoteReport['lines'] {
  return quote.lines.map((line) => ({
    kind: line.kind,
    name: line.name,
    ...(line.length === undefined ? {} : { length: Math.round(line.length * 1e4) / 1e4 }),
    ...(line.count === undefined ? {} : { count: line.count }),
    ...(line.hours === undefined ? {} : { hours: decimal(line.hours) }),
    price: exactAmountText(line.price, quote.currency),
    ...(line.pricedPer === undefined || line.length === undefined ? {} : { pricedPer: line.pricedPer }),
    amount: amountText(line.amount),
  }));
}

const AMOUNTS = [
  'materials',
  'labour',
  'overhead',
  'cost',
  'margin',
  'rounding',
  'net',
  'tax',
  'total',
] as const;

function amountsOf(quote: Quote): Record<(typeof AMOUNTS)[number], string> {
  return Object.fromEntries(AMOUNTS.map((name) => [name, amountText(quote[name])])) as Record<
    (typeof AMOUNTS)[number],
    string
  >;
}

function actualOf({
  paid,
  balance,
  revised,
}: NonNullable<Pricing['record']>): NonNullable<QuoteReport['actual']> {
  const text = (amount: Amount | undefined): string | undefined =>
    amount === undefined ? undefined : amountText(amount);
  const entries = { paid: text(paid), balance: text(balance), revisedTotal: text(revised?.total) };
  return Object.fromEntries(Object.entries(entries).filter(([, own]) => own !== undefined));
}

/** At most six decimals, none that are noughts. */
function decimal(value: Fraction): string {
  return decimalText(value, 6).replace(/\.?0+$/, '') || '0';
}
