import type { ChalkStretch, ChalkTable } from '../../workroom/chalk.ts';
import type { Block } from '../page-blocks.ts';
import { chalkFigure } from './chalk-figure.ts';
import type { PaperInput } from './paper-input.ts';

type Words = PaperInput['words'];

/** The chalk tables, one piece after the other. */
export function chalkBlocks({ chalk, words }: PaperInput): Block[] {
  if (chalk.length === 0) return [];
  const { chalk: text } = words;
  return [
    { kind: 'page-break' },
    { kind: 'heading', level: 2, text: text.title },
    ...text.intro.map((line): Block => ({ kind: 'paragraph', text: line })),
    { kind: 'paragraph', text: words.units, bold: true },
    ...chalk.flatMap((table) => pieceBlocks(table, words)),
  ];
}

function pieceBlocks(table: ChalkTable, words: Words): Block[] {
  const { chalk: text } = words;
  const title = `${table.gore}: ${words.list(table.layers)}. ${text.copies[table.cut]}`;
  const figure = chalkFigure(table, table.lines, { width: 62, height: 78 });
  return [
    { kind: 'heading', level: 3, text: title },
    ...(table.cut === 'on-fold' ? [{ kind: 'paragraph', text: text.onFoldIntro } as const] : []),
    {
      kind: 'columns',
      shares: [5, 8],
      columns: [
        [{ kind: 'figure', drawing: figure }],
        [cornerTable(table, words), { kind: 'paragraph', text: diagonalsText(table, words) }],
      ],
    },
    levelTable(table, words),
    ...table.stretches.flatMap((stretch) => curveTables(stretch, words)),
    ...table.swings.map((swing): Block => ({ kind: 'item', text: swingText(swing, words) })),
  ];
}

/** Cut corners to the left, seam corners to the right. */
function cornerTable({ stretches }: ChalkTable, words: Words): Block {
  const { chalk: text, chalkNumber } = words;
  const corners = (line: 'cut' | 'seam'): string[][] =>
    stretches
      .filter((stretch) => stretch.line === line)
      .map(({ from }) => [from.letter, chalkNumber(from.down), chalkNumber(from.across)]);
  const [cut, seam] = [corners('cut'), corners('seam')];
  const blank = ['', '', ''];
  return {
    kind: 'table',
    heads: [...text.cornerHeads, ...text.cornerHeads],
    align: ['start', 'end', 'end', 'start', 'end', 'end'],
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

/** One row a level; a side that a level crosses more than once has all its distances in one cell. */
function levelTable(table: ChalkTable, words: Words): Block {
  const { chalk: text, chalkNumber } = words;
  const levels = new Map<number, string[][]>();
  for (const stretch of table.stretches) {
    const column = columnOf(stretch, table);
    for (const point of stretch.points) {
      if (point.kind !== 'level') continue;
      const cells = levels.get(point.down) ?? [[], [], [], []];
      cells[column]!.push(chalkNumber(column < 2 ? -point.across : point.across));
      levels.set(point.down, cells);
    }
  }
  return {
    kind: 'table',
    heads: text.levelHeads,
    align: ['end', 'end', 'end', 'end', 'end'],
    rows: [...levels]
      .sort(([a], [b]) => a - b)
      .map(([down, cells]) => [chalkNumber(down), ...cells.map((cell) => cell.join(' / '))]),
  };
}

/** 0 cut left, 1 seam left, 2 seam right, 3 cut right. */
function columnOf(stretch: ChalkStretch, { frontEdge, backEdge }: ChalkTable): number {
  const runsDown = stretch.to.down > stretch.from.down;
  const right = frontEdge === backEdge ? runsDown : stretch.edge === backEdge;
  return right ? (stretch.line === 'seam' ? 2 : 3) : stretch.line === 'seam' ? 1 : 0;
}

/** Ordinates of one table, so that it fits across the page. */
const MOST_ACROSS = 11;

function curveTables(stretch: ChalkStretch, words: Words): Block[] {
  const { chalk: text, chalkNumber } = words;
  const points = stretch.points.flatMap((point) => (point.kind === 'ordinate' ? [point] : []));
  if (points.length === 0) return [];
  const rows = Math.ceil(points.length / MOST_ACROSS);
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
