import type { CutPiece, Notch } from '../../draft/piece.ts';
import { boundsOfCurves } from '../../geometry/bounds.ts';
import { crossingsOf } from '../../geometry/crossings.ts';
import type { Curve, Line } from '../../geometry/curve.ts';
import type { Edge } from '../../geometry/edge.ts';
import { endOf, pointAt, startOf } from '../../geometry/evaluate.ts';
import { distance } from '../../geometry/point.ts';
import { partOf } from '../../geometry/split.ts';
import { JOIN } from '../../geometry/tolerances.ts';
import { foldSide } from './whole-outline.ts';

/** A balance mark for so much of a join, mm (common practice: one per 40 to 50 cm of seam). */
const MARK_EVERY = 450;

/** Length of a mark across a cut edge, mm, where the allowance is not narrower. */
const TICK = 6;

/** A part narrower than this, mm, is more seam than cloth; the join is moved to make it wider. */
const LEAST_PART = 60;

/**
 * A piece wider than its cloth, cut along the grain into parts that fit, each with the seam's allowance at the join
 * and marks that match. The first part keeps the front edge (or the fold) and is as wide as the cloth, so that the
 * join lies as far from the centre front as it can. Undefined where no number of parts will do.
 */
export function piecedAlongGrain(cut: CutPiece, usable: number, seam: number): CutPiece[] | undefined {
  const bounds = boundsOfCurves(cut.cutEdges.flatMap((edge) => edge.curves));
  const side = foldSide(cut);
  const fromRight = side === 'back';
  const width = bounds.right - bounds.left;
  const joins = joinsAt(width, usable, seam, side !== undefined);
  if (joins === undefined) return undefined;
  const lines = joins.map((at) => (fromRight ? bounds.right - at : bounds.left + at)).sort((a, b) => a - b);
  const parts = [...lines, undefined].map((right, i) => partBetween(cut, lines[i - 1], right, seam));
  const whole = parts.filter((part) => part !== undefined);
  return whole.length === parts.length ? (fromRight ? whole.reverse() : whole) : undefined;
}

/** Distances of the joins from the edge that the first part keeps. */
function joinsAt(width: number, usable: number, seam: number, onFold: boolean): number[] | undefined {
  const first = (onFold ? usable / 2 : usable) - seam;
  const next = usable - 2 * seam;
  if (first < LEAST_PART || next < LEAST_PART) return undefined;
  const joins = [first];
  while (width - joins[joins.length - 1]! > usable - seam) joins.push(joins[joins.length - 1]! + next);
  const last = Math.min(joins[joins.length - 1]!, width - LEAST_PART);
  return [...joins.slice(0, -1), last];
}

function partBetween(
  cut: CutPiece,
  left: number | undefined,
  right: number | undefined,
  seam: number,
): CutPiece | undefined {
  let edges: readonly Edge[] | undefined = cut.cutEdges;
  if (left !== undefined) edges = clipped(edges, left - seam, 'right');
  if (right !== undefined && edges !== undefined) edges = clipped(edges, right + seam, 'left');
  if (edges === undefined) return undefined;
  const bounds = boundsOfCurves(edges.flatMap((edge) => edge.curves));
  const inside = ({ from, to }: Line): boolean =>
    Math.min(from.x, to.x) >= bounds.left - JOIN && Math.max(from.x, to.x) <= bounds.right + JOIN;
  const keepsFold = edges.some(({ name }) => name === 'fold');
  const onFold = cut.piece.cut === 'on-fold';
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.top + bounds.bottom) / 2 };
  const grain = cut.piece.grain;
  const marks = [left, right].flatMap((line) =>
    line === undefined ? [] : joinMarks(cut, line, seam, line === left),
  );
  return {
    ...cut,
    piece: {
      ...cut.piece,
      cut: onFold && !keepsFold ? 'pair' : cut.piece.cut,
      frontEdge: left === undefined ? cut.piece.frontEdge : 'join',
      backEdge: right === undefined ? cut.piece.backEdge : 'join',
      grain: inside(grain) ? grain : grainThrough(edges, middle.x),
    },
    cutEdges: edges,
    notches: [...cut.notches.filter(({ ticks }) => ticks.every(inside)), ...marks],
    allowances: { ...cut.allowances, join: seam },
    labelAt: middle,
  };
}

/** The side of a closed outline to one side of an upright line; undefined where the line cuts it more than twice. */
function clipped(edges: readonly Edge[], x: number, keep: 'left' | 'right'): Edge[] | undefined {
  const all = boundsOfCurves(edges.flatMap((edge) => edge.curves));
  const line: Line = { kind: 'line', from: { x, y: all.top - 1 }, to: { x, y: all.bottom + 1 } };
  const kept = edges.map(({ name, curves }) => ({
    name,
    curves: curves.flatMap((curve) => partsBeside(curve, line, keep)),
  }));
  const edged = kept.filter(({ curves }) => curves.length > 0);
  const closed: Edge[] = [];
  let joins = 0;
  edged.forEach((edge, i) => {
    const runs = runsOf(edge);
    const after = startOf(edged[(i + 1) % edged.length]!.curves[0]!);
    runs.forEach((run, k) => {
      closed.push({ name: edge.name, curves: run });
      const end = endOf(run[run.length - 1]!);
      const next = k + 1 < runs.length ? startOf(runs[k + 1]![0]!) : after;
      if (distance(end, next) <= JOIN * 10) return;
      joins++;
      closed.push({ name: 'join', curves: [{ kind: 'line', from: end, to: next }] });
    });
  });
  return joins === 1 ? closed : undefined;
}

/** An edge cut in two by the line falls apart into runs. */
function runsOf({ curves }: Edge): Curve[][] {
  const runs: Curve[][] = [];
  for (const curve of curves) {
    const last = runs[runs.length - 1];
    if (last !== undefined && distance(endOf(last[last.length - 1]!), startOf(curve)) <= JOIN * 10)
      last.push(curve);
    else runs.push([curve]);
  }
  return runs;
}

function partsBeside(curve: Curve, line: Line, keep: 'left' | 'right'): Curve[] {
  const cuts = [0, ...crossingsOf(curve, line).map(({ t }) => t), 1].sort((a, b) => a - b);
  return cuts.slice(1).flatMap((to, i) => {
    const from = cuts[i]!;
    if (to - from < 1e-9) return [];
    const beside = pointAt(curve, (from + to) / 2).x - line.from.x;
    return (keep === 'left' ? beside < 0 : beside > 0) ? [partOf(curve, from, to)] : [];
  });
}

/** Marks at the same heights on both parts of a join, from each cut edge inwards. */
function joinMarks(cut: CutPiece, x: number, seam: number, onLeft: boolean): Notch[] {
  const ends = chordAt(cut.cutEdges, x);
  if (ends === undefined) return [];
  const [top, bottom] = ends;
  const count = Math.max(1, Math.round((bottom - top) / MARK_EVERY));
  const edge = onLeft ? x - seam : x + seam;
  const inwards = (onLeft ? 1 : -1) * Math.min(TICK, seam);
  return Array.from({ length: count }, (_, i) => {
    const y = top + ((bottom - top) * (i + 1)) / (count + 1);
    const tick: Line = { kind: 'line', from: { x: edge, y }, to: { x: edge + inwards, y } };
    return { edge: 'join', distance: y - top, ticks: [tick] };
  });
}

/** Where an upright line enters and leaves an outline. */
function chordAt(edges: readonly Edge[], x: number): [number, number] | undefined {
  const curves = edges.flatMap((edge) => edge.curves);
  const all = boundsOfCurves(curves);
  const line: Line = { kind: 'line', from: { x, y: all.top - 1 }, to: { x, y: all.bottom + 1 } };
  const heights = curves.flatMap((curve) => crossingsOf(curve, line).map(({ point }) => point.y));
  return heights.length < 2 ? undefined : [Math.min(...heights), Math.max(...heights)];
}

function grainThrough(edges: readonly Edge[], x: number): Line {
  const [top, bottom] = chordAt(edges, x) ?? [0, 0];
  const length = bottom - top;
  return { kind: 'line', from: { x, y: top + length / 4 }, to: { x, y: bottom - length / 4 } };
}
