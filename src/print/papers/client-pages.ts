import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { pageEdges } from './page-edges.ts';
import type { PaperInput } from './paper-input.ts';
import { notInPrice } from './quote-text.ts';
import { viewsBlock } from './views-block.ts';

/** The client's pages: the drawing to approve, the quote where there are prices, the card, what a wearer must know. */
export function clientPages(input: PaperInput): FlowedPages {
  const { words, paper } = input;
  return flowPages(
    [...approvalBlocks(input), ...quoteBlocks(input), ...cardBlocks(input), ...knowBlocks(input)],
    {
      paper,
      headerRight: words.client.title,
      ...pageEdges(input.gown, input.cutShort ? words.cutShort : undefined),
    },
  );
}

function approvalBlocks(input: PaperInput): Block[] {
  const { words, gown, paper } = input;
  const { client: text } = words;
  return [
    { kind: 'heading', level: 1, text: gown.name },
    { kind: 'heading', level: 2, text: text.approve },
    { kind: 'paragraph', text: text.approveText },
    ...viewsBlock(input, { width: paper.width - 30, height: viewsHeight(input) }),
    { kind: 'table', heads: text.decides, shares: [3, 4], rows: decidingRows(input) },
    { kind: 'fields', fields: text.approved, columns: 2 },
  ];
}

/** So that what she signs stands on one page with what it decides, of Letter too, mm. */
function viewsHeight({ views, paper }: PaperInput): number {
  return views !== undefined && views.rows.length > 1 ? paper.height - 165 : 105;
}

function decidingRows({ words, workroom, gown }: PaperInput): string[][] {
  const { client: text, length, closureRows } = words;
  const { skirt, closure } = workroom;
  const back = skirt.stations.find((station) => station.name === 'centre-back');
  const front = skirt.stations[0];
  const onFloor = back?.floor === undefined ? gown.train?.onFloor : back.finished - back.floor.length;
  return [
    [text.waist, length(skirt.waist)],
    ...(front === undefined ? [] : [[text.frontLength(gown.waist !== undefined), length(front.finished)]]),
    ...(back === undefined ? [] : [[text.backLength(gown.waist !== undefined), length(back.finished)]]),
    ...(onFloor === undefined || onFloor <= 0 ? [] : [[text.train, length(onFloor)]]),
    ...(skirt.offFloor === undefined ? [] : [[text.offFloor, length(skirt.offFloor)]]),
    [text.hem, length(skirt.hem)],
    ...(closure === undefined
      ? []
      : [[text.opening, text.openingWords(closureRows.kind[closure.kind], closure.at, closure.side)]]),
    ...workroom.stones.map(({ stones, count }) => [
      text.stones,
      text.stonesWords(stones.name, stones.layer.name, count),
    ]),
    [text.layers, words.list(gown.layers.map(ofCloth))],
    ...besides(
      text.sewnOn,
      [
        ...gown.flounces.map(({ layer }) => ofCloth(layer)),
        ...gown.capes.map(({ name, layers }) => ofCloth({ name, cloth: layers.at(-1)!.cloth })),
      ],
      words,
    ),
    ...besides(
      text.wornWith,
      [
        ...gown.tiers.map(({ layer }) => ofCloth(layer)),
        ...gown.overskirts.map(({ name, gown: own }) => ofCloth({ name, cloth: own.layers.at(-1)!.cloth })),
      ],
      words,
    ),
  ];
}

function ofCloth({
  name,
  cloth,
}: {
  readonly name: string;
  readonly cloth: { readonly name: string };
}): string {
  return name === cloth.name ? name : `${name} (${cloth.name})`;
}

function besides(label: string, names: readonly string[], words: PaperInput['words']): string[][] {
  return names.length === 0 ? [] : [[label, words.list(names)]];
}

/** What the client pays and when: never what the maker pays, nor what she adds. */
function quoteBlocks({ words, workroom, gown, cutShort }: PaperInput): Block[] {
  const { quote } = workroom.pricing;
  if (quote === undefined) return [];
  const { client: text } = words;
  const { fittingsIncluded: fittings, expires } = gown.labour ?? {};
  const untaxed = quote.tax.minor === 0n;
  const uncounted = notInPrice(workroom.pricing, words);
  const price = [
    ...(untaxed
      ? []
      : [
          [text.net, words.money(quote.net)],
          [text.tax(words.percentExact(quote.taxShare)), words.money(quote.tax)],
        ]),
    [uncounted.length === 0 ? text.total : text.totalSoFar, words.money(quote.total)],
  ];
  return [
    { kind: 'page-break' },
    { kind: 'heading', level: 2, text: text.quoteTitle },
    { kind: 'paragraph', text: text.covers(gown.name, fittings) },
    {
      kind: 'table',
      heads: text.priceHeads,
      align: ['start', 'end'],
      rows: price,
      boldRows: [price.length - 1],
    },
    ...(uncounted.length === 0
      ? []
      : [{ kind: 'paragraph', text: text.incomplete(uncounted), bold: true } as const]),
    ...(cutShort ? [{ kind: 'paragraph', text: text.cutShort, bold: true } as const] : []),
    ...(quote.stages.length < 2
      ? []
      : [
          {
            kind: 'table',
            heads: [text.stagesTitle, '', ''],
            align: ['start', 'end', 'end'],
            rows: quote.stages.map((stage) => [
              text.stages[stage.name] ?? stage.name,
              words.percentExact(stage.share),
              words.money(stage.amount),
            ]),
          } as const,
        ]),
    ...(expires === undefined
      ? []
      : [{ kind: 'paragraph', text: text.expires(words.date(expires)) } as const]),
    { kind: 'heading', level: 3, text: text.changesTitle },
    ...text.changes(fittings).map((change): Block => ({ kind: 'item', text: change })),
    { kind: 'paragraph', text: text.changesText },
  ];
}

/** What it fastens and hangs by. */
function hungBy({ wrap, waist }: PaperInput['gown']): 'bodice' | 'skirt' | 'wrap' {
  return wrap !== undefined ? 'wrap' : waist !== undefined ? 'skirt' : 'bodice';
}

function cardBlocks({ words, workroom, gown }: PaperInput): Block[] {
  const { client: text } = words;
  const { bustle } = workroom;
  const points = bustle?.number ?? 0;
  // All that goes to the cleaner with it: net tiers, a train, the bodice.
  const cloths = [...new Set(workroom.weight.layers.map(({ cloth }) => cloth))];
  return [
    { kind: 'page-break' },
    { kind: 'heading', level: 2, text: text.cardTitle(points > 0) },
    ...text.care(hungBy(gown)).map((line): Block => ({ kind: 'item', text: line })),
    { kind: 'fields', fields: cloths.map((cloth) => text.careLabel(cloth)) },
    ...(bustle === undefined || points === 0
      ? []
      : [
          { kind: 'heading', level: 3, text: text.bustleTitle } as const,
          ...text
            .bustleSteps(bustle.kind === 'over', points)
            .map((step, i): Block => ({ kind: 'item', number: String(i + 1), text: step })),
        ]),
  ];
}

/** Only what this gown calls for. */
function knowBlocks({ words, workroom }: PaperInput): Block[] {
  const { client: text } = words;
  return [
    { kind: 'heading', level: 2, text: text.know },
    ...workroom.cautions.client.map(
      (kind): Block => ({
        kind: 'caution',
        lead: text.remember,
        text: words.wearerCaution(kind, workroom.weight.inAll),
      }),
    ),
  ];
}
