import type { Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { FLAT } from '../geometry/tolerances.ts';

/** Part of the vertical chord through its place that the grain line takes. */
const FROM = 0.2;
const TO = 0.8;

/**
 * A line along the grain, inside the outline and clear of its ends: through a place where that lies inside, and as near
 * to it as there is cloth where it does not, as on a gore that is far shorter at one seam than at the other.
 */
export function upright(through: Point, edges: readonly Edge[]): Line {
  const outline = flattenedRun(
    edges.flatMap((edge) => edge.curves),
    FLAT * 10,
  );
  const { x, chord } = chordNear(through, outline);
  const [top, bottom] = chord;
  const at = (part: number): Point => ({ x, y: top + (bottom - top) * part });
  return { kind: 'line', from: at(FROM), to: at(TO) };
}

type Chord = readonly [top: number, bottom: number];

/** At the place itself; beside an outline that does not reach as far, towards its middle. */
function chordNear(
  { x, y }: Point,
  outline: readonly Point[],
): { readonly x: number; readonly chord: Chord } {
  const xs = outline.map((point) => point.x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  for (const share of [0, 0.5, 1]) {
    const here = x + (middle - x) * share;
    const chord = nearest(chordsAt(here, outline), y);
    if (chord !== undefined) return { x: here, chord };
  }
  // An outline at no real place: whoever looks at the piece as a whole refuses it.
  return { x, chord: [Number.NaN, Number.NaN] };
}

/** The stretches of a vertical line that lie inside the outline, from the top down. */
function chordsAt(x: number, outline: readonly Point[]): Chord[] {
  const crossings = outline.flatMap((point, i) => {
    const next = outline[(i + 1) % outline.length]!;
    if (point.x > x === next.x > x) return [];
    return [point.y + ((x - point.x) / (next.x - point.x)) * (next.y - point.y)];
  });
  crossings.sort((a, b) => a - b);
  return crossings.flatMap((top, i) => (i % 2 === 0 ? [[top, crossings[i + 1]!] as const] : []));
}

/** The chord that a height lies in, or else the one next to it. */
function nearest(chords: readonly Chord[], y: number): Chord | undefined {
  const away = ([top, bottom]: Chord): number => Math.max(top - y, y - bottom, 0);
  return chords.reduce<Chord | undefined>(
    (best, chord) => (best === undefined || away(chord) < away(best) ? chord : best),
    undefined,
  );
}
