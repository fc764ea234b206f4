import { inWords } from '../diagnostics/in-words.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Gown } from '../gown/gown.ts';
import type { LayPlan, LayWay } from '../lay/plan/lay-plan.ts';
import { type Amount, moneyText, sumOf } from '../money/money.ts';
import { layCost } from '../report/lay-report.ts';
import { ENGLISH_LAY } from '../words/english-lay.ts';
import { ENGLISH_BUYING as words } from '../words/english-tables.ts';
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
  return [
    words.lay(inWords(lay.layers), lay.cloth, say(facts.width), say(facts.usable), facts.oneWay),
    textTable([
      words.wayHeads,
      ...able.map((way) => [
        `  ${ENGLISH_LAY.way(way.folds)}`,
        ...wayFigures(way, lay, gown),
        way.taken ? `  ${words.taken}` : '',
      ]),
    ]).trimEnd(),
    ...unable.map((way) => `  ${words.cannotBe(ENGLISH_LAY.way(way.folds), tooWideText(way, say))}`),
    ...lay.ways.filter((way) => way.taken).map((way) => `  ${handlingText(way)}`),
    ...layRemarks(lay, gown.units).map((remark) => `  ${remark}`),
    ...lay.spare.slice(0, 2).map(({ width, height }) => `  ${words.spare(say(width), say(height))}`),
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
      words.heads,
      ...rows.map(({ cloth, length, cost }) => [cloth, bought(length, cloth, gown), money(cost)]),
      ...(priced.length < 2 ? [] : [[words.inAll, '', money(sumOf(priced, gown.currency))]]),
    ]),
    ...(unpriced.length === 0 || priced.length === 0 ? [] : [words.unpriced(unpriced)]),
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

/** How a way is handled at the table; nothing where it cannot be. */
export function handlingText({ handling }: LayWay): string {
  return handling === undefined ? '' : ENGLISH_LAY.handling(handling);
}

export function tooWideText({ tooWide }: LayWay, say: (mm: number) => string): string {
  return tooWide === undefined
    ? ''
    : ENGLISH_LAY.tooWide(tooWide.gore, say(tooWide.width), say(tooWide.usable));
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
