import type { Piece } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import { sidesAt } from '../draft/piece-sides.ts';
import type { Pleat } from '../gown/parts.ts';
import { pleatFolds } from './pleat-folds.ts';

/** What is folded on a piece. */
export function pleatRemarks(pleats: readonly Pleat[], piece: Piece): PieceRemark[] {
  return pleats
    .filter((pleat) =>
      pleat.kind === 'kick' ? sidesAt(piece, pleat.at).length > 0 : pleatFolds([pleat], piece).length > 0,
    )
    .map(remarkOf);
}

function remarkOf({ name, kind, at, fromSeam, foldDepth, stitchedDown, aboveHem = 0 }: Pleat): PieceRemark {
  if (kind === 'kick') return { kind: 'kick-pleat', name, at, aboveHem, depth: foldDepth };
  return {
    kind: 'pleat',
    name,
    lies: kind,
    at,
    ...(fromSeam !== undefined && { fromSeam }),
    depth: foldDepth,
    stitchedDown,
  };
}
