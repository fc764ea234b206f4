import type { Drawing } from '../../src/print/drawing.ts';
import { linesOf, type PlacedText, textsOf } from './page-texts.ts';

/** The lines of all pages, from the top. */
export function printedLines(pages: readonly Drawing[]): PlacedText[][] {
  return pages.flatMap((page) => linesOf(textsOf(page)));
}

/** Less than the gap between two columns, mm. */
const SAME = 0.4;

/**
 * Rows of every table that has these heads side by side, on whatever page: a cell is what begins or ends where its head
 * does, so that a figure in its neighbour's column is not found. What is broken on to further lines is put together again.
 */
export function rowsUnder(lines: readonly PlacedText[][], heads: readonly string[]): string[][] {
  return lines.flatMap((line, at) =>
    line.flatMap((_, from) => {
      if (!heads.every((head, k) => line[from + k]?.text === head)) return [];
      const next = line[from + heads.length];
      if (next !== undefined && !BESIDE.includes(next.text)) return [];
      return rowsBelow(line.slice(from, from + heads.length), lines.slice(at + 1));
    }),
  );
}

/** First heads of tables that stand beside another. */
const BESIDE = ['gore', 'by'];

function rowsBelow(columns: readonly PlacedText[], lines: readonly PlacedText[][]): string[][] {
  const rows: string[][] = [];
  for (const below of lines) {
    const cells = columns.map((head) => cellUnder(head, below));
    if (cells.every((cell) => cell === undefined)) break;
    if (cells[0] === undefined) append(rows.at(-1), cells);
    else rows.push(cells.map((cell) => cell ?? ''));
  }
  return rows;
}

function cellUnder(head: PlacedText, line: readonly PlacedText[]): string | undefined {
  const { left, right } = head;
  return line.find((cell) => Math.abs(cell.left - left) < SAME || Math.abs(cell.right - right) < SAME)?.text;
}

function append(row: string[] | undefined, cells: readonly (string | undefined)[]): void {
  for (const [i, cell] of cells.entries())
    if (cell !== undefined && row !== undefined) row[i] = `${row[i]} ${cell}`;
}

/** What stands to the right of a label, in a table without heads; labels that are printed twice are all answered. */
export function beside(lines: readonly PlacedText[][], label: string): string[] {
  return lines.flatMap((line) => {
    const at = line.findIndex(({ text }) => text === label);
    return at < 0
      ? []
      : [
          line
            .slice(at + 1)
            .map(({ text }) => text)
            .join(' | '),
        ];
  });
}
