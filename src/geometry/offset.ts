import type { Cubic, Curve } from './curve.ts';
import { curvatureAt, derivativeAt, pointAt, secondDerivativeAt, tangentAt } from './evaluate.ts';
import { fitCubics } from './fit-cubics.ts';
import { along, dot, leftOf, scaled, subtract } from './point.ts';
import { partOf } from './split.ts';

/**
 * A curve moved to its left (outwards on a clockwise outline) by `distance` mm, at true distance everywhere:
 * lines and arcs exactly, cubics within `tolerance` mm. Negative distances move it to the right.
 * Returns nothing where the curve bends tighter than the distance allows: such an offset folds over itself.
 */
export function offsetCurve(curve: Curve, distance: number, tolerance: number): Curve[] | undefined {
  if (distance === 0) return [curve];
  if (curve.kind === 'line') {
    const shift = scaled(leftOf(tangentAt(curve, 0)), distance);
    return [
      {
        kind: 'line',
        from: { x: curve.from.x + shift.x, y: curve.from.y + shift.y },
        to: { x: curve.to.x + shift.x, y: curve.to.y + shift.y },
      },
    ];
  }
  if (curve.kind === 'arc') {
    if (bendsTighterThan(curve, distance)) return undefined;
    return [{ ...curve, radius: curve.radius + distance * Math.sign(curve.sweep) }];
  }
  if (bendsTighterThan(curve, distance)) return undefined;
  return fitCubics(
    {
      pointAt: (t) => along(pointAt(curve, t), leftOf(tangentAt(curve, t)), distance),
      derivativeAt: (t) => scaled(derivativeAt(curve, t), 1 + curvatureAt(curve, t) * distance),
    },
    0,
    1,
    tolerance,
  );
}

/** True where a curve moved to its left by `distance` would run backwards somewhere: 1 + κd comes to nothing. */
export function bendsTighterThan(curve: Curve, distance: number): boolean {
  if (curve.kind === 'line' || distance === 0) return false;
  if (curve.kind === 'cubic' && mostBend(curve) * Math.abs(distance) < SURELY) return false;
  return placesOn(curve).some((t) => foldsAt(curve, distance, t));
}

/** A bend, as a share of the one that folds, up to which no look at a cubic finds a fold, rounding included. */
const SURELY = 0.9;

/**
 * What no bend of a cubic exceeds, 1/mm: the most of its second derivative, which lies at an end, by the square of the
 * least of its first, which is no less than the least step of its control points along the chord.
 */
function mostBend(cubic: Cubic): number {
  const { from, control1, control2, to } = cubic;
  const chord = subtract(to, from);
  const least = Math.min(
    dot(subtract(control1, from), chord),
    dot(subtract(control2, control1), chord),
    dot(subtract(to, control2), chord),
  );
  if (least <= 0) return Infinity;
  const [atStart, atEnd] = [secondDerivativeAt(cubic, 0), secondDerivativeAt(cubic, 1)];
  const bend = Math.max(dot(atStart, atStart), dot(atEnd, atEnd));
  return (Math.sqrt(bend) * dot(chord, chord)) / (9 * least * least);
}

/** The stretches of a curve that can be moved to its left by `distance` without running backwards, in order. */
export function stretchesThatOffset(curve: Curve, distance: number): Curve[] {
  const places = placesOn(curve);
  const edges: number[] = [];
  for (const [i, t] of places.entries()) {
    const folds = foldsAt(curve, distance, t);
    const before = places[i - 1];
    if (before === undefined) {
      if (!folds) edges.push(t);
    } else if (folds !== foldsAt(curve, distance, before)) {
      edges.push(turningPlace(curve, distance, before, t));
    }
  }
  if (edges.length % 2 === 1) edges.push(1);
  return edges.flatMap((from, i) => (i % 2 === 0 ? [partOf(curve, from, edges[i + 1]!)] : []));
}

/** Looks at the bend of a curve: between two of them a hem's bend does not rise and fall again. */
const LOOKS = 64;

function placesOn(curve: Curve): number[] {
  return curve.kind === 'cubic' ? Array.from({ length: LOOKS + 1 }, (_, i) => i / LOOKS) : [0, 1];
}

function foldsAt(curve: Curve, distance: number, t: number): boolean {
  return 1 + curvatureAt(curve, t) * distance <= FOLDING;
}

/** Where between two places folding begins or ends; the side that does not fold. */
function turningPlace(curve: Curve, distance: number, from: number, to: number): number {
  const foldsFirst = foldsAt(curve, distance, from);
  let [near, far] = [from, to];
  for (let step = 0; step < 40; step++) {
    const mid = (near + far) / 2;
    if (foldsAt(curve, distance, mid) === foldsFirst) near = mid;
    else far = mid;
  }
  return foldsFirst ? far : near;
}

/** Least share of its length that a stretch of curve keeps in its offset. Smaller lets needles of no width through. */
const FOLDING = 0.02;
