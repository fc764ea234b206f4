import type { SheetFrame } from './sheet-frame.ts';
import type { Neighbours, Sheet } from './sheet-plan.ts';
import type { Cell } from './touched-sheets.ts';

/** Pages of instructions before the first sheet. */
export const FIRST_PAGES = 1;

/** A cell of the grid as a key. */
export function cellKey(row: number, column: number): string {
  return `${row} ${column}`;
}

/**
 * The sheets of a grid of which each piece uses some cells. Down each column, then on to the next: neighbours come out
 * of the printer near each other.
 */
export function gridSheets(
  used: readonly ReadonlySet<string>[],
  cell: Cell,
  frame: SheetFrame,
  pageHeight: number,
): Sheet[] {
  const planned = new Set(used.flatMap((cells) => [...cells]));
  const places = [...planned].map((place) => place.split(' ').map(Number) as [number, number]);
  places.sort((a, b) => a[1] - b[1] || a[0] - b[0]);
  return places.map(([row, column], index) => ({
    page: FIRST_PAGES + index + 1,
    row,
    column,
    label: sheetLabel(row, column),
    x: column * cell.width,
    y: row * cell.height,
    ...cell,
    pageHeight,
    left: frame.left,
    bottom: frame.bottom,
    pieces: used.flatMap((cells, piece) => (cells.has(cellKey(row, column)) ? [piece] : [])),
    neighbours: neighboursOf(planned, row, column),
  }));
}

function neighboursOf(planned: ReadonlySet<string>, row: number, column: number): Neighbours {
  const sides = { left: [0, -1], right: [0, 1], above: [-1, 0], below: [1, 0] } as const;
  const found = Object.entries(sides).flatMap(([side, [down, across]]) =>
    planned.has(cellKey(row + down, column + across))
      ? [[side, sheetLabel(row + down, column + across)]]
      : [],
  );
  return Object.fromEntries(found);
}

/** A1, A2 … along the top row, B1 … below it; after Z come AA, AB. */
export function sheetLabel(row: number, column: number): string {
  const letters = (index: number): string =>
    (index < 26 ? '' : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));
  return `${letters(row)}${column + 1}`;
}
