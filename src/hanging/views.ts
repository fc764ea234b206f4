import type { Point } from '../geometry/curve.ts';
import { depthMap } from './depth-map.ts';
import type { Hang } from './hang.ts';
import { type Side, seenFrom } from './seen.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import { FINER, type Surface, smoothSurface } from './surface.ts';
import { tracedOutline } from './traced-outline.ts';
import { levelLines, type SeenLine, turningLines } from './turning-lines.ts';
import { isFold, isHollow, isOutline, visibleParts } from './visible-parts.ts';

/** The gown from one side, hidden lines taken out. mm of the gown: x to the right, y down, the floor at 0. */
export interface GownView {
  readonly side: Side;
  /** Closed. */
  readonly outlines: readonly (readonly Point[])[];
  /** The hem and the sewn edge where they are not the outline. */
  readonly edges: readonly (readonly Point[])[];
  /** Where the cloth turns from the eye. */
  readonly folds: readonly (readonly Point[])[];
  readonly seams: readonly { readonly station: number; readonly line: readonly Point[] }[];
}

/** An outline keeps its corners; a fold is one stroke. */
const OUTLINE: Hand = { step: 5, rounds: 2, tolerance: 0.6 };
const FOLD: Hand = { step: 14, rounds: 4, tolerance: 1.2 };
const SEAM: Hand = { step: 20, rounds: 2, tolerance: 0.8 };

/** A fold shorter than this is not drawn, mm. */
const LEAST_FOLD = 60;
const LEAST_LINE = 40;

export function gownViews(hang: Hang, sides: readonly Side[]): GownView[] {
  const surface = smoothSurface(hang);
  return sides.map((side) => viewOf(hang, surface, side));
}

function viewOf(hang: Hang, surface: Surface, side: Side): GownView {
  const seen = seenFrom(surface, side);
  const map = depthMap([seen]);
  const drawn = (lines: readonly SeenLine[], hand: Hand, least: number): Point[][] =>
    lines
      .map((line) => line.map(([x, y]): Point => ({ x, y })))
      .filter((line) => lengthOfLine(line) >= least)
      .map((line) => smoothedLine(line, hand));
  const inside = (line: SeenLine): SeenLine[] => visibleParts(map, line, (own, place) => !isOutline(own, place));
  return {
    side,
    outlines: tracedOutline(map).map((loop) => smoothedLine(loop, OUTLINE, true)),
    edges: drawn([rowLine(seen, 0), rowLine(seen, seen.rows - 1)].flatMap(inside), SEAM, LEAST_LINE),
    folds: drawn(
      [
        ...turningLines(seen).flatMap((line) => visibleParts(map, line, isFold)),
        ...(side === 'above' ? [] : levelLines(seen).flatMap((line) => visibleParts(map, line, isHollow))),
      ],
      FOLD,
      LEAST_FOLD,
    ),
    seams: hang.seams.flatMap(({ station, column }) =>
      drawn(inside(columnLine(seen, column * FINER)), SEAM, LEAST_LINE).map((line) => ({ station, line })),
    ),
  };
}

function rowLine({ columns, rows, place }: Surface, row: number): SeenLine {
  return Array.from({ length: columns + 1 }, (_, column) => seenPlace(place, (column % columns) * rows + row));
}

function columnLine({ rows, place }: Surface, column: number): SeenLine {
  return Array.from({ length: rows }, (_, row) => seenPlace(place, column * rows + row));
}

function seenPlace(place: Float64Array, i: number): [number, number, number] {
  return [place[3 * i]!, place[3 * i + 1]!, place[3 * i + 2]!];
}
