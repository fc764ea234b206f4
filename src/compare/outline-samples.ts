import type { Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { lengthOf } from '../geometry/length.ts';
import { leftOf } from '../geometry/point.ts';

/** A point of an outline, where it lies on its edge, and which way is out. */
export interface OutlineSample {
  /** Index of the edge in the piece. */
  readonly edge: number;
  readonly point: Point;
  readonly outwards: Point;
  /** Along the edge: down a side from the waist, along waist and hem from the left as drawn, mm. */
  readonly along: number;
  /** Clear of the edge's ends, where allowances are trimmed and taper. */
  readonly clear: boolean;
}

/** Between two samples, mm. Larger could step over where a curved hem leaves the cloth; smaller costs time. */
const SPACING = 4;
/** How far a corner reaches along its edges, mm: the width of a usual allowance. */
const CORNER = 15;

/** Samples of every edge but the fold, ends and joins of curves among them. */
export function outlineSamples(edges: readonly Edge[]): OutlineSample[] {
  return edges.flatMap((edge, index) => (edge.name === 'fold' ? [] : edgeSamples(edge, index)));
}

function edgeSamples({ curves }: Edge, index: number): OutlineSample[] {
  const lengths = curves.map((curve) => lengthOf(curve));
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  const backwards = index === HEM || index === LEFT;
  const samples: OutlineSample[] = [];
  let before = 0;
  for (const [i, curve] of curves.entries()) {
    const parts = Math.max(2, Math.ceil(lengths[i]! / SPACING));
    for (let part = 0; part <= parts; part++) {
      const t = part / parts;
      const run = before + (curve.kind === 'cubic' ? lengthOf(curve, 0, t) : lengths[i]! * t);
      const clear = Math.min(run, whole - run) >= Math.min(CORNER, whole / 4);
      samples.push({ edge: index, along: backwards ? whole - run : run, clear, ...outwardsAt(curve, t) });
    }
    before += lengths[i]!;
  }
  return samples;
}

/** Places of the edges in a piece: waist, right, hem, left, clockwise as drawn. */
export const WAIST = 0;
export const HEM = 2;
export const LEFT = 3;

function outwardsAt(curve: Curve, t: number): Pick<OutlineSample, 'point' | 'outwards'> {
  return { point: pointAt(curve, t), outwards: leftOf(tangentAt(curve, t)) };
}
