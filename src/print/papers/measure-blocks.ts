import type { Block, TableBlock } from '../page/page-blocks.ts';
import { footprintDrawing } from './footprint-drawing.ts';
import type { PaperInput } from './paper-input.ts';

/** What lies on the floor. */
export function trainBlocks(input: PaperInput): Block[] {
  const blocks = footprintBlock(input);
  return blocks.length === 0
    ? []
    : [{ kind: 'heading', level: 2, text: input.words.jobSheet.train }, ...blocks];
}

/** What lies on the floor behind her, and how much room it takes. */
function footprintBlock({ words, workroom, paper }: PaperInput): Block[] {
  const { footprint } = workroom;
  if (footprint === undefined) return [];
  const { jobSheet: text, length } = words;
  const drawing = footprintDrawing(footprint, { length, skirt: text.skirtOnFloor }, paper.width - 30, 80);
  return [
    {
      kind: 'figure',
      drawing,
      caption: text.footprint(length(footprint.length), length(footprint.width)),
    },
  ];
}

export function stationTable({ words, workroom, gown }: PaperInput): TableBlock {
  const { jobSheet: text, number } = words;
  return {
    kind: 'table',
    caption: text.stationsCaption(gown.waist !== undefined),
    heads: text.stationHeads,
    align: ['start', 'end', 'end', 'end', 'end'],
    rows: workroom.skirt.stations.map(({ name, side, drop, finished, floor }) => {
      const onFloor = floor === undefined ? undefined : finished - floor.length;
      const toFloor =
        floor === undefined ? '' : floor.estimated ? text.about(number(floor.length)) : number(floor.length);
      return [
        words.closureRows.side(name, side),
        number(drop),
        number(finished),
        toFloor,
        onFloor === undefined || onFloor <= 0 ? '' : number(onFloor),
      ];
    }),
  };
}

export function goreTable({ words, measures, cutPieces, gown }: PaperInput): TableBlock {
  const { jobSheet: text, number } = words;
  // A skirt of its own waist has no edge above to meet.
  const isKept = (_: unknown, column: number): boolean => gown.waist === undefined || column !== PANEL;
  return {
    kind: 'table',
    caption: text.goresCaption,
    heads: text.goreHeads.filter(isKept),
    align: (['start', 'end', 'end', 'end', 'end'] as const).filter(isKept),
    rows: measures.gores.flatMap((gore) => {
      const own = cutPieces
        .map(({ piece }) => piece)
        .filter((piece) => piece.gore === gore.name && piece.part === undefined);
      // Of a gown whose sides differ in some gores only, the others are told once.
      if (gore.side === 'right' && own.some(({ cut }) => cut === 'pair' || cut === 'on-fold')) return [];
      const piece = own.find(({ side }) => side === gore.side) ?? own[0];
      const cells = [
        // A middle whose halves differ is cut whole: its halves are told by her side.
        gore.onFold
          ? words.closureRows.side(text.onFold(gore.name), piece?.middle && gore.side)
          : words.closureRows.side(gore.name, piece?.side),
        number(gore.top),
        gore.panel === undefined ? '' : number(gore.panel),
        number(gore.hem),
        `${((gore.flare * 180) / Math.PI).toFixed(1)}°`,
      ];
      return [cells.filter(isKept)];
    }),
  };
}

/** Column of the bodice's edge in the gores' table. */
const PANEL = 2;

/** How many and how: on the fold, as a mirrored pair, single; on the bias. */
export function howCut(piece: PaperInput['cutPieces'][number]['piece'], words: PaperInput['words']): string {
  const { jobSheet: text } = words;
  const count =
    piece.cut === 'on-fold'
      ? text.cutOnFold
      : piece.cut === 'pair'
        ? text.cutPair
        : text.cutSingle(piece.side, piece.copies ?? 1);
  return piece.bias ? `${count}, ${text.cutOnTheBias}` : count;
}
