/** Rows of cells as lines of text: the first column to the left, figures to the right of their columns. */
export function textTable(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, i) =>
    Math.max(...rows.map((row) => lengthOf(row[i] ?? ''))),
  );
  return rows
    .map(
      (row) =>
        `${row
          .map((cell, i) => padded(cell, widths[i] ?? 0, i))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}

function padded(cell: string, width: number, column: number): string {
  const space = ' '.repeat(width - lengthOf(cell));
  return column === 0 ? cell + space : space + cell;
}

function lengthOf(text: string): number {
  return [...text].length;
}
