import type { CutPiece } from '../draft/piece.ts';
import type { Line, Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { along, distance, dot, leftOf, subtract, unit } from '../geometry/point.ts';
import type { Cell } from './touched-sheets.ts';

/**
 * The grain line as it is drawn: a part of it, or a line beside it the same way, that lies on sheets which are printed
 * anyway. A sheet for a stretch of grain alone is wasted paper, and any parallel shows the grain as well. The piece's
 * own line where no sheet has room for a long enough one.
 * @param sharing pieces that lie on this one and share the line
 */
export function shownGrain(
  { piece }: CutPiece,
  sharing: readonly CutPiece[],
  cell: Cell,
  isPrinted: (row: number, column: number) => boolean,
): Line {
  const grain = onEvery(piece.grain, sharing);
  const own = longestShown(grain, cell, isPrinted);
  if (own !== undefined && lengthOf(own) >= LONG_ENOUGH) return own;
  const outline = flattenedRun(
    piece.edges.flatMap((edge) => edge.curves),
    1,
  );
  let best = own;
  for (const shift of SHIFTS) {
    for (const beside of parallelsInside(grain, shift, outline)) {
      const shown = longestShown(onEvery(beside, sharing), cell, isPrinted);
      if (shown !== undefined && lengthOf(shown) > lengthOf(best) + WORTH_MOVING) best = shown;
    }
    if (lengthOf(best) >= LONG_ENOUGH) break;
  }
  return best !== undefined && lengthOf(best) >= SHORTEST ? best : grain;
}

/** The part of a line that lies on every one of these pieces, clear of their seam lines; the line where none does. */
export function onEvery(line: Line, pieces: readonly CutPiece[]): Line {
  return pieces.reduce((kept, { piece }) => {
    const outline = flattenedRun(
      piece.edges.flatMap((edge) => edge.curves),
      1,
    );
    const way = unit(subtract(kept.to, kept.from));
    const length = distance(kept.from, kept.to);
    const parts = parallelsInside(kept, 0, outline).map((inside) => {
      const [from, to] = [inside.from, inside.to].map((point) => dot(subtract(point, kept.from), way));
      return { from: Math.max(0, from!), to: Math.min(length, to!) };
    });
    const longest = parts.reduce((best, part) => (part.to - part.from > best.to - best.from ? part : best), {
      from: 0,
      to: 0,
    });
    if (longest.to === longest.from || (longest.from < NEARLY && longest.to > length - NEARLY)) return kept;
    return { kind: 'line', from: along(kept.from, way, longest.from), to: along(kept.from, way, longest.to) };
  }, line);
}

/** Of the room that a line keeps from the seam lines, mm: outlines are read off chords. */
const NEARLY = 1;

/** A grain line shorter than this, mm, can be laid askew by a degree with shears' width to spare. */
const SHORTEST = 120;

/** As long as two sheets; longer is not looked for. */
const LONG_ENOUGH = 350;

/** A line farther from the piece's own must be longer by this to be taken, mm. */
const WORTH_MOVING = 20;

/** Sideways from the piece's own line, nearest first, mm. */
const SHIFTS = Array.from(
  { length: 60 },
  (_, index) => (index % 2 === 0 ? 1 : -1) * (Math.floor(index / 2) + 1) * 25,
);

/** Stretches inside an outline of the line that lies `shift` to the left of another, clear of the outline. */
function parallelsInside(line: Line, shift: number, outline: readonly Point[]): Line[] {
  const way = unit(subtract(line.to, line.from));
  const aside = leftOf(way);
  const origin = along(line.from, aside, shift);
  const places = outline
    .flatMap((point, index) => {
      const next = outline[(index + 1) % outline.length]!;
      const [a, b] = [dot(subtract(point, origin), aside), dot(subtract(next, origin), aside)];
      if (a > 0 === b > 0) return [];
      return [dot(subtract(along(point, subtract(next, point), a / (a - b)), origin), way)];
    })
    .sort((a, b) => a - b);
  const stretches: Line[] = [];
  for (let index = 0; index + 1 < places.length; index += 2) {
    const [from, to] = [places[index]! + CLEAR, places[index + 1]! - CLEAR];
    if (to > from)
      stretches.push({ kind: 'line', from: along(origin, way, from), to: along(origin, way, to) });
  }
  return stretches;
}

/** Clear of seam lines, mm. */
const CLEAR = 15;

/** The longest part of a line that lies on printed sheets. */
function longestShown(
  line: Line,
  cell: Cell,
  isPrinted: (row: number, column: number) => boolean,
): Line | undefined {
  const steps = Math.max(1, Math.ceil(lengthOf(line) / STEP));
  const at = (step: number): Point => along(line.from, subtract(line.to, line.from), step / steps);
  let best = { from: 0, to: 0 };
  let from: number | undefined;
  for (let step = 0; step <= steps; step++) {
    const { x, y } = at(step);
    const isWell = [-RIM, RIM].every((rim) =>
      isPrinted(Math.floor((y + rim) / cell.height), Math.floor((x + rim) / cell.width)),
    );
    if (!isWell) from = undefined;
    else from ??= step;
    if (from !== undefined && step - from > best.to - best.from) best = { from, to: step };
  }
  if (best.to === best.from) return undefined;
  return { kind: 'line', from: at(best.from), to: at(best.to) };
}

/** mm. */
const STEP = 5;

/** Nearer than this to the edge of a sheet, mm, a line is on the next one too. */
const RIM = 0.5;

function lengthOf(line: Line | undefined): number {
  return line === undefined ? 0 : distance(line.from, line.to);
}
