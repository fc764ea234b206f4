import type { GownDraft } from '../draft/draft-gown.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { CutPiece, Piece } from '../draft/piece.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { offsetRun } from '../geometry/offset-run.ts';
import { middle } from '../geometry/point.ts';
import { FIT } from '../geometry/tolerances.ts';
import type { Spec } from '../spec/spec.ts';
import { type AllowancePlan, allowancePlan } from './allowance-plan.ts';
import { cutOutline } from './cut-outline.ts';
import { notchDistances, notchesOf } from './notches.ts';

export interface CutPieces {
  /** From the centre front round; layers that are cut alike share one piece. */
  readonly pieces: readonly CutPiece[];
  /** Edges that bend tighter than their allowance, by gore and layer. */
  readonly folded: readonly {
    readonly gore: string;
    readonly layer: string;
    readonly edge: string;
    readonly width: number;
  }[];
}

/** Adds every layer's allowances; layers whose cut outline is the same share one piece, which names them all. */
export function cutPieces(spec: Spec, layers: readonly LayerDraft[]): CutPieces {
  const pieces: CutPiece[] = [];
  const folded: CutPieces['folded'][number][] = [];
  const notches = new Map<GownDraft, ReadonlyMap<string, readonly number[]>>();
  for (const { draft } of layers) notches.set(draft, distancesBySeam(draft));
  for (const [index, gore] of spec.gores.entries()) {
    const alike = new Map<string, { plan: AllowancePlan; draft: GownDraft; layers: string[] }>();
    for (const { layer, draft } of layers) {
      if (layer.gores !== undefined && !layer.gores.includes(gore.name)) continue;
      const plan = allowancePlan(spec, layer, draft.pieces[index]!);
      const key = JSON.stringify([draft.shape, plan]);
      const same = alike.get(key);
      if (same === undefined) alike.set(key, { plan, draft, layers: [layer.name] });
      else same.layers.push(layer.name);
    }
    for (const { plan, draft, layers: names } of alike.values()) {
      const { piece, folded: edges } = cutPiece(draft.pieces[index]!, plan, names, notches.get(draft)!);
      pieces.push(piece);
      for (const edge of edges)
        folded.push({ gore: gore.name, layer: names[0]!, edge, width: plan.widths[edge]! });
    }
  }
  return { pieces, folded };
}

function cutPiece(
  drafted: Piece,
  plan: AllowancePlan,
  layers: readonly string[],
  distances: ReadonlyMap<string, readonly number[]>,
): { piece: CutPiece; folded: readonly string[] } {
  const piece: Piece = { ...drafted, layers };
  const outline = cutOutline(piece, plan);
  return {
    piece: {
      piece,
      gore: piece.gore,
      layers,
      cutEdges: outline.edges,
      notches: notchesOf(piece, distances, plan.widths),
      marks: trimLine(piece, plan),
      allowances: plan.widths,
      roughCut: plan.roughCut,
      labelAt: labelPlace(piece),
    },
    folded: outline.folded,
  };
}

/** Under a rough cut: where the hem's allowance will be cut once the gown has hung and been levelled. */
function trimLine(piece: Piece, plan: AllowancePlan): CutPiece['marks'] {
  if (plan.roughCut === 0 || plan.widths.hem === 0) return [];
  const hem = piece.edges.find((edge) => edge.name === 'hem')!.curves;
  const curves: readonly Curve[] | undefined = offsetRun(hem, plan.widths.hem!, FIT)?.curves;
  return curves === undefined ? [] : [{ name: 'hem-trim', curves }];
}

function labelPlace(piece: Piece): Point {
  return middle(piece.grain.from, piece.grain.to);
}

/** Marks for every seam of the gown; an edge on the fold has none. */
function distancesBySeam(draft: GownDraft): Map<string, readonly number[]> {
  const names = new Set(draft.pieces.flatMap((piece) => [piece.frontEdge, piece.backEdge]));
  const seams = draft.gown.stations
    .map((station, i) => ({ name: station.name, length: draft.lengths[i]! }))
    .filter(({ name }, i, all) => names.has(name) && all.findIndex((other) => other.name === name) === i);
  const distances = notchDistances(seams.map((seam) => seam.length));
  return new Map(seams.map((seam, i) => [seam.name, distances[i]!]));
}
