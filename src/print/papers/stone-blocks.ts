import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';
import { placingChart } from './placing-chart.ts';

/** What is set by hand: counts, weight, hours and cost, and where each stone goes. */
export function stoneBlocks(input: PaperInput): Block[] {
  const { words, workroom, paper } = input;
  const { stones: text } = words;
  if (workroom.stones.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: text.title },
    {
      kind: 'table',
      caption: text.caption,
      heads: text.heads,
      align: ['start', 'start', 'start', 'end', 'end', 'end', 'end', 'end'],
      rows: workroom.stones.map((own) => stoneRow(own, input)),
    },
    { kind: 'paragraph', text: text.spare },
    ...placesTable(input),
    ...workroom.stones.map(
      ({ stones, pieces }): Block => ({
        kind: 'figure',
        drawing: placingChart(stones, pieces, { width: paper.width - 30, height: CHART }, text.piece),
        caption: text.chart(
          stones.name,
          sizeText(stones, text),
          pieces.some(({ times }) => times === 2),
        ),
      }),
    ),
  ];
}

/** Of those that are set one by one: where each lies. */
function placesTable({ words, workroom }: PaperInput): Block[] {
  const { stones: text } = words;
  const rows = workroom.stones.flatMap(({ stones: { name, places = [] } }) =>
    places.map(({ gore, across, belowWaist, aboveHem }) => [
      name,
      gore,
      text.percent(across),
      ...[belowWaist, aboveHem].map((mm) => (mm === undefined ? '' : words.number(mm))),
    ]),
  );
  if (rows.length === 0) return [];
  const align = ['start', 'start', 'end', 'end', 'end'] as const;
  return [{ kind: 'table', caption: text.placesCaption(words.unit), heads: text.placesHeads, align, rows }];
}

/** Most of a page, mm. */
const CHART = 210;

function sizeText(
  { size, motif }: StoneFacts['stones'],
  { size: say, motif: sayMotif }: PaperInput['words']['stones'],
): string {
  if (motif !== undefined) return sayMotif(motif.width, motif.height);
  return size === undefined ? '' : say(size);
}

type StoneFacts = PaperInput['workroom']['stones'][number];

function stoneRow({ stones, count, gross, grams }: StoneFacts, { words, workroom }: PaperInput): string[] {
  const { quote, hours } = workroom.pricing;
  const line = quote?.lines.find(({ kind, name }) => kind === 'stones' && name === stones.name);
  const task = hours?.tasks.find((own) => own.task === stones.name);
  return [
    stones.name,
    stones.layer.name,
    [stones.soldAs ?? '', sizeText(stones, words.stones)].filter((part) => part !== '').join(', '),
    String(count),
    stones.motif !== undefined || stones.places !== undefined ? '' : String(gross),
    grams === undefined ? '' : words.weight(grams),
    task === undefined ? '' : words.hours(task.hours),
    line === undefined ? '' : words.amount(line.amount),
  ];
}
