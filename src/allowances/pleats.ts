import type { CutPiece, Piece } from '../draft/piece.ts';
import { isFrontLeft } from '../draft/piece-sides.ts';
import { arrowFrom, PLEAT_MARKS } from '../draft/pleat-marks.ts';
import type { Point } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { placeOnRun } from '../geometry/length.ts';
import { along, leftOf } from '../geometry/point.ts';
import type { TopFullness } from './top-fullness.ts';

/** How far down from the top edge a pleat's folds are marked, mm. */
const MARK = 40;

/** Pleats that take a top in: how many, and how deep each comes out so that whole pleats fill it. mm. */
export function pleatsOf({ rule, cut, sewn }: TopFullness): {
  readonly count: number;
  readonly depth: number;
} {
  const excess = cut - sewn;
  // A box pleat is folded under on both of its sides.
  const folds = rule.towards === 'box' ? 4 : 2;
  const count = Math.max(1, Math.round(excess / (folds * (rule.depth ?? excess / folds))));
  return { count, depth: excess / (folds * count) };
}

/** The folds of each pleat, marked down from the top edge. */
export function pleatMarks(piece: Piece, full: TopFullness): CutPiece['marks'] {
  const { curves } = piece.edges[0]!;
  const places = foldPlaces(full).map((distance) => {
    const place = placeOnRun(curves, distance);
    const from = pointAt(place.curve, place.t);
    const up = leftOf(tangentAt(place.curve, place.t));
    return { from, up, at: (below: number): Point => along(from, up, -below) };
  });
  const folds = places.map(({ from, at }) => ({
    name: 'pleat',
    curves: [{ kind: 'line', from, to: at(MARK) } as const],
  }));
  const each = full.rule.towards === 'box' ? 6 : 3;
  const arrows = places.flatMap((_, first) =>
    first % each === 0
      ? arrowsOf(full.rule.towards, isFrontLeft(piece)).map(([outer, line]) => ({
          name: PLEAT_MARKS.arrow,
          curves: arrowFrom(
            places[first + outer]!.at(MARK / 2),
            places[first + line]!.at(MARK / 2),
            places[first + outer]!.up,
          ),
        }))
      : [],
  );
  return [...folds, ...arrows];
}

/** From which line of a pleat to which: an outer fold to where it is brought. None where nothing says which way. */
function arrowsOf(
  towards: TopFullness['rule']['towards'],
  frontIsLeft: boolean,
): readonly (readonly [number, number])[] {
  if (towards === 'box')
    return [
      [2, 0],
      [3, 5],
    ];
  if (towards !== 'front' && towards !== 'back') return [];
  return [(towards === 'front') === frontIsLeft ? [2, 0] : [0, 2]];
}

/**
 * Distances of the folds along the top as it is cut, each pleat in the middle of its share.
 *
 * ```
 * knife   ──┬────┬────┬──          line to bring it to, inner fold, outer fold (or the other way round)
 * box     ─┬──┬──┬────┬──┬──┬─     line, inner fold, outer fold, its face, outer fold, inner fold, line
 * ```
 */
export function foldPlaces(full: TopFullness): number[] {
  const { count, depth } = pleatsOf(full);
  const share = full.cut / count;
  const shown = full.sewn / count;
  // A face twice as wide as a fold is deep has its inner folds meet behind it; it is no wider than what shows.
  const face = Math.min(shown, 2 * depth);
  const pleat = full.rule.towards === 'box' ? boxFolds(depth, face) : [0, depth, 2 * depth];
  const begins = (share - pleat[pleat.length - 1]!) / 2;
  return Array.from({ length: count }, (_, i) => pleat.map((fold) => i * share + begins + fold)).flat();
}

function boxFolds(depth: number, face: number): number[] {
  return [0, depth, 2 * depth, 2 * depth + face, 3 * depth + face, 4 * depth + face];
}
