import type { WaistFinish } from '../../gown/waist.ts';
import type { OpenStretch } from './work-to-waist.ts';

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
      /** From edge to edge of a wrap. */
      readonly wraps: boolean;
      /** The skirt's waist all round. */
      readonly sewn: number;
      readonly grams: number | undefined;
    }
  | (OpenStretch & {
      readonly kind: 'slit';
      readonly facing: { readonly name: string; readonly depth: number } | undefined;
      readonly stay: string | undefined;
    })
  | (OpenStretch & {
      readonly kind: 'pocket';
      readonly to: number;
      readonly layer: string;
      /** The skirt's layer that it is let into. */
      readonly outermost: string;
    })
  | {
      readonly kind: 'loops';
      readonly name: string;
      readonly count: number;
      readonly length: number;
      readonly width: number;
    }
  | {
      readonly kind: 'bias';
      readonly name: string;
      readonly cloth: string;
      readonly width: number | undefined;
      readonly length: number;
    };
