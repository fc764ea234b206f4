import type { Piece } from '../draft/piece.ts';
import { meeting } from '../geometry/corner.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf, tangentAt } from '../geometry/evaluate.ts';
import { lengthOf, lengthOfRun } from '../geometry/length.ts';
import { nearestOnRun } from '../geometry/nearest.ts';
import { offsetCurve } from '../geometry/offset.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { cross, distance, dot } from '../geometry/point.ts';
import { partOf, reversedRun } from '../geometry/split.ts';
import { tidied } from '../geometry/tidied.ts';
import { FIT, JOIN } from '../geometry/tolerances.ts';
import { reflected } from '../geometry/transform.ts';
import type { AllowancePlan } from './allowance-plan.ts';
import { lengthened, mirroredBelowHem } from './mirror-hem.ts';

/**
 * The cut line of one piece: every seam line offset outwards at true distance, joined by the corner that the sewing
 * needs.
 *
 * ```
 *        waist          seam pressed open: the waist's cut line is mirrored about the seam line, so that the
 *      ┌───────┐        allowance folded back lies within the piece
 *     /         \
 *    /           \      turned hem: the side's cut line is mirrored about the hem line
 *   └─────────────┘
 * ```
 */
/** One side of the outline: its seam line and what the corners have made of its cut line so far. */
interface Side {
  readonly name: string;
  readonly seam: readonly Curve[];
  readonly width: number;
  readonly cut: readonly Curve[];
}

export function cutOutline(piece: Piece, plan: AllowancePlan): Edge[] {
  const [waist, back, hem, front] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  const sideOf = (edge: Edge, width: number): Side => {
    const offset = offsetRun(edge.curves, width, FIT);
    return { name: edge.name, seam: edge.curves, width, cut: offset ?? edge.curves };
  };
  const top = sideOf(waist, plan.widths[waist.name] ?? 0);
  const right = sideOf(back, plan.widths[back.name] ?? 0);
  const left = sideOf(front, plan.widths[front.name] ?? 0);
  const bottom = sideOf(hem, (plan.widths[hem.name] ?? 0) + plan.roughCut);

  const rightHem = hemCorner(right, bottom, plan);
  const leftHem = hemCorner(flipped(left), flipped({ ...bottom, cut: rightHem.bottom }), plan);
  const [downLeft, downRight] = [
    { ...flipped(left), cut: leftHem.side },
    { ...right, cut: rightHem.side },
  ];
  const tops = topCorners(top, downLeft, downRight, plan);
  return [
    { name: waist.name, curves: tidied(tops.waist) },
    { name: back.name, curves: tidied(tops.right) },
    { name: hem.name, curves: tidied(reversedRun(leftHem.bottom)) },
    { name: front.name, curves: tidied(reversedRun(tops.left)) },
  ];
}

/** The upper edge with both its corners, from left to right, and the two sides that run down from it. */
interface Tops {
  readonly waist: readonly Curve[];
  readonly left: readonly Curve[];
  readonly right: readonly Curve[];
}

/** Tops that are so little wider than an allowance, as a multiple: above the seam line a flared gore is narrower still. */
const NARROW = 0.5;
/** Times that an allowance may be folded over the other one's corner. */
const FOLDS = 4;

function topCorners(top: Side, left: Side, right: Side, plan: AllowancePlan): Tops {
  const hollow = hollowTop(left, right, plan);
  if (hollow !== undefined) return hollow;
  // An allowance that is wider than the top is folded back over the other side's, corner and all.
  const isNarrow = Math.max(left.width, right.width) >= NARROW * lengthOfRun(top.seam);
  let fromLeft = top.cut;
  for (let fold = 0; isNarrow && fold < FOLDS; fold++) {
    const fromRight = reversedRun(waistCorner(top, right, plan, fromLeft).waist);
    fromLeft = reversedRun(waistCorner(flipped(top), left, plan, fromRight).waist);
  }
  const rightTop = waistCorner(top, right, plan, fromLeft);
  const leftTop = waistCorner(flipped({ ...top, cut: rightTop.waist }), left, plan);
  return { waist: reversedRun(leftTop.waist), left: leftTop.side, right: rightTop.side };
}

/** So much of a side's cut line stands for the upper edge where that has none of its own, mm. */
const STANDS_FOR_TOP = 1;

/**
 * A point whose sides open beyond a straight angle: their cut lines cross above it before they reach its own, which is
 * left out.
 */
function hollowTop(left: Side, right: Side, plan: AllowancePlan): Tops | undefined {
  const [down, other] = [right, left].map(({ seam }) => tangentAt(seam[0]!, 0));
  if (plan.waistCorner !== 'plain' || cross(down!, other!) >= 0) return undefined;
  const corner = meeting(reversedRun(left.cut), right.cut, reachOf(left, right), startOf(right.cut[0]!));
  if (corner === undefined) return undefined;
  const [first, ...rest] = corner.after;
  const part = Math.min(0.5, STANDS_FOR_TOP / lengthOf(first!));
  return {
    waist: [partOf(first!, 0, part)],
    left: reversedRun(corner.before),
    right: [partOf(first!, part, 1), ...rest],
  };
}

/** The same side run the other way round, so that one rule serves the left corners and the right ones. */
function flipped(side: Side): Side {
  return { ...side, seam: reversedRun(side.seam), cut: reversedRun(side.cut) };
}

/** How much farther than the wider allowance a corner may reach, as a multiple, before it is cut off. */
const MITRE_LIMIT = 4;

function reachOf(...sides: Side[]): number {
  return MITRE_LIMIT * Math.max(10, ...sides.map((side) => side.width));
}

/**
 * The waist's end against a side that runs down from it.
 * @param beyond the waist's cut line as it runs on past its other end, where the allowance is wide enough to reach there
 */
function waistCorner(
  waist: Side,
  side: Side,
  plan: AllowancePlan,
  beyond: readonly Curve[] = waist.cut,
): { waist: readonly Curve[]; side: readonly Curve[] } {
  const reach = reachOf(waist, side);
  if (plan.waistCorner === 'plain') return joined(waist.cut, side.cut, reach);
  const seamStart = startOf(side.seam[0]!);
  const direction = tangentAt(side.seam[0]!, 0);
  const seamDown: Line = {
    kind: 'line',
    from: seamStart,
    to: { x: seamStart.x + direction.x, y: seamStart.y + direction.y },
  };
  const atSeam = meeting(waist.cut, [seamDown], reach);
  if (side.width === 0 || atSeam === undefined) return joined(waist.cut, side.cut, reach);
  const within = beyond === waist.cut ? atSeam : meeting(beyond, [seamDown], reach);
  if (within === undefined) return joined(waist.cut, side.cut, reach);
  const mirrored = reversedRun(within.before.map((curve) => reflected(curve, seamStart, direction)));
  const corner = meeting(mirrored, side.cut, reach, startOf(mirrored[0]!));
  if (corner === undefined) return joined(waist.cut, side.cut, reach);
  return { waist: [...atSeam.before, ...corner.before], side: corner.after };
}

/** Two cut lines run on until they meet; where they would meet too far away the corner is cut off straight. */
function joined(
  before: readonly Curve[],
  after: readonly Curve[],
  reach: number,
): { waist: readonly Curve[]; side: readonly Curve[] } {
  const corner = meeting(before, after, reach);
  if (corner !== undefined) return { waist: corner.before, side: corner.after };
  return { waist: [...before, bridge(before, after)], side: after };
}

function bridge(before: readonly Curve[], after: readonly Curve[]): Line {
  return { kind: 'line', from: endOf(before[before.length - 1]!), to: startOf(after[0]!) };
}

/** Both cut lines with their corner: the hem's is the whole run, its start replaced. */
interface HemCornerResult {
  readonly side: readonly Curve[];
  readonly bottom: readonly Curve[];
}

/** A side that runs down to the hem, and the hem that follows it. */
function hemCorner(side: Side, hem: Side, plan: AllowancePlan): HemCornerResult {
  const reach = reachOf(side, hem);
  if (plan.lowerSewn === true) {
    const corner = waistCorner(flipped(hem), flipped(side), plan);
    return { side: reversedRun(corner.side), bottom: reversedRun(corner.waist) };
  }
  const toMeet = side.width === 0 || hem.width === 0 ? 'plain' : plan.hemCorner;
  if (toMeet === 'trimmed') return { side: side.cut, bottom: [bridge(side.cut, hem.cut), ...hem.cut] };
  if (toMeet === 'mirrored') {
    const mirrored = mirroredCorner(side, hem, reach);
    if (mirrored !== undefined) return mirrored;
  }
  const corner = joined(side.cut, hem.cut, reach);
  return { side: corner.waist, bottom: corner.side };
}

function mirroredCorner(side: Side, hem: Side, reach: number): HemCornerResult | undefined {
  const needed = imageSpan(side, hem);
  // A hem that bends has it farther along than a straight one; one that runs with its side has it nowhere.
  const span = needed > reach ? Math.min(2 * needed, 20 * reach) : reach;
  const hemLine = lengthened(firstStretch(hem.seam, span), span);
  const atHem = meeting(side.cut, hemLine, reach, endOf(side.cut[side.cut.length - 1]!));
  // On a very steep hem the side's cut line passes the lengthened hem line by: nothing to mirror it across.
  if (atHem === undefined || !startsOn(hemLine, atHem.after)) return undefined;
  const below = mirroredBelowHem(atHem.before, hemLine, hem.width);
  if (below === undefined) return undefined;
  const corner = endOf(below[below.length - 1]!);
  const bottom = startingAt(ledUpTo(hem, hemLine[0]!, reach, corner), corner);
  return { side: [...atHem.before, ...endingAt(below, startOf(bottom[0]!))], bottom };
}

/**
 * How far from the corner, along the hem, the side's allowance is mirrored across it, mm: on a hem far off square what is
 * pressed up lies far along it, and a hem line that ended before would turn the image about its end.
 */
function imageSpan(side: Side, hem: Side): number {
  const down = tangentAt(side.seam[side.seam.length - 1]!, 1);
  const along = tangentAt(hem.seam[0]!, 0);
  const square = Math.abs(cross(down, along));
  return (side.width + hem.width * Math.abs(dot(down, along))) / square;
}

/**
 * The hem's cut line with what leads up to it from the corner that the side has made: run on with its own bend or,
 * where that passes the corner by, moved from what leads up to the hem line.
 */
function ledUpTo(hem: Side, lead: Curve, reach: number, corner: Point): readonly Curve[] {
  const own = lengthened(hem.cut, reach);
  if (nearestOnRun(own, corner).distance < PASSES_BY) return own;
  const start = startOf(hem.cut[0]!);
  const led = [hem.width, -hem.width]
    .flatMap((width) => offsetCurve(lead, width, FIT) ?? [])
    .find((curve) => distance(endOf(curve), start) < PASSES_BY);
  return led === undefined ? own : [led, ...own.slice(1)];
}

/** mm: as near as fitted lines lie to one another. */
const PASSES_BY = 2 * FIT;

/** Whether one run begins on another itself, not on what `meeting` lengthened it by. */
function startsOn(run: readonly Curve[], after: readonly Curve[]): boolean {
  return nearestOnRun(run, startOf(after[0]!)).distance <= JOIN;
}

/** The run from its nearest point to `start` on, without the lengthening at its far end. */
function startingAt(run: readonly Curve[], start: Point): Curve[] {
  const near = nearestOnRun(run, start);
  const rest = run.slice(near.index + 1, -1);
  return [partOf(run[near.index]!, near.t, 1), ...rest];
}

/** Closes the few micrometres between two fitted lines. */
function endingAt(run: readonly Curve[], end: Point): Curve[] {
  const last = run[run.length - 1]!;
  return last.kind === 'arc' ? [...run] : [...run.slice(0, -1), { ...last, to: end }];
}

/** The curves at the beginning of a run that cover at least `length` mm of it. */
function firstStretch(run: readonly Curve[], length: number): readonly Curve[] {
  let covered = 0;
  const count = run.findIndex((curve) => {
    covered += lengthOf(curve);
    return covered >= length;
  });
  return count < 0 ? run : run.slice(0, count + 1);
}
