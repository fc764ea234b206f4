import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Piece } from '../draft/piece.ts';
import { sidesAt } from '../draft/piece-sides.ts';
import type { Pleat } from '../gown/parts.ts';
import { pleatFolds } from './pleat-folds.ts';

/** What is folded on a piece, for the text on it. */
export function pleatRemarks(pleats: readonly Pleat[], piece: Piece, units: Units): string[] {
  return pleats
    .filter((pleat) =>
      pleat.kind === 'kick' ? sidesAt(piece, pleat.at).length > 0 : pleatFolds([pleat], piece).length > 0,
    )
    .map((pleat) => remarkOf(pleat, units));
}

function remarkOf(pleat: Pleat, units: Units): string {
  const say = (length: number): string => tapeText(length, units);
  const { name, kind, at, fromSeam, foldDepth, stitchedDown, aboveHem = 0 } = pleat;
  const where = fromSeam === undefined ? `at ${at}` : `${say(fromSeam)} from ${at} as sewn`;
  const depth = `each fold ${say(foldDepth)} deep`;
  if (kind === 'kick') return `${name}: kick pleat at ${at}, from ${say(aboveHem)} above the hem, ${depth}`;
  const stitched = stitchedDown === 0 ? 'not stitched down' : `stitched down ${say(stitchedDown)}`;
  return `${name}: ${kind} pleat ${where}, ${depth}, ${stitched}`;
}
