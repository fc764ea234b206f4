import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { benchPage } from './bench-page.ts';
import { bodiceBlocks } from './bodice-blocks.ts';
import { costingBlocks } from './costing-blocks.ts';
import { cuttingBlocks } from './cutting-blocks.ts';
import { joinBlocks } from './join-blocks.ts';
import { trainBlocks } from './measure-blocks.ts';
import { levellingBlocks, orderBlocks } from './order-blocks.ts';
import { pageEdges } from './page-edges.ts';
import type { PaperInput } from './paper-input.ts';
import { seamBlocks } from './seam-blocks.ts';
import { stockBlocks } from './stock-blocks.ts';
import { stoneBlocks } from './stone-blocks.ts';
import { trimBlocks } from './trim-blocks.ts';
import { viewsBlock } from './views-block.ts';

/** The workroom's papers: one page to pin up, then all of it in the order in which the work meets them; the costing last, to be kept apart. */
export function jobSheet(input: PaperInput): FlowedPages {
  const { words, paper } = input;
  return flowPages(
    [
      ...benchPage(input),
      ...openingBlocks(input),
      ...trainBlocks(input),
      ...bodiceBlocks(input),
      ...cuttingBlocks(input),
      ...seamBlocks(input),
      ...joinBlocks(input),
      ...trimBlocks(input),
      ...stoneBlocks(input),
      ...stockBlocks(input),
      ...orderBlocks(input),
      ...levellingBlocks(input),
      ...costingBlocks(input),
    ],
    {
      paper,
      headerRight: words.jobSheet.title,
      ...pageEdges(input.gown, input.cutShort ? words.cutShort : undefined),
    },
  );
}

function openingBlocks(input: PaperInput): Block[] {
  const { words, workroom, diagnostics } = input;
  const { jobSheet: text } = words;
  const settle = diagnostics.filter((one) => one.level !== 'note');
  return [
    ...(settle.length === 0 ? [] : [{ kind: 'heading', level: 2, text: text.settle } as const]),
    ...settle.map(
      (one): Block => ({
        kind: 'item',
        tick: true,
        text: one.message,
        notes: [one.hint],
      }),
    ),
    ...(workroom.missing.length === 0 ? [] : [{ kind: 'heading', level: 2, text: text.unsaid } as const]),
    ...workroom.missing.map(
      (one): Block => ({ kind: 'item', text: words.missing[one.fact](one.names ?? []) }),
    ),
    ...workroom.cautions.jobSheet.map(
      (kind): Block => ({
        kind: 'caution',
        lead: text.caution,
        text: words.caution(kind, workroom.weight.inAll),
      }),
    ),
    // What the bench page has no room for.
    ...viewsBlock(input, { width: input.paper.width - 30, height: 110 }, 'others'),
    { kind: 'heading', level: 3, text: text.notes },
    { kind: 'lines', count: 3 },
  ];
}
