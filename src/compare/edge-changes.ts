import type { CutPiece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import { add } from '../geometry/point.ts';
import { depthIn, exitFrom, type Region } from '../geometry/region.ts';
import { CLOTH_HOLDS, LINE_STAYS } from '../geometry/tolerances.ts';
import { HEM, type OutlineSample, WAIST } from './outline-samples.ts';
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
  const lefts = edges.map((_, index) => leftOver(laid, index));
  const corner = lefts.every((left) => left === undefined) ? cornerOutside(laid) : undefined;
  return edges.flatMap(({ name }, index): EdgeChange[] => {
    const comesOff = comingOff(laid, index);
    const left = lefts[index] ?? (corner?.edge === index ? corner.left : undefined);
    if (comesOff === undefined && left === undefined) return [];
    return [
      {
        edge: name,
        ...(comesOff === undefined ? {} : { comesOff }),
        ...(left === undefined ? {} : { left }),
        ...(index === WAIST || index === HEM ? { from: frontEdge } : {}),
      },
    ];
  });
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

/** Square to the new cut line, as far as the old cut line of the same edge. */
function comingOff({ cutLine, cloth, shift }: LaidPiece, edge: number): EdgeChange['comesOff'] {
  let most = 0;
  let at = 0;
  let least = Infinity;
  for (const sample of cutLine) {
    if (sample.edge !== edge) continue;
    const exit = exitFrom(cloth, add(sample.point, shift), sample.outwards);
    if (exit?.edge !== edge) continue;
    least = Math.min(least, exit.distance);
    if (exit.distance <= most) continue;
    most = exit.distance;
    at = sample.along;
  }
  return most > LINE_STAYS ? { most, least: Math.max(0, least), at } : undefined;
}

/**
 * Square to the new seam line, as far as the old cut line: less than the new cut line gives there is a lack. Where the
 * seam line runs outside the cloth, the lack is at the edge of the cloth that it crosses.
 */
function leftOver({ piece, seams, own, cloth, shift }: LaidPiece, edge: number): EdgeChange['left'] {
  const wanted = wantedAt(piece, edge);
  let lack = CLOTH_HOLDS / 2;
  let found: EdgeChange['left'];
  for (const sample of seams) {
    const point = add(sample.point, shift);
    const place = depthIn(cloth, point.x, point.y);
    const outside = place.depth < -LINE_STAYS;
    if ((outside ? place.edge : sample.edge) !== edge) continue;
    const exit = exitFrom(cloth, point, sample.outwards);
    if (!outside && exit?.edge !== edge) continue;
    const full = exitFrom(own, sample.point, sample.outwards)?.distance ?? wanted;
    const missing = outside ? wanted - place.depth : full - (exit?.distance ?? 0);
    if (missing <= lack) continue;
    lack = missing;
    found = { wanted, least: wanted - missing, at: sample.along };
  }
  return found;
}

/** The allowance that the new piece should have at an edge, mm. */
function wantedAt({ piece, allowances, roughCut }: CutPiece, edge: number): number {
  return (allowances[piece.edges[edge]!.name] ?? 0) + (edge === HEM ? roughCut : 0);
}
