import type { GownDraft } from '../draft/draft-gown.ts';
import { upright } from '../draft/grain-line.ts';
import { mirroredPiece, sided } from '../draft/halves-apart.ts';
import type { PartOfGown, Piece } from '../draft/piece.ts';
import { type DrawnSide, sideDown } from '../draft/piece-sides.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, pointAt, startOf } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { dot, leftOf, middle, subtract, unit } from '../geometry/point.ts';
import { partOfRun, positionAt } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import { FIT } from '../geometry/tolerances.ts';
import { isOneOf } from '../gown/openings.ts';
import type { Side, Station } from '../gown/station.ts';

/** A stretch of a seam that stays open, mm below the waist seam; `to` undefined goes on to the hem. */
export interface OpenPart {
  readonly stations: readonly Station[];
  readonly side: Side | undefined;
  readonly from: number;
  readonly to?: number;
}

/** An edge that bends by more than this over its open part is faced by its own shape, mm: a strip would pull it. */
const BENDS = 1;

interface OpenEdge {
  readonly piece: Piece;
  readonly side: DrawnSide;
  readonly run: readonly Curve[];
}

/**
 * Facings of an open stretch of a seam whose edges bend: of both gores what lies within their depth of it. Undefined where
 * they are straight, or where a gore is not so wide: a strip serves.
 */
export function shapedStrips(
  draft: GownDraft,
  open: OpenPart,
  { name, part, depth }: { readonly name: string; readonly part: PartOfGown; readonly depth: number },
): readonly Piece[] | undefined {
  const edges = openEdges(draft, open);
  if (edges.every(({ run }) => bendOfRun(run) <= BENDS)) return undefined;
  const strips = edges.map((edge) => stripOf(edge, depth));
  if (strips.includes(undefined)) return undefined;
  return strips.map((strip, i) => {
    const { side } = edges[i]!;
    const own = edges.length === 1 ? name : `${name}-${side === 'right' ? 'front' : 'back'}`;
    const station = open.stations.length > 1 ? `-${1 + Math.floor(i / 2)}` : '';
    return onItsSide({ ...strip!, gore: `${own}${station}`, part }, draft, open.side);
  });
}

/** At a seam off the centres both sides of her have one, unless one alone was asked for. */
function onItsSide(piece: Piece, { gown }: GownDraft, side: Side | undefined): Piece {
  if (gown.round !== 'mirrored' || side === undefined) return piece;
  return side === 'right' ? mirroredPiece(piece) : sided(piece, 'left');
}

/** The edge of the gore in front of each station and that of the one behind it; at a centre of alike sides one is the other. */
function openEdges({ gown, pieces }: GownDraft, { stations, from, to }: OpenPart): OpenEdge[] {
  const round = gown.round !== 'mirrored';
  const last = pieces.length;
  return gown.stations.slice(0, round ? last : last + 1).flatMap((station, i) => {
    if (!stations.some((one) => isOneOf(station, one))) return [];
    const before = pieces[round && i === 0 ? last - 1 : i - 1];
    const sides: [Piece | undefined, DrawnSide][] = [
      [before, 'right'],
      [pieces[i], 'left'],
    ];
    return sides.flatMap(([piece, side]) => {
      if (piece === undefined) return [];
      const whole = sideDown(piece, side);
      const ends = [Math.max(0, from), Math.min(to ?? Number.POSITIVE_INFINITY, lengthOfRun(whole))];
      const [a, b] = ends.map((length) => positionAt(whole, length));
      return [{ piece, side, run: partOfRun(whole, a!, b!) }];
    });
  });
}

function bendOfRun(run: readonly Curve[]): number {
  const [first, last] = [startOf(run[0]!), endOf(run[run.length - 1]!)];
  const out = leftOf(unit(subtract(last, first)));
  const whole = lengthOfRun(run);
  return Math.max(
    ...Array.from({ length: 21 }, (_, i) => {
      const { curve, t } = placeOnRun(run, (whole * i) / 20);
      return Math.abs(dot(subtract(pointAt(curve, t), first), out));
    }),
  );
}

function stripOf({ piece, side, run }: OpenEdge, depth: number): Piece | undefined {
  // Inwards of an outline that is drawn clockwise: at its left side that runs upwards.
  const inner = offsetRun(side === 'right' ? run : reversedRun(run), -depth, FIT);
  if (inner === undefined) return undefined;
  const down = side === 'right' ? inner : reversedRun(inner);
  const [left, right] = side === 'right' ? [down, run] : [run, down];
  const [innerName, sewnName] = ['inner-edge', 'sewn-edge'];
  const edges: Edge[] = [
    { name: 'upper-end', curves: [line(startOf(left[0]!), startOf(right[0]!))] },
    { name: side === 'right' ? sewnName : innerName, curves: right },
    { name: 'lower-end', curves: [line(endOf(right[right.length - 1]!), endOf(left[left.length - 1]!))] },
    { name: side === 'right' ? innerName : sewnName, curves: reversedRun(left) },
  ];
  const heart = middle(halfWay(left), halfWay(right));
  return {
    ...piece,
    edges,
    frontEdge: edges[3]!.name,
    backEdge: edges[1]!.name,
    grain: upright(heart, edges),
    cut: piece.cut === 'single' ? 'single' : 'pair',
  };
}

function halfWay(run: readonly Curve[]): Point {
  const { curve, t } = placeOnRun(run, lengthOfRun(run) / 2);
  return pointAt(curve, t);
}

function line(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}
