import type { Gown } from '../gown/gown.ts';
import type { BoughtCloth } from '../lay/plan/lay-facts.ts';
import { type Fraction, fractionOfText, minus } from './fraction.ts';
import type { HoursInAll } from './labour-hours.ts';
import { type Amount, less, moneyOfText } from './money.ts';
import { type Priced, type Quote, quoteOf } from './quote.ts';

/** What was planned against what it came to, where the maker keeps it. */
export interface MakingRecord {
  readonly hours: Against<Fraction>;
  readonly cloths: readonly {
    readonly cloth: string;
    readonly bought: number | undefined;
    readonly used: number;
  }[];
  readonly spent: Against<Amount>;
  /** The quote again with the hours and the money that it came to. */
  readonly revised: Quote | undefined;
  readonly paid: Amount | undefined;
  /** The price agreed less what was paid. */
  readonly balance: Amount | undefined;
  /** The revised price less what was paid. */
  readonly balanceRevised: Amount | undefined;
}

export interface Against<T> {
  readonly planned: T | undefined;
  readonly actual: T | undefined;
  /** Actual less planned, where both are known. */
  readonly more: T | undefined;
}

/** What the quote was made from. */
export interface Planned {
  readonly quote: Quote | undefined;
  readonly priced: readonly Priced[];
  readonly hours: HoursInAll | undefined;
  readonly bought: readonly BoughtCloth[];
}

/** Undefined where nothing of it is kept. */
export function recordOf(gown: Gown, planned: Planned): MakingRecord | undefined {
  const { actual, paid } = gown.labour ?? {};
  const { quote, hours } = planned;
  const cloths = gown.cloths.flatMap(({ name: cloth, used }) =>
    used === undefined ? [] : [{ cloth, bought: boughtOf(cloth, planned.bought), used }],
  );
  if (actual === undefined && paid === undefined && cloths.length === 0) return undefined;
  const money = (text: string | undefined): Amount | undefined =>
    text === undefined ? undefined : moneyOfText(text, gown.currency);
  const paidSoFar = money(paid);
  const worked = actual?.hours === undefined ? undefined : fractionOfText(actual.hours);
  const revised = quote === undefined ? undefined : revisedQuote(gown, planned);
  return {
    hours: against(worked, hours?.inAll, minus),
    cloths,
    spent: against(money(actual?.spent), quote?.materials, less),
    revised,
    paid: paidSoFar,
    balance: ofBoth(quote?.total, paidSoFar, less),
    balanceRevised: ofBoth(revised?.total, paidSoFar, less),
  };
}

function against<T>(
  actual: T | undefined,
  planned: T | undefined,
  difference: (a: T, b: T) => T,
): Against<T> {
  return { planned, actual, more: ofBoth(actual, planned, difference) };
}

function ofBoth<T>(a: T | undefined, b: T | undefined, difference: (a: T, b: T) => T): T | undefined {
  return a === undefined || b === undefined ? undefined : difference(a, b);
}

function boughtOf(cloth: string, bought: readonly BoughtCloth[]): number | undefined {
  const own = bought.filter((one) => one.cloth === cloth);
  return own.length === 0 ? undefined : own.reduce((sum, one) => sum + one.buy, 0);
}

/** Materials at what was spent where that is kept, else at the lengths that were used; work at the hours that it took. */
function revisedQuote({ cloths, labour, currency }: Gown, { priced, hours }: Planned): Quote {
  const actual = labour?.actual;
  const worked = actual?.hours === undefined ? undefined : fractionOfText(actual.hours);
  const spent: Priced[] =
    actual?.spent === undefined
      ? priced.map((one) => usedInstead(cloths, one))
      : [{ kind: 'notion', name: 'materials', count: 1, price: actual.spent }];
  const hoursWorked =
    worked === undefined ? hours : { tasks: [{ task: 'making', hours: worked }], inAll: worked, over: false };
  return quoteOf(spent, hoursWorked, labour, currency);
}

function usedInstead(cloths: Gown['cloths'], one: Priced): Priced {
  const used = one.kind === 'cloth' ? cloths.find(({ name }) => name === one.name)?.used : undefined;
  return used === undefined ? one : { ...one, length: used };
}
