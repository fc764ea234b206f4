import type { CurvePath } from './path.ts';
import { readPaths, samplesOf } from './path.ts';
import type { PatternPiece } from './pattern.ts';
import { dot, minus, type Point, unitOf } from './segment.ts';

/** A straight line marked inside a piece, from its top. */
interface Marked {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
}

/** The lines of the pleats of one piece, by its gore and its layer, in the order in which they are drawn. */
export function pleatLinesOf(
  svg: string,
  gore: string,
  layer: string,
  turned: (point: Point) => Point = (point) => point,
): Marked[] {
  const groups = svg.split('<g class="piece"').slice(1);
  const own = groups.filter(
    (text) =>
      text.includes(`data-gore="${gore}"`) &&
      (/data-layers="([^"]*)"/.exec(text)?.[1] ?? '').split(' ').includes(layer),
  );
  if (own.length !== 1) throw new Error(`${own.length} pieces ${gore} of ${layer}`);
  return [...own[0]!.matchAll(/data-mark="((?:fold|placement)-line)" d="([^"]*)"/g)].map(
    ([, name, d]): Marked => {
      const [line] = readPaths(d!);
      return { name: name!, from: turned(line!.from), to: turned(line!.to) };
    },
  );
}

/** One pleat fold: how far right of a point its two folds lie. */
interface Fold {
  readonly at: Point;
  readonly right: Point;
  readonly folds: readonly [number, number];
}

/**
 * Folds points of a piece as its lines say, by nothing but them: the lines taken three at a time from the left, two folds
 * and a placement line. What lies between two folds is turned over about the first, all beyond about the second again.
 */
export function folded(lines: readonly Marked[], points: readonly Point[]): Point[] {
  const across = [...lines].sort((a, b) => a.from.x - b.from.x);
  const folds = Array.from({ length: across.length / 3 }, (_, i) => foldOf(across.slice(3 * i, 3 * i + 3)));
  // From the right, so that every fold still lies where it is drawn.
  return folds.reverse().reduce((all, fold) => all.map((point) => foldedOnce(fold, point)), [...points]);
}

function foldOf(three: readonly Marked[]): Fold {
  const [first] = three;
  const down = unitOf(minus(first!.to, first!.from));
  const right = { x: -down.y, y: down.x };
  const sign = right.x > 0 ? 1 : -1;
  const out = { x: right.x * sign, y: right.y * sign };
  const away = three
    .filter(({ name }) => name === 'fold-line')
    .map(({ from }) => dot(minus(from, first!.from), out));
  return { at: first!.from, right: out, folds: [away[0]!, away[1]!] };
}

function foldedOnce({ at, right, folds: [first, second] }: Fold, point: Point): Point {
  const away = dot(minus(point, at), right);
  const moved = (by: number): Point => ({ x: point.x + right.x * by, y: point.y + right.y * by });
  if (away <= first) return point;
  return away <= second ? moved(2 * (first - away)) : moved(-2 * (second - first));
}

/** Points of all seam lines of a piece, or of its cut line. */
export function pointsOf(piece: PatternPiece, line: 'cut' | 'sew', step = 8): Point[] {
  const paths: readonly CurvePath[] = line === 'cut' ? [piece.cut] : [...piece.sew.values()];
  return paths.flatMap((path) => samplesOf(path, step).map(({ point }) => point));
}

/** Turns points of a piece so that its waist lies above its hem: a sheet may hold it in any quarter turn. */
export function uprightOf(piece: PatternPiece): (point: Point) => Point {
  const middle = ({ from, to }: CurvePath): Point => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
  const down = minus(middle(piece.sew.get('hem')!), middle(piece.sew.get('waist')!));
  if (Math.abs(down.y) > Math.abs(down.x)) return ({ x, y }) => (down.y < 0 ? { x: -x, y: -y } : { x, y });
  return ({ x, y }) => (down.x < 0 ? { x: y, y: -x } : { x: -y, y: x });
}
