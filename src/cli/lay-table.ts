import { inWords } from '../diagnostics/in-words.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Gown } from '../gown/gown.ts';
import type { LayPlan, LayWay } from '../lay/plan/lay-plan.ts';
import { type Amount, moneyText, sumOf } from '../money/money.ts';
import { layCost } from '../report/lay-report.ts';
import { layRemarks } from '../words/lay-remarks.ts';
import { textTable } from './text-table.ts';

/** One lay: every way that was looked at, and what to know before cutting. */
export function layTable(lay: LayPlan, gown: Gown): string {
  const { facts } = lay;
  const say = (length: number) => tapeText(length, gown.units);
  const able = lay.ways
    .filter((way) => way.length !== undefined)
    .sort((a, b) => (a.length ?? 0) - (b.length ?? 0));
  const unable = lay.ways.filter((way) => way.length === undefined);
  const direction = facts.oneWay ? ', all tops one way' : '';
  return [
    `${inWords(lay.layers)}, from ${lay.cloth}: ${say(facts.width)} wide, ${say(facts.usable)} of it to use${direction}`,
    textTable([
      ['  way', 'length', 'used', 'buy', 'cost', ''],
      ...able.map((way) => [`  ${way.name}`, ...wayFigures(way, lay, gown), way.taken ? '  taken' : '']),
    ]).trimEnd(),
    ...unable.map((way) => `  ${way.name}: cannot be, ${safeText(way.why ?? '')}`),
    ...handlingOf(lay),
    ...layRemarks(lay, gown.units).map((remark) => `  ${remark}`),
    ...lay.spare.slice(0, 2).map(({ width, height }) => `  Spare: ${say(width)} × ${say(height)}`),
    '',
  ].join('\n');
}

/** What to buy of each cloth, and in all. */
export function buyingTable(lays: readonly LayPlan[], gown: Gown): string {
  const rows = [...new Set(lays.map(({ cloth }) => cloth))].map((cloth) => {
    const length = lays.filter((lay) => lay.cloth === cloth).reduce((sum, lay) => sum + lay.buy, 0);
    return { cloth, length, cost: layCost(gown, cloth, length) };
  });
  const priced = rows.flatMap(({ cost }) => cost ?? []);
  const unpriced = rows.filter(({ cost }) => cost === undefined).map(({ cloth }) => cloth);
  return [
    textTable([
      ['to buy', 'length', 'cost'],
      ...rows.map(({ cloth, length, cost }) => [cloth, bought(length, cloth, gown), money(cost)]),
      ...(priced.length < 2 ? [] : [['in all', '', money(sumOf(priced, gown.currency))]]),
    ]),
    ...(unpriced.length === 0 || priced.length === 0
      ? []
      : [`Not in it, as no price is given: ${unpriced.join(', ')}.\n`]),
  ].join('');
}

function wayFigures({ length, used, buy }: LayWay, { cloth }: LayPlan, gown: Gown): string[] {
  return [
    length === undefined ? '' : tapeText(length, gown.units),
    used === undefined ? '' : `${Math.round(used * 100)} %`,
    buy === undefined ? '' : bought(buy, cloth, gown),
    buy === undefined ? '' : money(layCost(gown, cloth, buy)),
  ];
}

/** How the way taken is handled at the table. */
function handlingOf({ ways }: LayPlan): string[] {
  const handling = ways.find((way) => way.taken)?.handling ?? '';
  return handling === '' ? [] : [`  ${handling}`];
}

/** In the unit that the shop measures. */
function bought(length: number, cloth: string, gown: Gown): string {
  const inYards = (gown.cloths.find(({ name }) => name === cloth)?.pricedPer ?? 1000) < 1000;
  return inYards ? `${decimals(length / 914.4, 3)} yd` : `${decimals(length / 1000, 2)} m`;
}

function decimals(value: number, places: number): string {
  return value.toFixed(places);
}

function money(amount: Amount | undefined): string {
  return amount === undefined ? '' : moneyText(amount);
}
