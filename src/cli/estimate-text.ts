import { tapeText } from '../diagnostics/tape-text.ts';
import { bodySize } from '../estimate/body-sizes.ts';
import type { Gown } from '../gown/gown.ts';
import type { SupposedMeasures } from '../gown-file/with-measures.ts';
import { paperText } from '../sheets/paper.ts';
import { ENGLISH_ESTIMATE as words } from '../words/english-estimate.ts';
import { type EstimateFlags, missingPrices } from './estimate-flags.ts';
import type { Estimate } from './estimate-of.ts';
import { textTable } from './text-table.ts';

/** What the terminal shows of an estimate. */
export function estimateText(
  template: string,
  { cloth, together, sheets, hours, price }: Estimate,
  { flags, measures, gown }: { flags: EstimateFlags; measures: SupposedMeasures; gown: Gown },
): string {
  const say = (mm: number) => tapeText(mm, gown.units);
  const metres = (mm: number | null) =>
    mm === null
      ? words.cannot
      : gown.units === 'in'
        ? `${(mm / 914.4).toFixed(2)} yd`
        : `${(mm / 1000).toFixed(1)} m`;
  const size = flags.size === undefined ? undefined : bodySize(Number(flags.size));
  const supposed = (Object.keys(words.measures) as (keyof SupposedMeasures)[])
    .filter(
      (name) =>
        measures[name] !== undefined && !(size !== undefined && measures[name] === size[name as 'waist']),
    )
    .map((name) => words.measures[name](say(measures[name]!)));
  const assumed = [
    ...(size === undefined ? [] : [words.size(say(size.bust), say(size.waist), say(size.hip))]),
    ...supposed,
    words.rest(template),
    words.work,
    ...(flags.price === undefined ? [] : [words.prices(flags.price.map((text) => text.replace('=', ' ')))]),
    ...(flags.rate === undefined ? [] : [words.rate(flags.rate)]),
    words.without,
  ];
  const heads = [words.cloth, ...(cloth[0]?.widths ?? []).map(({ width }) => words.wide(say(width)))];
  return [
    words.title(template),
    '',
    textTable([
      heads,
      ...cloth.map((row) => [words.layer(row.layer, row.cloth), ...row.widths.map(({ buy }) => metres(buy))]),
      ...together.map((row) => [
        words.together(row.layers, row.cloth),
        ...row.widths.map(({ buy }) => metres(buy)),
      ]),
    ]).trimEnd(),
    '',
    words.sheets(sheets.count, paperText(sheets.paper)),
    words.hours(hours.least, hours.most),
    price === null ? words.noPrice(missingPrices(flags, gown)) : words.price(price.least, price.most),
    '',
    `${words.assumed}:`,
    ...assumed.map((line) => `- ${line}`),
    '',
    words.notice,
    '',
  ].join('\n');
}
