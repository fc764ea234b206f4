import type { Line, Point } from '../../geometry/curve.ts';
import type { SheetFrame } from '../../sheets/sheet-frame.ts';
import type { Neighbours } from '../../sheets/sheet-plan.ts';
import type { Mark } from '../drawing.ts';

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The lines that neighbouring sheets meet on, and marks that cross them: a diamond whose halves come together and a
 * stroke that runs straight through. Twice a side, so that a sheet laid askew shows. No side without a neighbour has
 * a line: there is nothing to trim. `frame` on the page, mm.
 */
export function joinMarks(neighbours: Neighbours, frame: Rectangle, { right }: SheetFrame): Mark[] {
  const { x, y, width, height } = frame;
  const corners = {
    topLeft: { x, y },
    topRight: { x: x + width, y },
    bottomLeft: { x, y: y + height },
    bottomRight: { x: x + width, y: y + height },
  };
  const sides = [
    { label: neighbours.left, from: corners.bottomLeft, to: corners.topLeft, outside: 0 },
    { label: neighbours.above, from: corners.topLeft, to: corners.topRight, outside: 0 },
    { label: neighbours.right, from: corners.topRight, to: corners.bottomRight, outside: right },
    { label: neighbours.below, from: corners.bottomRight, to: corners.bottomLeft, outside: STROKE },
  ];
  const lines = sides.flatMap(({ label, from, to, outside }) =>
    label === undefined ? [] : sideLines(from, to, outside),
  );
  return [{ kind: 'path', runs: lines.map((line) => [line]), closed: false, line: TRIM }];
}

const TRIM = { width: 0.2 } as const;

/** Half a diagonal of a diamond, mm. */
const REACH = 4;

/** How far strokes run into the strip below: its text stands under them, mm. */
const STROKE = 2;

/** Clockwise round the frame, so that outwards is to the left of the way from `from` to `to`. */
function sideLines(from: Point, to: Point, outside: number): Line[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const at = (along: number, out: number): Point => ({
    x: from.x + way.x * along + way.y * out,
    y: from.y + way.y * along - way.x * out,
  });
  const marks = [0.25, 0.75].flatMap((part) => {
    const middle = part * length;
    const out = Math.min(REACH, outside);
    const inward = [at(middle - REACH, 0), at(middle, -REACH), at(middle + REACH, 0)];
    const outward = [at(middle - out, REACH - out), at(middle, out), at(middle + out, REACH - out)];
    return [
      line(at(middle, -REACH), at(middle, out)),
      ...chain(inward),
      ...(out === REACH ? chain([inward[0]!, outward[1]!, inward[2]!]) : []),
    ];
  });
  return [line(from, to), ...marks];
}

function chain(points: readonly Point[]): Line[] {
  return points.slice(1).map((point, index) => line(points[index]!, point));
}

function line(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}
