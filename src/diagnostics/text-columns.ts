/** Rows of cells as lines of text: the first column to the left, figures to the right of their columns. */
export function textColumns(rows: readonly (readonly string[])[], gap: string): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, lengthOf(cell));
    });
  return rows.map((row) =>
    row
      .map((cell, i) => padded(cell, widths[i]!, i))
      .join(gap)
      .trimEnd(),
  );
}

function padded(cell: string, width: number, column: number): string {
  const space = ' '.repeat(width - lengthOf(cell));
  return column === 0 ? cell + space : space + cell;
}

function lengthOf(text: string): number {
  return [...text].length;
}
