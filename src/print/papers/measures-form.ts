import type { Gown } from '../../gown/gown.ts';
import type { Words } from '../../words/english.ts';
import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { bendingFigure } from './bending-figure.ts';
import { gownLine } from './page-edges.ts';
import { type LevelNames, stationFigure } from './station-figure.ts';

/**
 * A blank form of what to measure for a gown's gores and stations: what its spec needs, and where there is none yet
 * (`isOpen`) what any gown may need. Nothing of the gown's own measures is printed.
 */
export function measuresForm(
  gown: MeasuredGown,
  words: Words,
  paper: { readonly width: number; readonly height: number },
  isOpen = false,
): FlowedPages {
  const { measuresForm: text } = words;
  const form = formOf(gown, words, isOpen);
  const width = paper.width - 30;
  const blocks: Block[] = [
    { kind: 'heading', level: 1, text: text.title },
    { kind: 'paragraph', text: form.intro },
    { kind: 'fields', fields: text.who, columns: 2 },
    ...form.parts.flatMap((part) => partBlocks(part)),
    { kind: 'heading', level: 2, text: text.figure },
    { kind: 'figure', drawing: stationFigure(levelsOf(gown, text, isOpen), form.stations, width) },
    ...form.edge.flatMap((part) => partBlocks(part)),
    ...form.tables.flatMap((table) => tableBlocks(table)),
    { kind: 'fields', fields: form.ends, columns: 2 },
    { kind: 'caution', text: text.data, lead: words.client.remember },
    { kind: 'heading', level: 2, text: text.stiffness },
    {
      kind: 'columns',
      shares: [3, 2],
      columns: [
        [{ kind: 'paragraph', text: text.stiffnessText }],
        [{ kind: 'figure', drawing: bendingFigure(text, 0.4 * width) }],
      ],
    },
    { kind: 'fields', fields: text.stiffnessFields, columns: 2 },
    { kind: 'heading', level: 3, text: text.notes },
    { kind: 'lines', count: 3 },
  ];
  return flowPages(blocks, {
    paper,
    headerLeft: gownLine(gown),
    headerRight: text.title,
    footerLeft: `format ${gown.format}`,
  });
}

/** The same as lines of text, for a terminal. */
export function measuresText(gown: MeasuredGown, words: Words, isOpen = false): string {
  const { measuresForm: text } = words;
  const form = formOf(gown, words, isOpen);
  const blank = (label: string): string => `  ${label}: ____________`;
  const part = (title: string, intro: string | undefined, lines: readonly string[]): string[] => [
    '',
    intro === undefined ? title : `${title}. ${intro}`,
    ...lines.map(blank),
  ];
  return [
    text.title,
    form.intro,
    ...text.who.map(blank),
    ...[...form.parts, ...form.edge].flatMap(({ title, intro, fields }) => part(title, intro, fields)),
    ...form.tables.flatMap(({ title, intro, heads: [, ...heads], rows }) =>
      part(
        title,
        intro,
        rows.flatMap((row) => heads.map((head) => `${row}, ${head}`)),
      ),
    ),
    ...form.ends.map(blank),
    ...part(text.stiffness, text.stiffnessText, text.stiffnessFields),
    '',
    text.data,
    '',
  ].join('\n');
}

type MeasuredGown = Pick<
  Gown,
  | 'name'
  | 'client'
  | 'format'
  | 'gores'
  | 'stations'
  | 'train'
  | 'overskirts'
  | 'askedBodice'
  | 'straps'
  | 'capes'
  | 'waist'
  | 'body'
  | 'fittedTo'
  | 'petticoat'
>;

type Text = Words['measuresForm'];

interface Form {
  readonly intro: string;
  readonly stations: readonly string[];
  /** Above the figure, and below it. */
  readonly parts: readonly FormPart[];
  readonly edge: readonly FormPart[];
  readonly tables: readonly FormTable[];
  /** What is measured once, after the tables. */
  readonly ends: readonly string[];
}

interface FormPart {
  readonly title: string;
  readonly intro?: string;
  readonly fields: readonly string[];
}

/** What is asked alike at several places: a row for each, a column for each measure. */
interface FormTable {
  readonly title: string;
  readonly intro: string;
  /** The first stands over the places. */
  readonly heads: readonly string[];
  readonly rows: readonly string[];
}

function formOf(gown: MeasuredGown, words: Words, isOpen: boolean): Form {
  const { measuresForm: text } = words;
  const stations = [...new Set(gown.stations.map(({ name }) => words.station(name)))];
  const hasHoop = isOpen || gown.petticoat?.hoop !== undefined;
  const hasTrain = isOpen || [gown, ...gown.overskirts.map((own) => own.gown)].some((own) => own.train);
  return {
    intro: hasHoop ? text.intro : text.introOverBody,
    stations,
    parts: [
      { title: text.body, fields: bodyFields(gown, text) },
      ...(hasHoop ? [{ title: text.petticoat, fields: text.petticoatFields }] : []),
    ],
    edge: edgeParts(gown, text),
    tables: [...girthTables(gown, text), ...underTables(gown, text), stationTable(gown, stations, text)],
    ends: [text.offFloor, ...(hasTrain ? [text.train] : [])],
  };
}

/** A skirt that is sewn to no bodice has its own waist measured. */
function bodyFields({ waist, askedBodice, straps, capes }: MeasuredGown, text: Text): string[] {
  return [
    ...(waist === undefined ? text.bodyFields : [text.ownWaist, ...text.bodyFields.slice(1)]),
    ...(askedBodice === undefined ? [] : [text.bustPoints]),
    ...(straps.length === 0 ? [] : [text.straps]),
    ...(capes.length === 0 ? [] : [text.arm]),
  ];
}

/** The sewn edge of a bodice that is made elsewhere. */
function edgeParts({ askedBodice, waist, gores }: MeasuredGown, text: Text): FormPart[] {
  if (askedBodice !== undefined || waist !== undefined) return [];
  const names = [
    ...new Map(gores.map(({ name, fold }) => [name, text.panel(name, fold !== undefined)])).values(),
  ];
  return [{ title: text.edge, intro: text.edgeText, fields: [...names, text.waistSeam, text.bones] }];
}

/** What the skirt hangs over, as finely as its spec has it. */
function underTables({ petticoat }: MeasuredGown, text: Text): FormTable[] {
  const rows = (petticoat?.girths ?? []).map((_, level) => String(level + 1));
  if (rows.length === 0) return [];
  return [{ title: text.under, intro: text.underText, heads: text.underHeads, rows }];
}

/** Her girths where a bodice is drafted over them, or gores follow them. */
function girthTables({ askedBodice, fittedTo, body }: MeasuredGown, text: Text): FormTable[] {
  if (askedBodice !== undefined) {
    const rows = askedBodice.body.girths.map(({ at }) => at);
    return [{ title: text.girths, intro: text.girthsText, heads: text.girthHeads, rows }];
  }
  const below = (body?.girths ?? []).filter((level) => (level.below ?? 0) > 0).map(({ at }) => at);
  if (fittedTo === undefined || below.length === 0) return [];
  const heads = text.girthHeads.filter((head) => head !== text.overFront);
  return [{ title: text.girthsBelow, intro: text.girthsBelowText, heads, rows: below }];
}

/** At each station: the upper edge of a bodice to be drafted, how far the edge drops, and the floor. */
function stationTable(
  { askedBodice, waist, stations: own }: MeasuredGown,
  stations: readonly string[],
  text: Text,
): FormTable {
  // A band of its own lies level unless the spec says otherwise.
  const hasDrop = waist === undefined || own.some(({ drop }) => drop > 0);
  return {
    title: text.lengths,
    intro: [hasDrop ? text.dropText : '', text.lengthsText(waist !== undefined)].filter(Boolean).join(' '),
    heads: [
      text.station,
      ...(askedBodice === undefined ? [] : [text.upperEdge]),
      ...(hasDrop ? [text.drop] : []),
      text.toFloor,
    ],
    rows: stations,
  };
}

function levelsOf(gown: MeasuredGown, { levels }: Text, isOpen: boolean): LevelNames {
  const { bust, underbust, edge, hoop, ...plain } = levels;
  return {
    ...plain,
    ...(gown.askedBodice === undefined ? {} : { bust, underbust }),
    ...(gown.waist === undefined ? { edge } : {}),
    ...(isOpen || gown.petticoat?.hoop !== undefined ? { hoop } : {}),
  };
}

function partBlocks({ title, intro, fields }: FormPart): Block[] {
  return together([
    { kind: 'heading', level: 2, text: title },
    ...(intro === undefined ? [] : [{ kind: 'paragraph', text: intro } as const]),
    { kind: 'fields', columns: 2, fields },
  ]);
}

function tableBlocks({ title, intro, heads, rows }: FormTable): Block[] {
  return together([
    { kind: 'heading', level: 2, text: title },
    { kind: 'paragraph', text: intro },
    {
      kind: 'table',
      heads,
      shares: heads.map((_, column) => (column === 0 ? 2 : 3)),
      rows: rows.map((row) => [row, ...heads.slice(1).map(() => '')]),
    },
  ]);
}

/** One column, so that no page end parts what is asked from where it is written. */
function together(blocks: readonly Block[]): Block[] {
  return [{ kind: 'columns', columns: [blocks] }];
}
