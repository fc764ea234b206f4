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
  | { readonly kind: 'press-pleats'; readonly layer: string; readonly pleats: readonly string[] };
