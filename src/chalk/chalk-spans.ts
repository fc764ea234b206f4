import type { Curve } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { tangentAt } from '../geometry/evaluate.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { angleBetween, subtract } from '../geometry/point.ts';
import { pointOnRun, tangentOnRun } from '../geometry/run-position.ts';
import { partOf } from '../geometry/split.ts';

/** A smooth stretch of one edge, to be chalked between its two ends. */
export interface ChalkSpan {
  readonly edge: string;
  readonly curves: readonly Curve[];
}

/** Turn at a join that makes it a corner, radians (2°). Less is drawn through without being seen. */
const CORNER = (2 * Math.PI) / 180;

/** A stretch that turns farther than this from its chord is halved: ordinates would run along it. */
const MOST_TURN = (55 * Math.PI) / 180;

/** Shorter than this is lost in the chalk's own width, mm. */
const SHORTEST = 0.25;

/** Steepest that a side may lie to the grain to be measured from the grain line; flatter ones take ordinates. */
const MOST_SLANT = (55 * Math.PI) / 180;

/** Cuts an outline's edges at their corners, and long bends in halves. */
export function chalkSpans(edges: readonly Edge[], sides: readonly string[]): ChalkSpan[] {
  return edges.flatMap((edge) =>
    smoothParts(edge.curves)
      .filter((curves) => lengthOfRun(curves) >= SHORTEST)
      .flatMap((curves) => {
        const span = { edge: edge.name, curves };
        return sides.includes(edge.name) && isSide(span) ? [span] : unbent(span);
      }),
  );
}

/** Whether a span runs down or up the cloth all the way, so that each level crosses it once and at a clear angle. */
export function isSide(span: ChalkSpan): boolean {
  const directions = samples(span).map((at) => tangentOnRun(span.curves, at).y);
  const least = Math.cos(MOST_SLANT);
  return directions.every((down) => down >= least) || directions.every((down) => down <= -least);
}

function smoothParts(curves: readonly Curve[]): Curve[][] {
  const parts: Curve[][] = [];
  for (const curve of curves) {
    const part = parts[parts.length - 1];
    const before = part?.[part.length - 1];
    if (part === undefined || before === undefined || turnBetween(before, curve) > CORNER)
      parts.push([curve]);
    else part.push(curve);
  }
  return parts;
}

function turnBetween(before: Curve, after: Curve): number {
  return angleBetween(tangentAt(before, 1), tangentAt(after, 0));
}

/** Halves a span until it keeps within `MOST_TURN` of its chord's direction all along. */
function unbent(span: ChalkSpan): ChalkSpan[] {
  const start = pointOnRun(span.curves, 0);
  const chord = subtract(pointOnRun(span.curves, span.curves.length), start);
  const straightEnough = samples(span).every(
    (at) => angleBetween(chord, tangentOnRun(span.curves, at)) <= MOST_TURN,
  );
  return straightEnough ? [span] : halves(span).flatMap(unbent);
}

function halves(span: ChalkSpan): [ChalkSpan, ChalkSpan] {
  if (span.curves.length > 1) {
    const middle = Math.floor(span.curves.length / 2);
    return [
      { ...span, curves: span.curves.slice(0, middle) },
      { ...span, curves: span.curves.slice(middle) },
    ];
  }
  const curve = span.curves[0]!;
  return [
    { ...span, curves: [partOf(curve, 0, 0.5)] },
    { ...span, curves: [partOf(curve, 0.5, 1)] },
  ];
}

const SAMPLES_PER_CURVE = 12;

function samples(span: ChalkSpan): number[] {
  const count = span.curves.length * SAMPLES_PER_CURVE;
  // Just inside each curve's ends, where a join of two curves has one direction.
  return Array.from({ length: count + 1 }, (_, i) => {
    const at = i / SAMPLES_PER_CURVE;
    return Math.min(Math.max(at, 1e-9), span.curves.length - 1e-9);
  });
}
