import type { SheetPlan } from '../../sheets/sheet-plan.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';
import { pieceDrawing } from './pattern-drawing.ts';
import { drawPiece } from './piece-drawing.ts';
import { type PieceLabels, pieceTitle } from './piece-text.ts';
import { TEST_SQUARE, testSquare } from './test-square.ts';

/**
 * The pattern full size on one page (more where it is longer than a page may be), every piece in every cloth a layer
 * that a viewer can switch, for a projector over the cutting table. Pieces that lie on a longer one of another layer
 * are off at first. `clothOf` names a layer's cloth.
 */
export function projectorPages(
  plan: SheetPlan,
  labels: PieceLabels,
  clothOf: (layer: string) => string,
): Drawing[] {
  return plan.sheets.map((sheet): Drawing => {
    const pieces = sheet.pieces.map((index): Mark => {
      const { cutPiece, grain, liesOn } = plan.pieces[index]!;
      const drawing = pieceDrawing(plan, index, drawPiece(cutPiece, labels, { grain }), labels.words);
      const offset = { x: sheet.left - sheet.x, y: sheet.pageHeight - sheet.bottom - sheet.height - sheet.y };
      const cloths = new Set(cutPiece.layers.map(clothOf));
      return {
        kind: 'group',
        switchedBy: [...cloths].map((cloth) => `${pieceTitle(cutPiece)} · ${cloth}`),
        offAtFirst: liesOn !== undefined,
        marks: [{ kind: 'use', drawing, offset }],
      };
    });
    const { lead, text } = labels.words.cutting;
    const caution = `${lead} ${text}`;
    const title = `${labels.gown} · ${labels.trace}`;
    const height = sheet.pageHeight + SQUARE_ROOM;
    const square: Mark = {
      kind: 'group',
      switchedBy: [labels.words.squareLayer],
      marks: [
        ...testSquare({ across: 1, down: 1 }, labels.words.square).draw({
          x: sheet.left,
          y: sheet.pageHeight,
        }),
        textMark(title, { x: sheet.left + TEST_SQUARE + 10, y: sheet.pageHeight + 12 }, 8),
        // Whoever cuts by light may have no other page before her.
        textMark(caution, { x: sheet.left + TEST_SQUARE + 10, y: sheet.pageHeight + 26 }, CAUTION),
      ],
    };
    return { x: 0, y: 0, width: plan.paper.width, height, title, marks: [...pieces, square] };
  });
}

/** Type that is read from where the cutter kneels, mm. */
const CAUTION = 7;

/** Below the pieces, mm. */
const SQUARE_ROOM = TEST_SQUARE + 10;
