import type { Gown } from '../../gown/gown.ts';
import type { Layer } from '../../gown/layer.ts';
import type { Block, TableBlock } from '../page/page-blocks.ts';
import { joinRow } from './join-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** Every layer and part: its cloth, what it is joined with where, and what is left beyond its seam lines. */
export function benchLayers(input: PaperInput): TableBlock {
  const { words, gown } = input;
  const { bench: text } = words;
  const layers = [...gown.layers].reverse().map((layer) => {
    const [, waist = '', closure = '', hem = ''] = joinRow(input, layer.name);
    const { shorter } = layer.shape;
    const finish = shorter > 0 ? text.shorter(hem, words.length(shorter)) : hem;
    return [layer.name, layer.cloth.name, waist, closure, finish, allowances(layer, gown, words)];
  });
  return {
    kind: 'table',
    caption: text.layersCaption,
    heads: text.layerHeads,
    rows: [...layers, ...partRows(input)],
  };
}

/** Parts have no closure, and no edges that are named after the gown's stations. */
function partRows({ words, gown }: PaperInput): string[][] {
  const { bench: text, finishes, length, station } = words;
  const row = ({ name, cloth, ...layer }: Layer, where: string, hem: string): string[] => [
    name,
    cloth.name,
    where,
    '',
    hem,
    hem === ''
      ? seamsAllowance(layer, words)
      : `${seamsAllowance(layer, words)}, ${hemAllowance(layer, words)}`,
  ];
  const besides = [...gown.straps.map(({ layer }) => layer), ...gown.capes.flatMap((cape) => cape.layers)];
  return [
    ...gown.flounces.map(({ layer, sewnTo, aboveHem }) => {
      const where = aboveHem > 0 ? text.above(sewnTo.name, length(aboveHem)) : text.atHem(sewnTo.name);
      return row(layer, where, finishes[layer.hem]);
    }),
    ...gown.tiers.map(({ layer }) => row(layer, text.byItself, '')),
    ...gown.overskirts.flatMap(({ gown: own, from, to, fastened }) => {
      const where = text.fastened(fastened, station(from), station(to ?? 'centre-back'));
      return own.layers.map((layer) => row(layer, where, finishes[layer.hem]));
    }),
    ...(gown.askedBodice?.layers ?? []).map((layer) => row(layer, text.ofBodice, '')),
    ...besides.map((layer) => row(layer, text.atUpperEdge, '')),
  ];
}

/** `waist 1.5, seams 1.5, hem 3.0; centre back 2.0`. */
function allowances(layer: Layer, gown: Gown, words: PaperInput['words']): string {
  const { jobSheet, number, station } = words;
  const usual = [
    jobSheet.allowance('waist', number(layer.allowances.waist.width)),
    seamsAllowance(layer, words),
    hemAllowance(layer, words),
  ].join(', ');
  const stations = new Set(gown.stations.map(({ name }) => name));
  const named = Object.entries(layer.allowances.named)
    .filter(([edge, { width }]) => stations.has(edge) && width !== layer.allowances.seam.width)
    .map(([edge, { width }]) => jobSheet.allowance(station(edge), number(width)));
  return named.length === 0 ? usual : `${usual}; ${named.join(', ')}`;
}

type Allowed = Pick<Layer, 'allowances'>;

function seamsAllowance({ allowances: { seam } }: Allowed, words: PaperInput['words']): string {
  return words.jobSheet.allowance(words.bench.seams, words.number(seam.width));
}

function hemAllowance(layer: Allowed, words: PaperInput['words']): string {
  return words.jobSheet.allowance('hem', words.number(layer.allowances.hem.width));
}

/** What lies on the table: width, what to buy, and what to know before it is cut. */
export function benchCloths({ words, gown, lays }: PaperInput): TableBlock {
  const { bench: text, length, list } = words;
  const used = lays.length > 0 ? lays.map(({ cloth }) => cloth) : gown.layers.map(({ cloth }) => cloth.name);
  return {
    kind: 'table',
    caption: text.clothsCaption,
    heads: text.clothHeads,
    rows: [...new Set(used)].map((name) => {
      const cloth = gown.cloths.find((own) => own.name === name);
      const bought = lays.filter((lay) => lay.cloth === name);
      return [
        name,
        cloth === undefined ? '' : length(cloth.width),
        bought.map(({ buy }) => length(buy)).join(' + '),
        list([...new Set(bought.flatMap(({ layers }) => layers))]),
        cloth === undefined ? '' : clothNotes(cloth, words),
      ];
    }),
  };
}

function clothNotes(cloth: PaperInput['gown']['cloths'][number], words: PaperInput['words']): string {
  const { bench: text, percent } = words;
  return [
    ...(cloth.oneWay ? [text.oneWay] : []),
    ...(cloth.shrinkage > 0 ? [text.shrinks(percent(cloth.shrinkage))] : []),
    ...(cloth.stretch === true ? [text.stretches] : []),
  ].join(', ');
}

/** Dates beside each other. */
const DATES_ACROSS = 2;

export function benchDates({ words, workroom }: PaperInput): Block[] {
  const { bench: text } = words;
  const entries = workroom.calendar;
  if (entries === undefined) return [];
  const each = Math.ceil(entries.length / DATES_ACROSS);
  const columns = Array.from({ length: DATES_ACROSS }, (_, i) => entries.slice(i * each, (i + 1) * each));
  return [
    { kind: 'heading', level: 3, text: text.datesCaption },
    {
      kind: 'columns',
      columns: columns.map((own): Block[] => [
        {
          kind: 'table',
          tick: true,
          heads: text.dateHeads,
          align: ['start', 'start', 'end'],
          shares: [5, 6, 2],
          rows: own.map(({ date, weekday, milestone, daysBefore }) => [
            words.shortDate(date, weekday),
            words.milestones[milestone],
            String(daysBefore),
          ]),
        },
      ]),
    },
  ];
}
