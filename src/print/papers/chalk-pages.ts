import type { ChalkLetteredCorner, ChalkLevel, ChalkStretch, ChalkTable } from '../../chalk/chalk.ts';
import type { ChalkDifference, SharedChalk } from '../../chalk/shared-tables.ts';
import { pieceCalled } from '../../diagnostics/piece-name.ts';
import type { Block } from '../page/page-blocks.ts';
import { type FlowedPages, flowPages } from '../page/page-flow.ts';
import { chalkFigure } from './chalk-figure.ts';
import { pageEdges } from './page-edges.ts';
import type { PaperInput } from './paper-input.ts';

type Words = PaperInput['words'];

/** The chalk tables as a paper of their own, piece after piece: it lies on the cloth while the job sheet hangs. */
export function chalkPages(input: PaperInput): FlowedPages {
  const { chalk, words, paper, gown } = input;
  const { chalk: text } = words;
  return flowPages(
    [
      { kind: 'heading', level: 1, text: text.title },
      ...text.intro.map((line): Block => ({ kind: 'paragraph', text: line })),
      { kind: 'paragraph', text: words.units, bold: true },
      ...chalk.flatMap((shared) => pieceBlocks(shared, words)),
    ],
    {
      paper,
      headerRight: text.title,
      ...pageEdges(gown),
    },
  );
}

function pieceBlocks({ table, others }: SharedChalk, words: Words): Block[] {
  const { chalk: text } = words;
  const layers = [table, ...others.map((other) => other.table)].flatMap((own) => own.layers);
  const piece = pieceCalled(table.gore, table.part);
  const name = table.side === undefined ? piece : text.onSide(piece, table.side);
  const figure = chalkFigure(table, table.lines, { width: 70, height: 64 });
  return [
    {
      kind: 'heading',
      level: 2,
      text: `${name}: ${words.list(layers)}. ${text.copies[table.cut](table.copies ?? 1)}`,
    },
    {
      kind: 'columns',
      shares: [8, 9],
      columns: [
        [
          ...(others.length === 0
            ? []
            : [{ kind: 'paragraph', text: text.shared(words.list(table.layers)) } as const]),
          ...(table.bias === undefined ? [] : [{ kind: 'paragraph', text: text.biasIntro } as const]),
          ...(table.cut === 'on-fold' ? [{ kind: 'paragraph', text: text.onFoldIntro } as const] : []),
          { kind: 'figure', drawing: figure },
          cornerTable(table.corners, words),
          { kind: 'paragraph', text: diagonalsText(table, words) },
        ],
        // A piece shallower than the first level has corners alone.
        [
          ...(table.levels.length === 0 ? [] : [levelTable(table, table.levels, words)]),
          ...bustleTable(table, words, layers.length > 1),
        ],
      ],
    },
    ...inPairs(table.stretches.map((stretch) => curveTables(stretch, words))),
    ...table.swings.map((swing): Block => ({ kind: 'item', text: swingText(swing, words) })),
    ...(table.inner.length === 0 ? [] : [innerTable(table, words)]),
    ...inPairs(others.map((other) => differenceBlocks(other, words))),
  ];
}

/** Folds and what they are brought to, from the left. */
function innerTable({ inner }: ChalkTable, { chalk: text, chalkNumber }: Words): Block {
  const across = [...inner].sort((a, b) => a.from.across - b.from.across);
  return {
    kind: 'table',
    caption: text.inner.caption,
    heads: text.inner.heads,
    align: ['start', 'end', 'end', 'end', 'end'],
    rows: across.map(({ name, from, to }) => [
      text.inner.names[name as keyof typeof text.inner.names] ?? name,
      ...[from, to].flatMap((end) => [chalkNumber(end.down), chalkNumber(end.across)]),
    ]),
  };
}

/** With the one layer that carries it, named where others are chalked by the same table. */
function bustleTable(
  { bustle, layers }: ChalkTable,
  { chalk: text, chalkNumber, bustleAt }: Words,
  isShared = layers.length > 1,
): Block[] {
  if (bustle.length === 0) return [];
  return [
    {
      kind: 'table',
      ...(isShared ? { caption: text.bustle.caption(bustle[0]!.layer) } : {}),
      heads: text.bustle.heads,
      align: ['start', 'end', 'end'],
      rows: bustle.map(({ place, anchor, pickUp }) => [
        bustleAt(place),
        ...[anchor, pickUp].map(({ down, across }) => `${chalkNumber(down)}, ${chalkNumber(across)}`),
      ]),
    },
  ];
}

/** What of a layer is not as in the table above. */
function differenceBlocks({ table, levels, curves, corners }: ChalkDifference, words: Words): Block[] {
  const ownSwings = table.swings.filter(({ line, edge }) =>
    curves.some((curve) => curve.line === line && curve.edge === edge),
  );
  return [
    { kind: 'heading', level: 3, text: words.chalk.differs(words.list(table.layers)) },
    ...(corners.length === 0
      ? []
      : [cornerTable(corners, words), { kind: 'paragraph', text: diagonalsText(table, words) } as const]),
    ...(levels.length === 0 ? [] : [levelTable(table, levels, words)]),
    ...curves.flatMap((stretch) => curveTables(stretch, words)),
    ...ownSwings.map((swing): Block => ({ kind: 'item', text: swingText(swing, words) })),
    ...bustleTable(table, words),
  ];
}

/** Small tables two abreast; those of one curve stay in one column. */
function inPairs(all: readonly (readonly Block[])[]): Block[] {
  const curves = all.filter((own) => own.length > 0);
  return Array.from({ length: Math.ceil(curves.length / 2) }, (_, i) => ({
    kind: 'columns',
    columns: [curves[2 * i]!, curves[2 * i + 1] ?? []],
  }));
}

/** Cut corners to the left, seam corners to the right. */
function cornerTable(corners: readonly ChalkLetteredCorner[], words: Words): Block {
  const { chalk: text, chalkNumber } = words;
  const on = (line: ChalkLetteredCorner['line']): string[][] =>
    corners
      .filter((corner) => corner.line === line)
      .map(({ letter, down, across }) => [letter, chalkNumber(down), chalkNumber(across)]);
  const [cut, seam] = [on('cut'), on('seam')];
  const blank = ['', '', ''];
  return {
    kind: 'table',
    heads: [...text.cornerHeads, ...text.cornerHeads],
    align: ['start', 'end', 'end', 'start', 'end', 'end'],
    shares: [3, 11, 11, 3, 11, 11],
    rows: Array.from({ length: Math.max(cut.length, seam.length) }, (_, i) => [
      ...(cut[i] ?? blank),
      ...(seam[i] ?? blank),
    ]),
  };
}

function diagonalsText({ diagonals }: ChalkTable, words: Words): string {
  return words.chalk.diagonals(
    diagonals.map(({ from, to, length }) => `${from}–${to} ${words.chalkNumber(length)}`),
  );
}

function levelTable(
  { columns }: Pick<ChalkTable, 'columns'>,
  levels: readonly ChalkLevel[],
  words: Words,
): Block {
  const { chalk: text, chalkNumber } = words;
  const shown = columns.filter((column) => levels.some(({ cells }) => cells[column]!.length > 0));
  return {
    kind: 'table',
    heads: [text.levelHeads.down, ...shown.map((column) => text.levelHeads.columns[column]!)],
    align: ['end', ...shown.map(() => 'end' as const)],
    rows: levels.map(({ down, cells }) => [
      chalkNumber(down),
      ...shown.map((column) => cells[column]!.map((place) => chalkNumber(place)).join(' / ')),
    ]),
  };
}

/** Ordinates of one table, so that it fits across the page: a mixed fraction is wider than a decimal, and never broken. */
const MOST_ACROSS = { mm: 6, cm: 6, in: 5 } as const;

function curveTables(stretch: ChalkStretch, words: Words): Block[] {
  const { chalk: text, chalkNumber } = words;
  const points = stretch.points.flatMap((point) => (point.kind === 'ordinate' ? [point] : []));
  if (points.length === 0) return [];
  const rows = Math.ceil(points.length / MOST_ACROSS[words.unit]);
  const each = Math.ceil(points.length / rows);
  return Array.from({ length: rows }, (_, i): Block => {
    const own = points.slice(i * each, (i + 1) * each);
    return {
      kind: 'table',
      ...(i === 0
        ? { caption: text.chord(stretch.from.letter, stretch.to.letter, words.edge(stretch.edge)) }
        : {}),
      heads: [text.along, ...own.map((point) => chalkNumber(point.along))],
      align: ['start', ...own.map(() => 'end' as const)],
      rows: [[text.out, ...own.map((point) => chalkNumber(point.out))]],
    };
  });
}

function swingText(swing: ChalkTable['swings'][number], words: Words): string {
  const { chalk: text, chalkNumber } = words;
  const down = swing.down < 0 ? text.above(chalkNumber(-swing.down)) : text.below(chalkNumber(swing.down));
  const across =
    swing.across === 0
      ? text.onGrain
      : swing.across < 0
        ? text.left(chalkNumber(-swing.across))
        : text.right(chalkNumber(swing.across));
  return text.swing(text[swing.line], words.edge(swing.edge), chalkNumber(swing.radius), down, across);
}
