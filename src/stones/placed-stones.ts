import { crossingAt } from '../draft/depth-across.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Point } from '../geometry/curve.ts';
import type { Stones } from '../gown/parts.ts';

/** One that is told by its place: on which piece of the draft it lies, and where. */
export interface PlacedStone {
  /** Which of the spec's places. */
  readonly told: number;
  readonly index: number;
  readonly at: Point;
  /** On a fold, at a centre: there once, not on either side of her. */
  readonly once: boolean;
}

/** Where stones lie that are set one by one, on every piece of the gore that is named: on both sides of her. */
export function placedStones({ places = [] }: Stones, { draft, layer }: LayerDraft): PlacedStone[] {
  return places.flatMap((place, told) => {
    const { gore: name, across, belowWaist, aboveHem } = place;
    return draft.gown.gores.flatMap((gore, index): PlacedStone[] => {
      if (gore.name !== name || !layer.gores.includes(name)) return [];
      // On the right of her the next gore lies towards the front.
      const share = gore.side === 'right' && draft.gown.round === 'two-halves' ? 1 - across : across;
      const frame = draft.frames[index]!;
      const [top, bottom] = [draft.waist, draft.hem].map(
        (edge) => crossingAt(frame, edge, index, share).depth,
      );
      const depth = aboveHem === undefined ? top! + (belowWaist ?? 0) : bottom! - aboveHem;
      if (depth < top! || depth > bottom!) return [];
      const once = gore.fold !== undefined && share === (gore.fold === 'front' ? 0 : 1);
      if (once && gore.side === 'right') return [];
      return [{ told, index, at: frame.pointAt(depth, share), once }];
    });
  });
}
