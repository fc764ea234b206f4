import type { Span } from '../diagnostics/diagnostic.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { sectorPiece } from '../draft/sector-piece.ts';
import type { Line } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { placeOnRun } from '../geometry/length.ts';
import { along, leftOf } from '../geometry/point.ts';
import type { AskedBodice } from '../gown/above-waist.ts';
import type { DraftedBodice } from './draft-asked.ts';
import type { HalfBodice } from './draft-half.ts';
import { LOWER_EDGE, UPPER_EDGE } from './panel-piece.ts';

/** Every panel of every layer of a drafted bodice, as parts; and the panel behind a lacing. */
export function bodiceParts(bodice: DraftedBodice): Part[] {
  const { asked, draft } = bodice;
  const lines = linesOf(bodice);
  const panels = draft.pieces.flatMap((piece) =>
    asked.layers
      .filter(({ gores }) => gores.includes(piece.gore))
      .map(
        (layer): Part => ({
          of: { kind: 'panel' },
          layer,
          piece: { ...piece, part: 'bodice' },
          allowances: {},
          notches: notchesOf(draft.left),
          quartered: false,
          lowerSewn: true,
          marks: lines(piece),
          roughCut: 0,
          place: placeOfPanel(asked, piece.gore),
        }),
      ),
  );
  return [...panels, ...modestyParts(bodice)];
}

function placeOfPanel(asked: AskedBodice, name: string): () => Span {
  const index = asked.draft.panels.findIndex((panel) => panel.name === name);
  return () => asked.placeAt(['bodice', 'draft', 'panels', index]);
}

/** A straight piece as long as the laced edge, of every layer that has all panels. */
function modestyParts({ asked, lacing }: DraftedBodice): Part[] {
  const { closing, panels } = asked.draft;
  if (lacing === undefined || closing?.modesty === undefined) return [];
  const width = closing.modesty;
  const depth = lacing.places[0]! + lacing.places[lacing.places.length - 1]!;
  const piece = sectorPiece({ name: MODESTY, top: width, hem: width, depth, layers: [], copies: 1 });
  const [top, right, bottom, left] = piece.edges;
  const edges = [{ ...top!, name: UPPER_EDGE }, right!, { ...bottom!, name: LOWER_EDGE }, left!];
  return asked.layers
    .filter(({ gores }) => gores.length === panels.length)
    .map(
      (layer): Part => ({
        of: { kind: 'modesty-panel' },
        layer,
        piece: { ...piece, edges, part: 'bodice' },
        allowances: Object.fromEntries(edges.map(({ name }) => [name, layer.allowances.seam.width])),
        notches: new Map(),
        quartered: false,
        lowerSewn: true,
        roughCut: 0,
        place: () => asked.placeAt(['bodice', 'closing']),
      }),
    );
}

const MODESTY = 'modesty-panel';

/** Marks of different seams keep at least this apart, so that no wrong pair can match, mm (textbook: 1.3 cm). */
const APART = 13.5;
/** From the upper edge to the mark of the shortest seam, mm. */
const FIRST = 20;

/**
 * One balance mark a seam, counted from the upper edge, at a distance that no other seam has: the shorter the seam the
 * nearer; and one where the level waist crosses it.
 */
function notchesOf({ stations, upper, lower }: HalfBodice): Map<string, number[]> {
  const tops = stations.map((_, i) => -upper.valueAt(upper.ways[i]!));
  const lengths = tops.map((top, i) => top + lower.valueAt(lower.ways[i]!));
  const shortestFirst = lengths.map((_, i) => i).sort((a, b) => lengths[a]! - lengths[b]! || a - b);
  return new Map(
    stations.map((station, i) => {
      const [top, length] = [tops[i]!, lengths[i]!];
      const own = Math.min(FIRST + APART * shortestFirst.indexOf(i), length / 2);
      const hasWaist = top > APART && top < length - APART && Math.abs(top - own) > APART;
      return [station, hasWaist ? [own, top] : [own]];
    }),
  );
}

/** Lines inside a panel that are marked and not cut: the level waist, and the eyelets of a laced edge. */
function linesOf({ draft, asked, lacing }: DraftedBodice): (piece: Piece) => NonNullable<Part['marks']> {
  const { closing } = asked.draft;
  return (piece) => {
    const edge = piece.edges.find(({ name }) => name === closing?.at);
    const isOther = closing?.side !== undefined && piece.side !== undefined && closing.side !== piece.side;
    if (lacing === undefined || closing === undefined || edge === undefined || isOther)
      return waistLine(draft.left, piece);
    const isBack = piece.backEdge === edge.name && piece.edges[1] === edge;
    return [...waistLine(draft.left, piece), ...eyelets(edge, isBack, lacing.places, closing.fromEdge)];
  };
}

function waistLine(half: HalfBodice, piece: Piece): NonNullable<Part['marks']> {
  const p = half.pieces.findIndex(({ gore }) => gore === piece.gore);
  const isOwn = half.pieces[p] === piece;
  const above = [half.lower.ways[p]!, half.lower.ways[p + 1]!].every(
    (way) => half.lower.valueAt(way) > APART,
  );
  return isOwn && above ? [{ name: 'waist', curves: half.frames[p]!.levelAt(0) }] : [];
}

/** Half of a cross's arm, mm. */
const CROSS = 2.5;

/** A cross at the middle of each eyelet; the back edge runs down, the front edge up. */
function eyelets(
  { curves }: Piece['edges'][number],
  isBack: boolean,
  places: readonly number[],
  fromEdge: number,
): NonNullable<Part['marks']> {
  const length = places[places.length - 1]! + places[0]!;
  return places.flatMap((place) => {
    const at = placeOnRun(curves, isBack ? place : length - place);
    const way = tangentAt(at.curve, at.t);
    const middle = along(pointAt(at.curve, at.t), leftOf(way), -fromEdge);
    const arm = (direction: { x: number; y: number }): Line => ({
      kind: 'line',
      from: along(middle, direction, -CROSS),
      to: along(middle, direction, CROSS),
    });
    return [way, leftOf(way)].map((direction) => ({ name: 'eyelet', curves: [arm(direction)] }));
  });
}
