import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf } from '../geometry/evaluate.ts';
import { lengthOf, lengthOfRun } from '../geometry/length.ts';
import { subtract } from '../geometry/point.ts';
import { partOfRun, positionAt } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import { reflected, rotated, translated } from '../geometry/transform.ts';
import type { Dart } from '../gown/cloth.ts';
import { hasGore } from '../gown/layer.ts';
import { WRAP_EDGE } from '../gown/wrap.ts';
import { closedExactly } from './closed-exactly.ts';
import type { GownDraft } from './draft-gown.ts';
import type { LayerDraft } from './draft-layers.ts';
import type { Piece } from './piece.ts';
import { chordOf, type DrawnSide, isFrontLeft, sidesAt } from './piece-sides.ts';

/** What tells a wrap. */
type OfDraft = Pick<GownDraft, 'gown' | 'shape'>;

/** What a piece has beyond the line of a wrap: the cloth that it lies over there, as wide as half of the overlap. mm. */
export interface Beyond {
  readonly side: DrawnSide;
  /** Whose cloth it lies over, and on which side that has the same line. */
  readonly over: Piece;
  readonly overSide: DrawnSide;
  /** Where the line itself lies, from waist to hem. */
  readonly line: Line;
  /** Along the waist, as sewn and as cut: a dart of what it lies over is sewn in it as well. */
  readonly sewn: number;
  readonly cut: number;
  readonly atHem: number;
  readonly darts: readonly (Dart & { readonly fromLine: number })[];
}

/**
 * What a piece has beyond the wrap, at each side that lies there. Sewn, the skirt is a ring; the edges of a wrap run on
 * past where it would be sewn, each over the other's cloth, so that is what it is cut like.
 */
export function beyondWrap(piece: Piece, { gown, shape }: OfDraft, all: readonly Piece[]): Beyond[] {
  const { wrapped, gores } = gown;
  if (wrapped === undefined) return [];
  return sidesAt(piece, wrapped.at).flatMap((side) => {
    const [over, overSide] = besideWrap(piece, side, wrapped.at, all);
    const sewn = wrapped.overlap / 2;
    const top = lengthOfRun(over.edges[0]!.curves);
    const own = gores.find(({ name }) => name === over.gore)?.fullness;
    const said = own?.by === 'darts' ? (own.darts ?? []) : [];
    const whole = own === undefined ? top : top / own.ratio;
    const isFront = (overSide === 'left') === isFrontLeft(over);
    const darts = said.map((dart) => ({
      ...dart,
      fromLine: (isFront ? dart.at : 1 - dart.at) * whole,
      towards: foldsLikewise(dart, { piece, over, isMirrored: overSide === side }),
    }));
    const within = darts.filter(({ fromLine, takesIn }) => fromLine + takesIn / 2 < sewn);
    const taken = within.reduce((sum, { takesIn }) => sum + takesIn, 0);
    const line = chordOf(piece, side);
    // A layer that is shorter ends where the same edge has come so far.
    const long = lengthOf(line);
    const atHem = sewn + (wrapped.overlapAtHem / 2 - sewn) * (long / (long + shape.shorter));
    return [{ side, over, overSide, line, sewn, cut: sewn + taken, atHem, darts: within }];
  });
}

/** A dart is folded as it is on the piece that is covered, said as this piece would. */
function foldsLikewise(
  { towards }: Pick<Dart, 'towards'>,
  { piece, over, isMirrored }: { piece: Piece; over: Piece; isMirrored: boolean },
): Dart['towards'] {
  const isLeft = ((towards === 'front') === isFrontLeft(over)) !== isMirrored;
  return isLeft === isFrontLeft(piece) ? 'front' : 'back';
}

/** The piece on the other side of the line; where both are cut alike it is its own mirror image. */
function besideWrap(piece: Piece, side: DrawnSide, at: string, all: readonly Piece[]): [Piece, DrawnSide] {
  for (const other of all) for (const drawn of sidesAt(other, at)) if (drawn !== side) return [other, drawn];
  return [piece, side];
}

/** A piece as it is cut for a wrap. */
export function cutForWrap(piece: Piece, draft: OfDraft, all: readonly Piece[]): Piece {
  return beyondWrap(piece, draft, all).reduce(runOn, piece);
}

/** The draft's pieces as they are cut for a wrap. */
export function wrappedPieces(draft: OfDraft & Pick<GownDraft, 'pieces'>): readonly Piece[] {
  const { pieces } = draft;
  return draft.gown.wrapped === undefined ? pieces : pieces.map((piece) => cutForWrap(piece, draft, pieces));
}

/** One of the two edges of a wrap, the longer one, mm; undefined where a layer has none. */
export function wrapEdgeOf({ layer, draft }: LayerDraft): number | undefined {
  if (draft.gown.wrapped === undefined) return undefined;
  const edges = wrappedPieces(draft)
    .filter(({ gore }) => hasGore(layer, { name: gore }))
    .flatMap((piece) => piece.edges.filter(({ name }) => name === WRAP_EDGE));
  return edges.length === 0 ? undefined : Math.max(...edges.map(({ curves }) => lengthOfRun(curves)));
}

/** By how much a layer's edges are longer than the ring that they make: both edges together, mm. */
export function overlapOf({ layer, draft }: LayerDraft, edge: 'waist' | 'hem'): number {
  const { pieces } = draft;
  const own = pieces.filter(({ gore }) => hasGore(layer, { name: gore }));
  return own.reduce(
    (sum, piece) =>
      sum +
      (piece.cut === 'pair' ? 2 : 1) *
        beyondWrap(piece, draft, pieces).reduce(
          (all, { sewn, atHem }) => all + (edge === 'waist' ? sewn : atHem),
          0,
        ),
    0,
  );
}

export function runOn(piece: Piece, beyond: Beyond): Piece {
  const { side, cut, atHem } = beyond;
  const waistOn = outwards(beyond, 0, cut);
  const hemOn = outwards(beyond, 2, atHem);
  const free: Line = {
    kind: 'line',
    from: endOf(waistOn[waistOn.length - 1]!),
    to: endOf(hemOn[hemOn.length - 1]!),
  };
  const [waist, right, hem, left] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  const isRight = side === 'right';
  const edges = closedExactly([
    {
      name: waist.name,
      curves: isRight ? [...waist.curves, ...waistOn] : [...reversedRun(waistOn), ...waist.curves],
    },
    isRight ? { name: WRAP_EDGE, curves: [free] } : right,
    {
      name: hem.name,
      curves: isRight ? [...reversedRun(hemOn), ...hem.curves] : [...hem.curves, ...hemOn],
    },
    isRight ? left : { name: WRAP_EDGE, curves: reversedRun([free]) },
  ]);
  return { ...piece, edges, ...(isRight ? { backEdge: WRAP_EDGE } : { frontEdge: WRAP_EDGE }) };
}

/** So much of an edge of what it lies over, from the line on, laid where that lies. */
function outwards({ over, overSide, side, line }: Beyond, edge: 0 | 2, length: number): Curve[] {
  const { curves } = over.edges[edge]!;
  const startsThere = (edge === 0) === (overSide === 'left');
  const run = startsThere ? curves : reversedRun(curves);
  const own = partOfRun(run, 0, positionAt(run, length));
  const down = subtract(line.to, line.from);
  if (overSide === side) return own.map((curve) => reflected(curve, line.from, down));
  const there = chordOf(over, overSide);
  const turn = angleOf(down) - angleOf(subtract(there.to, there.from));
  const turned = rotated({ kind: 'line', from: there.from, to: there.to }, turn) as Line;
  const shift = subtract(line.from, turned.from);
  return own.map((curve) => translated(rotated(curve, turn), shift));
}

function angleOf({ x, y }: Point): number {
  return Math.atan2(y, x);
}
