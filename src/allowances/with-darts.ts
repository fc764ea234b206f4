import type { CutPiece, Piece } from '../draft/piece.ts';
import { runAcross } from '../draft/unfolded.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { nearestOnRun } from '../geometry/nearest.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { add, dot, leftOf, scaled, subtract, unit } from '../geometry/point.ts';
import { partOfRun, positionWhere } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import { tidied } from '../geometry/tidied.ts';
import { FIT } from '../geometry/tolerances.ts';
import { placed, reflected } from '../geometry/transform.ts';
import type { AllowancePlan } from './allowance-plan.ts';
import { cutOutline } from './cut-outline.ts';
import { dartedWaist, type OpenDart } from './dart-waist.ts';
import type { TopFullness } from './top-fullness.ts';

export const DART_MARKS = { leg: 'dart-leg-line', fold: 'dart-fold-line' } as const;

/** A piece with its darts: its lines, its cut line, and what is marked. */
export interface Darted {
  readonly piece: Piece;
  readonly cutEdges: readonly Edge[];
  readonly marks: CutPiece['marks'];
}

/**
 * Between a dart's legs waist seam and cut line are what they come to if the dart is folded to one side and cut through:
 * the mirror image, in the leg at that side, of the waist that it lies under, and that once more at the other leg.
 */
export function withDarts(piece: Piece, full: TopFullness, plan: AllowancePlan): Darted {
  const darts = dartedWaist(piece, full);
  const [waist, ...rest] = piece.edges;
  const chain = darts.flatMap(({ before, left, right, after }): Curve[] => [
    ...before,
    { kind: 'line', from: left, to: right },
    ...after,
  ]);
  const flat: Piece = { ...piece, edges: [{ ...waist!, curves: chain }, ...rest] };
  const cut = cutOutline(flat, plan);
  const width = plan.widths[waist!.name] ?? 0;
  const seams = darts.map((dart) => capOf(dart, dart.before, dart.after));
  const cuts = darts.map((dart) => capOf(dart, offsetOf(dart.before, width), offsetOf(dart.after, width)));
  return {
    piece: { ...piece, edges: [{ ...waist!, curves: withCaps(chain, seams) }, ...rest] },
    cutEdges: [{ ...cut[0]!, curves: withCaps(cut[0]!.curves, cuts) }, ...cut.slice(1)],
    marks: darts.flatMap((dart, i) => marksOf(dart, cuts[i]!.peak)),
  };
}

function offsetOf(run: readonly Curve[], width: number): readonly Curve[] {
  return offsetRun(run, width, FIT) ?? run;
}

interface Cap {
  /** From half-way along the stretch before the dart to half-way along the one after it. */
  readonly curves: readonly Curve[];
  /** Where the fold's middle is cut through. */
  readonly peak: Point;
}

/** @param before a line along the waist up to the left leg, @param after and on from the right leg */
function capOf(dart: OpenDart, before: readonly Curve[], after: readonly Curve[]): Cap {
  if (dart.folds === 'left') return foldedLeft(dart, before, after);
  // To the right it is folded as its mirror image is to the left.
  const { point, right, angle } = dart;
  const { curves, peak } = foldedLeft(
    { point: acrossPoint(point), left: acrossPoint(right), angle },
    runAcross(after, 0),
    runAcross(before, 0),
  );
  return { curves: runAcross(curves, 0), peak: acrossPoint(peak) };
}

function acrossPoint({ x, y }: Point): Point {
  return { x: -x, y };
}

function foldedLeft(
  { point, left, angle }: Pick<OpenDart, 'point' | 'left' | 'angle'>,
  before: readonly Curve[],
  after: readonly Curve[],
): Cap {
  const leg = unit(subtract(left, point));
  const closed = [...before, ...turnedRun(after, point, -angle)];
  const crossing = (way: Point): number =>
    positionWhere(closed, (at) => dot(subtract(at, point), leftOf(scaled(way, -1))), 0);
  const [on, under] = [crossing(leg), crossing(turnedVector(leg, -angle / 2))];
  const lies = partOfRun(closed, under, on);
  const image = reversedRun(lies.map((curve) => reflected(curve, point, leg)));
  const again = turnedRun(lies, point, angle);
  const goesOn = turnedRun(partOfRun(closed, on, before.length + after.length / 2), point, angle);
  return {
    curves: [...partOfRun(closed, before.length / 2, on), ...image, ...again, ...goesOn],
    peak: startOf(again[0]!),
  };
}

/** A line along the waist with its corners at both sides, and each dart's fold in place of what lies between its legs. */
function withCaps(run: readonly Curve[], caps: readonly Cap[]): Curve[] {
  const positionOf = (at: Point): number => {
    const near = nearestOnRun(run, at);
    return near.index + near.t;
  };
  let from = 0;
  const curves: Curve[] = [];
  for (const cap of caps) {
    curves.push(...partOfRun(run, from, positionOf(startOf(cap.curves[0]!))), ...cap.curves);
    from = positionOf(endOf(cap.curves[cap.curves.length - 1]!));
  }
  return tidied([...curves, ...partOfRun(run, from, run.length)]);
}

function marksOf({ point, left, right }: OpenDart, peak: Point): CutPiece['marks'] {
  const line = (name: string, to: Point) => ({
    name,
    curves: [{ kind: 'line', from: to, to: point } as const],
  });
  return [line(DART_MARKS.leg, left), line(DART_MARKS.fold, peak), line(DART_MARKS.leg, right)];
}

function turnedRun(run: readonly Curve[], about: Point, angle: number): Curve[] {
  const turn = { mirror: false, angle, shift: { x: 0, y: 0 } };
  const moved = placed(turn, { kind: 'line', from: about, to: about }) as Line;
  const placement = { ...turn, shift: subtract(about, moved.from) };
  return run.map((curve) => placed(placement, curve));
}

function turnedVector({ x, y }: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return add({ x: cos * x - sin * y, y: 0 }, { x: 0, y: sin * x + cos * y });
}
