import type { Curve } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import type { LaidPiece } from '../sheets/laid-piece.ts';
import type { Sheet, SheetPlan } from '../sheets/sheet-plan.ts';
import { clippedTo, type Stroke, type XY } from './plane.ts';

/** A line that a sheet must show, on its page: mm from the lower left corner, y up. */
export interface PlannedLine extends Stroke {
  /** Index of the piece. */
  readonly piece: number;
}

/** What one sheet must show of the draft, worked out from the pieces themselves and not from any drawing. */
export function plannedLines(plan: SheetPlan, sheet: Sheet): PlannedLine[] {
  const frame = frameOnPage(plan, sheet);
  return sheet.pieces.flatMap((piece) =>
    runsOf(plan.pieces[piece]!).flatMap((run) => {
      const points = flattenedRun(run, CHORD).map((point) => onPage(plan, sheet, point));
      return points.slice(1).flatMap((to, index) => {
        const shown = clippedTo(points[index]!, to, frame);
        return shown === undefined ? [] : [{ ...shown, piece }];
      });
    }),
  );
}

/** The sheet's frame on its page. */
export function frameOnPage({ scale }: SheetPlan, { left, bottom, width, height }: Sheet) {
  return { left, bottom, right: left + width * scale.across, top: bottom + height * scale.down };
}

/** A point of the pattern on a sheet's page. */
export function onPage({ scale }: SheetPlan, sheet: Sheet, { x, y }: XY): XY {
  return {
    x: sheet.left + (x - sheet.x) * scale.across,
    y: sheet.bottom + (sheet.y + sheet.height - y) * scale.down,
  };
}

/** mm. */
const CHORD = 0.002;

function runsOf({ cutPiece, grain }: LaidPiece): (readonly Curve[])[] {
  return [
    cutPiece.cutEdges.flatMap((edge) => edge.curves),
    ...cutPiece.piece.edges.map((edge) => edge.curves),
    ...cutPiece.notches.flatMap((notch) => notch.ticks.map((tick) => [tick])),
    ...cutPiece.marks.map((mark) => mark.curves),
    ...(cutPiece.stones ?? []).flatMap(({ runs }) => runs),
    [grain],
  ];
}
