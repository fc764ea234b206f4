import type { Units } from '../diagnostics/units.ts';
import type { CutPiece } from '../draft/piece.ts';
import { boundsOfCurves } from '../geometry/bounds.ts';
import type { Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { startOf } from '../geometry/evaluate.ts';
import { distance } from '../geometry/point.ts';
import { bustlePlace } from '../gown/bustle-place.ts';
import type { ChalkDiagonal, ChalkStretch, ChalkTable } from './chalk.ts';
import { type ChalkAxes, chainOf, chalkedAt } from './chalk-chain.ts';
import { columnsShown, levelsOf } from './chalk-levels.ts';
import { swingsOf } from './chalk-swings.ts';

export interface ChalkOptions {
  /** Between the levels down the grain, mm; 100 unless given. */
  readonly every?: number;
  /** Rounding; 1 mm unless given. */
  readonly step?: number;
  /** Where the grain line is chalked, in the piece's own coordinates, mm; its own unless given. */
  readonly grain?: number;
}

/** Rounding that a tape in these units can show and that keeps the worst point within 1 mm. */
export function chalkStep(units: Units): number {
  return units === 'in' ? 25.4 / 32 : 1;
}

/**
 * The table of one cut piece. Joined by straight lines (or smoothly) in order, its points lie within 1 mm of the true
 * cut and seam lines: wherever a stretch bends too much for that, more points are put in.
 */
export function chalkTable(cutPiece: CutPiece, options: ChalkOptions = {}): ChalkTable {
  const { piece } = cutPiece;
  const every = options.every ?? 100;
  if (!(every >= 10)) throw new RangeError(`levels of a chalk table are at least 10 mm apart, not ${every}`);
  const step = options.step ?? 1;
  const axes = { x: options.grain ?? grainOf(cutPiece), y: topOf(cutPiece), every, step };
  const sides = [piece.frontEdge, piece.backEdge];
  const cut = chainOf(cutPiece.cutEdges, axes, { line: 'cut', sides });
  const seam = chainOf(piece.edges, axes, { line: 'seam', sides });
  return {
    gore: cutPiece.gore,
    ...(piece.part === undefined ? {} : { part: piece.part }),
    layers: cutPiece.layers,
    cut: piece.cut,
    ...(piece.bias === undefined ? {} : { bias: true }),
    ...(piece.copies === undefined ? {} : { copies: piece.copies }),
    frontEdge: piece.frontEdge,
    backEdge: piece.backEdge,
    ...(piece.side === undefined ? {} : { side: piece.side }),
    every,
    step,
    stretches: [...cut, ...seam],
    corners: [...cut, ...seam].map(({ line, from }) => ({ line, ...from })),
    levels: levelsOf([...cut, ...seam], piece),
    columns: columnsShown(piece),
    lines: { cut: plotted(cut), seam: plotted(seam) },
    swings: [...swingsOf(cutPiece.cutEdges, axes, 'cut'), ...swingsOf(piece.edges, axes, 'seam')],
    diagonals: diagonalsOf(piece.edges, seam, axes),
    inner: innerLines(cutPiece, axes),
    bustle: bustlePoints(cutPiece, axes),
  };
}

function plotted(stretches: readonly ChalkStretch[]): Point[] {
  return stretches.flatMap((stretch) => [
    { x: stretch.from.across, y: stretch.from.down },
    ...stretch.points.map((point) => chalkedAt(stretch, point)),
  ]);
}

/** Across is measured from the fold, or from the grain line where there is none. */
export function grainOf({ piece }: CutPiece): number {
  const fold = piece.edges.find((edge) => edge.name === 'fold');
  if (fold !== undefined) return startOf(fold.curves[0]!).x;
  return piece.bias ? (piece.grain.from.x + piece.grain.to.x) / 2 : piece.grain.from.x;
}

/** Down is measured from the top of the cut line. */
function topOf({ cutEdges }: CutPiece): number {
  return boundsOfCurves(cutEdges.flatMap((edge) => edge.curves)).top;
}

/** Straight lines that are folded or sewn to, from end to end. */
function innerLines({ marks }: CutPiece, axes: ChalkAxes): ChalkTable['inner'] {
  return marks.flatMap(({ name, curves }) => {
    const [line] = curves;
    if (!/-line$/.test(name) || curves.length !== 1 || line?.kind !== 'line') return [];
    const upright = line.from.y <= line.to.y;
    const [from, to] = upright ? [line.from, line.to] : [line.to, line.from];
    return [{ name, from: placed(from, axes), to: placed(to, axes) }];
  });
}

function bustlePoints({ bustle = [] }: CutPiece, axes: ChalkAxes): ChalkTable['bustle'] {
  return bustle.map((point) => ({
    layer: point.layer,
    place: bustlePlace(point),
    anchor: placed(point.at[0], axes),
    pickUp: placed(point.at[1], axes),
  }));
}

function placed({ x, y }: Point, axes: ChalkAxes): { down: number; across: number } {
  const rounded = (value: number): number => Math.round(value / axes.step) * axes.step;
  return { down: rounded(y - axes.y), across: rounded(x - axes.x) };
}

/** The two diagonals between the ends of waist and hem, measured between the true corners. */
function diagonalsOf(
  edges: readonly Edge[],
  seam: readonly ChalkStretch[],
  axes: ChalkAxes,
): ChalkDiagonal[] {
  const corners = edges.map((edge) => startOf(edge.curves[0]!));
  if (corners.length !== 4) return [];
  const letterAt = (index: number): string =>
    seam.find((stretch) => stretch.edge === edges[index]!.name)?.from.letter ?? '';
  const diagonal = (a: number, b: number): ChalkDiagonal => ({
    from: letterAt(a),
    to: letterAt(b),
    length: Math.round(distance(corners[a]!, corners[b]!) / axes.step) * axes.step,
  });
  return [diagonal(0, 2), diagonal(1, 3)];
}
