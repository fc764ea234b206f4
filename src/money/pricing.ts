import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { EdgingFacts } from '../making/edging/edging-facts.ts';
import type { Bench, Found } from '../making/findings.ts';
import * as problems from '../making/problems.ts';
import type { Skirt } from '../making/skirt.ts';
import { decimalText, fractionOfNumber, over } from './fraction.ts';
import { type HoursInAll, hoursByTask, type TaskHours } from './labour-hours.ts';
import { unitsIn } from './money.ts';
import { type Bought, type PricedMaterials, pricedMaterials } from './priced-materials.ts';
import { type Quote, quoteOf } from './quote.ts';
import { type MakingRecord, recordOf } from './record.ts';

/** What the gown costs, as far as the spec's prices and hours go. */
export interface Pricing {
  readonly materials: PricedMaterials;
  readonly hours: HoursInAll | undefined;
  /** Whether the quote has work in it. */
  readonly workCharged: boolean;
  /** Undefined where the spec has no price at all. */
  readonly quote: Quote | undefined;
  readonly record: MakingRecord | undefined;
}

export function pricing({ gown, skirt }: Bench, parts: Bought): Found<Pricing> {
  const materials = pricedMaterials(gown, parts);
  const { labour, currency } = gown;
  const hours =
    labour === undefined
      ? undefined
      : hoursByTask(labour, sewnLengths(skirt, parts.edging), stoneHours(parts.stones));
  const charged = labour?.rate !== undefined && hours !== undefined && hours.tasks.length > 0;
  const quote =
    materials.priced.length === 0 && !charged
      ? undefined
      : quoteOf(materials.priced, hours, labour, currency);
  const findings: Diagnostic[] =
    labour?.hours !== undefined && hours?.over === true
      ? [problems.hoursOverTotal(labour.place('hours'), decimalText(hours.inAll, 2), labour.hours)]
      : [];
  const rounding = labour?.rounding;
  if (quote !== undefined && rounding !== undefined && quote.net.minor === 0n && quote.cost.minor !== 0n)
    findings.push(
      problems.priceRoundedAway(labour!.place('rounding'), decimalText(unitsIn(quote.cost), 2), rounding),
    );
  const record = recordOf(gown, { quote, priced: materials.priced, hours, bought: parts.bought });
  return { facts: { materials, hours, workCharged: charged, quote, record }, findings };
}

/** Exact: so many, set so many an hour. */
function stoneHours(stones: Bought['stones']): TaskHours[] {
  return stones.flatMap(({ stones: { name, perHour }, count }) =>
    perHour === undefined || count === 0
      ? []
      : [{ task: name, hours: over(fractionOfNumber(count), fractionOfNumber(perHour)) }],
  );
}

/** All rows of the whole gown once, mm: what hours per metre are multiplied by. */
function sewnLengths(skirt: Skirt, edging: EdgingFacts | undefined) {
  const seams = skirt.layers.flatMap((layer) => layer.seams.map((seam) => seam.copies * seam.length));
  return {
    seams: seams.reduce((sum, length) => sum + length, 0),
    waist: skirt.waist,
    hems: skirt.layers.reduce((sum, layer) => sum + layer.hem, 0),
    edging: (edging?.hems ?? []).reduce((sum, hem) => sum + hem.length, 0),
  };
}
