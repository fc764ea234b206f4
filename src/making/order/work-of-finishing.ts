import type { WaistFinish } from '../../gown/waist.ts';

/** What finishes the gown and is cut as pieces of its own. mm. */
export type FinishingWork =
  | {
      readonly kind: 'facing';
      /** The layer that the facings are cut as, and the one that they face. */
      readonly facing: string;
      readonly faces: string;
      readonly depth: number;
    }
  | {
      readonly kind: 'own-waist';
      readonly layers: readonly string[];
      readonly finish: WaistFinish['finish'];
      readonly shaped: boolean;
      readonly width: number;
      readonly overlap: number;
      /** The skirt's waist all round. */
      readonly sewn: number;
      readonly grams: number | undefined;
    };
