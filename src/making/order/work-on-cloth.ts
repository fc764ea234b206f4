import type { Cloth } from '../../gown/cloth.ts';
import type { Side } from '../../gown/station.ts';
import type { BustlePoint } from '../bustle/bustle.ts';
import type { GapMark, StepStrip } from './work-parts.ts';

/** From the scraps to the marked pieces. mm. */
export type ClothWork =
  | { readonly kind: 'test-scraps'; readonly cloths: readonly ScrapCloth[] }
  | { readonly kind: 'shrink'; readonly cloth: string; readonly shrinkage: number }
  | {
      readonly kind: 'cut-own-edges';
      readonly cloth: string;
      readonly edging: string;
      readonly depth: number | undefined;
    }
  | {
      /** All that lies in one lay. */
      readonly kind: 'cut';
      readonly cloth: string;
      readonly layers: readonly string[];
      /** Of these, what is strips cut as one run. */
      readonly strips: readonly string[];
      readonly oneWay: boolean;
      readonly bias: readonly string[];
      readonly stretch: boolean;
      readonly slippery: boolean;
      /** Sequins or beads fly off the needle. */
      readonly beaded: boolean;
      readonly roughCut: readonly RoughCut[];
    }
  | {
      readonly kind: 'mark';
      readonly layers: readonly string[];
      readonly sheers: readonly string[];
      readonly zipEnds:
        | {
            readonly at: string;
            readonly side: Side | undefined;
            readonly starts: number;
            readonly stops: number;
          }
        | undefined;
      readonly gaps: readonly GapMark[];
      readonly bustle: readonly BustlePoint[];
    }
  | { readonly kind: 'stay-edges'; readonly tapes: readonly StepStrip[] };

export interface ScrapCloth {
  readonly name: string;
  readonly weave: Cloth['weave'];
  readonly shrinkage: number;
}

/** Gores that are cut longer at the hem, in which layers, and by how much. */
export interface RoughCut {
  readonly layers: readonly string[];
  readonly gores: readonly string[];
  readonly depth: number;
}
