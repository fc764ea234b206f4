import type { Point } from '../geometry/curve.ts';
import { drawn, met } from './drawn-lines.ts';
import type { DrawnPart } from './drawn-part.ts';
import { edgeLines } from './edge-lines.ts';
import { fairedSurface } from './faired-surface.ts';
import { figureLines } from './figure-lines.ts';
import { unhidden } from './figure-seen.ts';
import { foldStrokes } from './fold-strokes.ts';
import { type Columns, gatherLines } from './gather-lines.ts';
import type { Hang } from './hang.ts';
import { hollowLines } from './hollow-lines.ts';
import { depthOfCloth, edgingLine, rowLine } from './lines-on-skirt.ts';
import { allRound, type DrawnCloth, lookedAt, ofParts } from './look.ts';
import type { ViewFrom } from './seen.ts';
import { type Hand, smoothedLine } from './smoothed-line.ts';
import { strokesAcross } from './strokes-across.ts';
import { FINER, smoothSurface, withoutColumns } from './surface.ts';
import type { ViewExtras } from './view-extras.ts';
import { foldsOf, gathersOf, openingsOf, seamsOf } from './view-lines.ts';

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

/** An outline keeps its corners. */
const OUTLINE: Hand = { step: 5, rounds: 10, tolerance: 0.6, keepsCorners: true };

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

/** Whether a column of the finer surface lies within some of the cloth's. */
function isIn(ranges: readonly Columns[], stride: number): (column: number) => boolean {
  return (column) =>
    ranges.some(({ from, to }) => column * stride > from * FINER && column * stride < to * FINER);
}

function viewOf(hang: Hang, cloth: DrawnCloth, side: ViewFrom, extras: ViewExtras): GownView {
  const look = lookedAt(cloth, side);
  const { seen, map } = look;
  const { edging, wearer } = extras;
  const outlines = look.loops.map((loop) => smoothedLine(loop, OUTLINE, true));
  const figure = figureLines(side, wearer).flatMap((line) => unhidden(map, line));
  const ends = [rowLine(look.shown, 0), rowLine(seen, seen.rows - 1)].flatMap((line) => allRound(look, line));
  const { edges, parts } = edgeLines(outlines, ends, ofParts(look, 'edges'));
  const strong = [...outlines, ...edges, ...parts];
  const { joins, seams } = seamsOf(hang, look, extras, { strong, parts });
  const { open, slotted } = openingsOf(hang, look, extras, outlines);
  const slotLines = slotted.flatMap(({ lines }) => lines);
  const gathers = gathersOf(look, cloth, {
    beside: [...outlines, ...seams, ...open],
    on: [...strong, ...joins],
  });
  const folds = foldStrokes(
    foldsOf(look, cloth),
    [...strong, ...seams, ...joins, ...open, ...slotLines],
    [...strong, ...joins],
  );
  return {
    side,
    outlines,
    edges,
    parts,
    seams: [...seams, ...joins],
    opening: [...open, ...slotLines],
    strokes: [...open.flatMap(strokesAcross), ...slotted.flatMap(({ tacks }) => tacks)],
    edging: edging === undefined ? [] : met(drawn(allRound(look, edgingLine(hang, seen, edging))), strong),
    folds: [...gathers, ...folds],
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
