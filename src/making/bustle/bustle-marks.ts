import { crossingAt } from '../../draft/depth-across.ts';
import type { LayerDrafts } from '../../draft/draft-layers.ts';
import type { BustleMarked, Piece } from '../../draft/piece.ts';
import type { Point } from '../../geometry/curve.ts';
import { startOf } from '../../geometry/evaluate.ts';
import type { Gown } from '../../gown/gown.ts';
import { hasGore, type Layer } from '../../gown/layer.ts';
import { benchOf } from '../findings.ts';
import { skirtOf } from '../skirt.ts';
import { bustleFacts } from './bustle-facts.ts';

/**
 * The bustle's points that stand on a gore, for the piece that carries them: of the outermost layer that has the gore.
 * Seams have no need of it, a tape down the seam finds them.
 */
export function bustleMarked(
  gown: Gown,
  drafts: LayerDrafts,
): (layer: Layer, piece: Piece, gore: number) => readonly BustleMarked[] {
  if (gown.bustle?.points.some(({ at }) => 'gore' in at) !== true) return () => [];
  const { facts } = bustleFacts(benchOf(gown, skirtOf(gown, drafts)), drafts.gown);
  const points = facts?.points ?? [];
  return (layer, piece, gore) => {
    const { draft } = drafts.layers.find((own) => own.layer.name === layer.name)!;
    const own = draft.gown.gores[gore]!;
    if (gown.layers.findLast((other) => hasGore(other, own))?.name !== layer.name) return [];
    return points.flatMap((point): BustleMarked[] => {
      if (point.gore !== own.name || (point.side !== undefined && point.side !== own.side)) return [];
      const { across, anchor, pickUp } = point;
      const share = own.side === 'right' ? 1 - across : across;
      const frame = draft.frames[gore]!;
      const top = crossingAt(frame, draft.waist, gore, share).depth;
      const marked = { layer: layer.name, across, anchor, pickUp };
      const at = (down: number): Point => frame.pointAt(top + down, share);
      const here: BustleMarked['at'] = [at(anchor), at(pickUp)];
      const drafted = draft.pieces[gore]!;
      return [
        { ...marked, at: here },
        ...(isWholeOfHalf(drafted, piece) ? [{ ...marked, at: mirrored(here, foldOf(drafted)) }] : []),
      ];
    });
  };
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
