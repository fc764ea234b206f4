import type { CutPiece } from '../draft/piece.ts';
import { layOutRoll, whichFitRoll } from './lay-out-roll.ts';
import { layOutSheets } from './lay-out-sheets.ts';
import type { SheetOptions } from './sheet-options.ts';
import type { SheetPlan } from './sheet-plan.ts';

/** Lays the whole pattern on one page where it fits one, for a projector over the table: the narrowest that holds it. */
export function layOutProjector(cutPieces: readonly CutPiece[]): SheetPlan {
  for (const width of WIDTHS) {
    if (!whichFitRoll(cutPieces, optionsOf(width)).every(Boolean)) continue;
    const plan = layOutRoll(cutPieces, optionsOf(width));
    if (plan.sheets.length === 1) return plan;
  }
  return layOutSheets(cutPieces, optionsOf(WIDTHS.at(-1)!));
}

/** mm; the last is as wide as a page of a PDF may be. */
const WIDTHS = [1200, 1600, 2000, 2500, 3200, 4000, 4990] as const;
const EDGE = 20;

/** Leaves room for the test square on a page of 5.08 m, mm. */
const LONGEST = 4900;

function optionsOf(width: number): SheetOptions {
  return {
    paper: { name: 'projector', width, height: 330, longest: LONGEST },
    margins: { left: EDGE, right: EDGE, top: EDGE, bottom: EDGE },
    lap: 0,
    scale: { across: 1, down: 1 },
  };
}
