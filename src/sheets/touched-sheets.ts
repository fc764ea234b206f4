/** Size of a cell of the grid, mm of pattern. */
export interface Cell {
  readonly width: number;
  readonly height: number;
}

/** A flattened line: x and y by turns. */
export type Polyline = Float64Array;

/**
 * Calls `visit` with row and column of every cell that a polyline, moved by (x, y), passes through or comes within
 * `reach` of; some more than once. Exact for the polyline. Stops where `visit` answers false.
 */
export function visitCells(
  line: Polyline,
  x: number,
  y: number,
  cell: Cell,
  reach: number,
  visit: (row: number, column: number) => boolean,
): void {
  for (let i = 0; i + 3 < line.length; i += 2) {
    let fromX = line[i]! + x;
    let fromY = line[i + 1]! + y;
    let toX = line[i + 2]! + x;
    let toY = line[i + 3]! + y;
    if (fromX > toX) {
      [fromX, toX] = [toX, fromX];
      [fromY, toY] = [toY, fromY];
    }
    const firstColumn = Math.floor((fromX - reach) / cell.width);
    const lastColumn = Math.floor((toX + reach) / cell.width);
    const slope = toX > fromX ? (toY - fromY) / (toX - fromX) : 0;
    for (let column = firstColumn; column <= lastColumn; column++) {
      // The part of the segment within this column; all of it where it is upright.
      const upright = toX === fromX;
      const enter = upright
        ? fromY
        : fromY + slope * (clamp(column * cell.width - reach, fromX, toX) - fromX);
      const leave = upright
        ? toY
        : fromY + slope * (clamp((column + 1) * cell.width + reach, fromX, toX) - fromX);
      const firstRow = Math.floor((Math.min(enter, leave) - reach) / cell.height);
      const lastRow = Math.floor((Math.max(enter, leave) + reach) / cell.height);
      for (let row = firstRow; row <= lastRow; row++) if (!visit(row, column)) return;
    }
  }
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
