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
import type { Slot } from './slots-to-draw.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import { strokeAt, strokesAcross } from './strokes-across.ts';
import { FINER, type Surface, smoothSurface } from './surface.ts';
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
  /** How deep the edging along the hem is, mm. */
  readonly edging?: number;
  /** Columns down which the folds of pleats show, with parts of columns. */
  readonly pleats?: readonly number[];
  /** Where it is gathered to what it is sewn to. */
  readonly gathered?: readonly Columns[];
  /** Pockets and slits. */
  readonly slots?: readonly Slot[];
  /** The upper edge of a wrap. */
  readonly edge?: SlantedLine;
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
  const surface = smoothSurface(fairedSurface({ ...hang, closed: true }, hang.joins));
  const hollows = hollowLines(surface);
  const gathers = gatherLines(surface, isIn(extras.gathered ?? [], hang.stride), depthOfCloth(surface));
  return sides.map((side) => viewOf(hang, { surface, hollows, gathers, parts }, side, extras));
}

/** The cloth as it is drawn, and its hollows as places of it. */
interface DrawnCloth {
  readonly surface: Surface;
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
  { surface, hollows, gathers, parts }: DrawnCloth,
  side: ViewFrom,
  { wearer, opening, edging, pleats = [], slots = [], edge }: ViewExtras,
): GownView {
  const seen = seenFrom(surface, side);
  const beside = partsSeen(parts, side);
  const raw = depthMap([
    { surface: seen, filled: false },
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
  const ends = [rowLine(seen, 0), rowLine(seen, seen.rows - 1)]
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
  const slotted = slots.map((slot) => slotSeen(map, hang, seen, slot, outlines));
  const slotLines = slotted.flatMap(({ lines }) => lines);
  const short = keptApart(
    [
      ...gathers.map((line) => line.map((i) => seenPlace(seen.place, i))).flatMap(inside),
      ...all('gathers'),
    ].map(inPlane),
    [...outlines, ...seams, ...open],
    LEAST_GATHER,
  );
  const folds = [
    {
      lines: foldsSeen(map, seen, hollows, side, SKIRT).map(inPlane),
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
    edging: edging === undefined ? [] : drawn(inside(edgingLine(hang, seen, edging))),
    folds: [
      ...short.map((line) => smoothedLine(line, SEAM)),
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
  { pleats, edge }: { readonly pleats: readonly number[]; readonly edge: SlantedLine | undefined },
): SeenLine[] {
  return [
    ...hang.seams
      .filter(({ station, onFold }) => station !== edge?.station && onFold !== true)
      .map(({ column, from = 0 }) => columnLine(hang, seen, column * FINER, from)),
    ...pleats.map((column) =>
      columnLine(hang, seen, Math.round((column / hang.stride) * FINER) % seen.columns, 0),
    ),
    ...(edge === undefined ? [] : [slantedLine(hang, seen, edge)]),
  ];
}

/** A pocket or a slit as far as it is seen, but for the outline, with a tack across each end that is sewn. */
function slotSeen(
  map: DepthMap,
  hang: Hang,
  seen: Surface,
  slot: Slot,
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
      ...(!slot.isOpenBelow && isEnd(line.at(-1), last) ? [strokeAt(line.at(-1)!, line.at(-2)!)] : []),
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
