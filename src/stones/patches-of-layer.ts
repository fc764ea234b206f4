import { dartedWaist } from '../allowances/dart-waist.ts';
import { pleatFolds, pleatsOfLayer } from '../allowances/pleat-folds.ts';
import { type TopFullness, topFullness } from '../allowances/top-fullness.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Piece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { along, distance, subtract } from '../geometry/point.ts';
import { reversedRun } from '../geometry/split.ts';
import type { Round } from '../gown/lines.ts';
import type { Pleat, Stones } from '../gown/parts.ts';
import { isInside, type Patch, type PatchSide } from './scatter.ts';
import { beside, seamLine } from './seam-line.ts';

/** A piece of a layer to be scattered on, and which of the draft's it is. */
export interface PatchOfLayer extends Patch {
  readonly piece: Piece;
  readonly index: number;
}

/** A stone that is set already: on which of the draft's pieces, where, and how wide, mm. */
export interface Lying {
  readonly index: number;
  readonly at: Point;
  readonly size: number;
}

/** Between an outline and its points, mm: far less than a stone is set by eye. */
const DRAWN = 0.2;

/** The pieces of a layer, each with what lies beyond its sides, and how many stones it wants where. */
export function patchesOfLayer(
  stones: Stones,
  { draft, layer }: LayerDraft,
  pleats: readonly Pleat[],
  lying: readonly Lying[],
): PatchOfLayer[] {
  const own = [...draft.pieces.keys()].filter((index) => layer.gores.includes(draft.pieces[index]!.gore));
  const placed = pleatsOfLayer(pleats, layer);
  const isBehind = placesBehind(draft.pieces, draft.gown.round);
  return own.map((index) => {
    const piece = draft.pieces[index]!;
    const sides = (['front', 'back'] as const).map((side) => sideOf(draft, own, index, side));
    const [waist, hem] = [edgeOf(piece, 0), edgeOf(piece, 2)];
    // A fold is no seam: stones lie across it.
    const folds = pleatFolds(placed, piece).map(({ line }) => seamLine([line]));
    const free = [waist, hem, ...folds, ...sides.flatMap(({ line, isFold }) => (isFold ? [] : [line]))];
    const darts = dartsOf(piece, topFullness(layer, draft, index));
    const under = lying.filter((other) => other.index === index);
    const clear = stones.clear + (stones.size ?? 0) / 2;
    return {
      piece,
      index,
      outline: outlineOf(piece),
      sides,
      densityAt: (point) => {
        if (free.some((line) => beside(line, point).away < clear)) return 0;
        if (darts.some((dart) => isInside(dart, point))) return 0;
        if (under.some(({ at, size }) => distance(at, point) < (size + (stones.size ?? 0)) / 2)) return 0;
        const { away, way } = beside(waist, point);
        if (stones.offSeat !== undefined && away >= stones.offSeat[0] && away <= stones.offSeat[1])
          if (isBehind(index, way)) return 0;
        return densityAt(stones, stones.from === 'hem' ? beside(hem, point).away : away);
      },
    };
  });
}

export function outlineOf({ edges }: Piece): Patch['outline'] {
  return flattenedRun(
    edges.flatMap(({ curves }) => curves),
    DRAWN,
  );
}

/** Between a dart's legs lies what is folded away: from its point, on past the waist. */
function dartsOf(piece: Piece, full: TopFullness | undefined): (readonly Point[])[] {
  if (full?.rule.by !== 'darts') return [];
  return dartedWaist(piece, full).map(({ point, left, right }) => [
    point,
    along(point, subtract(left, point), 2),
    along(point, subtract(right, point), 2),
  ]);
}

/** Clockwise as drawn: the waist towards her back, the back edge down, the hem, the front edge up. */
function edgeOf({ edges }: Piece, place: 0 | 2) {
  return seamLine(edges[place]!.curves);
}

/** From the waist down. */
function sideLine({ edges }: Piece, side: 'front' | 'back') {
  return seamLine(side === 'front' ? reversedRun(edges[3]!.curves) : edges[1]!.curves);
}

/** From the first figure to the second over the span; none outside it. */
function densityAt({ perDm2, over }: Stones, away: number): number {
  const [first, last] = perDm2 ?? [0, 0];
  if (over === undefined) return first;
  const share = (away - over[0]) / (over[1] - over[0]);
  return share < 0 || share > 1 ? 0 : first + share * (last - first);
}

type Draft = LayerDraft['draft'];

/**
 * What lies beyond the front or the back edge of a piece: the next one round, on the other half of her too, or at the
 * centres of a mirrored gown its own mirror image. Nothing where the edge is free, or the layer ends.
 */
function sideOf(
  { pieces, gown: { round, stations } }: Draft,
  own: readonly number[],
  index: number,
  side: 'front' | 'back',
): PatchSide & { readonly isFold: boolean } {
  const piece = pieces[index]!;
  const line = sideLine(piece, side);
  const isFold = (side === 'front' ? piece.frontEdge : piece.backEdge) === 'fold';
  const next = side === 'front' ? index - 1 : index + 1;
  const isCentre = next < 0 || next >= pieces.length;
  if (stations[side === 'front' ? index : index + 1]?.free === true) return { line, isFold };
  if (isCentre && round === 'mirrored')
    return { line, isFold, beyond: { patch: own.indexOf(index), line, mirrored: true } };
  const other = (next + pieces.length) % pieces.length;
  const patch = own.indexOf(other);
  if (patch < 0 || other === index) return { line, isFold };
  const otherSide = side === 'front' ? 'back' : 'front';
  return { line, isFold, beyond: { patch, line: sideLine(pieces[other]!, otherSide), mirrored: false } };
}

/** Whether a place on the waist edge of a piece lies in the back half of her, by its share of the waist. */
function placesBehind(pieces: readonly Piece[], round: Round): (index: number, way: number) => boolean {
  const tops = pieces.map((piece) => edgeOf(piece, 0).ways.at(-1)!);
  const all = tops.reduce((sum, top) => sum + top, 0);
  const before = tops.map((_, i) => tops.slice(0, i).reduce((sum, top) => sum + top, 0));
  return (index, way) => {
    const share = (before[index]! + way) / all;
    return round === 'mirrored' ? share > 0.5 : Math.abs(share - 0.5) < 0.25;
  };
}
