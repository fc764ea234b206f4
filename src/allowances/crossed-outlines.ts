import type { Span } from '../diagnostics/diagnostic.ts';
import type { Part } from '../draft/part.ts';
import type { CutPiece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { endOf, startOf } from '../geometry/evaluate.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { nearestOnRun } from '../geometry/nearest.ts';
import { distance } from '../geometry/point.ts';
import { depthIn, isInside, type Region, regionOf } from '../geometry/region.ts';
import { selfCrossing } from '../geometry/self-crossing.ts';
import { CUT_OUTSIDE, ENDS_MEET, FLAT } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';

/** An outline that cannot be cut, and the edge at which it goes wrong. */
export interface CrossedOutline {
  readonly gore: string;
  /** Called by the gores that it faces. */
  readonly facing?: true;
  readonly layers: readonly string[];
  readonly line: 'seam' | 'cut';
  /** Itself, or the cut line the seam line that it goes round; or it breaks off: a pleat finds no room on it. */
  readonly crosses: 'itself' | 'its-seam' | 'open';
  readonly edge: string;
  /** Of the gore or the part. */
  readonly place: () => Span;
}

/** Every piece whose lines cross, whatever made them so: looked for on the finished outlines, not where they come from. */
export function crossedOutlines(
  gown: Gown,
  pieces: readonly CutPiece[],
  parts: readonly Part[] = [],
): CrossedOutline[] {
  return pieces.flatMap((cut) => {
    const found = crossedOutline(cut);
    if (found === undefined) return [];
    const { piece, gore, layers } = cut;
    const part = parts.find((own) => own.piece.gore === gore && layers.includes(own.layer.name));
    const isFacing = piece.part === 'facing';
    return {
      ...found,
      ...(isFacing && { facing: true as const }),
      place: part?.place ?? placeOf(gown, gore),
    };
  });
}

function placeOf({ gores, godets, flounces, tiers, place }: Gown, name: string): () => Span {
  const own = [...gores, ...godets, ...flounces, ...tiers].find((placed) => placed.name === name);
  return own === undefined ? place : own.place;
}

function crossedOutline({
  piece,
  gore,
  layers,
  cutEdges,
}: CutPiece): Omit<CrossedOutline, 'place'> | undefined {
  const found = (
    line: CrossedOutline['line'],
    crosses: CrossedOutline['crosses'],
    edges: readonly Edge[],
    at: Point,
  ): Omit<CrossedOutline, 'place'> => ({ gore, layers, line, crosses, edge: nearestEdge(edges, at) });
  for (const [line, edges] of [
    ['seam', piece.edges],
    ['cut', cutEdges],
  ] as const) {
    const edge = endingApart(edges);
    if (edge !== undefined) return { gore, layers, line, crosses: 'open', edge };
  }
  const seamCrossing = selfCrossing(curvesOf(piece.edges), FLAT);
  if (seamCrossing !== undefined) return found('seam', 'itself', piece.edges, seamCrossing);
  const cutCrossing = selfCrossing(curvesOf(cutEdges), FLAT);
  if (cutCrossing !== undefined) return found('cut', 'itself', cutEdges, cutCrossing);
  const outside = seamOutside(piece.edges, cutEdges);
  return outside === undefined ? undefined : found('cut', 'its-seam', piece.edges, outside);
}

/** The edge after which the outline does not run on. */
function endingApart(edges: readonly Edge[]): string | undefined {
  const run = edges.flatMap(({ name, curves }) => curves.map((curve) => ({ name, curve })));
  const apart = run.find(
    ({ curve }, i) => distance(endOf(curve), startOf(run[(i + 1) % run.length]!.curve)) > ENDS_MEET,
  );
  return apart?.name;
}

/** A point of the seam line that lies outside of what is cut. What a rough look finds inside is not outside by as much as counts. */
function seamOutside(seam: readonly Edge[], cut: readonly Edge[]): Point | undefined {
  const outline = cut.map(({ curves }, edge) => ({ curves, edge }));
  const rough = regionOf(outline, FLAT);
  let exact: Region | undefined;
  return flattenedRun(curvesOf(seam), FLAT).find(({ x, y }) => {
    if (isInside(rough, x, y)) return false;
    exact ??= regionOf(outline);
    return depthIn(exact, x, y).depth < -CUT_OUTSIDE;
  });
}

function curvesOf(edges: readonly Edge[]) {
  return edges.flatMap(({ curves }) => curves);
}

function nearestEdge(edges: readonly Edge[], point: Point): string {
  const away = ({ curves }: Edge): number => nearestOnRun(curves, point).distance;
  return edges.reduce((best, edge) => (away(edge) < away(best) ? edge : best)).name;
}
