import type { Lacing } from '../../bodice/lacing.ts';
import type { BodiceRules, BonesAsked, ClosingAsked } from '../../gown/above-waist.ts';
import type { Cloth, Fullness, HemFinish } from '../../gown/cloth.ts';
import type { Overskirt } from '../../gown/gown.ts';
import type { Flounce, Pleat, Tiers } from '../../gown/parts.ts';
import type { Trim } from '../../gown/sections.ts';
import type { BustlePoint } from '../bustle/bustle.ts';

/** Cautions that a step can carry; their words are with the rest of the papers' text. */
export type CautionKind =
  | 'floor-cutting'
  | 'blades'
  | 'needle-zip'
  | 'needle-bone'
  | 'many-plies'
  | 'sequins'
  | 'braid-heat'
  | 'weight'
  | 'long-hem'
  | 'net-flame'
  | 'pins'
  | 'nickel'
  | 'tight-lacing';

/** One step of the making: what it is, of which layers, with the figures that its sentence needs. mm. */
export type StepWork =
  | { readonly kind: 'test-scraps'; readonly cloths: readonly ScrapCloth[] }
  | { readonly kind: 'shrink'; readonly cloth: string; readonly shrinkage: number }
  | {
      readonly kind: 'cut-own-edges';
      readonly cloth: string;
      readonly edging: string;
      readonly depth: number | undefined;
    }
  | {
      readonly kind: 'cut';
      readonly layer: string;
      readonly cloth: string;
      readonly oneWay: boolean;
      readonly stretch: boolean;
      readonly slippery: boolean;
      readonly roughCut: readonly { readonly gores: readonly string[]; readonly depth: number }[];
    }
  | {
      readonly kind: 'mark';
      readonly layers: readonly string[];
      readonly sheers: readonly string[];
      readonly zipEnds: { readonly at: string; readonly starts: number; readonly stops: number } | undefined;
      readonly gaps: readonly GapMark[];
      readonly bustle: readonly Pick<BustlePoint, 'seam' | 'side' | 'anchor' | 'pickUp'>[];
    }
  | { readonly kind: 'stay-edges'; readonly layers: readonly string[]; readonly tapes: readonly StepStrip[] }
  | {
      readonly kind: 'sew-seams';
      readonly layer: string;
      readonly french: boolean;
      readonly stretch: boolean;
      readonly seams: readonly {
        readonly name: string;
        readonly copies: number;
        readonly withLayer: string | undefined;
      }[];
      readonly openAbove: OpenSeam | undefined;
      readonly gap: GapMark | undefined;
      readonly godets: readonly { readonly name: string; readonly seam: string; readonly from: number }[];
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
  | {
      readonly kind: 'pleat';
      readonly layer: string;
      readonly pleat: Pleat;
      readonly places: number;
      readonly folds: number;
    }
  | { readonly kind: 'press-pleats'; readonly layer: string; readonly pleats: readonly string[] }
  | { readonly kind: 'cut-part'; readonly name: string; readonly cloth: string; readonly strips: boolean }
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
  | { readonly kind: 'upper-edge'; readonly finish: BodiceRules['upperFinish']; readonly length: number }
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
      readonly hems: readonly { readonly layer: string; readonly finish: HemFinish }[];
    }
  | { readonly kind: 'tiers'; readonly tiers: Tiers }
  | { readonly kind: 'flounce'; readonly flounce: Flounce }
  | { readonly kind: 'overskirt'; readonly overskirt: Overskirt }
  | {
      readonly kind: 'finish-opening';
      readonly at: string;
      readonly finish: 'placket' | 'facing' | 'hook' | undefined;
      readonly beside: 'finished' | 'laced';
      readonly stops: number | undefined;
    }
  | {
      readonly kind: 'baste-as-one';
      readonly layers: readonly string[];
      readonly at: string | undefined;
      readonly stops: number | undefined;
    }
  | {
      readonly kind: 'close';
      readonly closure: 'zip' | 'lacing' | 'hooks';
      readonly at: string;
      readonly side: 'left' | 'right' | undefined;
      readonly layers: readonly string[];
      readonly starts: number;
      readonly stops: number | undefined;
      readonly zip: { readonly stock: number; readonly shortenBy: number } | undefined;
    }
  | {
      readonly kind: 'join-waist';
      readonly layers: readonly string[];
      readonly plies: number;
      readonly crossing: number;
      readonly clearance: number | undefined;
      readonly secondRow: number;
      /** Layers whose edge is gathered or pleated, and layers cut smaller that are stretched to fit. */
      readonly gathered: readonly string[];
      readonly stretched: readonly string[];
    }
  | { readonly kind: 'waist-stay'; readonly length: number; readonly grams: number | undefined }
  | { readonly kind: 'hang'; readonly bias: readonly string[] }
  | {
      readonly kind: 'level';
      readonly offFloor: number | undefined;
      readonly train: boolean;
      readonly scallops: boolean;
    }
  | {
      readonly kind: 'trim';
      readonly layers: readonly { readonly name: string; readonly below: number; readonly shorter: number }[];
      readonly roughCut: boolean;
    }
  | { readonly kind: 'strip'; readonly strip: StepStrip }
  | {
      readonly kind: 'hem';
      readonly layer: string;
      readonly finish: Exclude<HemFinish, 'bagged'>;
      readonly length: number;
      readonly allowance: number;
      readonly toEase: number | undefined;
      readonly edged: boolean;
    }
  | {
      readonly kind: 'bag-hem';
      readonly inner: string;
      readonly outer: string;
      readonly length: number;
      readonly allowance: number;
    }
  | {
      readonly kind: 'turn-through';
      readonly inner: string;
      readonly outer: string;
      readonly gap: GapMark | undefined;
    }
  | {
      readonly kind: 'edging';
      readonly name: string;
      readonly layer: string;
      readonly start: string;
      readonly repeats: number | undefined;
      readonly ease: number | undefined;
      /** Its inner edge has to be lapped somewhere. */
      readonly curved: boolean;
      /** Gores in which the outer edge is eased instead. */
      readonly hollow: readonly string[];
      readonly own: boolean;
    }
  | { readonly kind: 'fit'; readonly bustle: boolean }
  | { readonly kind: 'bustle'; readonly over: boolean; readonly number: number }
  | { readonly kind: 'fell-lining'; readonly layers: readonly string[]; readonly at: string }
  | { readonly kind: 'finish' };

/** Bones of one length along one seam. */
export interface BonePlace {
  readonly along: string;
  readonly side: 'left' | 'right' | undefined;
  readonly count: number;
}

export interface ScrapCloth {
  readonly name: string;
  readonly weave: Cloth['weave'];
  readonly shrinkage: number;
}

export interface StepStrip {
  readonly kind: Trim['kind'];
  readonly layer: string;
  readonly along: string;
  readonly width: number | undefined;
  readonly length: number;
  readonly drawnIn: number | undefined;
}

/** A stretch of seam left open to turn through; `from` below the waist seam where the spec says. */
export interface GapMark {
  readonly layer: string;
  readonly at: string;
  readonly length: number;
  readonly from: number | undefined;
}

export interface OpenSeam {
  readonly at: string;
  readonly side: 'left' | 'right' | undefined;
  readonly stops: number | undefined;
}

export type StepKind = StepWork['kind'];

/** A step in its place. */
export interface Step {
  readonly id: string;
  readonly number: number;
  readonly work: StepWork;
  readonly cautions: readonly CautionKind[];
  /** Nothing goes on before this is seen to: a fitting, a hanging. */
  readonly hold: boolean;
  readonly after: readonly string[];
}
