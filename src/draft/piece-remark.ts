import type { BustlePlace } from '../gown/bustle-place.ts';
import type { PlainKind } from './part-kind.ts';

/** What the maker does with a piece beside its lines. mm; names and figures alone: pieces go to other threads. */
export type PieceRemark = PlainKind | PartRemark | TopRemark | FoldRemark | StonesRemark | BustleRemark;

type PartRemark =
  | { readonly kind: 'godet'; readonly seam: string; readonly from: number }
  | {
      readonly kind: 'flounce';
      readonly sewnTo: string;
      readonly aboveHem: number;
      /** Of all its copies joined. */
      readonly ring: number;
      /** A skirt that wraps has edges: the joined pieces are no ring. */
      readonly open: boolean;
      /** Sewn flat when absent. */
      readonly gatheredTo?: number;
    }
  | {
      readonly kind: 'tiers';
      readonly cuts: readonly number[];
      /** Only where these are all of its tiers. */
      readonly yoke?: number;
    }
  | { readonly kind: 'strap'; readonly from: string; readonly to: string; readonly width: number }
  | {
      readonly kind: 'cape';
      readonly between?: { readonly from: string; readonly to: string };
      readonly overArm: number;
      readonly gatheredTo?: number;
    };

/** How a top is taken in to what it is sewn to. */
type TopRemark =
  | { readonly kind: 'gathers'; readonly from: number; readonly to: number }
  | {
      readonly kind: 'top-pleats';
      readonly from: number;
      readonly to: number;
      readonly count: number;
      readonly depth: number;
      readonly towards?: 'front' | 'back' | 'box';
    }
  | {
      readonly kind: 'dart';
      readonly name: string;
      readonly takesIn: number;
      readonly length: number;
      readonly towards: 'front' | 'back';
    };

/** Sets that are marked on the piece, to be set on one of its layers. */
interface StonesRemark {
  readonly kind: 'stones-marked';
  readonly layer: string;
  readonly names: readonly string[];
}

/** Points of the bustle, mm below the waist seam. */
interface BustleRemark {
  readonly kind: 'bustle';
  readonly layer: string;
  readonly points: readonly {
    readonly place: BustlePlace;
    readonly anchor: number;
    readonly pickUp: number;
  }[];
}

type FoldRemark =
  /** Seams that a facing is cut over, marked on it. */
  | { readonly kind: 'over-seams'; readonly seams: readonly string[] }
  | {
      readonly kind: 'wrap';
      readonly at: string;
      readonly over: 'left' | 'right';
      /** Of this piece, past the line. */
      readonly atWaist: number;
      readonly atHem: number;
    }
  | {
      readonly kind: 'kick-pleat';
      readonly name: string;
      readonly at: string;
      readonly aboveHem: number;
      readonly depth: number;
    }
  | {
      readonly kind: 'pleat';
      readonly name: string;
      readonly lies: 'knife' | 'box' | 'inverted';
      readonly at: string;
      readonly fromSeam?: number;
      readonly depth: number;
      readonly stitchedDown: number;
    }
  | {
      readonly kind: 'tucks';
      readonly count: number;
      readonly width: number;
      readonly longer: number;
      /** Of each fold, above the hem line. */
      readonly folds: readonly number[];
    };
