import type { Notion } from '../../making/supplies/notions.ts';
import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** Weight, thread, and what to have at hand. */
export function stockBlocks(input: PaperInput): Block[] {
  const { words, workroom } = input;
  const { jobSheet: text } = words;
  return [
    { kind: 'heading', level: 2, text: text.weightAndThread },
    weightTable(input),
    { kind: 'paragraph', text: text.threadNote(workroom.threadRatio.toFixed(1)) },
    { kind: 'heading', level: 2, text: text.notions },
    ...workroom.notions.map(
      (notion): Block => ({ kind: 'item', tick: true, text: notionText(notion, words) }),
    ),
  ];
}

function weightTable({ words, workroom }: PaperInput): Block {
  const { jobSheet: text } = words;
  const stones = workroom.weight.stones.map(({ name, grams }) => [
    name,
    '',
    '',
    '',
    grams === undefined ? '' : words.weight(grams),
    '',
  ]);
  const cloths = workroom.weight.layers.map((layer) => {
    const thread = workroom.thread.find((own) => own.layer === layer.layer);
    return [
      layer.layer,
      layer.cloth,
      words.area(layer.netArea),
      words.area(layer.cutArea),
      layer.withAllowances === undefined ? '' : words.weight(layer.withAllowances),
      thread === undefined ? '' : words.wholeMetres(thread.need.toBuy),
    ];
  });
  const rows = [...cloths, ...stones];
  const { inAll } = workroom.weight;
  return {
    kind: 'table',
    caption: text.weightCaption,
    heads: text.weightHeads,
    align: ['start', 'start', 'end', 'end', 'end', 'end'],
    rows: inAll === undefined ? rows : [...rows, [text.inAll, '', '', '', words.weight(inAll), '']],
    ...(inAll === undefined ? {} : { boldRows: [rows.length] }),
  };
}

function notionText(notion: Notion, words: PaperInput['words']): string {
  const { notions: text, length } = words;
  switch (notion.kind) {
    case 'given': {
      const { name, count, length: long, colour, supplier, notes } = notion.notion;
      const quantity = long === undefined ? (count === undefined ? '' : `, ${count}`) : `, ${length(long)}`;
      const marks = [colour, supplier].filter((part) => part !== undefined);
      const remark = notes === undefined ? '' : `. ${notes.trim()}`;
      return `${name}${quantity}${marks.length === 0 ? '' : ` (${marks.join(', ')})`}${remark}`;
    }
    case 'bones':
      return text.bones(notion.material, length(notion.length), notion.count);
    case 'casing':
      return text.casing(length(notion.width), length(notion.length));
    case 'eyelets':
      return text.eyelets(notion.count);
    case 'lace':
      return text.lace(length(notion.length));
    case 'waist-tape':
      return text.waistTape(length(notion.length));
    case 'busk':
      return text.busk(length(notion.length));
    case 'bodice-zip':
      return text.bodiceZip(length(notion.length));
    case 'through-zip':
      return text.throughZip(length(notion.length));
    case 'bodice-hooks':
      return text.bodiceHooks(length(notion.length));
    case 'upper-binding':
      return text.upperBinding(length(notion.length));
    case 'zip':
      return text.zip(length(notion.stock), length(notion.shortenTo));
    case 'hook-above-zip':
      return text.hook;
    case 'hooks':
      return text.hooks(length(notion.opening));
    case 'wrap':
      return text.wrap[notion.fastened];
    case 'petersham':
      return text.petersham(length(notion.length));
    case 'strip': {
      const { kind, width, buy, layer, along } = notion.strip;
      return text.strip(
        words.stripName(kind),
        width === undefined ? undefined : length(width),
        length(buy),
        layer,
        words.edge(along),
      );
    }
    case 'bustle-points':
      return text.bustle(notion.over, notion.number, length(notion.tape));
    case 'thread':
      return text.thread(notion.cloth, words.wholeMetres(notion.length));
  }
}
