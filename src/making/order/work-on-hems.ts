import type { HemFinish } from '../../gown/cloth.ts';
import type { Side } from '../../gown/station.ts';
import type { ScallopHang } from '../edging/edging.ts';
import type { GapMark } from './work-parts.ts';

/** From hanging to the hand-over. mm. */
export type HemWork =
  | {
      readonly kind: 'hang';
      readonly bias: readonly string[];
      /** Layers that are cut on the bias, and by how much their weight alone draws them longer. */
      readonly onBias: readonly { readonly layer: string; readonly drop: number | undefined }[];
      readonly flounces: readonly string[];
      /** There is one for it to hang over. */
      readonly petticoat: boolean;
    }
  | {
      readonly kind: 'level';
      readonly offFloor: number | undefined;
      readonly train: boolean;
      readonly petticoat: boolean;
      /** Flounces whose own hem is levelled, and of these what is the skirt's hem. */
      readonly flounces: readonly string[];
      readonly atHem: readonly string[];
      readonly overskirts: readonly string[];
    }
  | {
      readonly kind: 'trim';
      readonly layers: readonly { readonly name: string; readonly below: number; readonly shorter: number }[];
      readonly roughCut: boolean;
    }
  | {
      readonly kind: 'hem';
      readonly layer: string;
      readonly finish: Exclude<HemFinish, 'bagged'>;
      readonly length: number;
      readonly allowance: number;
      readonly toEase: number | undefined;
      /** The layer that its facings are cut as. */
      readonly facing: string | undefined;
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
      readonly kind: 'part-hem';
      readonly name: string;
      readonly layers: readonly { readonly name: string; readonly finish: HemFinish }[];
    }
  | {
      readonly kind: 'edging';
      readonly name: string;
      readonly layer: string;
      readonly start: string;
      readonly side: Side | undefined;
      readonly repeats: number | undefined;
      readonly ease: number | undefined;
      /** Its inner edge has to be lapped somewhere. */
      readonly curved: boolean;
      /** Gores in which the outer edge is eased instead. */
      readonly hollow: readonly string[];
      readonly own: boolean;
    }
  | { readonly kind: 'cut-behind'; readonly layer: string; readonly edging: string }
  | {
      readonly kind: 'level-scallops';
      readonly edging: string;
      /** Where the floor is known. */
      readonly hang: ScallopHang | undefined;
    }
  | { readonly kind: 'fit'; readonly bustle: boolean }
  | { readonly kind: 'bustle'; readonly over: boolean; readonly number: number }
  | {
      readonly kind: 'fell-lining';
      readonly layers: readonly string[];
      readonly at: string;
      readonly side: Side | undefined;
    }
  | { readonly kind: 'finish' };
