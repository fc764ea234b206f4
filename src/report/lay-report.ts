import type { Gown } from '../gown/gown.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { fractionOfNumber, fractionOfText, over, times } from '../money/fraction.ts';
import { type Amount, amountText, moneyOf } from '../money/money.ts';

/** `lays[]` of `report.json`: mm; `used` as a fraction; `cost` in the spec's currency, null where there is no price. */
export interface LayReport {
  readonly cloth: string;
  /** What is cut from it, in the order in which it is cut. */
  readonly layers: readonly string[];
  /** The same, where it is one layer. */
  readonly layer?: string;
  readonly width: number;
  readonly fold: string;
  readonly length: number;
  readonly used: number;
  readonly buy: number;
  readonly cost: number | null;
  /** What its layers would take, laid and bought one by one; only where there are several. */
  readonly apart?: LayPlan['apart'];
}

/** Its cloths with their prices. */
export type GownPriced = Pick<Gown, 'cloths' | 'currency'>;

export function layReport(gown: GownPriced, lays: readonly LayPlan[]): LayReport[] {
  return lays.map((lay) => {
    const cost = layCost(gown, lay.cloth, lay.buy);
    return {
      cloth: lay.cloth,
      layers: lay.layers,
      ...(lay.layers.length === 1 ? { layer: lay.layers[0]! } : {}),
      width: tenthOfMicrometre(lay.facts.width),
      fold: lay.fold,
      length: tenthOfMicrometre(lay.length),
      used: Math.round(lay.used * 1e6) / 1e6,
      buy: tenthOfMicrometre(lay.buy),
      cost: cost === undefined ? null : Number(amountText(cost)),
      ...(lay.apart === undefined ? {} : { apart: apartReport(lay.apart) }),
    };
  });
}

function apartReport({ layers, length, buy }: NonNullable<LayPlan['apart']>): LayPlan['apart'] {
  return {
    layers: layers.map((own) => ({
      layer: own.layer,
      length: tenthOfMicrometre(own.length),
      buy: tenthOfMicrometre(own.buy),
    })),
    length: tenthOfMicrometre(length),
    buy: tenthOfMicrometre(buy),
  };
}

/** What a length of a cloth costs, exactly; nothing where the cloth has no price. */
export function layCost({ cloths, currency }: GownPriced, cloth: string, length: number): Amount | undefined {
  const { price, pricedPer } = cloths.find(({ name }) => name === cloth) ?? {};
  if (price === undefined || pricedPer === undefined) return undefined;
  return moneyOf(
    times(fractionOfText(price), over(fractionOfNumber(length), fractionOfNumber(pricedPer))),
    currency,
  );
}

function tenthOfMicrometre(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
