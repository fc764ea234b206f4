import type { ChalkLevel, ChalkLevelPoint, ChalkStretch } from './chalk.ts';

/** Names of the edges at the left and at the right. */
interface Sides {
  readonly frontEdge: string;
  readonly backEdge: string;
}

/** Every level of a table, from the top. */
export function levelsOf(stretches: readonly ChalkStretch[], sides: Sides): ChalkLevel[] {
  const levels = new Map<number, number[][]>();
  for (const stretch of stretches) {
    const column = columnOf(stretch, sides);
    for (const point of stretch.points) {
      if (point.kind !== 'level') continue;
      const cells = levels.get(point.down) ?? [[], [], [], []];
      cells[column]!.push(fromGrain(column, point));
      levels.set(point.down, cells);
    }
  }
  const shown = columnsShown(sides);
  return [...levels]
    .map(([down, cells]) => ({
      down,
      cells: cells.map((cell, column) => (shown.includes(column) ? cell : [])),
    }))
    .filter(({ cells }) => cells.some((cell) => cell.length > 0))
    .sort((a, b) => a.down - b.down);
}

/** Columns that a table has: beside a fold there is only one side to measure, seam line first. */
export function columnsShown({ frontEdge, backEdge }: Sides): readonly number[] {
  if (frontEdge === 'fold') return [2, 3];
  return backEdge === 'fold' ? [1, 0] : [0, 1, 2, 3];
}

/** Away from the grain line, on either side of it. */
function fromGrain(column: number, { across }: ChalkLevelPoint): number {
  return column < 2 ? -across : across;
}

/** 0 cut left, 1 seam left, 2 seam right, 3 cut right. */
function columnOf(stretch: ChalkStretch, { frontEdge, backEdge }: Sides): number {
  const runsDown = stretch.to.down > stretch.from.down;
  const right = frontEdge === backEdge ? runsDown : stretch.edge === backEdge;
  return right ? (stretch.line === 'seam' ? 2 : 3) : stretch.line === 'seam' ? 1 : 0;
}
