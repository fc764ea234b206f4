import type { CutPiece } from '../draft/piece.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import type { Drawing, Mark } from '../print/drawing.ts';
import { drawPiece } from '../print/pattern/piece-drawing.ts';
import type { PieceLabels } from '../print/pattern/piece-text.ts';
import { movedPiece } from '../sheets/moved-piece.ts';

/** Between what the sheets show and a strip, and between strips, mm. */
const GAP = 20;

/**
 * The whole drawing: what the sheets show, and below it each strip, which no sheet shows. `pieces` are all of them in
 * their order, in which they stay.
 */
export function withStrips(
  whole: Drawing,
  pieces: readonly CutPiece[],
  strips: readonly CutPiece[],
  labels: PieceLabels,
): Drawing {
  let { width, height } = whole;
  const printed = whole.marks.values();
  const marks = pieces.flatMap((piece): Mark[] => {
    if (!strips.includes(piece)) {
      const { value } = printed.next();
      return value === undefined ? [] : [value];
    }
    const { left, right, top, bottom } = boundsOfCurves(piece.cutEdges.flatMap(({ curves }) => curves));
    const shift = { x: GAP - left, y: height + GAP - top };
    width = Math.max(width, right - left + 2 * GAP);
    height += bottom - top + 2 * GAP;
    return [drawPiece(movedPiece(piece, { mirror: false, angle: 0, shift }), labels)];
  });
  return { ...whole, width, height, marks };
}
