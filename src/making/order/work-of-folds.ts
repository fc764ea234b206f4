import type { Dart } from '../../gown/cloth.ts';
import type { GrowthTucks } from '../../gown/layer.ts';
import type { Pleat } from '../../gown/parts.ts';

/** Cloth that is folded where it lies. mm. */
export type FoldWork =
  | {
      readonly kind: 'pleat';
      readonly layer: string;
      readonly pleat: Pleat;
      readonly places: number;
      readonly folds: number;
    }
  | {
      readonly kind: 'darts';
      readonly layer: string;
      readonly darts: readonly (Dart & { readonly gore: string })[];
    }
  | {
      readonly kind: 'tucks';
      readonly layer: string;
      readonly tucks: GrowthTucks;
      /** By how much the lower line of each is longer than the upper, all round. */
      readonly toEase: number;
    }
  | { readonly kind: 'press-pleats'; readonly layer: string; readonly pleats: readonly string[] };
