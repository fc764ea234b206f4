import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { costingBlocks } from './costing-blocks.ts';
import { cuttingBlocks } from './cutting-blocks.ts';
import { isForAChild } from './for-a-child.ts';
import { frontAndBack } from './gown-drawing.ts';
import { joinBlocks } from './join-blocks.ts';
import { measureBlocks } from './measure-blocks.ts';
import { calendarBlocks, levellingBlocks, orderBlocks } from './order-blocks.ts';
import { pageEdges } from './page-edges.ts';
import type { PaperInput } from './paper-input.ts';
import { seamBlocks } from './seam-blocks.ts';
import { stockBlocks } from './stock-blocks.ts';
import { trimBlocks } from './trim-blocks.ts';
import { drawingCaption } from './views-block.ts';

/** The workroom's papers, in the order in which the work meets them; the costing last, to be kept apart. */
export function jobSheet(input: PaperInput): FlowedPages {
  const { words, paper } = input;
  return flowPages(
    [
      ...openingBlocks(input),
      ...measureBlocks(input),
      ...cuttingBlocks(input),
      ...seamBlocks(input),
      ...joinBlocks(input),
      ...trimBlocks(input),
      ...stockBlocks(input),
      ...orderBlocks(input),
      ...levellingBlocks(input),
      ...calendarBlocks(input),
      ...costingBlocks(input),
    ],
    {
      paper,
      headerRight: words.jobSheet.title,
      ...pageEdges(input.gown),
    },
  );
}

function openingBlocks(input: PaperInput): Block[] {
  const { gown, words, workroom, silhouette, diagnostics } = input;
  const { jobSheet: text } = words;
  const settle = diagnostics.filter((one) => one.level !== 'note');
  const width = input.paper.width - 30;
  return [
    { kind: 'heading', level: 1, text: gown.name },
    ...notesOf(gown.notes).map((line): Block => ({ kind: 'paragraph', text: line })),
    {
      kind: 'figure',
      drawing: frontAndBack(silhouette, { ...words.views, number: words.number }, width, 95),
      caption: drawingCaption(input),
    },
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
    ...(isForAChild(gown.notes)
      ? [{ kind: 'caution', text: words.wearer.child, lead: text.caution } as const]
      : []),
    { kind: 'heading', level: 3, text: text.notes },
    { kind: 'lines', count: 3 },
  ];
}

/** The maker's own lines, each by itself. */
export function notesOf(notes: string | undefined): string[] {
  return (notes ?? '').split('\n').filter((line) => line.trim() !== '');
}
