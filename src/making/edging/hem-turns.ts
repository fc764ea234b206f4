import type { LayerDraft } from '../../draft/draft-layers.ts';
import { rootsOfQuadratic } from '../../geometry/bounds.ts';
import type { Cubic, Curve, Point } from '../../geometry/curve.ts';
import { derivativeAt } from '../../geometry/evaluate.ts';
import { lengthOfRun } from '../../geometry/length.ts';
import { cross, dot, subtract } from '../../geometry/point.ts';
import { hasGore } from '../../gown/layer.ts';
import { halves } from '../../gown/lines.ts';

/** How a gore's hem bends: outwards, as most do, and inwards, where a train begins. mm, radians. */
export interface HemTurn {
  readonly gore: string;
  readonly side?: 'left' | 'right';
  /** Of one gore, whole even on the fold. */
  readonly length: number;
  readonly outwards: number;
  readonly inwards: number;
}

/** Every gore of a layer that it has, from the centre front round. */
export function hemTurns({ layer, draft }: LayerDraft): HemTurn[] {
  const own = draft.pieces.filter((piece) => hasGore(layer, { name: piece.gore }));
  return own.map((piece) => {
    const { curves } = piece.edges[2]!;
    const { outwards, inwards } = turnsOf(curves);
    const whole = piece.cut === 'on-fold' && halves(draft.gown) === 2 ? 2 : 1;
    return {
      gore: piece.gore,
      ...(piece.side === undefined ? {} : { side: piece.side }),
      length: whole * lengthOfRun(curves),
      outwards: whole * outwards,
      inwards: whole * inwards,
    };
  });
}

/** A hem runs from right to left with the cloth on its right: bending towards the cloth it bulges outwards. */
function turnsOf(curves: readonly Curve[]): { outwards: number; inwards: number } {
  const turns = curves.flatMap((curve, i) => [
    ...(i === 0 ? [] : [angleBetween(derivativeAt(curves[i - 1]!, 1), derivativeAt(curve, 0))]),
    ...turnsAlong(curve),
  ]);
  let [outwards, inwards] = [0, 0];
  for (const turn of turns) {
    if (turn > 0) outwards += turn;
    else inwards -= turn;
  }
  return { outwards, inwards };
}

/** What a curve turns by, one stretch after another: between two of them it bends back. */
function turnsAlong(curve: Curve): number[] {
  if (curve.kind === 'line') return [];
  if (curve.kind === 'arc') return [curve.sweep];
  const directions = [0, ...inflections(curve), 1].map((t) => derivativeAt(curve, t));
  return directions.slice(1).map((direction, i) => angleBetween(directions[i]!, direction));
}

/**
 * Where a cubic's curvature is nothing: of its legs u, v and w the cross product of first and second derivative is
 * (1 − t)² u×v + (1 − t) t u×w + t² v×w, eighteen times over.
 */
function inflections({ from, control1, control2, to }: Cubic): number[] {
  const [u, v, w] = [subtract(control1, from), subtract(control2, control1), subtract(to, control2)];
  const [start, middle, end] = [cross(u, v), cross(u, w), cross(v, w)];
  return rootsOfQuadratic(start - middle + end, middle - 2 * start, start)
    .filter((t) => t > 0 && t < 1)
    .sort((one, other) => one - other);
}

function angleBetween(a: Point, b: Point): number {
  return Math.atan2(cross(a, b), dot(a, b));
}
