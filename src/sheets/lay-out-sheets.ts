import type { CutPiece } from '../draft/piece.ts';
import { areaInside } from '../geometry/area.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { movedPiece } from './moved-piece.ts';
import { CLEAR, LINE_REACH, nestOnGrid } from './nest-on-grid.ts';
import type { Paper } from './paper.ts';
import { type Margins, type SheetFrame, sheetFrame } from './sheet-frame.ts';
import type { LaidPiece, Neighbours, Scale, Sheet, SheetPlan } from './sheet-plan.ts';
import { shownGrain } from './shown-grain.ts';
import { type Cell, visitCells } from './touched-sheets.ts';
import { drawnRuns, polylineOf, type WorkingShape, workingShape } from './working-shape.ts';

export interface SheetOptions {
  readonly paper: Paper;
  readonly margins: Margins;
  /** Width of a printed strip that the next sheet lies on, mm on paper; 0 to lap on the white margin alone. */
  readonly lap: number;
  /** Millimetres on paper for one of the pattern. */
  readonly scale: Scale;
}

/** Pages of instructions before the first sheet. */
export const FIRST_PAGES = 1;

/** Lays pieces on as few sheets as the search finds, and lists the sheets that have a line on them. */
export function layOutSheets(cutPieces: readonly CutPiece[], options: SheetOptions): SheetPlan {
  const frame = sheetFrame(options.paper, options.margins, options.lap);
  const cell = { width: frame.width / options.scale.across, height: frame.height / options.scale.down };
  const shapes = cutPieces.map((piece) => [workingShape(piece, 0), workingShape(piece, 180)]);
  const { positions } = nestOnGrid(shapes, cell);
  const moved = positions.map(({ shape, x, y }, index) => {
    const { shift } = shape.placement;
    return movedPiece(cutPieces[index]!, { ...shape.placement, shift: { x: shift.x + x, y: shift.y + y } });
  });
  const used = moved.map((piece) => cellsOf(piece, cell));
  const planned = new Set(used.flatMap((cells) => [...cells]));
  const pieces = moved.map((cutPiece, index): LaidPiece => {
    const grain = shownGrain(cutPiece.piece.grain, cell, (row, column) => planned.has(key(row, column)));
    return { cutPiece, turned: positions[index]!.shape.turned, grain };
  });
  for (const [index, { grain }] of pieces.entries()) {
    const line = polylineOf([grain.from, grain.to]);
    visitCells(line, 0, 0, cell, 0, (row, column) => {
      used[index]!.add(key(row, column));
      planned.add(key(row, column));
      return true;
    });
  }
  const sheets = sheetsOf(planned, used, cell, frame);
  return {
    ...options,
    frame,
    pieces,
    sheets,
    rows: 1 + Math.max(0, ...sheets.map((sheet) => sheet.row)),
    columns: 1 + Math.max(0, ...sheets.map((sheet) => sheet.column)),
    gridPerPiece: shapes.reduce(
      (sum, [upright], index) => sum + sheetsAlone(cutPieces[index]!, upright!, cell),
      0,
    ),
    areaBound: Math.ceil(
      cutPieces.reduce((sum, piece) => sum + areaInside(piece.cutEdges.flatMap((edge) => edge.curves)), 0) /
        (cell.width * cell.height),
    ),
  };
}

function cellsOf(cutPiece: CutPiece, cell: Cell): Set<string> {
  const cells = new Set<string>();
  for (const run of drawnRuns(cutPiece)) {
    const line = polylineOf(flattenedRun(run, FINE));
    visitCells(line, 0, 0, cell, LINE_REACH, (row, column) => {
      cells.add(key(row, column));
      return true;
    });
  }
  return cells;
}

/** Sheets that a piece takes on a grid of its own that begins at its upper left corner. */
function sheetsAlone(
  cutPiece: CutPiece,
  { placement: { shift, ...turn } }: WorkingShape,
  cell: Cell,
): number {
  const corner = { x: shift.x + CLEAR, y: shift.y + CLEAR };
  return cellsOf(movedPiece(cutPiece, { ...turn, shift: corner }), cell).size;
}

/** Chord height when the sheets that a line needs are counted, mm: well below the line's width. */
const FINE = 0.02;

const key = (row: number, column: number) => `${row} ${column}`;

/** Down each column of the grid, then on to the next: neighbours come out of the printer near each other. */
function sheetsOf(
  planned: ReadonlySet<string>,
  used: readonly ReadonlySet<string>[],
  cell: Cell,
  frame: SheetFrame,
): Sheet[] {
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
    left: frame.left,
    bottom: frame.bottom,
    pieces: used.flatMap((cells, piece) => (cells.has(key(row, column)) ? [piece] : [])),
    neighbours: neighboursOf(planned, row, column),
  }));
}

function neighboursOf(planned: ReadonlySet<string>, row: number, column: number): Neighbours {
  const sides = { left: [0, -1], right: [0, 1], above: [-1, 0], below: [1, 0] } as const;
  const found = Object.entries(sides).flatMap(([side, [down, across]]) =>
    planned.has(key(row + down, column + across)) ? [[side, sheetLabel(row + down, column + across)]] : [],
  );
  return Object.fromEntries(found);
}

/** A1, A2 … along the top row, B1 … below it; after Z come AA, AB. */
export function sheetLabel(row: number, column: number): string {
  const letters = (index: number): string =>
    (index < 26 ? '' : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));
  return `${letters(row)}${column + 1}`;
}
