import type { Point } from '../geometry/curve.ts';
import { type DepthMap, depthMap, type Hiding } from './depth-map.ts';
import type { DrawnPart, PlaceLine } from './drawn-part.ts';
import { fairedSurface } from './faired-surface.ts';
import { figureLines, type Wearer } from './figure-lines.ts';
import { unhidden } from './figure-seen.ts';
import { foldStrokes, leastFold } from './fold-strokes.ts';
import { foldsSeen } from './folds-seen.ts';
import { type Columns, gatherLines } from './gather-lines.ts';
import type { Hang } from './hang.ts';
import { hollowLines } from './hollow-lines.ts';
import { keptApart, keptApartFromAll } from './kept-apart.ts';
import {
  columnLine,
  depthOfCloth,
  edgingLine,
  type Opening,
  openingLine,
  rowLine,
  seenPlace,
  slantedLine,
} from './lines-on-skirt.ts';
import { metLine } from './met-lines.ts';
import { type PartLines, partLines, partsSeen } from './part-seen.ts';
import { partedAtTurns } from './parted-at-turns.ts';
import { inPlane, type SeenPoint, seenFrom, type ViewFrom } from './seen.ts';
import { withoutSlivers } from './slivers.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import { strokeAt, strokesAcross } from './strokes-across.ts';
import { FINER, type Surface, smoothSurface, withoutColumns } from './surface.ts';
import { tracedOutline } from './traced-outline.ts';
import type { SeenLine } from './turning-lines.ts';
import { insideOf, visibleParts } from './visible-parts.ts';
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
  readonly opening?: Opening;
  /** Seams that are open from a depth of cloth down to the hem. */
  readonly slits?: readonly Omit<Opening, 'to'>[];
  /** How deep the edging along the hem is, mm. */
  readonly edging?: number;
  readonly pleats?: readonly PleatLine[];
  /** Columns inside the folds of pleats: of them nothing is drawn. */
  readonly inFolds?: readonly number[];
  /** Where it is gathered to what it is sewn to. */
  readonly gathered?: readonly Columns[];
  readonly pockets?: readonly Opening[];
  /** The upper edge of a wrap. */
  readonly edge?: SlantedLine;
}

/** A column, with parts of one, down which the fold of a pleat shows, and the row of the whole cloth in which it begins. */
export interface PleatLine {
  readonly column: number;
  readonly from: number;
}

/** An outline keeps its corners. */
const OUTLINE: Hand = { step: 5, rounds: 10, tolerance: 0.6, keepsCorners: true };
const SEAM: Hand = { step: 20, rounds: 2, tolerance: 0.8 };

/** An edge shorter than this is not drawn, mm, nor another line. */
const LEAST_EDGE = 60;
const LEAST_LINE = 40;
const LEAST_GATHER = 20;
/** The far side of a hem is left out where it runs along the near one for more than this, mm. */
const LEAST_FAR = 200;
/** A seam or an edge is drawn on to the line that it points at over this, mm. */
const REACH = 40;

export function gownViews(
  hang: Hang,
  sides: readonly ViewFrom[],
  extras: ViewExtras,
  parts: readonly DrawnPart[] = [],
): GownView[] {
  const folded = (extras.inFolds ?? [])
    .filter((column) => column % hang.stride === 0)
    .map((column) => column / hang.stride);
  const pressed = new Set(
    folded.flatMap((column) => [-1, 0, 1].map((by) => (column + by + hang.columns) % hang.columns)),
  );
  const surface = smoothSurface(fairedSurface({ ...hang, closed: true }, hang.joins, pressed));
  const outside = withoutColumns(surface, finerColumns(folded, surface.columns));
  const hollows = hollowLines(outside);
  const gathers = gatherLines(surface, isIn(extras.gathered ?? [], hang.stride), depthOfCloth(surface));
  return sides.map((side) => viewOf(hang, { surface, outside, hollows, gathers, parts }, side, extras));
}

/** Of the surface that is drawn: from one inside a fold on to the next on both sides. */
function finerColumns(columns: readonly number[], all: number): number[] {
  return columns.flatMap((column) =>
    Array.from({ length: 2 * FINER - 1 }, (_, k) => (column * FINER + k + 1 - FINER + all) % all),
  );
}

/** The cloth as it is drawn, and its hollows as places of it. */
interface DrawnCloth {
  readonly surface: Surface;
  /** The same without what lies inside of pleats. */
  readonly outside: Surface;
  readonly hollows: readonly PlaceLine[];
  readonly gathers: readonly PlaceLine[];
  readonly parts: readonly DrawnPart[];
}

/** Whether a column of the finer surface lies within some of the cloth's. */
function isIn(ranges: readonly Columns[], stride: number): (column: number) => boolean {
  return (column) =>
    ranges.some(({ from, to }) => column * stride > from * FINER && column * stride < to * FINER);
}

function viewOf(
  hang: Hang,
  { surface, outside, hollows, gathers, parts }: DrawnCloth,
  side: ViewFrom,
  { wearer, opening, edging, pleats = [], slits = [], pockets = [], edge }: ViewExtras,
): GownView {
  const seen = seenFrom(surface, side);
  const shown = seenFrom(outside, side);
  const beside = partsSeen(parts, side);
  const raw = depthMap([
    // From above one sees into the hem's pleats; from the sides the plies of one that is closed lie as one.
    { surface: side === 'above' ? seen : shown, filled: false },
    ...beside.map(({ part, seen: own }): Hiding => ({ surface: own, filled: part.filled })),
    ...(side === 'above' ? [{ surface: insideOfEdge(seen), filled: false }] : []),
  ]);
  const { map, loops } = withoutSlivers(raw, tracedOutline(raw));
  const inside = (line: SeenLine): SeenLine[] => insideOf(map, line, SKIRT);
  const round = (line: SeenLine): readonly SeenLine[] => roundAgain(line, inside(line));
  const outlines = loops.map((loop) => smoothedLine(loop, OUTLINE, true));
  const figure = figureLines(side, wearer).flatMap((line) => unhidden(map, line));
  const ofParts = beside.map((other, i) => partLines(map, other, side, i + 1));
  const all = (of: keyof PartLines): SeenLine[] => ofParts.flatMap((lines) => lines[of]);
  const smooth = (lines: readonly Point[][]): Point[][] => lines.map((line) => smoothedLine(line, SEAM));
  const ends = [rowLine(shown, 0), rowLine(seen, seen.rows - 1)]
    .flatMap(round)
    .map(inPlane)
    .flatMap(nearAndFar);
  const edges = met(smooth(keptApartFromAll(ends, outlines, LEAST_EDGE)), outlines);
  const apartFrom = [...outlines, ...edges];
  const partEdges = met(smooth(keptApart(all('edges').map(inPlane), apartFrom, LEAST_EDGE)), apartFrom);
  const strong = [...apartFrom, ...partEdges];
  const rows = hang.joins.map((row) => rowLine(seen, row * FINER)).flatMap(round);
  const joins = met(keptApart(drawn(rows), partEdges, LEAST_LINE), strong);
  const seams = met(drawn([...seamLines(hang, seen, { pleats, edge }).flatMap(inside), ...all('seams')]), [
    ...strong,
    ...joins,
  ]);
  const openings = [
    ...(opening === undefined ? [] : visibleParts(map, openingLine(hang, seen, opening), SKIRT)),
    ...all('opening'),
  ];
  const open = keptApart(drawn(openings), outlines, LEAST_LINE);
  const slotted = [...pockets, ...slits.map((slit) => ({ ...slit, to: hemDepth(hang, slit.column) }))].map(
    (slot) => slotSeen(map, hang, seen, slot, outlines),
  );
  const slotLines = slotted.flatMap(({ lines }) => lines);
  const strokesDown = [
    ...gathers.map((line) => line.map((i) => seenPlace(seen.place, i))).flatMap(inside),
    ...all('gathers'),
  ].map(inPlane);
  const short = keptApart(strokesDown, [...outlines, ...seams, ...open], LEAST_GATHER)
    .map((line) => metLine(line, [...strong, ...joins], LEAST_GATHER))
    .filter(({ line, startMeets }) => startMeets && lengthOfLine(line) > LEAST_GATHER);
  const folds = [
    {
      lines: foldsSeen(map, shown, hollows, side, SKIRT).map(inPlane),
      least: leastFold(depthOfCloth(surface)),
    },
    ...ofParts.map(({ folds: lines }, i) => ({
      lines: lines.map(inPlane),
      least: leastFold(depthOfCloth(beside[i]!.part.surface)),
    })),
  ];
  return {
    side,
    outlines,
    edges,
    parts: partEdges,
    seams: [...seams, ...joins],
    opening: [...open, ...slotLines],
    strokes: [...open.flatMap(strokesAcross), ...slotted.flatMap(({ tacks }) => tacks)],
    edging: edging === undefined ? [] : met(drawn(round(edgingLine(hang, seen, edging))), strong),
    folds: [
      ...short.map(({ line }) => [...line]),
      ...foldStrokes(folds, [...strong, ...seams, ...joins, ...open, ...slotLines], [...strong, ...joins]),
    ],
    figure,
    box: boxOf([...outlines, ...figure]),
  };
}

/** Seams down the skirt, the folds of pleats and the edge of a wrap. */
function seamLines(
  hang: Hang,
  seen: Surface,
  { pleats, edge }: { readonly pleats: readonly PleatLine[]; readonly edge: SlantedLine | undefined },
): SeenLine[] {
  return [
    ...hang.seams
      .filter(({ station, onFold }) => station !== edge?.station && onFold !== true)
      .map(({ column, from = 0 }) => columnLine(hang, seen, column * FINER, from)),
    ...pleats.map(({ column, from }) => {
      const line = columnLine(hang, seen, Math.round((column / hang.stride) * FINER) % seen.columns, 0);
      return line.slice((from / hang.stride) * FINER);
    }),
    ...(edge === undefined ? [] : [slantedLine(hang, seen, edge)]),
  ];
}

/** Cloth from the sewn edge to the hem at a column of the whole cloth, mm. */
function hemDepth({ depth, rows, stride }: Hang, column: number): number {
  return depth[(Math.round(column / stride) + 1) * rows - 1]!;
}

/** A pocket or a slit as far as it is seen, but for the outline, with a tack across each end that is sewn. */
function slotSeen(
  map: DepthMap,
  hang: Hang,
  seen: Surface,
  slot: Opening,
  outlines: readonly (readonly Point[])[],
): { readonly lines: Point[][]; readonly tacks: Point[][] } {
  const whole = openingLine(hang, seen, slot);
  const lines = keptApart(drawn(visibleParts(map, whole, SKIRT)), outlines, LEAST_LINE);
  const isEnd = (at: Point | undefined, end: SeenPoint): boolean =>
    at !== undefined && lengthOfLine([at, { x: end[0], y: end[1] }]) < 1;
  const [first, last] = [whole[0]!, whole[whole.length - 1]!];
  return {
    lines,
    tacks: lines.flatMap((line) => [
      ...(isEnd(line[0], first) ? [strokeAt(line[0]!, line[1]!)] : []),
      ...(slot.to < hemDepth(hang, slot.column) && isEnd(line.at(-1), last)
        ? [strokeAt(line.at(-1)!, line.at(-2)!)]
        : []),
    ]),
  };
}

/** A hem seen from before and behind at once, as two lines; one that curls in folds is one line all the same. */
function nearAndFar(line: readonly Point[]): (readonly Point[])[] {
  const parts = partedAtTurns(line);
  return parts.every((part) => lengthOfLine(part) > LEAST_FAR) ? parts : [line];
}

/** Of a line all round, the part that ends where it began runs on in the one that begins there. */
function roundAgain(line: SeenLine, parts: readonly SeenLine[]): readonly SeenLine[] {
  const [first, last] = [parts[0], parts[parts.length - 1]];
  if (first === undefined || last === undefined) return parts;
  if (first[0] !== line[0] || last[last.length - 1] !== line[line.length - 1]) return parts;
  // All of it: from behind on, where it is least looked at.
  const half = Math.floor(line.length / 2);
  if (first === last) return [[...line.slice(half), ...line.slice(1, half + 1)]];
  return [[...last, ...first.slice(1)], ...parts.slice(1, -1)];
}

function met(lines: readonly Point[][], targets: readonly (readonly Point[])[]): Point[][] {
  return lines.map((line) => [...metLine(line, targets, REACH).line]);
}

/** What fills the edge that a skirt is sewn to, seen from above: she. One does not look down past her to the floor. */
function insideOfEdge({ columns, rows, place }: Surface): Surface {
  const edge = Array.from({ length: columns }, (_, column) => seenPlace(place, column * rows));
  const middle = [0, 1, 2].map((axis) => edge.reduce((sum, own) => sum + own[axis]!, 0) / columns);
  const own = new Float64Array(6 * columns);
  for (const [column, [x, y, z]] of edge.entries())
    own.set([x, y, z - BELOW_EDGE, middle[0]!, middle[1]!, middle[2]! - BELOW_EDGE], 6 * column);
  return { columns, rows: 2, place: own, closed: true };
}

/** So far below the edge, which it does not hide, mm. */
const BELOW_EDGE = 20;

/** Number of the skirt among all that hides. */
const SKIRT = 0;

function drawn(lines: readonly SeenLine[]): Point[][] {
  return lines
    .map(inPlane)
    .filter((line) => lengthOfLine(line) >= LEAST_LINE)
    .map((line) => smoothedLine(line, SEAM));
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
