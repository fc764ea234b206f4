import type { Line, Point } from '../geometry/curve.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { lengthOf } from '../geometry/length.ts';
import { dot, subtract, unit } from '../geometry/point.ts';
import type { LaidPiece } from './laid-piece.ts';
import type { Cell } from './touched-sheets.ts';

/** A straight stretch that no sheet shows, to be bridged with tape and ruler. */
export interface LineGap {
  /** Index of the piece. */
  readonly piece: number;
  readonly line: 'cut' | 'grain';
  /** Where the line leaves the last sheet and where it comes on to the next, in the pattern. */
  readonly from: Point;
  readonly to: Point;
  /** Row and column of those sheets. */
  readonly fromCell: readonly [number, number];
  readonly toCell: readonly [number, number];
  /** Along the line, and along the grain, mm. */
  readonly length: number;
  readonly alongGrain: number;
}

/** The gaps in a piece's straight sides and in its grain line; cells that are printed for this piece are `shown`. */
export function gapsOf(
  { cutPiece, grain }: LaidPiece,
  piece: number,
  cell: Cell,
  shown: (row: number, column: number) => boolean,
): LineGap[] {
  const sides = [cutPiece.piece.frontEdge, cutPiece.piece.backEdge];
  const straight = cutPiece.cutEdges
    .filter((edge) => sides.includes(edge.name))
    .flatMap((edge) => edge.curves)
    .flatMap((curve) => (curve.kind === 'line' ? [{ line: 'cut' as const, curve }] : []));
  const way = unit(subtract(grain.to, grain.from));
  const lines = [...straight, { line: 'grain' as const, curve: grain }];
  return lines.flatMap(({ line, curve }) =>
    gapsAlong(curve, cell, shown).map(({ from, to, fromCell, toCell }) => {
      const vector = subtract(to, from);
      const length = Math.hypot(vector.x, vector.y);
      return { piece, line, from, to, fromCell, toCell, length, alongGrain: Math.abs(dot(vector, way)) };
    }),
  );
}

function gapsAlong(
  line: Line,
  cell: Cell,
  shown: (row: number, column: number) => boolean,
): Pick<LineGap, 'from' | 'to' | 'fromCell' | 'toCell'>[] {
  const stretches = shownStretches(line, cell, shown);
  return stretches.slice(1).map((next, index) => {
    const { end, lastCell } = stretches[index]!;
    return {
      from: pointAt(line, end),
      to: pointAt(line, next.start),
      fromCell: lastCell,
      toCell: next.firstCell,
    };
  });
}

interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly firstCell: readonly [number, number];
  readonly lastCell: readonly [number, number];
}

/** Unbroken stretches of a line on printed sheets; a corner of a sheet that it only touches is none to measure from. */
function shownStretches(line: Line, cell: Cell, shown: (row: number, column: number) => boolean): Stretch[] {
  const cuts = gridCuts(line, cell);
  const stretches: Stretch[] = [];
  let open = false;
  for (const [index, start] of cuts.slice(0, -1).entries()) {
    const end = cuts[index + 1]!;
    const middle = pointAt(line, (start + end) / 2);
    const here = [Math.floor(middle.y / cell.height), Math.floor(middle.x / cell.width)] as const;
    const isShown = shown(...here);
    if (isShown && open) stretches.push({ ...stretches.pop()!, end, lastCell: here });
    else if (isShown) stretches.push({ start, end, firstCell: here, lastCell: here });
    open = isShown;
  }
  return stretches.filter(({ start, end }) => (end - start) * lengthOf(line) > SHORTEST);
}

/** mm. */
const SHORTEST = 20;

/** Parameters at which a line crosses the grid, with both ends; crossings nearer than a micrometre are one. */
function gridCuts(line: Line, cell: Cell): number[] {
  const { from, to } = line;
  const cuts = [0, 1];
  for (const [start, end, size] of [
    [from.x, to.x, cell.width],
    [from.y, to.y, cell.height],
  ] as const) {
    const [low, high] = [Math.min(start, end), Math.max(start, end)];
    for (let place = Math.ceil(low / size) * size; place <= high; place += size) {
      if (end !== start) cuts.push((place - start) / (end - start));
    }
  }
  const length = lengthOf(line);
  return cuts
    .sort((a, b) => a - b)
    .filter((cut, index, all) => index === 0 || (cut - all[index - 1]!) * length > 1e-3);
}
