import type { LayItem } from './lay-items.ts';
import type { PlacedPiece } from './lay-plan.ts';
import type { UnfoldedPiece } from './unfold.ts';

/**
 * Pieces numbered layer by layer, each down the cloth and then across it; plies cut at once share a number. A stretch that
 * is folded lies on the table by itself: all of it is cut before the next.
 */
export function inCuttingOrder(pieces: readonly UnfoldedPiece[], layers: readonly string[]): PlacedPiece[] {
  const cuts = new Map<string, UnfoldedPiece>();
  for (const piece of pieces) {
    const key = cutKey(piece);
    if (!cuts.has(key)) cuts.set(key, piece);
  }
  const order = [...cuts]
    .sort(
      ([, a], [, b]) =>
        a.placed.section - b.placed.section ||
        layers.indexOf(a.item.layer) - layers.indexOf(b.item.layer) ||
        topOf(a) - topOf(b) ||
        a.cutAt.x - b.cutAt.x,
    )
    .map(([key]) => key);
  const copies = new Map<LayItem, number>();
  return pieces
    .map((piece) => ({ piece, number: order.indexOf(cutKey(piece)) + 1 }))
    .sort((a, b) => a.number - b.number)
    .map(({ piece, number }) => ({ ...piece.placed, number, copy: copyOf(piece, copies) }));
}

function cutKey({ placed, cut }: UnfoldedPiece): string {
  return `${placed.section} ${cut}`;
}

function topOf({ cutAt, item }: UnfoldedPiece): number {
  return cutAt.y - item.whole.height / 2;
}

/** Of a pair the piece as drawn is 1 and its mirror image 2; others count in the order of cutting. */
function copyOf({ item, placed }: UnfoldedPiece, counted: Map<LayItem, number>): number {
  if (item.kind === 'pair') return placed.mirrored ? 2 : 1;
  const copy = (counted.get(item) ?? 0) + 1;
  counted.set(item, copy);
  return copy;
}
