import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Piece } from '../draft/piece.ts';
import { chordOf, sidesAt } from '../draft/piece-sides.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { dot, leftOf, subtract, unit } from '../geometry/point.ts';
import { partOfRun, positionWhere } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore } from '../gown/layer.ts';
import type { Pleat } from '../gown/parts.ts';
import { type PleatFold, pleatFolds, pleatsOfLayer } from './pleat-folds.ts';
import { type TopFullness, topFullness } from './top-fullness.ts';

/** One pleat in one layer, all round. mm. */
export interface PleatFacts {
  readonly pleat: Pleat;
  readonly layer: string;
  /** Pleats of this name in the whole layer, and folds of each. */
  readonly places: number;
  readonly folds: number;
  /** Cloth that all of them take, across the grain: sewn width and this are the cut width. */
  readonly underlay: number;
  /** Cloth that they add to the waist seam's edge and to the hem, measured along them. */
  readonly atWaist: number;
  readonly atHem: number;
}

export function pleatFacts({ pleats }: Pick<Gown, 'pleats'>, own: LayerDraft): PleatFacts[] {
  return pleatsOfLayer(pleats, own.layer).map((pleat) => factsOf(pleat, own));
}

function factsOf(pleat: Pleat, { layer, draft }: LayerDraft): PleatFacts {
  const cuts = draft.cutAs?.map(({ piece }) => piece) ?? draft.pieces;
  const pieces = cuts.filter((_, i) => hasGore(layer, { name: cuts[i]!.gore }));
  const sum = (measure: (piece: Piece) => number): number =>
    pieces.reduce((all, piece) => all + (piece.cut === 'single' ? 1 : 2) * measure(piece), 0);
  const fullOf = ({ gore }: Piece): TopFullness | undefined =>
    topFullness(
      layer,
      draft,
      draft.gown.gores.findIndex(({ name }) => name === gore),
    );
  const all = sum((piece) => foldsIn(pleat, piece, fullOf(piece)).length);
  const each = pleat.kind === 'knife' || pleat.kind === 'kick' ? 1 : 2;
  const edge = (piece: Piece, which: 0 | 2): number =>
    foldsIn(pleat, piece, fullOf(piece)).reduce(
      (length, fold) => length + fold.share * lengthUnder(piece, which, fold),
      0,
    );
  const folds = pleat.kind === 'kick' ? all / 2 : all;
  return {
    pleat,
    layer: layer.name,
    places: folds / each,
    folds: each,
    underlay: folds * 2 * pleat.foldDepth,
    atWaist: pleat.kind === 'kick' ? 0 : sum((piece) => edge(piece, 0)),
    atHem: sum((piece) => edge(piece, 2)),
  };
}

/** A fold, and how often what it lies over is added: a kick pleat adds it once to each of its gores. */
type Taken = Pick<PleatFold, 'line' | 'under'> & { readonly depth: number; readonly share: 1 | 2 };

function foldsIn(pleat: Pleat, piece: Piece, full: TopFullness | undefined): Taken[] {
  const depth = pleat.foldDepth;
  if (pleat.kind !== 'kick')
    return pleatFolds([pleat], piece, full).map(({ line, under }) => ({ line, under, depth, share: 2 }));
  return sidesAt(piece, pleat.at).map((side) => ({
    line: chordOf(piece, side),
    under: side === 'right' ? 'left' : 'right',
    depth,
    share: 1,
  }));
}

/** Length of an edge for the depth of a fold, beside its line. */
function lengthUnder(piece: Piece, edge: 0 | 2, { line, under, depth }: Taken): number {
  const { curves } = piece.edges[edge]!;
  const run = edge === 0 ? curves : reversedRun(curves);
  const right = leftOf(unit(subtract(line.to, line.from)));
  const at = (away: number): number =>
    positionWhere(run, (point) => dot(subtract(point, line.from), right), away);
  const [from, to] = under === 'left' ? [at(-depth), at(0)] : [at(0), at(depth)];
  return lengthOfRun(partOfRun(run, from, to));
}
