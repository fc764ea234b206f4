import type { Gown } from '../../gown/gown.ts';
import type { Words } from '../../words/english.ts';
import type { Drawing } from '../drawing.ts';
import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { gownLine } from './page-edges.ts';
import { stationFigure } from './station-figure.ts';

/** A blank form of what to measure for a gown's gores and stations. Nothing of the gown's own measures is printed. */
export function measuresForm(
  gown: Pick<Gown, 'name' | 'client' | 'gores' | 'format'>,
  stations: readonly string[],
  words: Words,
  paper: { readonly width: number; readonly height: number },
): FlowedPages {
  const { measuresForm: text } = words;
  const names = [...new Set(stations)].map(words.station);
  const figure: Drawing = stationFigure(text.levels, names, paper.width - 30);
  const blocks: Block[] = [
    { kind: 'heading', level: 1, text: text.title },
    { kind: 'paragraph', text: text.intro },
    { kind: 'fields', fields: text.who, columns: 2 },
    { kind: 'heading', level: 2, text: text.body },
    { kind: 'fields', fields: text.bodyFields, columns: 2 },
    { kind: 'heading', level: 2, text: text.petticoat },
    { kind: 'fields', fields: text.petticoatFields, columns: 2 },
    { kind: 'heading', level: 2, text: text.figure },
    { kind: 'figure', drawing: figure },
    { kind: 'page-break' },
    { kind: 'heading', level: 2, text: text.edge },
    { kind: 'paragraph', text: text.edgeText },
    {
      kind: 'fields',
      columns: 2,
      fields: [
        ...gown.gores.map(({ name, fold }) => text.panel(name, fold !== undefined)),
        text.waistSeam,
        text.bones,
      ],
    },
    { kind: 'heading', level: 3, text: text.drop },
    { kind: 'paragraph', text: text.dropText },
    { kind: 'fields', fields: names, columns: 2 },
    { kind: 'heading', level: 2, text: text.lengths },
    { kind: 'paragraph', text: text.lengthsText },
    { kind: 'fields', fields: [...names, text.offFloor, text.train], columns: 2 },
    { kind: 'caution', text: text.data, lead: words.client.remember },
    { kind: 'heading', level: 3, text: text.notes },
    { kind: 'lines', count: 4 },
  ];
  return flowPages(blocks, {
    paper,
    headerLeft: gownLine(gown),
    headerRight: text.title,
    footerLeft: `format ${gown.format}`,
  });
}

/** The same as lines of text, for a terminal. */
export function measuresText(gown: Pick<Gown, 'gores'>, stations: readonly string[], words: Words): string {
  const { measuresForm: text } = words;
  const names = [...new Set(stations)].map(words.station);
  const blank = (label: string): string => `  ${label}: ____________`;
  const part = (title: string, lines: readonly string[]): string[] => ['', title, ...lines.map(blank)];
  return [
    text.title,
    text.intro,
    ...part(text.notes, text.who).slice(2),
    ...part(text.body, text.bodyFields),
    ...part(text.petticoat, text.petticoatFields),
    ...part(`${text.edge}. ${text.edgeText}`, [
      ...gown.gores.map(({ name, fold }) => text.panel(name, fold !== undefined)),
      text.waistSeam,
      text.bones,
    ]),
    ...part(`${text.drop}. ${text.dropText}`, names),
    ...part(`${text.lengths}. ${text.lengthsText}`, [...names, text.offFloor, text.train]),
    '',
    text.data,
    '',
  ].join('\n');
}
