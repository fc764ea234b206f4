import type { Block } from '../page/page-blocks.ts';
import { benchCloths, benchDates, benchLayers } from './bench-tables.ts';
import { goreTable, stationTable } from './measure-blocks.ts';
import type { PaperInput } from './paper-input.ts';
import { viewsBlock } from './views-block.ts';

/** Room for the gown's name over the rest of the page, mm. */
const TITLE = 12;

/** How tall the views may stand, mm: as tall as leaves the rest its room. */
const VIEWS = [112, 104, 98, 92, 88, 84, 80, 76, 72, 68, 64, 60];

/** One side of paper to be pinned up: what she looks at a dozen times a day, and nothing else. */
export function benchPage(input: PaperInput): Block[] {
  return [
    { kind: 'heading', level: 1, text: input.gown.name },
    { kind: 'fitted', above: TITLE, versions: VIEWS.map((height) => benchBlocks(input, height)) },
    { kind: 'page-break' },
  ];
}

function benchBlocks(input: PaperInput, height: number): Block[] {
  const { words, workroom, gown, paper, diagnostics } = input;
  const { bench: text, jobSheet, length } = words;
  const settle = diagnostics.filter(({ level }) => level !== 'note').length;
  return [
    ...notesOf(gown.notes).map((line): Block => ({ kind: 'paragraph', text: line })),
    ...(settle === 0 ? [] : [{ kind: 'paragraph', bold: true, text: text.settle(settle) } as const]),
    // With its train drawn up it stands overleaf, so that here it has room.
    ...viewsBlock(input, { width: paper.width - 30, height }, 'first'),
    { kind: 'columns', columns: [[stationTable(input)], [goreTable(input)]] },
    {
      kind: 'paragraph',
      text: `${workroom.skirt.stations.some(({ drop }) => drop > 0) ? `${text.drop} ` : ''}${jobSheet.waistLine(length(workroom.skirt.waist), gown.waist === undefined ? length(gown.waistSeam) : undefined)} ${jobSheet.hemLine(length(workroom.skirt.hem))} ${openingLine(input)}`,
    },
    benchLayers(input),
    benchCloths(input),
    ...benchDates(input),
  ];
}

/** Where and how far it opens. */
function openingLine({ words, gown: { wrap }, workroom: { closure } }: PaperInput): string {
  const { bench: text, closureRows, length } = words;
  if (wrap !== undefined) {
    const overlap = closureRows.overlapText(length(wrap.overlap), length(wrap.overlapAtHem));
    return text.wraps(words.station(wrap.at), wrap.over, overlap);
  }
  if (closure === undefined) return text.noOpening;
  const where = closureRows.side(closure.at, closure.side);
  const kind = closureRows.kind[closure.kind];
  if (closure.stops === undefined) return text.opens(kind, where);
  const from = closure.starts > 0 ? length(closure.starts) : undefined;
  return text.opensTo(kind, where, from, length(closure.stops));
}

/** The maker's own lines, each by itself. */
function notesOf(notes: string | undefined): string[] {
  return (notes ?? '').split('\n').filter((line) => line.trim() !== '');
}
