import { upright } from '../draft/grain-line.ts';
import type { Piece } from '../draft/piece.ts';
import { usableWidth } from '../draft/usable-width.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, pointAt, startOf } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { middle, subtract } from '../geometry/point.ts';
import { rotated, translated } from '../geometry/transform.ts';
import { allowanceAt, type Layer } from '../gown/layer.ts';
import { WRAP_EDGE } from '../gown/wrap.ts';

/** A seam whose two ends and middle lie on one line within this may be left out, mm. */
const STRAIGHT = 0.05;

/**
 * Neighbours cut as one where the seam between them is straight, so that they lie flat side by side, where both fit
 * the cloth's width, and where that saves: what the one piece takes, upright box with allowances, against the two.
 * @param facings from the centre front round
 * @param open seams that are open or have a wedge in them: over these none is joined
 */
export function joinedFacings(
  facings: readonly Piece[],
  layer: Layer,
  open: readonly string[] = [],
): JoinedFacing[] {
  const joined: JoinedFacing[] = [];
  for (const next of facings) {
    const last = joined.at(-1);
    const both = last && !open.includes(last.piece.backEdge) ? joinedOver(last.piece, next) : undefined;
    if (last !== undefined && both !== undefined && saves(both, [last.piece, next], layer)) {
      const seam = { name: last.piece.backEdge, curves: last.piece.edges[1]!.curves };
      joined[joined.length - 1] = { piece: both, seams: [...last.seams, seam] };
    } else joined.push({ piece: next, seams: [] });
  }
  return joined;
}

/** A facing, and where the seams lie that it is cut over. */
export interface JoinedFacing {
  readonly piece: Piece;
  readonly seams: readonly Edge[];
}

/** The next piece moved until its front edge lies on the last one's back edge. */
function joinedOver(last: Piece, next: Piece): Piece | undefined {
  const alike = last.side === next.side && last.middle === undefined && next.middle === undefined;
  const sewn = last.backEdge === next.frontEdge && !['fold', WRAP_EDGE].includes(last.backEdge);
  if (!alike || !sewn || next.cut === 'on-fold') return undefined;
  const [, seam, hem, left] = last.edges as readonly [Edge, Edge, Edge, Edge];
  const [innerOfNext, right, hemOfNext, seamOfNext] = next.edges as readonly [Edge, Edge, Edge, Edge];
  if (!isStraight(seam.curves) || !isStraight(seamOfNext.curves)) return undefined;
  const onto = movedOnto(seam.curves, seamOfNext.curves);
  const moved = (curves: readonly Curve[]): Curve[] => curves.map(onto);
  const edges: Edge[] = [
    { name: last.edges[0]!.name, curves: [...last.edges[0]!.curves, ...moved(innerOfNext.curves)] },
    { name: right.name, curves: moved(right.curves) },
    { name: hem.name, curves: [...moved(hemOfNext.curves), ...hem.curves] },
    left,
  ];
  const { grain } = last;
  return {
    ...last,
    gore: `${last.gore}-${next.gore}`,
    edges,
    backEdge: next.backEdge,
    grain: last.cut === 'on-fold' ? grain : upright(heart(edges), edges),
  };
}

/** Moves the seam of the next, which runs up, onto that of the last, which runs down. */
function movedOnto(down: readonly Curve[], up: readonly Curve[]): (curve: Curve) => Curve {
  const [top, bottom] = endsOf(down);
  const [low, high] = endsOf(up);
  const turn = angleOf(top, bottom) - angleOf(high, low);
  const spun = rotated({ kind: 'line', from: high, to: low }, turn);
  const shift = subtract(middle(top, bottom), pointAt(spun, 0.5));
  return (curve) => translated(rotated(curve, turn), shift);
}

function angleOf(from: Point, to: Point): number {
  const { x, y } = subtract(to, from);
  return Math.atan2(y, x);
}

function endsOf(curves: readonly Curve[]): [Point, Point] {
  return [startOf(curves[0]!), endOf(curves.at(-1)!)];
}

function isStraight(curves: readonly Curve[]): boolean {
  const [from, to] = endsOf(curves);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  return [0.25, 0.5, 0.75].every((share) => {
    const place = placeOnRun(curves, lengthOfRun(curves) * share);
    const { x, y } = pointAt(place.curve, place.t);
    const away = ((x - from.x) * (to.y - from.y) - (y - from.y) * (to.x - from.x)) / chord;
    return Math.abs(away) < STRAIGHT;
  });
}

function heart(edges: readonly Edge[]): Point {
  const at = (curves: readonly Curve[]): Point => {
    const place = placeOnRun(curves, lengthOfRun(curves) / 2);
    return pointAt(place.curve, place.t);
  };
  return middle(at(edges[0]!.curves), at(edges[2]!.curves));
}

function saves(joined: Piece, apart: readonly Piece[], layer: Layer): boolean {
  const both = boxOf(joined, layer);
  if (both.opened > usableWidth(layer.cloth)) return false;
  return both.area < apart.reduce((sum, piece) => sum + boxOf(piece, layer).area, 0);
}

/** Upright, with its allowances: how wide once it is opened out, mm, and what it takes of one half of her, mm². */
function boxOf({ edges, frontEdge, backEdge, cut }: Piece, layer: Layer) {
  const box = boundsOfCurves(edges.flatMap(({ curves }) => curves));
  const sides = [frontEdge, backEdge].filter((edge) => edge !== 'fold');
  const across = box.right - box.left + sides.reduce((sum, edge) => sum + allowanceAt(layer, edge), 0);
  const height =
    box.bottom - box.top + allowanceAt(layer, edges[2]!.name) + allowanceAt(layer, edges[0]!.name);
  return { opened: cut === 'on-fold' ? 2 * across : across, area: across * height };
}
