import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Piece, StonesMarked } from '../draft/piece.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { oval } from '../geometry/oval.ts';
import { add, subtract } from '../geometry/point.ts';
import { FIT } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import type { Stones } from '../gown/parts.ts';
import { MOTIF, type StonesOfPiece, stonesOfGown } from './set-stones.ts';

/** Length of a dot on the pattern, mm. */
export const DOT = 0.8;

/** The stones that are to be marked on the pattern, piece by piece as they are cut. Nothing is scattered until it is asked. */
export function stonesMarked(
  gown: Gown,
  drafts: LayerDrafts,
): (layer: Layer, piece: Piece, gore: number) => readonly StonesMarked[] {
  let set: ReturnType<typeof stonesOfGown> | undefined;
  return (layer, piece, gore) =>
    gown.stones
      .filter((stones) => stones.onPattern === true && stones.layer.name === layer.name)
      .flatMap((stones) => {
        set ??= stonesOfGown(gown, drafts);
        const { draft } = drafts.layers.find((one) => one.layer.name === layer.name)!;
        const points = pointsOn(piece, gore, set.get(stones) ?? [], draft.pieces);
        const runs = points.map((at) => outlineAt(stones, at));
        return runs.length === 0 ? [] : [{ name: stones.name, layer: layer.name, runs }];
      });
}

/** Of a half that is cut whole, those of the other half too: of her right where her sides differ, else its mirror image. */
function pointsOn(
  piece: Piece,
  gore: number,
  set: readonly StonesOfPiece[],
  pieces: readonly Piece[],
): readonly Point[] {
  const on = (index: number) => set.find((own) => own.index === index)?.stones ?? [];
  const drafted = pieces[gore]!;
  if (drafted.cut !== 'on-fold' || piece.cut === 'on-fold') return on(gore);
  const fold = foldTop(drafted);
  const other = pieces.length - 1 - gore;
  if (drafted.side !== undefined && other !== gore) {
    const shift = subtract(fold, foldTop(pieces[other]!));
    return [...on(gore), ...on(other).map((at) => add(at, shift))];
  }
  // One on the fold is its own mirror image.
  const beside = on(gore).filter(({ x }) => Math.abs(x - fold.x) > FIT);
  return [...on(gore), ...beside.map(({ x, y }) => ({ x: 2 * fold.x - x, y }))];
}

function foldTop({ edges }: Piece): Point {
  const fold = edges.find(({ name }) => name === 'fold')!.curves;
  const [from, to] = [startOf(fold[0]!), endOf(fold[fold.length - 1]!)];
  return from.y < to.y ? from : to;
}

function outlineAt({ size = 0, motif }: Stones, at: Point): readonly Curve[] {
  if (size < MOTIF) {
    return [{ kind: 'line', from: { x: at.x - DOT / 2, y: at.y }, to: { x: at.x + DOT / 2, y: at.y } }];
  }
  return oval(at, (motif?.width ?? size) / 2, (motif?.height ?? size) / 2);
}
