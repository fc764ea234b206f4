import type { CutPiece } from '../draft/piece.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import { type Kept, NOTHING_KEPT } from '../kept/kept.ts';
import { layOutGrid } from './lay-out-grid.ts';
import { layOutRoll, whichFitRoll } from './lay-out-roll.ts';
import { CLEAR } from './nest-on-grid.ts';
import type { SheetOptions } from './sheet-options.ts';
import type { Sheet, SheetPlan } from './sheet-plan.ts';

/**
 * Lays pieces on as few sheets as the search finds, and lists the sheets that have a line on them. Pieces of one gore
 * that differ only at the hem lie on one another. On a roll the sheets are lengths of it. What is too large for one
 * comes first, on lengths that are joined like sheets, then the pieces that lie whole; no length is longer than what
 * lies on it.
 */
export function layOutSheets(
  cutPieces: readonly CutPiece[],
  options: SheetOptions,
  kept: Kept = NOTHING_KEPT,
): SheetPlan {
  if (options.paper.longest === undefined || cutPieces.length === 0)
    return layOutGrid(cutPieces, options, kept);
  const fits = whichFitRoll(cutPieces, options);
  const indices = cutPieces.map((_, index) => index);
  const [whole, large] = [indices.filter((i) => fits[i]), indices.filter((i) => !fits[i])];
  const of = (chosen: readonly number[]) => chosen.map((index) => cutPieces[index]!);
  if (large.length === 0) return layOutRoll(cutPieces, options);
  const joined = cutToLength(layOutGrid(of(large), options, kept));
  if (whole.length === 0) return joined;
  const after = { columns: joined.columns, pages: joined.sheets.length };
  return together([joined, large], [layOutRoll(of(whole), options, after), whole]);
}

/** Lengths that lie side by side are cut off together, below the lowest piece on any of them. */
function cutToLength(plan: SheetPlan): SheetPlan {
  const lowest = plan.pieces.map(
    ({ cutPiece }) => boundsOfCurves(cutPiece.cutEdges.flatMap(({ curves }) => [...curves])).bottom,
  );
  const rowIsLast = (row: number) =>
    plan.sheets.every((sheet) => sheet.row !== row || sheet.neighbours.below === undefined);
  const heightOf = (row: number, y: number): number =>
    Math.max(
      ...plan.sheets
        .filter((sheet) => sheet.row === row)
        .flatMap(({ pieces }) => pieces.map((index) => lowest[index]! - y + CLEAR)),
    );
  return {
    ...plan,
    sheets: plan.sheets.map((sheet): Sheet => {
      if (!rowIsLast(sheet.row)) return sheet;
      const height = Math.min(sheet.height, heightOf(sheet.row, sheet.y));
      return { ...sheet, height, pageHeight: sheet.pageHeight - (sheet.height - height) * plan.scale.down };
    }),
  };
}

type PlanOf = readonly [SheetPlan, indices: readonly number[]];

/** Two plans side by side as one of all pieces, each in its place among them. */
function together(first: PlanOf, second: PlanOf): SheetPlan {
  const both = [first, second];
  const pieces: SheetPlan['pieces'][number][] = [];
  for (const [plan, indices] of both)
    for (const [at, piece] of plan.pieces.entries())
      pieces[indices[at]!] = {
        ...piece,
        ...(piece.liesOn === undefined ? {} : { liesOn: indices[piece.liesOn]! }),
      };
  const [joined, whole] = [first[0], second[0]];
  return {
    ...joined,
    pieces,
    sheets: both.flatMap(([plan, indices]) =>
      plan.sheets.map((sheet) => ({
        ...sheet,
        pieces: sheet.pieces.map((at) => indices[at]!).sort((a, b) => a - b),
      })),
    ),
    gaps: both.flatMap(([plan, indices]) => plan.gaps.map((gap) => ({ ...gap, piece: indices[gap.piece]! }))),
    rows: Math.max(joined.rows, whole.rows),
    columns: joined.columns + whole.columns,
    gridPerPiece: joined.gridPerPiece + whole.gridPerPiece,
    areaBound: joined.areaBound + whole.areaBound,
  };
}
