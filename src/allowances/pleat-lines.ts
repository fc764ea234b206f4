import type { CutPiece } from '../draft/piece.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
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

/** Names of the lines of pleats: what is folded, what the outer fold is brought to, which way, and how far it is stitched. */
export const PLEAT_MARKS = {
  fold: 'fold-line',
  placement: 'placement-line',
  arrow: 'pleat-arrow',
  stitched: 'stitched-to',
} as const;

/** How far below the waist seam and above the hem the arrows lie, mm. */
const ARROW_FROM_END = 60;
const HEAD = { long: 5, wide: 2 } as const;
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

/** One stroke from tail to tip and over both barbs. */
export function arrowFrom(tail: Point, tip: Point, across: Point): Curve[] {
  const long = Math.hypot(tip.x - tail.x, tip.y - tail.y);
  const back = { x: (tail.x - tip.x) / long, y: (tail.y - tip.y) / long };
  const base = along(tip, back, Math.min(HEAD.long, long / 2));
  const barbs = [along(base, across, HEAD.wide), along(base, across, -HEAD.wide)] as const;
  const stroke = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
  return [stroke(tail, tip), stroke(tip, barbs[0]), stroke(barbs[0], tip), stroke(tip, barbs[1])];
}

function tickAcross(at: Point, right: Point): Line {
  return { kind: 'line', from: along(at, right, -TICK), to: along(at, right, TICK) };
}
