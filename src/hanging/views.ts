import type { Point } from '../geometry/curve.ts';
import { type DepthMap, depthMap, type Hiding } from './depth-map.ts';
import type { DrawnPart, PlaceLine } from './drawn-part.ts';
import { figureLines, type Wearer } from './figure-lines.ts';
import type { Hang } from './hang.ts';
import { hollowLines } from './hollow-lines.ts';
import { keptApart, keptApartFromAll } from './kept-apart.ts';
import { type SeenPoint, seenFrom, type ViewFrom } from './seen.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import { strokesAcross } from './strokes-across.ts';
import { FINER, type Surface, smoothSurface, withoutColumns } from './surface.ts';
import { tracedOutline } from './traced-outline.ts';
import { facingOf, type SeenLine, turningLines } from './turning-lines.ts';
import { isEmpty, isFold, isOutline, visibleParts } from './visible-parts.ts';
import type { SlantedLine } from './wrap-line.ts';

/** The gown from one side, hidden lines taken out. mm of the gown: x to the right, y down, the floor at 0. */
export interface GownView {
  readonly side: ViewFrom;
  /** Closed. */
  readonly outlines: readonly (readonly Point[])[];
  /** The hem and the sewn edge where they are not the outline. */
  readonly edges: readonly (readonly Point[])[];
  /** Where the cloth turns from the eye. */
  readonly folds: readonly (readonly Point[])[];
  readonly seams: readonly (readonly Point[])[];
  /** The opening, where it is seen. */
  readonly opening: readonly (readonly Point[])[];
  /** Short strokes across it. */
  readonly strokes: readonly (readonly Point[])[];
  /** Where the edging's upper edge lies. */
  readonly edging: readonly (readonly Point[])[];
  /** Edges of what is sewn to the skirt, as far as they are not the outline: the bodice's, an overskirt's. */
  readonly parts: readonly (readonly Point[])[];
  /** Lines of a figure for proportion; nothing where the gown hides them. */
  readonly figure: readonly (readonly Point[])[];
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

/** What is drawn beside the cloth itself. */
export interface ViewExtras {
  readonly wearer: Wearer;
  /** Columns that are open from a depth of cloth down to the hem. */
  readonly slits?: readonly { readonly column: number; readonly from: number }[];
  readonly opening?: { readonly column: number; readonly from: number; readonly to: number };
  /** How deep the edging along the hem is, mm. */
  readonly edging?: number;
  readonly pleats?: readonly PleatLine[];
  /** Columns inside the folds of pleats: of them nothing is drawn. */
  readonly inFolds?: readonly number[];
  /** The upper edge of a wrap. */
  readonly edge?: SlantedLine;
}

/** A column, with parts of one, down which the fold of a pleat shows, and the row of the whole cloth in which it begins. */
export interface PleatLine {
  readonly column: number;
  readonly from: number;
}

/** An outline keeps its corners; a fold is one stroke. */
const OUTLINE: Hand = { step: 5, rounds: 10, tolerance: 0.6, keepsCorners: true };
const FOLD: Hand = { step: 14, rounds: 4, tolerance: 1.2 };
const SEAM: Hand = { step: 20, rounds: 2, tolerance: 0.8 };

/** A fold shorter than this is not drawn, mm, nor an edge. */
const LEAST_FOLD = 80;
const LEAST_EDGE = 60;
const LEAST_LINE = 40;

export function gownViews(
  hang: Hang,
  sides: readonly ViewFrom[],
  extras: ViewExtras,
  parts: readonly DrawnPart[] = [],
): GownView[] {
  const surface = smoothSurface({ ...hang, closed: true });
  const outside = withoutColumns(surface, finerColumns(hang, extras.inFolds ?? []));
  const hollows = hollowLines(outside);
  return sides.map((side) => viewOf(hang, { surface, outside, hollows, parts }, side, extras));
}

/** Columns of the surface that is drawn, from those inside a fold on to the next on both sides. */
function finerColumns({ stride, columns }: Hang, inFolds: readonly number[]): number[] {
  return inFolds
    .filter((column) => column % stride === 0)
    .flatMap((column) => {
      const own = (column / stride) * FINER;
      return Array.from(
        { length: 2 * FINER - 1 },
        (_, k) => (own + k + 1 - FINER + columns * FINER) % (columns * FINER),
      );
    });
}

/** The cloth as it is drawn, and its hollows as places of it. */
interface DrawnCloth {
  readonly surface: Surface;
  /** The same without what lies inside of pleats. */
  readonly outside: Surface;
  readonly hollows: readonly PlaceLine[];
  readonly parts: readonly DrawnPart[];
}

function viewOf(
  hang: Hang,
  { surface, outside, hollows, parts }: DrawnCloth,
  side: ViewFrom,
  { wearer, opening, edging, pleats = [], slits = [], edge }: ViewExtras,
): GownView {
  const seen = seenFrom(surface, side);
  const shown = seenFrom(outside, side);
  const beside = parts
    .filter((part) => side !== 'above' || !part.notFromAbove)
    .map((part): SeenPart => ({ part, seen: lifted(seenFrom(part.surface, side), part.lifted) }));
  const map = depthMap([
    // From above one sees into the hem's pleats; from the sides the plies of one that is closed lie as one.
    { surface: side === 'above' ? seen : shown, filled: false },
    ...beside.map(({ part, seen: own }): Hiding => ({ surface: own, filled: part.filled })),
  ]);
  const inside = (line: SeenLine): SeenLine[] => insideOf(map, line, SKIRT);
  const outlines = tracedOutline(map).map((loop) => smoothedLine(loop, OUTLINE, true));
  const figure = figureLines(side, wearer).flatMap((line) => unhidden(map, line));
  const ofParts = beside.map((other, i) => linesOf(map, other, side, i + 1));
  const all = (of: keyof PartLines): SeenLine[] => ofParts.flatMap((lines) => lines[of]);
  const view = {
    side,
    outlines,
    seams: drawn(
      [
        ...[
          ...hang.seams
            .filter(({ station, onFold }) => station !== edge?.station && onFold !== true)
            .map(({ column, from = 0 }) => columnLine(hang, seen, column * FINER, from)),
          ...pleats.map(({ column, from }) => {
            const line = columnLine(hang, seen, Math.round((column / hang.stride) * FINER) % seen.columns, 0);
            return line.slice((from / hang.stride) * FINER);
          }),
          ...(edge === undefined ? [] : [slantedLine(hang, seen, edge)]),
          ...hang.joins.map((row) => rowLine(seen, row * FINER)),
        ].flatMap(inside),
        ...all('seams'),
      ],
      SEAM,
      LEAST_LINE,
    ),
    opening: drawn(
      [
        ...(opening === undefined ? [] : visibleParts(map, openingLine(hang, seen, opening), SKIRT)),
        ...all('opening'),
      ],
      SEAM,
      LEAST_LINE,
    ),
    edging: edging === undefined ? [] : drawn(inside(edgingLine(hang, seen, edging)), SEAM, LEAST_LINE),
    figure,
  };
  const ends = [
    rowLine(shown, 0),
    rowLine(seen, seen.rows - 1),
    ...slits.map(({ column, from }) => columnLine(hang, seen, (column / hang.stride) * FINER, from)),
  ].flatMap(inside);
  const edges = keptApart(ends.map(inPlane), outlines, LEAST_EDGE);
  const partEdges = keptApart(all('edges').map(inPlane), [...outlines, ...edges], LEAST_EDGE);
  const folds = [...foldsOf(map, shown, hollows, side, SKIRT), ...all('folds')].map(inPlane);
  const others = [...outlines, ...view.seams, ...view.opening, ...edges, ...partEdges];
  return {
    ...view,
    edges: edges.map((line) => smoothedLine(line, SEAM)),
    parts: partEdges.map((line) => smoothedLine(line, SEAM)),
    strokes: view.opening.flatMap(strokesAcross),
    folds: keptApartFromAll(folds, others, LEAST_FOLD).map((line) => smoothedLine(line, FOLD)),
    box: boxOf([...view.outlines, ...view.figure]),
  };
}

/** Number of the skirt among all that hides. */
const SKIRT = 0;

interface SeenPart {
  readonly part: DrawnPart;
  readonly seen: Surface;
}

type PartLines = Readonly<Record<'edges' | 'seams' | 'opening' | 'folds', readonly SeenLine[]>>;

/** A part's own lines, as far as nothing hides them. */
function linesOf(map: DepthMap, { part, seen }: SeenPart, side: ViewFrom, owner: number): PartLines {
  const facing = part.filled ? facingOf(seen) : undefined;
  const shown = (lines: readonly PlaceLine[], also?: typeof notOutline): SeenLine[] =>
    lines
      .flatMap((line) => (facing === undefined ? [line] : facingParts(line, facing)))
      .flatMap((line) =>
        visibleParts(
          map,
          line.map((i) => seenPlace(seen.place, i)),
          owner,
          also,
        ),
      );
  return {
    edges: shown(part.edges, notOutline),
    seams: shown(part.seams, notOutline),
    opening: shown(part.opening),
    folds: part.folds ? foldsOf(map, seen, hollowLines(part.surface), side, owner) : [],
  };
}

/** The stretches of a line that lie on the side towards the eye. */
function facingParts(line: PlaceLine, facing: Float64Array): number[][] {
  const parts: number[][] = [[]];
  for (const place of line) {
    if (facing[place]! > 0) parts[parts.length - 1]!.push(place);
    else if (parts[parts.length - 1]!.length > 0) parts.push([]);
  }
  return parts.filter((part) => part.length > 1);
}

function foldsOf(
  map: DepthMap,
  seen: Surface,
  hollows: readonly PlaceLine[],
  side: ViewFrom,
  owner: number,
): SeenLine[] {
  return [
    ...turningLines(seen).flatMap((line) => visibleParts(map, line, owner, isFold)),
    ...(side === 'above'
      ? []
      : hollows.flatMap((line) =>
          insideOf(
            map,
            line.map((i) => seenPlace(seen.place, i)),
            owner,
          ),
        )),
  ];
}

function notOutline(map: DepthMap, place: SeenLine[number]): boolean {
  return !isOutline(map, place);
}

function insideOf(map: DepthMap, line: SeenLine, owner: number): SeenLine[] {
  return visibleParts(map, line, owner, notOutline);
}

function lifted(seen: Surface, by: number): Surface {
  if (by === 0) return seen;
  const place = seen.place.slice();
  for (let i = 2; i < place.length; i += 3) place[i]! += by;
  return { ...seen, place };
}

function drawn(lines: readonly SeenLine[], hand: Hand, least: number): Point[][] {
  return lines
    .map(inPlane)
    .filter((line) => lengthOfLine(line) >= least)
    .map((line) => smoothedLine(line, hand));
}

function inPlane(line: SeenLine): Point[] {
  return line.map(([x, y]) => ({ x, y }));
}

function boxOf(lines: readonly (readonly Point[])[]): GownView['box'] {
  const box = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
  for (const { x, y } of lines.flat()) {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.top = Math.min(box.top, y);
    box.bottom = Math.max(box.bottom, y);
  }
  return box;
}

function rowLine({ columns, rows, place }: Surface, row: number): SeenLine {
  return Array.from({ length: columns + 1 }, (_, column) =>
    seenPlace(place, (column % columns) * rows + row),
  );
}

/** Down a column, from a depth of cloth on; what is sewn to the hem has seams of its own. */
function columnLine({ depth, rows, joins }: Hang, seen: Surface, column: number, from: number): SeenLine {
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
function slantedLine({ stride, joins, rows }: Hang, seen: Surface, { top, foot }: SlantedLine): SeenLine {
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
function openingLine(
  hang: Hang,
  seen: Surface,
  { column, from, to }: NonNullable<ViewExtras['opening']>,
): SeenLine {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, k) =>
    atDepth(hang, seen, (column / hang.stride) * FINER, from + ((to - from) * k) / steps),
  );
}

/** All round, this far above the hem along the cloth. */
function edgingLine(hang: Hang, seen: Surface, above: number): SeenLine {
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

function seenPlace(place: Float64Array, i: number): SeenPoint {
  return [place[3 * i]!, place[3 * i + 1]!, place[3 * i + 2]!];
}

/** The parts of a line in the plane of the view that lie where there is no skirt. */
function unhidden(map: DepthMap, line: readonly Point[]): Point[][] {
  const parts: Point[][] = [];
  let part: Point[] = [];
  for (const point of closely(line)) {
    if (isEmpty(map, point)) part.push(point);
    else if (part.length > 0) {
      parts.push(part);
      part = [];
    }
  }
  if (part.length > 0) parts.push(part);
  return parts.filter((own) => lengthOfLine(own) > LEAST_LINE).map((own) => smoothedLine(own, KEPT));
}

const KEPT: Hand = { step: 4, rounds: 0, tolerance: 0.5 };

/** The same line with places no more than 4 mm apart. */
function closely(line: readonly Point[]): Point[] {
  return line.slice(1).flatMap((to, i) => {
    const from = line[i]!;
    const count = Math.max(1, Math.ceil(lengthOfLine([from, to]) / 4));
    const between = Array.from({ length: count }, (_, k) => ({
      x: from.x + ((to.x - from.x) * k) / count,
      y: from.y + ((to.y - from.y) * k) / count,
    }));
    return i + 2 === line.length ? [...between, to] : between;
  });
}
