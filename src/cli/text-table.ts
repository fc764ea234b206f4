import { textColumns } from '../diagnostics/text-columns.ts';

/** Rows of cells as lines of text. */
export function textTable(rows: readonly (readonly string[])[]): string {
  return textColumns(rows, '  ')
    .map((line) => `${line}\n`)
    .join('');
}
