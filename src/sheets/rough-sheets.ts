import type { CutPiece } from '../draft/piece.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { sheetFrame } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { cutLine } from './working-shape.ts';

/**
 * About how many sheets a pattern takes, before it is laid on any: each shows a sheet's diagonal of cut line, of one
 * piece or of two that share it. Within a factor of three; to judge what is far too large. `groups` are pieces that lie
 * on one another, the longest first.
 */
export function roughSheets(
  cutPieces: readonly CutPiece[],
  groups: readonly (readonly number[])[],
  { paper, margins, lap, scale }: SheetOptions,
): number {
  const height = paper.longest ?? paper.height;
  const frame = sheetFrame({ ...paper, height }, margins, lap);
  const diagonal = Math.hypot(frame.width / scale.across, frame.height / scale.down);
  const lines = groups.reduce((sum, [main]) => sum + lengthOfRun(cutLine(cutPieces[main!]!)), 0);
  return Math.ceil(lines / diagonal);
}
