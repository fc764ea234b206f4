import type { Amount } from '../../money/money.ts';
import type { QuoteLine } from '../../money/quote.ts';
import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';

type Words = PaperInput['words'];

/** The maker's reckoning and what it came to, on a page of its own. */
export function costingBlocks(input: PaperInput): Block[] {
  const { words, workroom, cutShort } = input;
  const { quote } = workroom.pricing;
  if (quote === undefined) return [];
  const { costing: text } = words;
  // What comes to nothing is no line of the sum.
  const some = (name: string, amount: Amount): [string, string][] =>
    amount.minor === 0n ? [] : [[name, words.amount(amount)]];
  const totals: [string, string][] = [
    [text.materials, words.amount(quote.materials)],
    [text.labour, words.amount(quote.labour)],
    ...some(text.overhead(words.percentExact(quote.overheadShare)), quote.overhead),
    [text.cost, words.amount(quote.cost)],
    ...some(text.margin(words.percentExact(quote.marginShare)), quote.margin),
    ...some(text.rounding, quote.rounding),
    ...(quote.tax.minor === 0n ? [] : [[text.net, words.amount(quote.net)] as [string, string]]),
    ...some(text.tax(words.percentExact(quote.taxShare)), quote.tax),
    [text.total, words.money(quote.total)],
  ];
  const rows = [
    ...quote.lines.map((line) => [
      lineName(line, words),
      quantity(line, words),
      priceOf(line, words, quote.currency),
      words.amount(line.amount),
    ]),
    ...totals.map(([name, amount]) => [name, '', '', amount]),
  ];
  return [
    { kind: 'page-break' },
    { kind: 'heading', level: 2, text: text.title },
    { kind: 'paragraph', text: text.private, bold: true },
    ...(cutShort ? [{ kind: 'paragraph', text: text.cutShort, bold: true } as const] : []),
    {
      kind: 'table',
      heads: text.heads,
      align: ['start', 'end', 'end', 'end'],
      rows,
      boldRows: [rows.length - 1],
    },
    { kind: 'paragraph', text: text.spare },
    ...recordBlocks(input),
  ];
}

function lineName(line: QuoteLine, words: Words): string {
  if (line.kind === 'labour') return words.costing.tasks[line.name] ?? line.name;
  if (line.strip === undefined) return line.name;
  return `${words.stripName(line.strip.kind)}, ${line.strip.layer}’s ${words.edge(line.strip.along)}`;
}

function quantity(line: QuoteLine, words: Words): string {
  if (line.hours !== undefined) return words.costing.hours(words.hours(line.hours));
  if (line.length !== undefined) return words.lengthPriced(line.length, line.pricedPer ?? 1000);
  return String(line.count ?? 1);
}

function priceOf(line: QuoteLine, words: Words, currency: string | undefined): string {
  const { costing: text } = words;
  const price = words.price(line.price, currency);
  if (line.kind === 'labour') return text.perHour(price);
  if (line.length === undefined) return text.each(price);
  return line.pricedPer === 914.4 ? text.perYard(price) : text.perMetre(price);
}

/** Planned against actual, where anything is kept. */
function recordBlocks({ words, workroom }: PaperInput): Block[] {
  const { record: text } = words;
  const { record } = workroom.pricing;
  if (record === undefined)
    return [
      { kind: 'heading', level: 2, text: text.title },
      { kind: 'paragraph', text: text.empty },
      { kind: 'lines', count: 6 },
    ];
  const rows: string[][] = [];
  const { planned, actual, more } = record.hours;
  if (actual !== undefined) {
    rows.push([
      text.hours,
      planned === undefined ? '' : words.hours(planned),
      words.hours(actual),
      more === undefined ? '' : words.hours(more),
    ]);
  }
  for (const { cloth, bought, used } of record.cloths) {
    const cells =
      bought === undefined
        ? ['', words.metres(used), '']
        : [words.metres(bought), words.metres(used), words.metres(used - bought)];
    rows.push([text.cloth(cloth), ...cells]);
  }
  if (record.spent.actual !== undefined) {
    const { planned: meant, actual: spent, more: over } = record.spent;
    rows.push([
      text.spent,
      meant === undefined ? '' : words.amount(meant),
      words.amount(spent),
      over === undefined ? '' : words.amount(over),
    ]);
  }
  return [
    { kind: 'heading', level: 2, text: text.title },
    ...(rows.length === 0
      ? []
      : [{ kind: 'table', heads: text.heads, align: ['start', 'end', 'end', 'end'], rows } as const]),
    ...balanceBlocks(record, words),
  ];
}

function balanceBlocks(
  record: NonNullable<PaperInput['workroom']['pricing']['record']>,
  words: Words,
): Block[] {
  const { record: text } = words;
  const rows: string[][] = [];
  if (record.revised !== undefined) rows.push([text.revised, words.money(record.revised.total)]);
  if (record.paid !== undefined) rows.push([text.paid, words.money(record.paid)]);
  if (record.balance !== undefined) rows.push([text.balance, words.money(record.balance)]);
  if (record.balanceRevised !== undefined)
    rows.push([text.balanceRevised, words.money(record.balanceRevised)]);
  return rows.length === 0 ? [] : [{ kind: 'table', heads: ['', ''], align: ['start', 'end'], rows }];
}
