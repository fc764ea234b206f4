import type { Hang } from './hang.ts';
import type { SeenPoint } from './seen.ts';
import { FINER, placesApart, type Surface } from './surface.ts';
import type { SeenLine } from './turning-lines.ts';
import type { SlantedLine } from './wrap-line.ts';

/** Where a skirt opens: a column of the sewn cloth, and how far below its edge from and to, mm. */
export interface Opening {
  readonly column: number;
  readonly from: number;
  readonly to: number;
}

/** Along a row, all round. */
export function rowLine({ columns, rows, place }: Surface, row: number): SeenLine {
  return Array.from({ length: columns + 1 }, (_, column) =>
    seenPlace(place, (column % columns) * rows + row),
  );
}

/** Down a column, from a depth of cloth on; what is sewn to the hem has seams of its own. */
export function columnLine(
  { depth, rows, joins }: Hang,
  seen: Surface,
  column: number,
  from: number,
): SeenLine {
  const on = Math.floor(column / FINER);
  const own = depth.subarray(on * rows, (on + 1) * rows);
  const first =
    FINER *
    Math.max(
      0,
      own.findIndex((below) => below >= from),
    );
  const end = (joins[0] ?? rows - 1) * FINER;
  return Array.from({ length: Math.max(0, end + 1 - first) }, (_, k) =>
    seenPlace(seen.place, column * seen.rows + first + k),
  );
}

/** From a column at the waist to another at the hem, over parts of columns. */
export function slantedLine(
  { stride, joins, rows }: Hang,
  seen: Surface,
  { top, foot }: SlantedLine,
): SeenLine {
  const end = (joins[0] ?? rows - 1) * FINER;
  const around = seen.columns;
  // The shorter way round, where the line crosses the first column.
  const fine = (column: number): number => (column / stride) * FINER;
  const turn = ((fine(foot) - fine(top) + 1.5 * around) % around) - around / 2;
  return Array.from({ length: end + 1 }, (_, k) => {
    const column = Math.round(fine(top) + (turn * k) / end + around) % around;
    return seenPlace(seen.place, column * seen.rows + k);
  });
}

/** Down a column between two depths of cloth. */
export function openingLine(hang: Hang, seen: Surface, { column, from, to }: Opening): SeenLine {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, k) =>
    atDepth(hang, seen, (column / hang.stride) * FINER, from + ((to - from) * k) / steps),
  );
}

/** All round, this far above the hem along the cloth. */
export function edgingLine(hang: Hang, seen: Surface, above: number): SeenLine {
  return Array.from({ length: seen.columns + 1 }, (_, k) => {
    const column = k % seen.columns;
    const whole = depthOf(hang, column, hang.rows - 1);
    return atDepth(hang, seen, column, whole - above);
  });
}

/** Cloth above a row, at a column of the finer surface, mm. */
function depthOf({ depth, rows, columns }: Hang, column: number, row: number): number {
  const own = Math.floor(column / FINER);
  const part = (column % FINER) / FINER;
  const [a, b] = [depth[own * rows + row]!, depth[((own + 1) % columns) * rows + row]!];
  return a + (b - a) * part;
}

function atDepth(hang: Hang, seen: Surface, column: number, depth: number): SeenPoint {
  let row = 1;
  while (row + 1 < hang.rows && depthOf(hang, column, row) < depth) row++;
  const [above, below] = [depthOf(hang, column, row - 1), depthOf(hang, column, row)];
  const at = Math.min(1, Math.max(0, (depth - above) / (below - above)));
  const fine = (row - 1 + at) * FINER;
  const first = Math.min(seen.rows - 2, Math.floor(fine));
  const share = fine - first;
  const [p, q] = [
    seenPlace(seen.place, column * seen.rows + first),
    seenPlace(seen.place, column * seen.rows + first + 1),
  ];
  return [p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share, p[2] + (q[2] - p[2]) * share];
}

export function seenPlace(place: Float64Array, i: number): SeenPoint {
  return [place[3 * i]!, place[3 * i + 1]!, place[3 * i + 2]!];
}

/** How long the cloth is from its first row to its last, along the middle of its columns, mm. */
export function depthOfCloth(surface: Surface): number {
  const { columns, rows } = surface;
  const first = Math.floor(columns / 2) * rows;
  let long = 0;
  for (let i = first; i < first + rows - 1; i++) long += placesApart(surface, i, i + 1);
  return long;
}
