import type { GownDraft } from '../draft/draft-gown.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import { NOTCH_AT as GODET_NOTCH } from '../draft/godets.ts';
import { withKicks } from '../draft/kick-extension.ts';
import { onBias } from '../draft/on-bias.ts';
import type { Part } from '../draft/part.ts';
import { type BustleMarked, type CutPiece, linesOf, type Piece, type StonesMarked } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import { beyondWrap, runOn } from '../draft/wrapped.ts';
import type { Point } from '../geometry/curve.ts';
import { areDrawable } from '../geometry/endless.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { middle } from '../geometry/point.ts';
import { FIT } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore, type Layer } from '../gown/layer.ts';
import type { GownLines } from '../gown/lines.ts';
import { goresOnce } from '../gown/lines.ts';
import { type AllowancePlan, allowancePlan, partPlan } from './allowance-plan.ts';
import { bustleMarks, bustleRemarks } from './bustle-points.ts';
import { cutOutline } from './cut-outline.ts';
import { facingMarks } from './facing-marks.ts';
import { fullnessRemarks, quarterNotches } from './fullness-marks.ts';
import { APART, notchDistances, notchesOf } from './notches.ts';
import { withPleats } from './open-pleats.ts';
import { partRemarks } from './part-remarks.ts';
import { type PleatFold, pleatFolds, pleatsOfLayer } from './pleat-folds.ts';
import { pleatRemarks } from './pleat-remarks.ts';
import { pleatMarks } from './pleats.ts';
import { type TopFullness, topFullness } from './top-fullness.ts';
import { tuckLines, tuckRemarks } from './tuck-lines.ts';
import { withDarts } from './with-darts.ts';
import { fullForWrap, withWrapNotches, wrapMarks, wrapRemarks } from './wrap-marks.ts';

/**
 * Adds every layer's allowances: gores from the centre front round, then flounces, strips and godets. Layers whose cut
 * outline is the same share one piece, which names them all.
 */
export function cutPieces(
  gown: GownToCut,
  layers: readonly LayerDraft[],
  parts: readonly Part[] = [],
  stonesOn: StonesOn = () => [],
  bustleOn: BustleOn = () => [],
): CutPiece[] {
  const alike = new Map<string, Blank[]>();
  const drafts = [...new Set(layers.map(({ draft }) => draft))];
  const notches = new Map(drafts.map((draft) => [draft, distancesBySeam(gown, draft)]));
  const marked = ({ draft }: LayerDraft) => notches.get(draft)!;
  const own = parts.map((part) => partBlank({ ...part, notches: facingMarks(part, layers, marked) }));
  for (const blank of [...goreBlanks(gown, layers, notches, stonesOn, bustleOn), ...own]) {
    const same = alike.get(blank.key);
    if (same === undefined) alike.set(blank.key, [blank]);
    else same.push(blank);
  }
  return [...alike.values()].map((same) => drawable(cutPiece(same)));
}

/** What is set on a piece of a layer: `gore` is its place among the draft's pieces. */
export type StonesOn = (layer: Layer, piece: Piece, gore: number) => readonly StonesMarked[];
export type BustleOn = (layer: Layer, piece: Piece, gore: number) => readonly BustleMarked[];

/** @throws RangeError for a piece at no real place: sheets and lays would be looked for without end */
function drawable(cut: CutPiece): CutPiece {
  const { piece, cutEdges, notches, marks } = cut;
  const lines = [...cutEdges, ...marks].flatMap(({ curves }) => curves);
  const ticks = notches.flatMap((notch) => notch.ticks);
  if (areDrawable([...linesOf(piece), ...lines, ...ticks])) return cut;
  throw new RangeError(`the cut line of ${piece.gore} lies at no place on cloth`);
}

/** What of the gown its pieces need beside their outlines. */
export type GownToCut = GownLines & Pick<Gown, 'godets' | 'pleats' | 'slits' | 'pockets' | 'wrap'>;

/** A piece of one layer before its allowances are drawn. */
interface Blank {
  readonly piece: Piece;
  readonly layer: Layer;
  readonly plan: AllowancePlan;
  readonly notches: ReadonlyMap<string, readonly number[]>;
  readonly full?: TopFullness;
  readonly quartered: boolean;
  readonly remarks: readonly PieceRemark[];
  readonly marks?: CutPiece['marks'];
  readonly stones?: readonly StonesMarked[];
  readonly bustle?: readonly BustleMarked[];
  readonly folds: readonly PleatFold[];
  /** Pieces of the same key have the same outline. */
  readonly key: string;
}

/** Every gore of every layer, gore by gore from the centre front round. */
function goreBlanks(
  gown: GownToCut,
  layers: readonly LayerDraft[],
  notches: ReadonlyMap<GownDraft, ReadonlyMap<string, readonly number[]>>,
  stonesOn: StonesOn,
  bustleOn: BustleOn,
): Blank[] {
  const { pleats } = gown;
  const drafts = [...new Set(layers.map(({ draft }) => draft))];
  return goresOnce(gown).flatMap((gore, index) =>
    layers
      .filter(({ layer }) => hasGore(layer, gore))
      .flatMap(({ layer, draft }) =>
        cutsOf(draft, index).map(({ piece: drafted, gore: own }): Blank => {
          const plain = layer.grain === 'bias' ? onBias(drafted) : drafted;
          const placed = pleatsOfLayer(pleats, layer);
          const beyond = beyondWrap(plain, draft, allCuts(draft));
          const { piece, marks } = withKicks(beyond.reduce(runOn, plain), placed, allCuts(draft));
          const plan = allowancePlan(layer, piece, gore.roughCut);
          const darted = topFullness(layer, draft, own);
          const folds = pleatFolds(placed, plain, darted);
          const full = fullForWrap(darted, plain, beyond);
          return {
            piece,
            layer,
            plan,
            notches: withWrapNotches(notches.get(draft)!, plain, beyond, full),
            ...(full === undefined ? {} : { full }),
            quartered: full !== undefined && full.rule.by === 'gathers',
            remarks: [
              ...(full === undefined ? [] : fullnessRemarks(full)),
              ...pleatRemarks(placed, plain),
              ...tuckRemarks(layer),
              ...wrapRemarks(gown, beyond),
            ],
            marks: [...marks, ...tuckLines(piece, layer), ...wrapMarks(gown, beyond)],
            stones: stonesOn(layer, plain, own),
            bustle: bustleOn(layer, plain, own),
            folds,
            key: JSON.stringify([
              index,
              drafts.indexOf(draft),
              piece.side,
              plan,
              full?.rule,
              placed,
              layer.grain,
              layer.tucks,
            ]),
          };
        }),
      ),
  );
}

/** What is cut for one gore: one piece, or one for each side of her where they differ. */
function cutsOf(draft: GownDraft, gore: number): NonNullable<GownDraft['cutAs']> {
  if (draft.cutAs === undefined) return [{ piece: draft.pieces[gore]!, gore }];
  const { name } = draft.gown.gores[gore]!;
  return draft.cutAs.filter(({ piece }) => piece.gore === name);
}

function allCuts({ cutAs, pieces }: GownDraft): readonly Piece[] {
  return cutAs === undefined ? pieces : cutAs.map(({ piece }) => piece);
}

function partBlank(part: Part): Blank {
  const own = partPlan(part);
  return {
    piece: part.piece,
    layer: part.layer,
    plan: own,
    notches: part.notches,
    quartered: part.quartered,
    remarks: partRemarks(part),
    marks: part.marks ?? [],
    folds: [],
    key: JSON.stringify([part.piece.part, part.piece.gore, part.piece.edges, own]),
  };
}

/** @param same blanks of one outline, a layer each */
function cutPiece(same: readonly Blank[]): CutPiece {
  const blank = same[0]!;
  const layers = same.map(({ layer }) => layer.name);
  const stones = same.flatMap((one) => one.stones ?? []);
  const bustle = same.flatMap((one) => one.bustle ?? []);
  const remarks = [...blank.remarks, ...stoneRemarks(stones), ...bustleRemarks(bustle)];
  const { plan, full } = blank;
  const piece: Piece = { ...blank.piece, layers };
  const top = piece.edges[0]!.name;
  const darted = full?.rule.by === 'darts' ? withDarts(piece, full, plan) : undefined;
  const flat: CutPiece = {
    piece: darted?.piece ?? piece,
    gore: piece.gore,
    layers,
    cutEdges: darted === undefined ? cutOutline(piece, plan) : darted.cutEdges,
    notches: [
      ...notchesOf(piece, blank.notches, plan.widths),
      ...(blank.quartered ? quarterNotches(piece, plan.widths[top] ?? 0) : []),
    ],
    marks: [
      ...trimLine(piece, plan),
      ...(full?.rule.by === 'pleats' ? pleatMarks(piece, full) : []),
      ...(darted?.marks ?? []),
      ...(blank.marks ?? []),
      ...bustleMarks(bustle, piece),
    ],
    allowances: plan.widths,
    roughCut: plan.roughCut,
    ...(stones.length === 0 ? {} : { stones }),
    ...(bustle.length === 0 ? {} : { bustle }),
    labelAt: labelPlace(piece),
    ...(remarks.length === 0 ? {} : { remarks }),
  };
  return withPleats(flat, blank.folds);
}

function stoneRemarks(stones: readonly StonesMarked[]): PieceRemark[] {
  const layers = [...new Set(stones.map(({ layer }) => layer))];
  return layers.map((layer) => ({
    kind: 'stones-marked',
    layer,
    names: stones.filter((set) => set.layer === layer).map(({ name }) => name),
  }));
}

/** Under a rough cut: where the hem's allowance will be cut once the gown has hung and been levelled. */
function trimLine(piece: Piece, plan: AllowancePlan): CutPiece['marks'] {
  if (plan.roughCut === 0 || plan.widths.hem === 0) return [];
  const hem = piece.edges.find((edge) => edge.name === 'hem')!.curves;
  const curves = offsetRun(hem, plan.widths.hem!, FIT);
  return curves === undefined ? [] : [{ name: 'hem-trim', curves }];
}

function labelPlace(piece: Piece): Point {
  return middle(piece.grain.from, piece.grain.to);
}

/** Marks for every seam of the gown, godets' points among them; an edge on the fold has none. */
function distancesBySeam(
  { godets, slits, pockets }: Pick<GownToCut, 'godets' | 'slits' | 'pockets'>,
  draft: GownDraft,
): Map<string, readonly number[]> {
  const names = new Set(draft.pieces.flatMap((piece) => [piece.frontEdge, piece.backEdge]));
  const seams = draft.gown.stations
    .map(({ name, free }, i) => ({ name, free, length: draft.lengths[i]! }))
    .filter(({ name }, i, all) => names.has(name) && all.findIndex((other) => other.name === name) === i);
  const distances = notchDistances(seams.map((seam) => seam.length));
  return new Map(
    seams.map((seam, i): [string, readonly number[]] => {
      // A free edge is sewn to nothing: it has no partner to match.
      if (seam.free) return [seam.name, []];
      const own = godets.filter((godet) => godet.seam === seam.name);
      const points = [
        ...own.flatMap(({ from }) => [from, from + (seam.length - from) * GODET_NOTCH]),
        // The hem of a layer that is shorter lies higher: the slit begins where it does in the gown.
        ...slits
          .filter((slit) => slit.seam === seam.name)
          .map(({ aboveHem, belowWaist }) =>
            aboveHem === undefined ? (belowWaist ?? 0) : seam.length + draft.shape.shorter - aboveHem,
          ),
        ...pockets
          .filter((pocket) => pocket.seam === seam.name)
          .flatMap(({ belowWaist, opening }) => [belowWaist, belowWaist + opening]),
      ].filter((point) => point > 0 && point < seam.length);
      return [seam.name, points.length === 0 ? distances[i]! : besides(distances[i]!, points)];
    }),
  );
}

/** Marks that must be there, and those of the others that stay clear of them. */
function besides(distances: readonly number[], points: readonly number[]): number[] {
  const clear = distances.filter((distance) => points.every((point) => Math.abs(point - distance) > APART));
  return [...clear, ...points].sort((a, b) => a - b);
}
