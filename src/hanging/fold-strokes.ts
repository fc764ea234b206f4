import type { Point } from '../geometry/curve.ts';
import { keptApartFromAll } from './kept-apart.ts';
import { crossing, endWay, metLine } from './met-lines.ts';
import { partedAtTurns } from './parted-at-turns.ts';
import { apart, type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';

/** A fold is one stroke. */
const FOLD: Hand = { step: 14, rounds: 6, tolerance: 1.2 };
/** A fold that begins at a hem, a waist or an outline is drawn from this length on, mm; one that does not from the other. */
const LEAST_AT_LINE = 90;
const LEAST_ALONE = 260;
/** Parts of one fold are nearer than this where it is lost to sight for a while, mm. */
const LOST_FOR = 90;
/** Within some 20° they run on in one another. */
const RUNS_ON = 0.94;
/** A fold is drawn on to the line that it points at over this, mm. */
const REACH = 70;

/** The folds of one cloth, as they were found, and from which length on they are drawn, mm. */
export interface FoldsFound {
  readonly lines: readonly (readonly Point[])[];
  readonly least: number;
}

/** A shallow flounce has short folds: of its depth. */
const OF_DEPTH = 0.5;

/** @param deep how deep the cloth is along itself, mm */
export function leastFold(deep: number): number {
  return Math.min(LEAST_AT_LINE, OF_DEPTH * deep);
}

/**
 * Folds as a hand draws them, of the lines along which the cloth turns from the eye: each in one stroke, without the hooks
 * in which such lines end, from the hem, the waist or the outline, and over no other; what is short and hangs in the air
 * is left out.
 *
 * @param beside what is drawn already, along which no fold is drawn again
 * @param ends what a fold begins or ends at
 */
export function foldStrokes(
  found: readonly FoldsFound[],
  beside: readonly (readonly Point[])[],
  ends: readonly (readonly Point[])[],
): Point[][] {
  const drawn: Point[][] = [];
  for (const { lines, least } of found) {
    const strokes = joined(lines.flatMap(partedAtTurns));
    const apartFrom = keptApartFromAll(strokes, [...beside, ...drawn], least / 2)
      .map((line) => smoothedLine(line, FOLD))
      .sort((a, b) => lengthOfLine(b) - lengthOfLine(a));
    for (const line of apartFrom) {
      const met = metLine(upTo(line, drawn), ends, REACH);
      const long = met.startMeets || met.endMeets ? least : LEAST_ALONE;
      if (lengthOfLine(met.line) >= long) drawn.push([...met.line]);
    }
  }
  return drawn;
}

/** The longest part of a line that crosses none of the others. */
function upTo(line: readonly Point[], others: readonly (readonly Point[])[]): Point[] {
  const parts: Point[][] = [[line[0]!]];
  for (const [i, to] of line.slice(1).entries()) {
    const from = line[i]!;
    const cut = others.flatMap((other) =>
      other.slice(1).flatMap((b, k) => crossingOf(from, to, other[k]!, b) ?? []),
    );
    const [first] = cut.sort((a, b) => a - b);
    if (first === undefined) parts[parts.length - 1]!.push(to);
    else {
      parts[parts.length - 1]!.push({
        x: from.x + (to.x - from.x) * first,
        y: from.y + (to.y - from.y) * first,
      });
      parts.push([to]);
    }
  }
  return parts.reduce((best, part) => (lengthOfLine(part) > lengthOfLine(best) ? part : best));
}

/** At which part of the way from one place to another a segment is crossed. */
function crossingOf(from: Point, to: Point, a: Point, b: Point): number | undefined {
  const whole = apart(from, to);
  if (whole === 0) return undefined;
  const way = { x: (to.x - from.x) / whole, y: (to.y - from.y) / whole };
  const on = crossing(from, way, a, b);
  return on !== undefined && on <= whole ? on / whole : undefined;
}

/** Strokes of which one runs on in the other made one, the nearest ends first. */
function joined(lines: readonly (readonly Point[])[]): Point[][] {
  let strokes = lines.map((line) => [...line]);
  for (;;) {
    const next = nearestPair(strokes);
    if (next === undefined) return strokes;
    const { first, second, line } = next;
    strokes = [...strokes.filter((stroke) => stroke !== first && stroke !== second), line];
  }
}

function nearestPair(
  strokes: readonly Point[][],
): { readonly first: Point[]; readonly second: Point[]; readonly line: Point[] } | undefined {
  let best: ReturnType<typeof nearestPair>;
  let nearest = LOST_FOR;
  for (const [i, first] of strokes.entries()) {
    for (const second of strokes.slice(i + 1)) {
      for (const a of [first, [...first].reverse()]) {
        for (const b of [second, [...second].reverse()]) {
          const gap = apart(a[a.length - 1]!, b[0]!);
          if (gap < nearest && runsOn(a, b)) {
            nearest = gap;
            best = { first, second, line: [...a, ...b] };
          }
        }
      }
    }
  }
  return best;
}

/** The end of one, the start of the next and the way between them are one way. */
function runsOn(a: readonly Point[], b: readonly Point[]): boolean {
  const [out, back] = [endWay(a), endWay([...b].reverse())];
  if (out === undefined || back === undefined) return false;
  const into = { x: -back.x, y: -back.y };
  const [from, to] = [a[a.length - 1]!, b[0]!];
  const gap = apart(from, to);
  const between = gap > 0 ? { x: (to.x - from.x) / gap, y: (to.y - from.y) / gap } : out;
  const along = (p: Point, q: Point): number => p.x * q.x + p.y * q.y;
  return along(out, into) > RUNS_ON && along(out, between) > RUNS_ON && along(into, between) > RUNS_ON;
}
