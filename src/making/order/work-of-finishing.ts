/** What finishes the gown and is cut as pieces of its own. mm. */
export type FinishingWork = {
  readonly kind: 'facing';
  /** The layer that the facings are cut as, and the one that they face. */
  readonly facing: string;
  readonly faces: string;
  readonly depth: number;
};
