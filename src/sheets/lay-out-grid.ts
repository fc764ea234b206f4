import type { CutPiece } from '../draft/piece.ts';
import { areaInside } from '../geometry/area.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import type { Curve } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import type { Placement } from '../geometry/transform.ts';
import { type Kept, keptOrWorked, NOTHING_KEPT } from '../kept/kept.ts';
import { essentialRuns, longGrain } from './essential-runs.ts';
import { gapsOf } from './gaps.ts';
import { cellKey, gridSheets } from './grid-sheets.ts';
import { hemPartners } from './hem-partners.ts';
import { improveNest } from './improve-nest.ts';
import { groupName, keptPositions, knownPositions } from './kept-places.ts';
import type { LaidPiece } from './laid-piece.ts';
import { movedPiece } from './moved-piece.ts';
import { CLEAR, LINE_REACH, nestOnGrid, type Position } from './nest-on-grid.ts';
import { sheetFrame } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import type { SheetPlan } from './sheet-plan.ts';
import { onEvery, shownGrain } from './shown-grain.ts';
import { type Cell, visitCells } from './touched-sheets.ts';
import {
  cutLine,
  drawnRuns,
  everyRun,
  polylineOf,
  type ShownRuns,
  type WorkingShape,
  workingShape,
} from './working-shape.ts';

/** Lays pieces on as few sheets of a grid as the search finds, and lists the sheets that have a line on them. */
export function layOutGrid(
  cutPieces: readonly CutPiece[],
  options: SheetOptions,
  kept: Kept = NOTHING_KEPT,
): SheetPlan {
  const paper = { ...options.paper, height: options.paper.longest ?? options.paper.height };
  const frame = sheetFrame(paper, options.margins, options.lap);
  const cell = { width: frame.width / options.scale.across, height: frame.height / options.scale.down };
  const groups = groupsOf(cutPieces, options);
  const shown = options.endsOnly === true ? essentialRuns : everyRun;
  const pieces = laidPieces(cutPieces, groups, cell, shown, options.places, kept);
  const printed = new Set(
    pieces.flatMap((piece) => [...printedCells(piece, cell, options.endsOnly === true)]),
  );
  const used = pieces.map(({ cutPiece, grain }) =>
    intersection(cellsOf([...drawnRuns(cutPiece), [grain]], cell), printed),
  );
  const sheets = gridSheets(used, cell, frame, paper.height);
  const gaps = pieces.flatMap((piece, index) =>
    piece.liesOn === undefined
      ? gapsOf(piece, index, cell, (row, column) => used[index]!.has(cellKey(row, column)))
      : [],
  );
  return {
    options,
    paper: options.paper,
    margins: options.margins,
    scale: options.scale,
    frame,
    pieces,
    sheets,
    gaps,
    rows: 1 + Math.max(0, ...sheets.map((sheet) => sheet.row)),
    columns: 1 + Math.max(0, ...sheets.map((sheet) => sheet.column)),
    gridPerPiece: groups.reduce((sum, [main]) => sum + sheetsAlone(cutPieces[main!]!, cell), 0),
    areaBound: Math.ceil(
      groups.reduce((sum, [main]) => sum + areaInside(cutLine(cutPieces[main!]!)), 0) /
        (cell.width * cell.height),
    ),
  };
}

/** Pieces that lie on one another, as indices: the longest first. */
export function groupsOf(
  cutPieces: readonly CutPiece[],
  { layersApart }: Pick<SheetOptions, 'layersApart'>,
): number[][] {
  return layersApart === true ? cutPieces.map((_, index) => [index]) : hemPartners(cutPieces);
}

function laidPieces(
  cutPieces: readonly CutPiece[],
  groups: readonly (readonly number[])[],
  cell: Cell,
  shown: (piece: CutPiece) => ShownRuns,
  places: SheetOptions['places'],
  kept: Kept,
): LaidPiece[] {
  if (groups.length === 0) return [];
  const members = groups.map((group) => group.map((index) => cutPieces[index]!));
  const shapeOf = (place: number, turn: WorkingShape['turned']): WorkingShape => {
    const [main, ...sharing] = members[place]!;
    return workingShape(main!, sharing, turn, shown);
  };
  // In all their turns only where a place is looked for: that is half of the work of laying out sheets.
  const shapes = () => members.map((_, place) => TURNS.map((turn) => shapeOf(place, turn)));
  const nested = (): readonly Position[] => {
    const all = shapes();
    return improveNest(nestOnGrid(all, cell), all, cell, IMPROVEMENTS).positions;
  };
  const positions =
    places === undefined
      ? keptOrWorked(kept, {
          what: 'sheets',
          from: [shown === essentialRuns, cell, members, TURNS, IMPROVEMENTS],
          read: (known) => knownPositions(known, members.length, TURNS, shapeOf, cell),
          write: (found) => found.map(({ shape, x, y }) => [shape.turned, x, y]),
          work: nested,
        })
      : keptPositions(places, members.map(groupName), shapes(), cell);
  const moved = groups.map((_, place) =>
    members[place]!.map((piece) => movedPiece(piece, whereTo(positions[place]!))),
  );
  const outlines = cellsOf(moved.flat().flatMap(drawnRuns), cell);
  const laid: LaidPiece[] = [];
  for (const [place, group] of groups.entries()) {
    const [main, ...sharing] = moved[place]! as [CutPiece, ...CutPiece[]];
    const grain =
      shown === essentialRuns
        ? onEvery(longGrain(main), sharing)
        : shownGrain(main, sharing, cell, (row, column) => outlines.has(cellKey(row, column)));
    for (const [member, index] of group.entries()) {
      const on = member === 0 ? {} : { liesOn: group[0]! };
      laid[index] = {
        cutPiece: moved[place]![member]!,
        turned: positions[place]!.shape.turned,
        grain,
        ...on,
      };
    }
  }
  return laid;
}

/** Cells that must be printed for a piece; others may show a straight stretch of it besides. */
function printedCells({ cutPiece, grain }: LaidPiece, cell: Cell, endsOnly: boolean): Set<string> {
  return cellsOf(endsOnly ? essentialRuns(cutPiece).all : [...drawnRuns(cutPiece), [grain]], cell);
}

function intersection(a: ReadonlySet<string>, b: ReadonlySet<string>): Set<string> {
  return new Set([...a].filter((one) => b.has(one)));
}

/** Upright and head to tail first; lying ones are tried when places are improved. The grain mark reads the same. */
const TURNS = [0, 180, 90, 270] as const;

/** Pieces taken up and laid anew: more finds a sheet less now and then, and takes longer. */
const IMPROVEMENTS = 16;

function whereTo({ shape: { placement }, x, y }: Position): Placement {
  return { ...placement, shift: { x: placement.shift.x + x, y: placement.shift.y + y } };
}

function cellsOf(runs: readonly (readonly Curve[])[], cell: Cell): Set<string> {
  const cells = new Set<string>();
  for (const run of runs) {
    visitCells(polylineOf(flattenedRun(run, FINE)), 0, 0, cell, LINE_REACH, (row, column) => {
      cells.add(cellKey(row, column));
      return true;
    });
  }
  return cells;
}

/** Sheets that a piece takes on a grid of its own that begins at its upper left corner. */
function sheetsAlone(cutPiece: CutPiece, cell: Cell): number {
  const box = boundsOfCurves(cutLine(cutPiece));
  const corner: Placement = { mirror: false, angle: 0, shift: { x: CLEAR - box.left, y: CLEAR - box.top } };
  return cellsOf(drawnRuns(movedPiece(cutPiece, corner)), cell).size;
}

/** Chord height when the sheets that a line needs are counted, mm: well below the line's width. */
const FINE = 0.02;
