import type { DraftedBodice } from './bodice/draft-asked.ts';
import type { LayerDrafts } from './draft/draft-layers.ts';
import type { CutPiece } from './draft/piece.ts';
import type { Gown } from './gown/gown.ts';
import type { Layer } from './gown/layer.ts';
import type { CapeHem } from './making/edging/edging-facts.ts';
import type { GownReport } from './report/gown-report.ts';
import type { GownMeasures } from './truing/measure-gown.ts';
import type { DraftFacts } from './workroom/draft-facts.ts';

/** A gown that is drafted and trued: all that the outputs are made from. */
export interface DraftedGown {
  /** As it is sewn, with what its fittings made of it. */
  readonly gown: Gown;
  /** As it was asked for. */
  readonly asked: Gown;
  readonly drafts: LayerDrafts;
  readonly measures: GownMeasures;
  /** What check, papers and hanging need to know of it. Worked out when first asked for, and once. */
  readonly facts: DraftFacts;
  /** Where it is drafted over her body, and not measured. */
  readonly bodice?: DraftedBodice;
  /** What edging goes along, on one side of her. */
  readonly capeHems: readonly CapeHem[];
  /** All that is cut: gores, flounces, strips and godets, and the pieces of every overskirt. Drawn when first asked for. */
  readonly cut: CutSet;
  /** Every layer that has pieces: the gown's, those that stand for a flounce or strips, and the overskirts'. */
  readonly layers: readonly Layer[];
  /** Overskirts, each drafted and trued like a gown. */
  readonly overskirts: readonly DraftedGown[];
  readonly report: GownReport;
}

export interface CutSet {
  readonly pieces: readonly CutPiece[];
}
