import type { Point } from '../geometry/curve.ts';
import { type DepthMap, depthMap, type Hiding } from './depth-map.ts';
import type { DrawnPart, PlaceLine } from './drawn-part.ts';
import { fairedSurface } from './faired-surface.ts';
import { figureLines, type Wearer } from './figure-lines.ts';
import { foldStrokes } from './fold-strokes.ts';
import type { Hang } from './hang.ts';
import { hollowLines } from './hollow-lines.ts';
import { keptApart } from './kept-apart.ts';
import {
  columnLine,
  edgingLine,
  type Opening,
  openingLine,
  rowLine,
  seenPlace,
  slantedLine,
} from './lines-on-skirt.ts';
import { metLine } from './met-lines.ts';
import { seenFrom, type ViewFrom } from './seen.ts';
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
  readonly opening?: Opening;
  /** Seams that are open from a depth of cloth down to the hem. */
  readonly slits?: readonly Omit<Opening, 'to'>[];
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

/** An outline keeps its corners. */
const OUTLINE: Hand = { step: 5, rounds: 10, tolerance: 0.6, keepsCorners: true };
const SEAM: Hand = { step: 20, rounds: 2, tolerance: 0.8 };

/** An edge shorter than this is not drawn, mm, nor another line. */
const LEAST_EDGE = 60;
const LEAST_LINE = 40;
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
  return sides.map((side) => viewOf(hang, { surface, outside, hollows, parts }, side, extras));
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
    ...(side === 'above' ? [{ surface: insideOfEdge(seen), filled: false }] : []),
  ]);
  const inside = (line: SeenLine): SeenLine[] => insideOf(map, line, SKIRT);
  const outlines = tracedOutline(map).map((loop) => smoothedLine(loop, OUTLINE, true));
  const figure = figureLines(side, wearer).flatMap((line) => unhidden(map, line));
  const ofParts = beside.map((other, i) => linesOf(map, other, side, i + 1));
  const all = (of: keyof PartLines): SeenLine[] => ofParts.flatMap((lines) => lines[of]);
  const smooth = (lines: readonly Point[][]): Point[][] => lines.map((line) => smoothedLine(line, SEAM));
  const ends = [
    rowLine(shown, 0),
    rowLine(seen, seen.rows - 1),
    ...slits.map(({ column, from }) => columnLine(hang, seen, (column / hang.stride) * FINER, from)),
  ]
    .flatMap(inside)
    .map(inPlane);
  const edges = met(smooth(keptApart(ends, outlines, LEAST_EDGE)), outlines);
  const apartFrom = [...outlines, ...edges];
  const partEdges = met(smooth(keptApart(all('edges').map(inPlane), apartFrom, LEAST_EDGE)), apartFrom);
  const strong = [...apartFrom, ...partEdges];
  const joins = met(drawn(hang.joins.map((row) => rowLine(seen, row * FINER)).flatMap(inside)), strong);
  const seams = met(drawn([...seamLines(hang, seen, { pleats, edge }).flatMap(inside), ...all('seams')]), [
    ...strong,
    ...joins,
  ]);
  const openings = [
    ...(opening === undefined ? [] : visibleParts(map, openingLine(hang, seen, opening), SKIRT)),
    ...all('opening'),
  ];
  const open = keptApart(drawn(openings), outlines, LEAST_LINE);
  const folds = [...foldsOf(map, shown, hollows, side, SKIRT), ...all('folds')].map(inPlane);
  return {
    side,
    outlines,
    edges,
    parts: partEdges,
    seams: [...seams, ...joins],
    opening: open,
    strokes: open.flatMap(strokesAcross),
    edging: edging === undefined ? [] : drawn(inside(edgingLine(hang, seen, edging))),
    folds: foldStrokes(folds, [...strong, ...seams, ...joins, ...open], [...strong, ...joins]),
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

function drawn(lines: readonly SeenLine[]): Point[][] {
  return lines
    .map(inPlane)
    .filter((line) => lengthOfLine(line) >= LEAST_LINE)
    .map((line) => smoothedLine(line, SEAM));
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
