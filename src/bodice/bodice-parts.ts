import { type Part, partLayer } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { sectorPiece } from '../draft/sector-piece.ts';
import type { Line } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { placeOnRun } from '../geometry/length.ts';
import { along, leftOf } from '../geometry/point.ts';
import type { BodiceLayerSpec } from '../gown-file/bodice-spec.ts';
import type { Allowances } from '../gown-file/spec.ts';
import type { DraftingSpec } from './bodice-of-spec.ts';
import type { HalfBodice } from './draft-half.ts';
import { LOWER_EDGE, UPPER_EDGE } from './panel-piece.ts';
import type { DraftedBodice } from './resolve-bodice.ts';

/** Every panel of every layer of a drafted bodice, as parts with allowances of their own. */
export function bodiceParts(bodice: DraftedBodice): Part[] {
  const { spec, draft } = bodice;
  const lines = linesOf(bodice);
  const panels = draft.pieces.flatMap((piece) =>
    spec.bodice.draft.layers
      .filter(({ panels }) => panels === undefined || panels.includes(piece.gore))
      .map(
        (layer): Part => ({
          layer: partLayer(layer.name, layer.cloth, 'raw', layer.allowances),
          piece: { ...piece, part: 'bodice' },
          allowances: allowancesOf(spec, layer, piece),
          notches: notchesOf(draft.left),
          quartered: false,
          lowerSewn: true,
          marks: lines(piece),
        }),
      ),
  );
  return [...panels, ...modestyParts(bodice)];
}

/** The panel behind a lacing: a straight piece as long as the laced edge, of every layer that has all panels. */
function modestyParts({ spec, lacing }: DraftedBodice): Part[] {
  const { closing, layers, allowances } = spec.bodice.draft;
  if (lacing === undefined || closing?.modesty === undefined) return [];
  const length = lacing.places[0]! + lacing.places[lacing.places.length - 1]!;
  const piece = sectorPiece({
    name: MODESTY,
    top: closing.modesty,
    hem: closing.modesty,
    depth: length,
    layers: [],
    copies: 1,
  });
  const [top, right, bottom, left] = piece.edges;
  const edges = [{ ...top!, name: UPPER_EDGE }, right!, { ...bottom!, name: LOWER_EDGE }, left!];
  return layers
    .filter(({ panels }) => panels === undefined)
    .map((layer): Part => {
      const seam = layer.allowances.seam ?? allowances.seam ?? spec.allowances.seam ?? 0;
      return {
        layer: partLayer(layer.name, layer.cloth, 'raw', layer.allowances),
        piece: { ...piece, edges, part: 'bodice' },
        allowances: Object.fromEntries(edges.map(({ name }) => [name, seam])),
        notches: new Map(),
        quartered: false,
        lowerSewn: true,
        remarks: ['behind the lacing, sewn to one edge only'],
      };
    });
}

const MODESTY = 'modesty-panel';

/** A station's own before `seam`, a layer's before the bodice's, the bodice's before the gown's. */
function allowancesOf(spec: DraftingSpec, layer: BodiceLayerSpec, piece: Piece): Record<string, number> {
  const { draft } = spec.bodice;
  const said = (edge: string): number | undefined => layer.allowances[edge] ?? draft.allowances[edge];
  const gowns = (edge: string): number => (spec.allowances as Allowances)[edge] ?? 0;
  const seam = said('seam') ?? gowns('seam');
  const widths: Record<string, number> = {
    [UPPER_EDGE]: said(UPPER_EDGE) ?? (draft.upperFinish === 'bound' ? 0 : seam),
    [LOWER_EDGE]: said(LOWER_EDGE) ?? gowns(LOWER_EDGE),
  };
  for (const edge of [piece.frontEdge, piece.backEdge])
    widths[edge] = edge === 'fold' ? 0 : (said(edge) ?? seam);
  return widths;
}

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
function linesOf({ draft, spec, lacing }: DraftedBodice): (piece: Piece) => NonNullable<Part['marks']> {
  const closing = spec.bodice.draft.closing;
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
