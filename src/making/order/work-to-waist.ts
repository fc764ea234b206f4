import type { Fullness } from '../../gown/cloth.ts';
import type { Overskirt } from '../../gown/gown.ts';
import type { Flounce, Tiers } from '../../gown/parts.ts';
import type { Side } from '../../gown/station.ts';
import type { GapMark, StepStrip } from './work-parts.ts';

/** From the first seam to the waist stay. mm. */
export type WaistWork =
  | {
      readonly kind: 'sew-seams';
      readonly layer: string;
      readonly french: boolean;
      readonly stretch: boolean;
      readonly bias: boolean;
      readonly seams: readonly {
        readonly name: string;
        readonly copies: number;
        readonly withLayer: string | undefined;
      }[];
      readonly openAbove: OpenSeam | undefined;
      readonly gap: GapMark | undefined;
      readonly godets: readonly { readonly name: string; readonly seam: string; readonly from: number }[];
      readonly slits: readonly OpenStretch[];
      readonly pockets: readonly OpenStretch[];
    }
  | {
      readonly kind: 'godet';
      readonly layer: string;
      readonly name: string;
      readonly seam: string;
      readonly copies: number;
      readonly side: number;
    }
  | {
      readonly kind: 'gather';
      readonly layer: string;
      readonly fullness: Fullness;
      /** Where it is pleated: how deep each fold comes out, gore by gore. */
      readonly folds: readonly { readonly gore: string; readonly depth: number }[];
      readonly cloth: number;
      readonly edge: number;
    }
  | { readonly kind: 'tiers'; readonly tiers: Tiers }
  | {
      readonly kind: 'set-stones';
      readonly name: string;
      readonly layer: string;
      readonly count: number;
      /** Where they are sold by the gross. */
      readonly gross?: number;
      readonly scattered: boolean;
      /** Kept off where she sits, or told place by place. */
      readonly seat: boolean;
    }
  | { readonly kind: 'flounce'; readonly flounce: Flounce; readonly open: boolean }
  | { readonly kind: 'overskirt'; readonly overskirt: Overskirt }
  | {
      readonly kind: 'finish-opening';
      readonly at: string;
      readonly side: Side | undefined;
      readonly finish: 'placket' | 'guard' | 'facing' | 'hook' | undefined;
      /** What it is cut as. */
      readonly piece: string | undefined;
      readonly beside: 'sewn' | 'finished' | 'laced';
      readonly stops: number | undefined;
    }
  | {
      readonly kind: 'baste-as-one';
      readonly layers: readonly string[];
      readonly at: string | undefined;
      readonly side: Side | undefined;
      readonly stops: number | undefined;
    }
  | {
      readonly kind: 'close';
      readonly closure: 'zip' | 'lacing' | 'hooks';
      readonly at: string;
      readonly side: Side | undefined;
      readonly layers: readonly string[];
      readonly starts: number;
      readonly stops: number | undefined;
      readonly zip: { readonly stock: number; readonly shortenBy: number } | undefined;
    }
  | { readonly kind: 'strip'; readonly strip: StepStrip }
  | {
      readonly kind: 'join-waist';
      readonly layers: readonly string[];
      readonly plies: number;
      readonly crossing: number;
      readonly clearance: number | undefined;
      readonly secondRow: number;
      /** The edge above has panels, whose seams the gores' seams meet. */
      readonly panelled: boolean;
      /** Layers whose edge is gathered, that are pleated all along, and that are cut smaller and stretched to fit. */
      readonly gathered: readonly string[];
      readonly pleated: readonly string[];
      readonly stretched: readonly string[];
    }
  | {
      readonly kind: 'waist-stay';
      readonly length: number;
      readonly grams: number | undefined;
      readonly closes: boolean;
    };

/** Of a seam that stays open, below the waist seam; a slit runs on to the hem. */
export interface OpenStretch {
  readonly seam: string;
  readonly side: 'left' | 'right' | undefined;
  readonly from: number;
  readonly to?: number;
}

export interface OpenSeam {
  readonly at: string;
  readonly side: 'left' | 'right' | undefined;
  readonly stops: number | undefined;
}
