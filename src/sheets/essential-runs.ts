import type { CutPiece } from '../draft/piece.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { lengthOf } from '../geometry/length.ts';
import { along, subtract, unit } from '../geometry/point.ts';
import { partOf } from '../geometry/split.ts';
import { cutLine } from './working-shape.ts';

/**
 * The lines that paper must show when straight stretches of seam may be left out: waist, hem, notches, marks, every
 * curve, and the first and last of each straight side. The cut line's come first, as `cut`; `all` has the others too.
 */
export function essentialRuns(cutPiece: CutPiece): { readonly cut: Curve[][]; readonly all: Curve[][] } {
  const { piece } = cutPiece;
  const isSide = (edge: Edge) => edge.name === piece.frontEdge || edge.name === piece.backEdge;
  const parts = (edges: readonly Edge[]) =>
    edges
      .flatMap((edge) => edge.curves.flatMap((curve) => (isSide(edge) ? endsOf(curve) : [curve])))
      .map((curve) => [curve]);
  const cut = parts(cutPiece.cutEdges);
  const rest = [
    ...parts(piece.edges),
    ...cutPiece.notches.flatMap((notch) => notch.ticks.map((tick) => [tick])),
    ...cutPiece.marks.map((mark) => [...mark.curves]),
  ];
  return { cut, all: [...cut, ...rest] };
}

/** A straight line longer than two ends as its ends alone. */
function endsOf(curve: Curve): Curve[] {
  const length = lengthOf(curve);
  if (curve.kind !== 'line' || length <= 2 * END) return [curve];
  return [partOf(curve, 0, END / length), partOf(curve, 1 - END / length, 1)];
}

/** Of a straight seam, shown next to each corner: enough to lay a ruler on, mm. */
const END = 60;

/** The grain line from just below the waist to just above the hem, so that both parts of a piece have some of it. */
export function longGrain(cutPiece: CutPiece): Line {
  const { from, to } = cutPiece.piece.grain;
  const way = unit(subtract(to, from));
  const outline = flattenedRun(cutLine(cutPiece), 0.5);
  const crossings = outline.flatMap((point, index) => {
    const next = outline[(index + 1) % outline.length]!;
    const across = (one: Point) => (one.x - from.x) * way.y - (one.y - from.y) * way.x;
    const [a, b] = [across(point), across(next)];
    if (a > 0 === b > 0) return [];
    const at = along(point, subtract(next, point), a / (a - b));
    return [(at.x - from.x) * way.x + (at.y - from.y) * way.y];
  });
  const length = (to.x - from.x) * way.x + (to.y - from.y) * way.y;
  const before = crossings.filter((place) => place < length / 2);
  const after = crossings.filter((place) => place > length / 2);
  // On a piece so skew that the middle of its grain line lies off it, an end may have nothing to run on to.
  const first = before.length === 0 ? -INSET : Math.max(...before);
  const last = after.length === 0 ? length + INSET : Math.min(...after);
  return { kind: 'line', from: along(from, way, first + INSET), to: along(from, way, last - INSET) };
}

/** Clear of the allowances, mm. */
const INSET = 30;
