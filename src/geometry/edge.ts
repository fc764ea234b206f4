import type { Curve } from './curve.ts';

/** A named run of curves, each beginning where the one before ends. An outline is a closed ring of edges. */
export interface Edge {
  readonly name: string;
  readonly curves: readonly Curve[];
}
