import type { Gown } from '../../gown/gown.ts';
import type { Words } from '../../words/english.ts';
import type { Drawing } from '../drawing.ts';
import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { bendingFigure } from './bending-figure.ts';
import { gownLine } from './page-edges.ts';
import { stationFigure } from './station-figure.ts';

/** A blank form of what to measure for a gown's gores and stations. Nothing of the gown's own measures is printed. */
export function measuresForm(
  gown: Pick<Gown, 'name' | 'client' | 'gores' | 'format'> & MeasuredAbove,
  stations: readonly string[],
  words: Words,
  paper: { readonly width: number; readonly height: number },
): FlowedPages {
  const { measuresForm: text } = words;
  const names = [...new Set(stations)].map((name) => words.station(name));
  const { bust, underbust, ...others } = text.levels;
  const isDrafted = gown.askedBodice !== undefined;
  const hasOwnWaist = gown.waist !== undefined;
  const { edge: _, ...plain } = others;
  const levels = isDrafted ? { bust, underbust, ...others } : hasOwnWaist ? plain : others;
  const figure: Drawing = stationFigure(levels, names, paper.width - 30);
  const blocks: Block[] = [
    { kind: 'heading', level: 1, text: text.title },
    { kind: 'paragraph', text: introOf(gown, text) },
    { kind: 'fields', fields: text.who, columns: 2 },
    { kind: 'heading', level: 2, text: text.body },
    { kind: 'fields', fields: bodyFields(gown, words), columns: 2 },
    ...(isOverBody(gown)
      ? []
      : [
          { kind: 'heading', level: 2, text: text.petticoat } as const,
          { kind: 'fields', fields: text.petticoatFields, columns: 2 } as const,
        ]),
    { kind: 'heading', level: 2, text: text.figure },
    { kind: 'figure', drawing: figure },
    { kind: 'page-break' },
    ...partsAbove(gown, names, words).flatMap(({ title, intro, fields }): Block[] => [
      { kind: 'heading', level: 2, text: title },
      ...(intro === undefined ? [] : [{ kind: 'paragraph', text: intro } as const]),
      { kind: 'fields', columns: 2, fields },
    ]),
    { kind: 'heading', level: 3, text: text.drop },
    { kind: 'paragraph', text: text.dropText },
    { kind: 'fields', fields: names, columns: 2 },
    { kind: 'heading', level: 2, text: text.lengths },
    { kind: 'paragraph', text: text.lengthsText(hasOwnWaist) },
    { kind: 'fields', fields: [...names, text.offFloor, text.train], columns: 2 },
    { kind: 'caution', text: text.data, lead: words.client.remember },
    { kind: 'heading', level: 3, text: text.notes },
    { kind: 'lines', count: 4 },
    { kind: 'page-break' },
    { kind: 'heading', level: 2, text: text.stiffness },
    { kind: 'paragraph', text: text.stiffnessText },
    { kind: 'figure', drawing: bendingFigure(text, paper.width - 30) },
    { kind: 'fields', fields: text.stiffnessFields, columns: 2 },
  ];
  return flowPages(blocks, {
    paper,
    headerLeft: gownLine(gown),
    headerRight: text.title,
    footerLeft: `format ${gown.format}`,
  });
}

/** The same as lines of text, for a terminal. */
export function measuresText(
  gown: Pick<Gown, 'gores'> & MeasuredAbove,
  stations: readonly string[],
  words: Words,
): string {
  const { measuresForm: text } = words;
  const names = [...new Set(stations)].map((name) => words.station(name));
  const blank = (label: string): string => `  ${label}: ____________`;
  const part = (title: string, lines: readonly string[]): string[] => ['', title, ...lines.map(blank)];
  return [
    text.title,
    introOf(gown, text),
    ...part(text.notes, text.who).slice(2),
    ...part(text.body, bodyFields(gown, words)),
    ...(isOverBody(gown) ? [] : part(text.petticoat, text.petticoatFields)),
    ...partsAbove(gown, names, words).flatMap(({ title, intro, fields }) =>
      part(intro === undefined ? title : `${title}. ${intro}`, fields),
    ),
    ...part(`${text.drop}. ${text.dropText}`, names),
    ...part(`${text.lengths}. ${text.lengthsText(gown.waist !== undefined)}`, [
      ...names,
      text.offFloor,
      text.train,
    ]),
    ...part(`${text.stiffness}. ${text.stiffnessText}`, text.stiffnessFields),
    '',
    text.data,
    '',
  ].join('\n');
}

/** What says how a gown's bodice is come by. */
type MeasuredAbove = Pick<
  Gown,
  'askedBodice' | 'straps' | 'capes' | 'waist' | 'body' | 'fittedTo' | 'petticoat'
>;

/** Gores that follow her own girths hang over no petticoat, unless one is named all the same. */
function isOverBody({ fittedTo, petticoat }: MeasuredAbove): boolean {
  return fittedTo !== undefined && petticoat === undefined;
}

function introOf(gown: MeasuredAbove, text: Words['measuresForm']): string {
  return isOverBody(gown) ? text.introOverBody : text.intro;
}

interface FormPart {
  readonly title: string;
  readonly intro?: string;
  readonly fields: readonly string[];
}

/** A skirt that is sewn to no bodice has its own waist measured. */
function bodyFields({ waist }: MeasuredAbove, { measuresForm: text }: Words): string[] {
  return waist === undefined ? text.bodyFields : [text.ownWaist, ...text.bodyFields.slice(1)];
}

/** What is measured above the skirt: a bodice's sewn edge, or the body that one is drafted over. */
function partsAbove(
  gown: Pick<Gown, 'gores'> & MeasuredAbove,
  stations: readonly string[],
  { measuresForm: text }: Words,
): FormPart[] {
  if (gown.askedBodice === undefined) {
    const panels = gown.gores.map(({ name, fold }) => text.panel(name, fold !== undefined));
    const edge = { title: text.edge, intro: text.edgeText, fields: [...panels, text.waistSeam, text.bones] };
    const above = gown.waist === undefined ? [edge] : [];
    if (gown.fittedTo === undefined) return above;
    const below = (gown.body?.girths ?? []).filter((level) => (level.below ?? 0) > 0);
    const fields = below.flatMap(({ at }) => [text.girth(at), text.girthHeight(at)]);
    return [...above, { title: text.girthsBelow, intro: text.girthsBelowText, fields }];
  }
  const girths = gown.askedBodice.body.girths.flatMap(({ at, above, below }) => [
    text.girth(at),
    text.girthFront(at),
    ...(above === undefined && below === undefined ? [] : [text.girthHeight(at)]),
  ]);
  return [
    {
      title: text.girths,
      intro: text.girthsText,
      fields: [
        ...girths,
        text.bustPoints,
        ...(gown.straps.length === 0 ? [] : [text.straps]),
        ...(gown.capes.length === 0 ? [] : [text.arm]),
      ],
    },
    { title: text.upperEdge, fields: stations },
  ];
}
