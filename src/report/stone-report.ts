import { decimalText } from '../money/fraction.ts';
import { amountText } from '../money/money.ts';
import type { Workroom } from '../workroom/workroom.ts';

/** One set of stones, beads or sequins as `report.json` holds it, over the whole gown. */
export interface StoneReport {
  readonly name: string;
  readonly layer: string;
  readonly count: number;
  /** Whole ones to buy. */
  readonly gross: number;
  /** Where it is known what they weigh. */
  readonly grams?: number;
  /** To set them, where the spec says how many an hour. */
  readonly hours?: number;
  /** Of the stones themselves, in the spec's currency, a decimal text as in a quote; where they have a price. */
  readonly cost?: string;
}

export function stoneReport({ stones, pricing }: Pick<Workroom, 'stones' | 'pricing'>): StoneReport[] {
  return stones.map(({ stones: { name, layer, perHour }, count, gross, grams }) => {
    const task = perHour === undefined ? undefined : pricing.hours?.tasks.find((own) => own.task === name);
    const line = pricing.quote?.lines.find((own) => own.kind === 'stones' && own.name === name);
    return {
      name,
      layer: layer.name,
      count,
      gross,
      ...(grams === undefined ? {} : { grams: Math.round(grams * 1e4) / 1e4 }),
      ...(task === undefined ? {} : { hours: Number(decimalText(task.hours, 4)) }),
      ...(line === undefined ? {} : { cost: amountText(line.amount) }),
    };
  });
}
