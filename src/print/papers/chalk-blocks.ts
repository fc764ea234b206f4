import type { ChalkStretch, ChalkTable } from '../../chalk/chalk.ts';
import type { Block } from '../page/page-blocks.ts';
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
  const figure = chalkFigure(table, table.lines, { width: 70, height: 72 });
  return [
    { kind: 'heading', level: 3, text: title },
    {
      kind: 'columns',
      shares: [8, 9],
      columns: [
        [
          ...(table.cut === 'on-fold' ? [{ kind: 'paragraph', text: text.onFoldIntro } as const] : []),
          { kind: 'figure', drawing: figure },
          cornerTable(table, words),
          { kind: 'paragraph', text: diagonalsText(table, words) },
        ],
        [levelTable(table, words)],
      ],
    },
    ...inPairs(table.stretches.map((stretch) => curveTables(stretch, words)).filter((own) => own.length > 0)),
    ...table.swings.map((swing): Block => ({ kind: 'item', text: swingText(swing, words) })),
  ];
}

/** Small tables two abreast; those of one curve stay in one column. */
function inPairs(curves: readonly (readonly Block[])[]): Block[] {
  return Array.from({ length: Math.ceil(curves.length / 2) }, (_, i) => ({
    kind: 'columns',
    columns: [curves[2 * i]!, curves[2 * i + 1] ?? []],
  }));
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
    shares: [2, 5, 5, 2, 5, 5],
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
  const rows = [...levels].sort(([a], [b]) => a - b);
  const shown = columnsShown(table).filter((column) => rows.some(([, cells]) => cells[column]!.length > 0));
  return {
    kind: 'table',
    heads: [text.levelHeads.down, ...shown.map((column) => text.levelHeads.columns[column]!)],
    align: ['end', ...shown.map(() => 'end' as const)],
    rows: rows
      .filter(([, cells]) => shown.some((column) => cells[column]!.length > 0))
      .map(([down, cells]) => [chalkNumber(down), ...shown.map((column) => cells[column]!.join(' / '))]),
  };
}

/** Beside a fold there is only one side to measure, seam line first. */
function columnsShown({ frontEdge, backEdge }: ChalkTable): readonly number[] {
  if (frontEdge === 'fold') return [2, 3];
  return backEdge === 'fold' ? [1, 0] : [0, 1, 2, 3];
}

/** 0 cut left, 1 seam left, 2 seam right, 3 cut right. */
function columnOf(stretch: ChalkStretch, { frontEdge, backEdge }: ChalkTable): number {
  const runsDown = stretch.to.down > stretch.from.down;
  const right = frontEdge === backEdge ? runsDown : stretch.edge === backEdge;
  return right ? (stretch.line === 'seam' ? 2 : 3) : stretch.line === 'seam' ? 1 : 0;
}

/** Ordinates of one table, so that it fits across the page. */
const MOST_ACROSS = 6;

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
