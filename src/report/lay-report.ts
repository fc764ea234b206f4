import type { Gown } from '../gown/gown.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { fractionOfNumber, fractionOfText, over, times } from '../money/fraction.ts';
import { type Amount, amountText, moneyOf } from '../money/money.ts';

/** `lays[]` of `report.json`: mm; `used` as a fraction; `cost` in the spec's currency, null where there is no price. */
export interface LayReport {
  readonly layer: string;
  readonly cloth: string;
  readonly width: number;
  readonly fold: string;
  readonly length: number;
  readonly used: number;
  readonly buy: number;
  readonly cost: number | null;
  /** Only where the lay was stopped before its search was done. */
  readonly cutShort?: true;
}

/** Its cloths with their prices. */
export type GownPriced = Pick<Gown, 'cloths' | 'currency'>;

export function layReport(gown: GownPriced, lays: readonly LayPlan[]): LayReport[] {
  return lays.map((lay) => {
    const cost = layCost(gown, lay.cloth, lay.buy);
    return {
      layer: lay.layer,
      cloth: lay.cloth,
      width: tenthOfMicrometre(lay.facts.width),
      fold: lay.fold,
      length: tenthOfMicrometre(lay.length),
      used: Math.round(lay.used * 1e6) / 1e6,
      buy: tenthOfMicrometre(lay.buy),
      cost: cost === undefined ? null : Number(amountText(cost)),
      ...(lay.cutShort ? { cutShort: true as const } : {}),
    };
  });
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
