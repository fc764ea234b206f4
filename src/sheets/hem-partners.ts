import type { CutPiece } from '../draft/piece.ts';
import { areaInside } from '../geometry/area.ts';
import type { Curve } from '../geometry/curve.ts';
import { pointAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { distance } from '../geometry/point.ts';
import { reversedRun } from '../geometry/split.ts';

/**
 * Pieces of one gore that differ only at the hem, as lists of indices: they lie on one another on paper, the first of
 * each list being the longest, which the others lie within. A piece with no such partner is a list of its own.
 */
export function hemPartners(cutPieces: readonly CutPiece[]): number[][] {
  const groups: number[][] = [];
  for (const [index, piece] of cutPieces.entries()) {
    const partners = groups.find((group) => differsOnlyAtHem(cutPieces[group[0]!]!, piece));
    if (partners === undefined) groups.push([index]);
    else partners.push(index);
  }
  const area = (index: number) => areaInside(cutPieces[index]!.cutEdges.flatMap((edge) => edge.curves));
  return groups.map((group) => [...group].sort((a, b) => area(b) - area(a) || a - b));
}

function differsOnlyAtHem(a: CutPiece, b: CutPiece): boolean {
  const alike =
    a.gore === b.gore &&
    a.piece.part === b.piece.part &&
    a.piece.cut === b.piece.cut &&
    a.piece.side === b.piece.side &&
    a.piece.frontEdge === b.piece.frontEdge &&
    a.piece.backEdge === b.piece.backEdge;
  if (!alike) return false;
  const [waistA, backA, , frontA] = a.piece.edges;
  const [waistB, backB, , frontB] = b.piece.edges;
  return (
    runAlike(waistA!.curves, waistB!.curves, 0) &&
    runAlike(backA!.curves, backB!.curves, DIFFERENT_END) &&
    runAlike(reversedRun(frontA!.curves), reversedRun(frontB!.curves), DIFFERENT_END) &&
    [waistA!.name, a.piece.backEdge, a.piece.frontEdge].every(
      (edge) => a.allowances[edge] === b.allowances[edge],
    )
  );
}

/** Whether two runs agree from their starts down to where the shorter ends, less its last stretch. */
function runAlike(a: readonly Curve[], b: readonly Curve[], lessAtEnd: number): boolean {
  const lengths = [lengthOfRun(a), lengthOfRun(b)];
  if (lessAtEnd === 0 && Math.abs(lengths[0]! - lengths[1]!) > SAME) return false;
  const shared = Math.max(0, Math.min(...lengths) - lessAtEnd);
  for (let step = 0; step <= LOOKS; step++) {
    const at = (run: readonly Curve[]) => {
      const { curve, t } = placeOnRun(run, (shared * step) / LOOKS);
      return pointAt(curve, t);
    };
    if (distance(at(a), at(b)) > SAME) return false;
  }
  return true;
}

/** Lines nearer than this are one line on paper, mm: a tenth of a hairline. */
const SAME = 0.03;

/** The last of a side, mm, where its hem's own corner may bend it. */
const DIFFERENT_END = 1;

/** Places at which two sides are compared. */
const LOOKS = 24;
