import type { Gown } from '../../gown/gown.ts';
import type { Pricing } from '../../money/pricing.ts';
import type { Words } from '../../words/english.ts';

/** The client's price as lines of text for a terminal: what it covers, what falls due when, what counts as a change. */
export function quoteText(gown: Gown, pricing: Pricing, words: Words): string {
  const { quote } = pricing;
  const { client: text } = words;
  if (quote === undefined) return text.noPrice;
  const { fittingsIncluded: fittings, expires } = gown.labour ?? {};
  const taxed = quote.tax.minor !== 0n;
  const missing = notInPrice(pricing, words);
  const price: [string, string][] = [
    ...(taxed
      ? ([
          [text.net, words.money(quote.net)],
          [text.tax(words.percentExact(quote.taxShare)), words.money(quote.tax)],
        ] as [string, string][])
      : []),
    [missing.length === 0 ? text.total : text.totalSoFar, words.money(quote.total)],
  ];
  const stages = quote.stages.map((stage): [string, string] => [
    `${text.stages[stage.name] ?? stage.name} (${words.percentExact(stage.share)})`,
    words.money(stage.amount),
  ]);
  return [
    text.covers(gown.name, fittings),
    '',
    ...columns(price),
    ...(missing.length === 0 ? [] : [text.incomplete(missing)]),
    ...(stages.length < 2 ? [] : ['', text.stagesTitle, ...columns(stages)]),
    ...(expires === undefined ? [] : ['', text.expires(words.date(expires))]),
    '',
    text.changesTitle,
    ...text.changes(fittings).map((change) => `- ${change}`),
    text.changesText,
    '',
  ].join('\n');
}

/** What the price does not hold yet, by name. */
export function notInPrice({ materials, workCharged }: Pricing, words: Words): string[] {
  return [
    ...materials.withoutPrice,
    ...materials.withoutLength,
    ...(workCharged ? [] : [words.costing.tasks.making!]),
  ];
}

function columns(rows: readonly (readonly [string, string])[]): string[] {
  const left = Math.max(...rows.map(([label]) => label.length));
  const right = Math.max(...rows.map(([, amount]) => amount.length));
  return rows.map(([label, amount]) => `  ${label.padEnd(left)}  ${amount.padStart(right)}`);
}
