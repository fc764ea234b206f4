import type { DraftedBodice } from '../../bodice/draft-asked.ts';
import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** A drafted bodice in figures: her levels as they are sewn, its panels, its bones and its lacing. */
export function bodiceBlocks({ workroom, words }: PaperInput): Block[] {
  const { bodice } = workroom;
  if (bodice === undefined) return [];
  const { bodiceSheet: text } = words;
  return [
    { kind: 'heading', level: 2, text: text.title },
    { kind: 'caution', lead: words.jobSheet.caution, text: text.toileFirst },
    levelTable(bodice, words),
    panelTable(bodice, words),
    ...(bodice.bones.length === 0 ? [] : [boneTable(bodice, words)]),
    ...lacingLines(bodice, words).map((line): Block => ({ kind: 'paragraph', text: line })),
  ];
}

function levelTable(
  { figures, draft }: DraftedBodice,
  { bodiceSheet: text, number }: PaperInput['words'],
): Block {
  const levels = [...figures.levels].sort((a, b) => b.above - a.above);
  return {
    kind: 'table',
    caption: text.levelsCaption,
    heads: text.levelHeads,
    align: ['start', 'end', 'end', 'end', 'end', 'end'],
    rows: levels.map(({ at, above, body, open, sewn }) => [
      at,
      number(above),
      number(body),
      number(draft.measures.reduce[at] ?? 0),
      number(open),
      number(sewn),
    ]),
  };
}

function panelTable({ figures, draft, asked }: DraftedBodice, words: PaperInput['words']): Block {
  const { bodiceSheet: text, number } = words;
  const levels = [...draft.measures.girths].sort((a, b) => b.above - a.above).map(({ at }) => at);
  const isFolded = (name: string): boolean =>
    asked.draft.panels.some((panel) => panel.name === name && panel.onFold);
  return {
    kind: 'table',
    caption: text.panelsCaption,
    heads: [text.panel, text.upper, ...levels, text.lower],
    align: ['start', 'end', ...levels.map(() => 'end' as const), 'end'],
    rows: figures.panels.map((panel) => [
      words.closureRows.side(
        isFolded(panel.name) ? words.jobSheet.onFold(panel.name) : panel.name,
        panel.side,
      ),
      number(panel.upper),
      ...levels.map((at) => number(panel.widths[at]!)),
      number(panel.lower),
    ]),
  };
}

function boneTable({ bones }: DraftedBodice, words: PaperInput['words']): Block {
  const { bodiceSheet: text, number } = words;
  return {
    kind: 'table',
    caption: text.bonesCaption,
    heads: text.boneHeads,
    align: ['start', 'end', 'end', 'end'],
    rows: bones.map(({ along, side, casing, length, count }) => [
      words.closureRows.side(words.station(along), side),
      number(casing),
      number(length),
      String(count),
    ]),
  };
}

function lacingLines({ lacing, asked, tape }: DraftedBodice, words: PaperInput['words']): string[] {
  const { bodiceSheet: text, length, number } = words;
  const closing = asked.draft.closing;
  const laced =
    lacing === undefined || closing === undefined
      ? []
      : [
          text.lacing(words.station(closing.at), lacing.eyelets, length(lacing.pitch)),
          text.eyelets(lacing.places.map(number).join('  ')),
          text.lace(length(lacing.worn), length(lacing.lace)),
        ];
  return [...laced, text.tape(length(tape.round), length(tape.length))];
}
