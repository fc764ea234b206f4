import { crossingAt } from '../../draft/depth-across.ts';
import type { GownDraft } from '../../draft/draft-gown.ts';
import type { LayerDrafts } from '../../draft/draft-layers.ts';
import type { BustleMarked, Piece } from '../../draft/piece.ts';
import type { Curve, Point } from '../../geometry/curve.ts';
import type { Edge } from '../../geometry/edge.ts';
import { pointAt, startOf } from '../../geometry/evaluate.ts';
import { placeOnRun } from '../../geometry/length.ts';
import { reversedRun } from '../../geometry/split.ts';
import { bustlePlace } from '../../gown/bustle-place.ts';
import type { Gown } from '../../gown/gown.ts';
import { hasGore, type Layer } from '../../gown/layer.ts';
import type { BustlePoint } from './bustle.ts';

/**
 * The bustle's points for the pieces that carry them: of the outermost layer that has the gore. One at a seam stands on
 * both pieces of it, as far down the seam line of each.
 */
export function bustleMarked(
  gown: Gown,
  drafts: LayerDrafts,
  pointsOf: () => readonly BustlePoint[],
): (layer: Layer, piece: Piece, gore: number) => readonly BustleMarked[] {
  if (gown.bustle === undefined) return () => [];
  const points = pointsOf().filter(({ lift }) => lift > 0);
  return (layer, piece, gore) => {
    const { draft } = drafts.layers.find((own) => own.layer.name === layer.name)!;
    const own = draft.gown.gores[gore]!;
    if (gown.layers.findLast((other) => hasGore(other, own))?.name !== layer.name) return [];
    return points
      .filter(({ side }) => side === undefined || side === own.side)
      .flatMap((point) =>
        (point.seam === undefined
          ? onGore(draft, gore, point, piece)
          : atSeam(draft, gore, point, piece)
        ).map((at) => ({
          ...bustlePlace(point),
          layer: layer.name,
          anchor: point.anchor,
          pickUp: point.pickUp,
          at,
        })),
      );
  };
}

function onGore(
  draft: GownDraft,
  gore: number,
  point: BustlePoint,
  piece: Piece,
): readonly BustleMarked['at'][] {
  const own = draft.gown.gores[gore]!;
  if (point.gore !== own.name) return [];
  const share = own.side === 'right' ? 1 - point.across : point.across;
  const frame = draft.frames[gore]!;
  const top = crossingAt(frame, draft.waist, gore, share).depth;
  const at = (down: number): Point => frame.pointAt(top + down, share);
  const here: BustleMarked['at'] = [at(point.anchor), at(point.pickUp)];
  const drafted = draft.pieces[gore]!;
  return isWholeOfHalf(drafted, piece) ? [here, mirrored(here, foldOf(drafted))] : [here];
}

/** On the side edges of that name, or down the fold that stands at that station. */
function atSeam(
  { gown, pieces }: GownDraft,
  gore: number,
  { seam, anchor, pickUp }: BustlePoint,
  piece: Piece,
): readonly BustleMarked['at'][] {
  const downFrom = (edge: Edge, down: boolean): BustleMarked['at'] => {
    const run = down ? edge.curves : reversedRun(edge.curves);
    return [pointDown(run, anchor), pointDown(run, pickUp)];
  };
  // The edges at its right and at its left; the one runs down and the other up.
  const sewn = [1, 3].flatMap((i) => {
    const edge = piece.edges[i]!;
    return edge.name === seam ? [downFrom(edge, i === 1)] : [];
  });
  const { fold } = gown.gores[gore]!;
  if (sewn.length > 0 || fold === undefined || seam !== `centre-${fold}`) return sewn;
  return pieces[gore]!.edges.flatMap((edge, i) => (edge.name === 'fold' ? [downFrom(edge, i === 1)] : []));
}

function pointDown(run: readonly Curve[], down: number): Point {
  const { curve, t } = placeOnRun(run, down);
  return pointAt(curve, t);
}

/** A half that was drafted on the fold is cut whole. */
function isWholeOfHalf(drafted: Piece, piece: Piece): boolean {
  return drafted.cut === 'on-fold' && piece.cut !== 'on-fold' && drafted.side === undefined;
}

function foldOf({ edges }: Piece): number {
  return startOf(edges.find(({ name }) => name === 'fold')!.curves[0]!).x;
}

function mirrored([anchor, pickUp]: BustleMarked['at'], fold: number): BustleMarked['at'] {
  const image = ({ x, y }: Point): Point => ({ x: 2 * fold - x, y });
  return [image(anchor), image(pickUp)];
}
