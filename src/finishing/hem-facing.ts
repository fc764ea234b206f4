import { closedExactly } from '../draft/closed-exactly.ts';
import { upright } from '../draft/grain-line.ts';
import type { Piece } from '../draft/piece.ts';
import { meeting } from '../geometry/corner.ts';
import { crossingsOf } from '../geometry/crossings.ts';
import type { Cubic, Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, pointAt, tangentAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { along, angleBetween, distance, middle } from '../geometry/point.ts';
import { partOf, reversedRun } from '../geometry/split.ts';
import { FIT, JOIN } from '../geometry/tolerances.ts';

/** The upper edge of a facing, in the waist's place. */
export const INNER_EDGE = 'inner-edge';

/** How much farther than a facing is deep its inner edge may run on to reach a seam, as a multiple. */
const REACH = 8;

/**
 * A facing's outline before it is agreed with its neighbours: the region of the piece within `depth` of its hem line.
 *
 * ```
 *    │                  │      a hem that is off square: on one side of a seam the inner edge meets the
 *    │      ______------│      seam itself, on the other it falls short and is run on to the same height
 *    │------            │
 *    │         ____-----┘
 *    └---------
 * ```
 */
export interface FacingSides {
  readonly piece: Piece;
  /** From left to right. */
  readonly inner: readonly Curve[];
  readonly left: FacingSide;
  readonly right: FacingSide;
}

export interface FacingSide {
  /** Name of the edge. */
  readonly edge: string;
  /** Of the piece, from its top down to the hem. */
  readonly down: readonly Curve[];
  /** From the hem up to the inner edge, along the seam, mm. */
  readonly height: number;
  /** Between the seam and the hem, inside the piece, radians: at under a right angle the piece has the whole of the inner edge. */
  readonly atHem: number;
  /** Between the seam upwards and the inner edge into the piece, radians. */
  readonly atTop: number;
}

/** Undefined where the piece is nowhere so deep as its facing. @param depth mm */
export function facingSides(piece: Piece, depth: number): FacingSides | undefined {
  const [top, back, hem, front] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  const moved = offsetRun(hem.curves, -depth, FIT);
  if (moved === undefined) return undefined;
  const across = reversedRun(moved);
  const [rightDown, leftDown] = [back.curves, reversedRun(front.curves)];
  const onRight = meetingSide(across, rightDown, depth);
  const onLeft = onRight && meetingSide(reversedRun(onRight.before), leftDown, depth);
  if (onRight === undefined || onLeft === undefined) return undefined;
  const inner = withoutStub(reversedRun(withoutStub(onLeft.before)));
  if (top.curves.some((curve) => inner.some((own) => crossingsOf(curve, own).length > 0))) return undefined;
  const side = (edge: Edge, down: readonly Curve[], rest: readonly Curve[], isRight: boolean): FacingSide => {
    const downwards = tangentAt(down[down.length - 1]!, 1);
    const up = { x: -downwards.x, y: -downwards.y };
    const seamUp = tangentAt(rest[0]!, 0);
    const hemInto = isRight ? tangentAt(hem.curves[0]!, 0) : back180(tangentAt(hem.curves.at(-1)!, 1));
    const innerInto = isRight ? back180(tangentAt(inner.at(-1)!, 1)) : tangentAt(inner[0]!, 0);
    return {
      edge: edge.name,
      down,
      height: lengthOfRun(rest),
      atHem: angleBetween(up, hemInto),
      atTop: angleBetween(back180(seamUp), innerInto),
    };
  };
  return {
    piece,
    inner,
    right: side(back, rightDown, onRight.after, true),
    left: side(front, leftDown, onLeft.after, false),
  };
}

function back180({ x, y }: Point): Point {
  return { x: -x, y: -y };
}

/** The inner edge up to a side, and what of the side lies below it; undefined where it passes the side by. */
function meetingSide(inner: readonly Curve[], down: readonly Curve[], depth: number) {
  const length = lengthOfRun(down);
  if (length <= depth) return undefined;
  const near = placeOnRun(down, length - depth);
  const corner = meeting(inner, down, REACH * depth, pointAt(near.curve, near.t));
  return corner !== undefined && lengthOfRun(corner.after) < length - JOIN ? corner : undefined;
}

/** A last curve shorter than this, mm, would turn by a tenth of what a seam may at the last digit of a drawing. */
const STUB = 1;

/** A short curve that a run was lengthened by or cut to, as the end of the one before it. */
function withoutStub(run: readonly Curve[]): readonly Curve[] {
  const [curve, stub] = run.slice(-2);
  if (curve?.kind !== 'cubic' || stub === undefined || lengthOfRun([stub]) >= STUB) return run;
  const to = endOf(stub);
  const handle = distance(curve.control2, curve.to);
  return [...run.slice(0, -2), { ...curve, control2: along(to, tangentAt(stub, 1), -handle), to }];
}

/** Farthest along the inner edge that it gives way to meet its neighbour's, as a share of its length. */
const GIVES_WAY = 0.25;

/** Heights, mm, and directions, radians, nearer than this meet: some hundredth of what a seam may miss by. */
const MEETS = { height: 0.001, direction: 1e-4 };

/**
 * The facing as a piece, its seams as high as agreed.
 * @param heights and angles at the inner edge, of the left and the right side, as the piece's own or the neighbour's say
 */
export function facingPiece(
  sides: FacingSides,
  agreed: { readonly left: Agreed; readonly right: Agreed },
): Piece {
  const { piece, left, right } = sides;
  const hem = piece.edges[2]!;
  const fromLeft = toMeet(reversedRun(sides.inner), left, agreed.left);
  const inner = toMeet(reversedRun(fromLeft), right, agreed.right);
  const edges = closedExactly([
    { name: INNER_EDGE, curves: inner },
    { name: right.edge, curves: below(right.down, agreed.right.height) },
    hem,
    { name: left.edge, curves: reversedRun(below(left.down, agreed.left.height)) },
  ]);
  return { ...piece, part: 'facing', edges, grain: facingGrain(piece, edges) };
}

export interface Agreed {
  readonly height: number;
  /** Between the seam upwards and the inner edge, radians. */
  readonly atTop: number;
}

/** An inner edge that ends at a side, led to the height that is agreed there. */
function toMeet(inner: readonly Curve[], side: FacingSide, agreed: Agreed): readonly Curve[] {
  const isMet =
    Math.abs(agreed.height - side.height) < MEETS.height &&
    Math.abs(agreed.atTop - side.atTop) < MEETS.direction;
  if (isMet) return inner;
  const length = lengthOfRun(inner);
  const away = Math.min(length * GIVES_WAY, Math.max(20, 2 * Math.abs(agreed.height - side.height)));
  const kept = upTo(inner, length - away);
  const from = endOf(kept[kept.length - 1]!);
  const way = tangentAt(kept[kept.length - 1]!, 1);
  const place = placeOnRun(side.down, lengthOfRun(side.down) - agreed.height);
  const to = pointAt(place.curve, place.t);
  const down = tangentAt(place.curve, place.t);
  // The direction into the piece at the agreed angle from the seam upwards: on the side where the edge comes from.
  const [a, b] = [agreed.atTop, -agreed.atTop].map((turn) => turned(back180(down), turn));
  const into = angleBetween(a!, back180(way)) < angleBetween(b!, back180(way)) ? a! : b!;
  const third = distance(from, to) / 3;
  const bridge: Cubic = {
    kind: 'cubic',
    from,
    control1: along(from, way, third),
    control2: along(to, into, third),
    to,
  };
  return [...kept, bridge];
}

function turned({ x, y }: Point, by: number): Point {
  return { x: x * Math.cos(by) - y * Math.sin(by), y: x * Math.sin(by) + y * Math.cos(by) };
}

function upTo(run: readonly Curve[], length: number): Curve[] {
  const place = placeOnRun(run, length);
  const index = run.indexOf(place.curve);
  return [...run.slice(0, index), partOf(place.curve, 0, place.t)];
}

/** What of a side lies below a height above the hem. */
function below(down: readonly Curve[], height: number): Curve[] {
  const place = placeOnRun(down, lengthOfRun(down) - height);
  const index = down.indexOf(place.curve);
  const rest = down.slice(index + 1);
  return 1 - place.t < JOIN ? rest : [partOf(place.curve, place.t, 1), ...rest];
}

/** Along the same thread as the piece that it faces. */
function facingGrain(piece: Piece, edges: readonly Edge[]) {
  const hem = edges[2]!.curves;
  const share = piece.frontEdge === 'fold' ? 0.85 : piece.backEdge === 'fold' ? 0.15 : 0.5;
  const low = placeOnRun(hem, lengthOfRun(hem) * share);
  const at = pointAt(low.curve, low.t);
  const inner = edges[0]!.curves;
  const high = placeOnRun(inner, lengthOfRun(inner) * (1 - share));
  return upright(middle(at, pointAt(high.curve, high.t)), edges);
}
