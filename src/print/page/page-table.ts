import type { Mark } from '../drawing.ts';
import { textWidth } from '../text/text-width.ts';
import { wrapText } from '../text/wrap-text.ts';
import type { TableBlock } from './page-blocks.ts';
import { inset, type LaidBlock, laidBlock, type Strip, stacked } from './page-strip.ts';
import { RULE, TYPE } from './page-type.ts';
import { boxMark, lineMark, textMark } from './ruled-marks.ts';

/** Side of a box to tick, mm. */
export const TICK_BOX = 3.4;

export function tickBox(x: number, y: number): Mark {
  return boxMark(x, y, TICK_BOX, TICK_BOX, { width: RULE.plain });
}

/** A table as rows that no page end cuts, with heads to repeat. A row too tall for half a page is cut between lines. */
export function layTable(block: TableBlock, width: number, pageHeight: number): LaidBlock {
  const columns = columnsOf(block, width);
  const bold = new Set(block.boldRows ?? []);
  const rows = block.rows.flatMap((row, index) => {
    const strip = rowStrips(row, columns, bold.has(index), block.tick === true);
    return strip.reduce((sum, line) => sum + line.height, 0) > pageHeight / 2 ? strip : [stacked(strip)];
  });
  // A table whose heads are all empty has rows only, under a rule.
  const headless = block.heads.every((text) => text === '');
  const heads = headless ? topRule(width) : stacked(rowStrips(block.heads, columns, true, false, RULE.plain));
  const caption = block.caption === undefined ? [] : wrapText(block.caption, width, TYPE.body, true);
  const captionStrips = caption.map(
    (line): Strip => ({
      height: LINE,
      draw: (at) => [textMark(line, { x: at.x, y: at.y + TYPE.body }, TYPE.body, { bold: true })],
    }),
  );
  const head = inset(stacked([...captionStrips, heads]), 0);
  return laidBlock(rows, { head, before: 0.6 * LINE, together: true, leastStrips: 2 });
}

function topRule(width: number): Strip {
  return {
    height: 0,
    draw: (at) => [lineMark(at, { x: at.x + width, y: at.y }, { width: RULE.hair })],
  };
}

const LINE = TYPE.body * TYPE.leading;
const PAD = { across: 1.4, down: 0.7 } as const;

interface Column {
  readonly left: number;
  readonly width: number;
  readonly align: 'start' | 'end';
}

function columnsOf(block: TableBlock, width: number): Column[] {
  const tickRoom = block.tick === true ? TICK_BOX + 2 : 0;
  const room = width - tickRoom;
  const widths =
    block.shares === undefined ? widthsByContents(block, room) : widthsByShares(block.shares, room);
  let left = tickRoom;
  return widths.map((own, index) => {
    const column = { left, width: own, align: block.align?.[index] ?? 'start' } as const;
    left += own;
    return column;
  });
}

function widthsByShares(shares: readonly number[], room: number): number[] {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => (room * share) / whole);
}

/** Natural widths where they fit, spread over the room; else the wide columns give way to the narrow ones. */
function widthsByContents(block: TableBlock, room: number): number[] {
  const natural = block.heads.map((head, index) => {
    const cells = block.rows.map((row) => row[index] ?? '');
    return Math.max(cellWidth(head), ...cells.map((cell) => cellWidth(cell)));
  });
  const whole = natural.reduce((sum, own) => sum + own, 0);
  if (whole <= room) return natural.map((own) => own + (room - whole) / natural.length);
  const limit = levelThatFits(natural, room);
  return natural.map((own) => Math.min(own, limit));
}

/** The width at which all columns wider than it are cut so that together they fill the room. */
function levelThatFits(natural: readonly number[], room: number): number {
  const sorted = [...natural].sort((a, b) => a - b);
  let left = room;
  for (const [index, own] of sorted.entries()) {
    const share = left / (sorted.length - index);
    if (own > share) return share;
    left -= own;
  }
  return Infinity;
}

function cellWidth(text: string): number {
  // As bold, so that a total never wraps.
  const lines = text.split('\n').map((line) => textWidth(line, TYPE.body, true));
  return Math.max(...lines) + 2 * PAD.across;
}

/** One strip a line of text; the last carries the rule below the row. */
function rowStrips(
  cells: readonly string[],
  columns: readonly Column[],
  bold: boolean,
  tick: boolean,
  rule: number = RULE.hair,
): Strip[] {
  const wrapped = columns.map((column, index) =>
    wrapText(cells[index] ?? '', column.width - 2 * PAD.across, TYPE.body, bold),
  );
  const count = Math.max(1, ...wrapped.map((lines) => lines.length));
  const last = columns[columns.length - 1];
  const right = last === undefined ? 0 : last.left + last.width;
  return Array.from({ length: count }, (_, line) => {
    const above = line === 0 ? PAD.down : 0;
    const below = line === count - 1 ? PAD.down : 0;
    const height = LINE + above + below;
    const draw: Strip['draw'] = (at) => [
      ...(tick && line === 0 ? [tickBox(at.x, at.y + above + 0.5)] : []),
      ...columns.flatMap((column, index) =>
        cellMarks(wrapped[index]![line] ?? '', column, bold, at.x, at.y + above),
      ),
      ...(line === count - 1
        ? [lineMark({ x: at.x, y: at.y + height }, { x: at.x + right, y: at.y + height }, { width: rule })]
        : []),
    ];
    return { height, draw };
  });
}

function cellMarks(text: string, column: Column, bold: boolean, x: number, y: number): Mark[] {
  if (text === '') return [];
  const atEnd = column.align === 'end';
  const left = x + column.left + (atEnd ? column.width - PAD.across : PAD.across);
  return [
    textMark(text, { x: left, y: y + TYPE.body }, TYPE.body, { bold, anchor: atEnd ? 'end' : 'start' }),
  ];
}
