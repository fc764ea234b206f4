import { tapeText } from '../diagnostics/tape-text.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import type { GownToLay } from '../lay/plan/lay-to-plan.ts';
import { type LayEffort, type LaysPlanned, planLays } from '../lay/plan/plan-lays.ts';

/** Given to a worker when it starts. */
export interface LayWork {
  readonly gown: GownToLay;
  readonly effort: LayEffort;
  /** Set to 1 once nobody wants to wait any longer. */
  readonly stop: Int32Array;
}

/** From a worker: what it has found so far, or all of one lay. */
export type LayMessage =
  | { readonly kind: 'shorter'; readonly lay: string; readonly length: number }
  | {
      readonly kind: 'done';
      readonly index: number;
      readonly planned: LaysPlanned;
      readonly sources: readonly (readonly number[])[];
    };

/** Plans one of the gown's lays. */
export function planOne(
  { gown, effort, stop }: LayWork,
  index: number,
  onShorter: (lay: string, length: number) => void,
): LaysPlanned {
  return planLays(
    { ...gown, lays: gown.lays.slice(index, index + 1) },
    {
      effort,
      say: (length) => tapeText(length, gown.units),
      shouldStop: () => Atomics.load(stop, 0) === 1,
      onProgress: onShorter,
    },
  );
}

/** Which piece of the gown each placed piece is; -1 for a part of one that had to be cut in two. */
export function sourcesOf(lays: readonly LayPlan[], gown: GownToLay): number[][] {
  return lays.map(({ pieces }) => pieces.map(({ source }) => gown.pieces.indexOf(source)));
}

/** Lays that came from another thread, speaking of this thread's pieces again. */
export function withSources(
  lays: readonly LayPlan[],
  sources: readonly (readonly number[])[],
  gown: GownToLay,
): LayPlan[] {
  return lays.map((lay, i) => ({
    ...lay,
    pieces: lay.pieces.map((placed, j) => ({
      ...placed,
      source: gown.pieces[sources[i]?.[j] ?? -1] ?? placed.source,
    })),
  }));
}
