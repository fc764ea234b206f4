import type { CutPiece, Piece } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { FIT } from '../geometry/tolerances.ts';
import { type Layer, tuckedUp } from '../gown/layer.ts';

export const TUCK_MARKS = { fold: 'tuck-fold-line', stitch: 'tuck-stitch-line' } as const;

/** Lines of one growth tuck above the hem line, on the cloth as it is cut, mm: stitching, fold, stitching. */
export type TuckHeights = readonly [lower: number, fold: number, upper: number];

/** From the lowest up: each lies higher on the cloth by what those below it take. */
export function tuckHeights({ tucks }: Pick<Layer, 'tucks'>): TuckHeights[] {
  if (tucks === undefined) return [];
  const { count, width, aboveHem, apart } = tucks;
  return Array.from({ length: count }, (_, k) => {
    const lower = aboveHem + k * (apart + 2 * width);
    return [lower, lower + width, lower + 2 * width];
  });
}

/** Level with the hem all along. */
export function tuckLines(piece: Piece, layer: Pick<Layer, 'tucks'>): CutPiece['marks'] {
  const hem = piece.edges[2]!.curves;
  return tuckHeights(layer).flatMap((heights) =>
    heights.flatMap((height, i) => {
      const curves = offsetRun(hem, -height, FIT);
      return curves === undefined ? [] : [{ name: i === 1 ? TUCK_MARKS.fold : TUCK_MARKS.stitch, curves }];
    }),
  );
}

/** What is folded up above the hem line until she has grown. */
export function tuckRemarks(layer: Pick<Layer, 'tucks'>): PieceRemark[] {
  const { tucks } = layer;
  if (tucks === undefined) return [];
  const { count, width } = tucks;
  const folds = tuckHeights(layer).map(([, fold]) => fold);
  return [{ kind: 'tucks', count, width, longer: tuckedUp(layer), folds }];
}
