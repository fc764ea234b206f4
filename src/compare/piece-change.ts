import type { CutPiece, PartOfGown } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';

/**
 * What becomes of a piece that was cut by the old lines:
 * `same`: nothing; `re-mark`: the new piece lies inside it; `let-out`: its seam line does, and enough is left beyond it
 * to sew; `re-cut`: it has to be cut again.
 */
export type Verdict = 'same' | 're-mark' | 'let-out' | 're-cut';

/** Why a piece has to be cut again whatever its shape. */
export type NewCloth =
  | 'piece-is-new'
  | 'cloth-is-other'
  | 'now-on-the-fold'
  | 'thread-runs-otherwise'
  | 'more-of-them';

/** At one edge of the new piece, laid on the old one; mm. */
export interface EdgeChange {
  /** As the new piece names it: `waist`, `hem`, a station. */
  readonly edge: string;
  /** Cloth beyond the new cut line: the most, the least, and where the most is. Absent where there is none. */
  readonly comesOff?: { readonly most: number; readonly least: number; readonly at: number };
  /**
   * Where less than the new allowance is left beyond the new seam line: what there should be, the least there is
   * (negative: the seam line runs outside the cloth by so much), and where. `at` counts down a side from the waist,
   * along waist and hem from `from`.
   */
  readonly left?: { readonly wanted: number; readonly least: number; readonly at: number };
  /** What is left is too little to be sewn. */
  readonly tooLittle?: true;
  /** The allowance is wide enough, and only a corner of it is missing; `left` is for that corner. */
  readonly corner?: true;
  /** The edge from which `at` counts along waist and hem. */
  readonly from?: string;
}

export interface PieceChange {
  readonly gore: string;
  /** What it belongs to, where it is no part of the skirt. */
  readonly part?: PartOfGown;
  readonly layer: string;
  readonly side?: 'left' | 'right';
  readonly verdict: Verdict;
  readonly newCloth?: NewCloth;
  /** The piece that was cut, and the new one drawn the same way round. */
  readonly was?: CutPiece;
  readonly piece: CutPiece;
  /** From the new piece's coordinates to the old one's, mm: to the right and down as drawn. */
  readonly shift: Point;
  /** How far of that the new piece is slid from where waist lies on waist and fold on fold. */
  readonly slid: Point;
  /** Edges at which cloth comes off or is missing. */
  readonly edges: readonly EdgeChange[];
  /** The seam lines or the notches lie elsewhere, though the cloth is enough. */
  readonly marks: readonly ('seam-line' | 'notches' | 'folds')[];
  /**
   * mm: what comes off most (re-mark), the least allowance left (let-out), or how far the cloth falls short of the
   * least that can be sewn (re-cut).
   */
  readonly amount: number;
}
