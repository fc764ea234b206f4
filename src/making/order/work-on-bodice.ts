import type { Lacing } from '../../bodice/lacing.ts';
import type { BodiceRules, BonesAsked, ClosingAsked } from '../../gown/above-waist.ts';
import type { HemFinish } from '../../gown/cloth.ts';

/** A drafted bodice, straps and capes. mm. */
export type BodiceWork =
  | { readonly kind: 'toile-bodice'; readonly laced: boolean }
  | { readonly kind: 'bodice-seams'; readonly layers: readonly string[] }
  | {
      readonly kind: 'casings';
      readonly layer: string;
      readonly width: number;
      readonly bones: readonly (BonePlace & { readonly casing: number })[];
    }
  | {
      readonly kind: 'bodice-layers';
      readonly layers: readonly string[];
      readonly tape: number;
      readonly lining: string | undefined;
    }
  | {
      readonly kind: 'bodice-close';
      readonly closing: ClosingAsked | undefined;
      readonly lacing: Lacing | undefined;
    }
  | { readonly kind: 'fit-bodice'; readonly beside: readonly string[] }
  | {
      readonly kind: 'bones';
      readonly material: BonesAsked['kind'];
      readonly clear: number;
      readonly bones: readonly (BonePlace & { readonly length: number })[];
    }
  | { readonly kind: 'upper-facing'; readonly facing: string; readonly depth: number }
  | {
      readonly kind: 'upper-edge';
      readonly finish: BodiceRules['upperFinish'];
      readonly length: number;
      /** The layer that its facings are cut as. */
      readonly facing: string | undefined;
    }
  | { readonly kind: 'bodice-lining'; readonly layer: string }
  | {
      readonly kind: 'strap';
      readonly name: string;
      readonly from: string;
      readonly to: string;
      readonly length: number;
      readonly width: number;
    }
  | {
      readonly kind: 'cape';
      readonly name: string;
      readonly from: string | undefined;
      readonly to: string | undefined;
      readonly gathered: boolean;
      readonly hems: readonly {
        readonly layer: string;
        readonly finish: HemFinish;
        readonly edging: string | undefined;
      }[];
    };

/** Bones of one length along one seam. */
export interface BonePlace {
  readonly along: string;
  readonly side: 'left' | 'right' | undefined;
  readonly count: number;
}
