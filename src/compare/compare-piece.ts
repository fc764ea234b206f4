import type { CutPiece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { add, along, distance, subtract } from '../geometry/point.ts';
import { depthIn, isNoLarger, type Region } from '../geometry/region.ts';
import { CLOTH_HOLDS, LINE_STAYS } from '../geometry/tolerances.ts';
import { laidOn } from './best-shift.ts';
import { type Cloth, clothOf } from './cloth.ts';
import { edgeChanges } from './edge-changes.ts';
import { leastSewable } from './least-sewable.ts';
import { type OutlineSample, outlineSamples } from './outline-samples.ts';
import type { EdgeChange, PieceChange } from './piece-change.ts';

/** What the shapes alone say of one piece. */
export type ShapeChange = Pick<PieceChange, 'verdict' | 'shift' | 'slid' | 'edges' | 'marks' | 'amount'>;

/** Lays the new piece on the cloth that was cut by the old one. */
export function comparePiece(old: CutPiece, piece: CutPiece): ShapeChange {
  const cloth = clothOf(old, piece);
  const own = clothOf(piece, piece);
  const onFold = piece.piece.cut === 'on-fold' && cloth.foldAt !== undefined;
  const start = { x: onFold ? cloth.foldAt! - own.foldAt! : 0, y: 0 };
  const cutLine = outlineSamples(piece.cutEdges);
  const seams = outlineSamples(piece.piece.edges);
  const marks = movedMarks(old, piece, start);
  if (staysThere(cutLine, old.cutEdges, cloth, own, start) && !marks.includes('seam-line'))
    return {
      verdict: marks.includes('folds') ? 're-mark' : 'same',
      shift: start,
      slid: NOT_SLID,
      edges: [],
      marks,
      amount: 0,
    };

  const lay = (samples: readonly OutlineSample[], region?: Region) =>
    laidOn(pointsOf(samples), cloth.region, start, onFold, region);
  const changesAt = (shift: Point): EdgeChange[] =>
    edgeChanges({ piece, cutLine, seams, cloth: cloth.region, own: own.region, shift });
  if (isNoLarger(own.region, cloth.region)) {
    const { shift, depth } = lay(cutLine, own.region);
    if (depth >= -CLOTH_HOLDS) {
      const edges = changesAt(shift).flatMap(withoutLeft);
      return { verdict: 're-mark', ...slidTo(shift, start), marks, edges, amount: mostOff(edges) };
    }
  }
  const { shift, depth } = lay(leastSewn(piece, seams));
  if (depth >= -CLOTH_HOLDS) {
    const edges = changesAt(shift);
    return { verdict: 'let-out', ...slidTo(shift, start), marks, edges, amount: shortest(edges)?.least ?? 0 };
  }
  const edges = changesAt(start);
  return {
    verdict: 're-cut',
    shift: start,
    slid: NOT_SLID,
    marks,
    edges,
    amount: Math.max(-depth, ...leftsOf(edges).map(shortBy)),
  };
}

const NOT_SLID: Point = { x: 0, y: 0 };

function slidTo(shift: Point, start: Point): Pick<ShapeChange, 'shift' | 'slid'> {
  return { shift, slid: subtract(shift, start) };
}

function pointsOf(samples: readonly OutlineSample[]): Point[] {
  return samples.map(({ point }) => point);
}

/**
 * What the cloth must reach so that the piece can be sewn: its seam line everywhere, and the least allowance beyond it
 * clear of the corners, where allowances are trimmed and taper anyway.
 */
function leastSewn({ piece, allowances }: CutPiece, seams: readonly OutlineSample[]): OutlineSample[] {
  const beyond = seams
    .filter(({ clear }) => clear)
    .map((sample) => {
      const width = leastSewable(allowances[piece.edges[sample.edge]!.name] ?? 0);
      return { ...sample, point: along(sample.point, sample.outwards, width) };
    });
  return [...seams, ...beyond];
}

function withoutLeft({
  left: _left,
  tooLittle: _tooLittle,
  corner: _corner,
  ...edge
}: EdgeChange): EdgeChange[] {
  return edge.comesOff === undefined ? [] : [edge];
}

/** Where most is missing. */
function shortest(edges: readonly EdgeChange[]): EdgeChange['left'] {
  return leftsOf(edges).sort((a, b) => b.wanted - b.least - (a.wanted - a.least))[0];
}

function leftsOf(edges: readonly EdgeChange[]): NonNullable<EdgeChange['left']>[] {
  return edges.flatMap((edge) => (edge.left === undefined ? [] : [edge.left]));
}

function mostOff(edges: readonly EdgeChange[]): number {
  return Math.max(0, ...edges.map((edge) => edge.comesOff?.most ?? 0));
}

/** How far the seam line runs outside the cloth, or what is missing of an allowance that can be sewn. */
function shortBy({ wanted, least }: NonNullable<EdgeChange['left']>): number {
  return least < 0 ? -least : leastSewable(wanted) - least;
}

/** Whether the new cut line lies on the old one, and the old one on the new. */
function staysThere(
  cutLine: readonly OutlineSample[],
  oldEdges: readonly Edge[],
  cloth: Cloth,
  own: Cloth,
  shift: Point,
): boolean {
  const back = { x: -shift.x, y: -shift.y };
  return liesOn(cutLine, cloth.region, shift) && liesOn(outlineSamples(oldEdges), own.region, back);
}

function liesOn(samples: readonly OutlineSample[], region: Region, shift: Point): boolean {
  return samples.every((sample) => {
    const { x, y } = add(sample.point, shift);
    return Math.abs(depthIn(region, x, y).depth) <= LINE_STAYS;
  });
}

function movedMarks(old: CutPiece, piece: CutPiece, shift: Point): PieceChange['marks'] {
  const lines = clothOf({ ...old, cutEdges: old.piece.edges }, piece);
  const stays = liesOn(outlineSamples(piece.piece.edges), lines.region, shift);
  return [
    ...(stays ? [] : (['seam-line'] as const)),
    ...(sameNotches(old, piece) ? [] : (['notches'] as const)),
    ...(sameFolds(old, piece, shift) ? [] : (['folds'] as const)),
  ];
}

/** Lines that are folded, or sewn to, each where it was. */
function sameFolds(old: CutPiece, piece: CutPiece, shift: Point): boolean {
  const places = ({ marks }: CutPiece): { name: string; ends: Point[] }[] =>
    marks
      .filter(({ name }) => name.endsWith('-line'))
      .map(({ name, curves }) => ({
        name,
        ends: [startOf(curves[0]!), endOf(curves[curves.length - 1]!)],
      }));
  const [before, after] = [places(old), places(piece)];
  return (
    before.length === after.length &&
    after.every(({ name, ends }, i) => {
      const was = before[i]!;
      return (
        name === was.name && ends.every((end, k) => distance(add(end, shift), was.ends[k]!) <= LINE_STAYS)
      );
    })
  );
}

function sameNotches(old: CutPiece, piece: CutPiece): boolean {
  // A piece that was cut on the fold has the marks of its one drawn side on both.
  const opened = piece.piece.middle !== undefined && old.piece.cut === 'on-fold';
  const before = notchPlaces(old, opened);
  const after = notchPlaces(piece, opened);
  return (
    before.length === after.length &&
    before.every(
      (notch, i) =>
        notch.left === after[i]!.left && Math.abs(notch.distance - after[i]!.distance) <= LINE_STAYS,
    )
  );
}

function notchPlaces({ piece, notches }: CutPiece, opened: boolean): { left: boolean; distance: number }[] {
  const places = notches.map(({ edge, distance }) => ({
    left: !opened && edge === piece.frontEdge,
    distance,
  }));
  return places
    .filter((place, i) => !opened || places.findIndex(({ distance }) => distance === place.distance) === i)
    .sort((a, b) => Number(a.left) - Number(b.left) || a.distance - b.distance);
}
