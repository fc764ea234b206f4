import type { CutPiece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { add } from '../geometry/point.ts';
import { type Depth, depthIn, type Exit, exitFrom, ON_OUTLINE, type Region } from '../geometry/region.ts';
import { CLOTH_HOLDS, LINE_STAYS } from '../geometry/tolerances.ts';
import { leastSewable } from './least-sewable.ts';
import { HEM, LEFT, type OutlineSample, WAIST } from './outline-samples.ts';
import type { EdgeChange } from './piece-change.ts';

/** A new piece laid on old cloth. */
export interface LaidPiece {
  readonly piece: CutPiece;
  readonly cutLine: readonly OutlineSample[];
  readonly seams: readonly OutlineSample[];
  /** The old cloth, and what the new cut line takes of it. */
  readonly cloth: Region;
  readonly own: Region;
  readonly shift: Point;
}

/** What comes off and what is missing, edge by edge; edges where neither is so are left out. */
export function edgeChanges(laid: LaidPiece): EdgeChange[] {
  const { edges, frontEdge } = laid.piece.piece;
  const rays = laid.seams.map((sample) => rayFrom(laid, sample));
  const lefts = edges.map((_, index) => leftOver(laid, rays, index));
  const corner = lefts.every((left) => left === undefined) ? cornerOutside(laid) : undefined;
  return edges.flatMap(({ name }, index): EdgeChange[] => {
    const comesOff = comingOff(rays, index);
    const left = lefts[index] ?? (corner?.edge === index ? corner.left : undefined);
    if (comesOff === undefined && left === undefined) return [];
    return [
      {
        edge: name,
        ...(comesOff === undefined ? {} : { comesOff }),
        ...(left === undefined ? {} : { left }),
        ...(left !== undefined && left.least < leastSewable(left.wanted) ? { tooLittle: true as const } : {}),
        ...(lefts[index] === undefined && left !== undefined ? { corner: true as const } : {}),
        ...(index === WAIST || index === HEM ? { from: frontEdge } : {}),
      },
    ];
  });
}

/** From a place of the new seam line square outwards: how far the cloth reaches, and how far the new cut line. */
interface Ray extends OutlineSample {
  readonly place: Depth;
  readonly cloth: Exit | undefined;
  readonly cut: Exit | undefined;
}

function rayFrom({ own, cloth, shift }: LaidPiece, sample: OutlineSample): Ray {
  const point = add(sample.point, shift);
  const place = depthIn(cloth, point.x, point.y);
  return {
    ...sample,
    place,
    cloth: exitFrom(cloth, point, sample.outwards, place.depth > -ON_OUTLINE),
    cut: exitFrom(own, sample.point, sample.outwards, true),
  };
}

/** Where every allowance is wide enough and only a corner of the cut line runs outside the cloth. */
function cornerOutside({ piece, cutLine, cloth, shift }: LaidPiece) {
  let worst = -CLOTH_HOLDS;
  let found: { edge: number; left: NonNullable<EdgeChange['left']> } | undefined;
  for (const { edge, point, along } of cutLine) {
    const { depth } = depthIn(cloth, point.x + shift.x, point.y + shift.y);
    if (depth >= worst) continue;
    worst = depth;
    const wanted = wantedAt(piece, edge);
    found = { edge, left: { wanted, least: wanted + depth, at: along } };
  }
  return found;
}

/** How far beyond the new cut line the cloth reaches. */
function comingOff(rays: readonly Ray[], edge: number): EdgeChange['comesOff'] {
  let most = 0;
  let at = 0;
  let least = Infinity;
  for (const { edge: own, along, cloth, cut } of rays) {
    if (own !== edge || cloth?.edge !== edge || cut?.edge !== edge) continue;
    const spare = cloth.distance - cut.distance;
    least = Math.min(least, spare);
    if (spare <= most) continue;
    most = spare;
    at = along;
  }
  return most > LINE_STAYS ? { most, least: Math.max(0, least), at } : undefined;
}

/**
 * Where the cloth reaches less far than the new cut line there is a lack. Where the seam line runs outside the cloth,
 * the lack is at the edge of the cloth that it crosses.
 */
function leftOver({ piece }: LaidPiece, rays: readonly Ray[], edge: number): EdgeChange['left'] {
  const wanted = wantedAt(piece, edge);
  let lack = CLOTH_HOLDS / 2;
  let found: EdgeChange['left'];
  for (const { edge: own, along, clear, place, cloth, cut } of rays) {
    const outside = place.depth < -LINE_STAYS;
    if ((outside ? place.edge : own) !== edge) continue;
    if (!outside && (cloth?.edge !== edge || !clear)) continue;
    const missing = outside ? wanted - place.depth : (cut?.distance ?? wanted) - (cloth?.distance ?? 0);
    if (missing <= lack) continue;
    lack = missing;
    found = {
      wanted,
      least: wanted - missing,
      at: own === edge ? along : endToward(piece, edge, own, along),
    };
  }
  return found;
}

/** A place of another edge, told along this one: the corner where the two meet; across the piece, as far down. */
function endToward({ piece }: CutPiece, edge: number, own: number, along: number): number {
  const isSide = (index: number): boolean => index !== WAIST && index !== HEM;
  const whole = lengthOfRun(piece.edges[edge]!.curves);
  if (isSide(edge) === isSide(own)) return Math.min(along, whole);
  const atFarEnd = isSide(edge) ? own === HEM : own !== LEFT;
  return atFarEnd ? whole : 0;
}

/** The allowance that the new piece should have at an edge, mm. */
function wantedAt({ piece, allowances, roughCut }: CutPiece, edge: number): number {
  return (allowances[piece.edges[edge]!.name] ?? 0) + (edge === HEM ? roughCut : 0);
}
