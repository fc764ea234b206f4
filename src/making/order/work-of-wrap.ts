import type { Wrap } from '../../gown/wrap.ts';

/** A skirt whose two edges lie over one another. mm. */
export type WrapWork =
  | (Pick<Wrap, 'at' | 'edges'> & {
      readonly kind: 'wrap-edges';
      readonly layers: readonly string[];
      readonly facing: { readonly name: string; readonly depth: number } | undefined;
    })
  | (Pick<Wrap, 'over'> & {
      readonly kind: 'wrap-ties';
      readonly name: string;
      readonly length: number;
      readonly width: number;
    })
  | (Pick<Wrap, 'at' | 'over' | 'overlap' | 'overlapAtHem' | 'fastened'> & {
      readonly kind: 'fasten-wrap';
      readonly tiesCut: boolean;
    });
