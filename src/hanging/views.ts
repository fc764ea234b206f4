import type { Point } from '../geometry/curve.ts';
import { depthMap, type Hiding } from './depth-map.ts';
import { drawn, LEAST_LINE, met } from './drawn-lines.ts';
import type { DrawnPart, PlaceLine } from './drawn-part.ts';
import { edgeLines, roundAgain } from './edge-lines.ts';
import { fairedSurface } from './faired-surface.ts';
import { figureLines, type Wearer } from './figure-lines.ts';
import { unhidden } from './figure-seen.ts';
import { foldStrokes, leastFold } from './fold-strokes.ts';
import { foldsSeen } from './folds-seen.ts';
import { type Columns, gatherLines } from './gather-lines.ts';
import type { Hang } from './hang.ts';
import { hollowLines } from './hollow-lines.ts';
import { insideOfEdge } from './inside-of-edge.ts';
import { keptApart } from './kept-apart.ts';
import { depthOfCloth, edgingLine, type Opening, openingLine, rowLine, seenPlace } from './lines-on-skirt.ts';
import { metLine } from './met-lines.ts';
import { type PartLines, partLines, partsSeen } from './part-seen.ts';
import { type PleatLine, seamLines } from './seam-lines.ts';
import { inPlane, seenFrom, type ViewFrom } from './seen.ts';
import { withoutSlivers } from './slivers.ts';
import { hemDepth, slotSeen } from './slot-lines.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import { strokesAcross } from './strokes-across.ts';
import { FINER, type Surface, smoothSurface, withoutColumns } from './surface.ts';
import { tracedOutline } from './traced-outline.ts';
import type { SeenLine } from './turning-lines.ts';
import { insideOf, SKIRT, visibleParts } from './visible-parts.ts';
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

/** An outline keeps its corners. */
const OUTLINE: Hand = { step: 5, rounds: 10, tolerance: 0.6, keepsCorners: true };
const LEAST_GATHER = 20;

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
  const ends = [rowLine(shown, 0), rowLine(seen, seen.rows - 1)].flatMap(round);
  const { edges, parts: partEdges } = edgeLines(outlines, ends, all('edges'));
  const strong = [...outlines, ...edges, ...partEdges];
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
