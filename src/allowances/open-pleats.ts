import type { CutPiece, Notch, StonesMarked } from '../draft/piece.ts';
import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { derivativeAt, pointAt, startOf } from '../geometry/evaluate.ts';
import { along, dot, leftOf, scaled, subtract, unit } from '../geometry/point.ts';
import { partOfRun, positionWhere } from '../geometry/run-position.ts';
import { reversedRun } from '../geometry/split.ts';
import { tidied } from '../geometry/tidied.ts';
import { reflected, translated } from '../geometry/transform.ts';
import type { PleatFold } from './pleat-folds.ts';
import { type FoldedPlace, pleatLines } from './pleat-lines.ts';

/**
 * A piece with its pleats opened out, all that is drawn of it: what lies beyond a fold is moved on by twice its depth,
 * and in between come the mirror image of what the fold lies over and that itself once more. Folded again, its waist,
 * its hem and both their cut edges are those that it had.
 *
 * ```
 * under its left    ───────A│ A' │ A │B──────    outer fold, inner fold, line that it is brought to
 * under its right   ───────A│ B │ B' │B──────    line, inner fold, outer fold
 * ```
 */
export function withPleats(cut: CutPiece, folds: readonly PleatFold[]): CutPiece {
  return folds.reduce(opened, cut);
}

/** Which part of an edge lies beyond a fold by less than this is not cut off, mm. */
const THREAD = 1e-7;

function opened(cut: CutPiece, fold: PleatFold): CutPiece {
  const opening = new Opening(fold);
  const { piece } = cut;
  const marks = pleatLines(fold, opening.place, piece.edges, cut.cutEdges);
  return {
    ...cut,
    piece: { ...piece, edges: opening.edges(piece.edges), grain: opening.moved(piece.grain) as Line },
    cutEdges: opening.edges(cut.cutEdges),
    notches: cut.notches.map((notch) => opening.notch(notch)),
    marks: [...cut.marks.map((mark) => opening.mark(mark)), ...marks],
    ...(cut.stones === undefined ? {} : { stones: cut.stones.map((set) => opening.stones(set)) }),
    ...(cut.bustle === undefined
      ? {}
      : {
          bustle: cut.bustle.map(({ at: [anchor, pickUp], ...point }) => ({
            ...point,
            at: [opening.movedPoint(anchor), opening.movedPoint(pickUp)] as const,
          })),
        }),
    labelAt: opening.movedPoint(cut.labelAt),
  };
}

class Opening {
  readonly place: FoldedPlace;
  private readonly shift: Point;

  constructor({ line, under, pleat: { foldDepth } }: PleatFold) {
    const down = unit(subtract(line.to, line.from));
    const right = leftOf(down);
    this.place = { origin: line.from, down, right, under, depth: foldDepth };
    this.shift = scaled(right, 2 * foldDepth);
  }

  /** Waist, right side, hem, left side. */
  edges([waist, right, hem, left]: readonly Edge[]): Edge[] {
    return [
      { ...waist!, curves: this.across(waist!.curves) },
      { ...right!, curves: right!.curves.map((curve) => translated(curve, this.shift)) },
      { ...hem!, curves: reversedRun(this.across(reversedRun(hem!.curves))) },
      left!,
    ];
  }

  /** A run from left to right. */
  private across(run: readonly Curve[]): Curve[] {
    const { under, depth, origin, right, down } = this.place;
    const at = (value: number): number => crossingAt(run, { origin, right }, value);
    const line = at(0);
    const moved = (curves: readonly Curve[]): Curve[] => curves.map((curve) => translated(curve, this.shift));
    const beyond = moved(partOfRun(run, line, run.length));
    if (under === 'left') {
      const over = partOfRun(run, at(-depth), line);
      const image = reversedRun(over.map((curve) => reflected(curve, origin, down)));
      return joined([...partOfRun(run, 0, line), ...image, ...moved(over), ...beyond]);
    }
    const inner = along(origin, right, depth);
    const over = partOfRun(run, line, at(depth));
    const image = reversedRun(over.map((curve) => reflected(curve, inner, down)));
    return joined([...partOfRun(run, 0, line), ...over, ...image, ...beyond]);
  }

  private isBeyond(point: Point): boolean {
    return dot(subtract(point, this.place.origin), this.place.right) > -THREAD;
  }

  moved(curve: Curve): Curve {
    return this.isBeyond(startOf(curve)) ? translated(curve, this.shift) : curve;
  }

  movedPoint(point: Point): Point {
    return this.isBeyond(point) ? along(point, this.shift, 1) : point;
  }

  notch(notch: Notch): Notch {
    return { ...notch, ticks: notch.ticks.map((tick) => this.moved(tick) as Line) };
  }

  /** Stones are set on what shows once the pleat is folded: each stays, or goes with what lies beyond. */
  stones(set: StonesMarked): StonesMarked {
    const moved = (run: readonly Curve[]) =>
      this.isBeyond(startOf(run[0]!)) ? run.map((curve) => translated(curve, this.shift)) : run;
    return { ...set, runs: set.runs.map(moved) };
  }

  /** What is trimmed to, and tucks, run along the whole hem; any other mark lies on one side of the fold. */
  mark(mark: CutPiece['marks'][number]): CutPiece['marks'][number] {
    if (mark.name === 'hem-trim' || mark.name.startsWith('tuck-')) {
      return { ...mark, curves: reversedRun(this.across(reversedRun(mark.curves))) };
    }
    const first = startOf(mark.curves[0]!);
    return this.isBeyond(first)
      ? { ...mark, curves: mark.curves.map((curve) => translated(curve, this.shift)) }
      : mark;
  }
}

/** Where a run crosses a line that lies so far beside a fold's, to the last digits: the two sides of a fold must meet. */
function crossingAt(
  run: readonly Curve[],
  { origin, right }: Pick<FoldedPlace, 'origin' | 'right'>,
  away: number,
): number {
  const first = positionWhere(run, (point) => dot(subtract(point, origin), right), away);
  const index = Math.min(run.length - 1, Math.floor(first));
  const curve = run[index]!;
  let t = first - index;
  for (let step = 0; step < 3; step++) {
    const speed = dot(derivativeAt(curve, t), right);
    if (speed === 0) break;
    t = Math.min(1, Math.max(0, t + (away - dot(subtract(pointAt(curve, t), origin), right)) / speed));
  }
  return index + t;
}

/** Without crumbs, each curve ending where the next begins. */
function joined(run: readonly Curve[]): Curve[] {
  const whole = tidied(run);
  return whole.map((curve, i) => {
    const next = whole[i + 1];
    return next === undefined || curve.kind === 'arc' ? curve : { ...curve, to: startOf(next) };
  });
}
