import type { CutPiece } from '../draft/piece.ts';
import { arrowFrom, PLEAT_MARKS } from '../draft/pleat-marks.ts';
import type { Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { along, dot, subtract } from '../geometry/point.ts';
import { pointOnRun, positionWhere } from '../geometry/run-position.ts';
import type { PleatFold } from './pleat-folds.ts';

/** A fold's line on a piece, and which side of it the fold takes its cloth from. */
export interface FoldedPlace {
  readonly origin: Point;
  /** Along the line, and square to it; unit vectors. */
  readonly down: Point;
  readonly right: Point;
  readonly under: 'left' | 'right';
  readonly depth: number;
}

/** How far below the waist seam and above the hem the arrows lie, mm. */
const ARROW_FROM_END = 60;
/** Half of the tick that ends the stitching, mm. */
const TICK = 6;

/**
 * The lines of one fold where they lie on the opened piece, from cut edge to cut edge: two folds, and the line that the
 * outer one is brought to, with arrows from it to there at the top and at the hem.
 */
export function pleatLines(
  { pleat }: PleatFold,
  place: FoldedPlace,
  seam: readonly Edge[],
  cut: readonly Edge[],
): CutPiece['marks'] {
  const { under, depth, down, right } = place;
  const inner = under === 'left' ? -depth : depth;
  const at = (from: number, by: number): Line => {
    const [top, bottom] = chordAt(cut, place, from);
    return { kind: 'line', from: along(top, right, by), to: along(bottom, right, by) };
  };
  const [outerBy, lineBy] = under === 'left' ? [0, 2 * depth] : [2 * depth, 0];
  const innerBy = under === 'left' ? 2 * depth : 0;
  const [waist, hem] = chordAt(seam, place, 0);
  const arrow = (on: Point, by: number): CutPiece['marks'][number] => ({
    name: PLEAT_MARKS.arrow,
    curves: arrowFrom(
      along(along(on, down, by), right, outerBy),
      along(along(on, down, by), right, lineBy),
      down,
    ),
  });
  const long = dot(subtract(hem, waist), down);
  const away = Math.min(ARROW_FROM_END, long / 4);
  const ends =
    pleat.stitchedDown === 0
      ? []
      : [outerBy, lineBy].map((by) => ({
          name: PLEAT_MARKS.stitched,
          curves: [tickAcross(along(along(waist, down, pleat.stitchedDown), right, by), right)],
        }));
  return [
    { name: PLEAT_MARKS.fold, curves: [at(0, outerBy)] },
    { name: PLEAT_MARKS.fold, curves: [at(inner, innerBy)] },
    { name: PLEAT_MARKS.placement, curves: [at(0, lineBy)] },
    arrow(waist, away),
    arrow(hem, -away),
    ...ends,
  ];
}

/** Where a line beside the fold's own enters and leaves an outline. */
function chordAt([top, , bottom]: readonly Edge[], place: FoldedPlace, away: number): [Point, Point] {
  const on = ({ curves }: Edge): Point =>
    pointOnRun(
      curves,
      positionWhere(curves, (point) => dot(subtract(point, place.origin), place.right), away),
    );
  return [on(top!), on(bottom!)];
}

function tickAcross(at: Point, right: Point): Line {
  return { kind: 'line', from: along(at, right, -TICK), to: along(at, right, TICK) };
}
