import type { Curve } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { startOf } from '../geometry/evaluate.ts';
import { reversedRun } from '../geometry/split.ts';
import { reflected } from '../geometry/transform.ts';

/** What is cut on the fold, opened out: from the fold round to it again, and the mirror image back. */
export interface Unfolded {
  readonly half: readonly Edge[];
  readonly other: readonly Edge[];
  /** x of the fold, mm. */
  readonly foldAt: number;
}

/** Nothing where the piece has no fold. */
export function unfolded(edges: readonly Edge[]): Unfolded | undefined {
  const fold = edges.findIndex(({ name }) => name === 'fold');
  if (fold < 0) return undefined;
  const foldAt = startOf(edges[fold]!.curves[0]!).x;
  const half = [...edges.slice(fold + 1), ...edges.slice(0, fold)];
  const other = half.map(({ name, curves }) => ({ name, curves: runAcross(curves, foldAt) })).reverse();
  return { half, other, foldAt };
}

/** A piece's outline mirrored in a line along the grain: the first edge stays first, still clockwise as drawn. */
export function outlineAcross(edges: readonly Edge[], x: number): Edge[] {
  const [top, ...others] = edges.map(({ name, curves }) => ({ name, curves: runAcross(curves, x) }));
  return top === undefined ? [] : [top, ...others.reverse()];
}

/** A run's mirror image in a line along the grain, run the other way: still clockwise as drawn. */
export function runAcross(curves: readonly Curve[], x: number): Curve[] {
  return reversedRun(curves.map((curve) => across(curve, x)));
}

/** A curve's mirror image in a line along the grain. */
export function across(curve: Curve, x: number): Curve {
  return reflected(curve, { x, y: 0 }, { x: 0, y: 1 });
}
