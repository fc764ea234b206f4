import type { Point } from '../geometry/curve.ts';
import { type DepthMap, depthMap, type Hiding } from './depth-map.ts';
import type { DrawnPart, PlaceLine } from './drawn-part.ts';
import { roundAgain } from './edge-lines.ts';
import { insideOfEdge } from './inside-of-edge.ts';
import { type PartLines, partLines, partsSeen, type SeenPart } from './part-seen.ts';
import { seenFrom, type ViewFrom } from './seen.ts';
import { withoutSlivers } from './slivers.ts';
import type { Surface } from './surface.ts';
import { tracedOutline } from './traced-outline.ts';
import type { SeenLine } from './turning-lines.ts';
import { insideOf, SKIRT } from './visible-parts.ts';

/** The cloth as it is drawn, and its hollows as places of it. */
export interface DrawnCloth {
  readonly surface: Surface;
  /** The same without what lies inside of pleats. */
  readonly outside: Surface;
  readonly hollows: readonly PlaceLine[];
  readonly gathers: readonly PlaceLine[];
  readonly parts: readonly DrawnPart[];
}

/** The cloth looked at from one side. */
export interface Look {
  readonly side: ViewFrom;
  readonly seen: Surface;
  /** The same without what lies inside of pleats. */
  readonly shown: Surface;
  /** What hides what, and the outlines of all of it together. */
  readonly map: DepthMap;
  readonly loops: readonly (readonly Point[])[];
  readonly beside: readonly SeenPart[];
  /** By part, in the order of `beside`. */
  readonly lines: readonly PartLines[];
}

export function lookedAt({ surface, outside, parts }: DrawnCloth, side: ViewFrom): Look {
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
  const lines = beside.map((other, i) => partLines(map, other, side, i + 1));
  return { side, seen, shown, map, loops, beside, lines };
}

/** What is seen of a line on the skirt. */
export function inside({ map }: Look, line: SeenLine): SeenLine[] {
  return insideOf(map, line, SKIRT);
}

/** The same of one that goes all round and ends where it began. */
export function allRound(look: Look, line: SeenLine): readonly SeenLine[] {
  return roundAgain(line, inside(look, line));
}

export function ofParts({ lines }: Look, of: keyof PartLines): SeenLine[] {
  return lines.flatMap((own) => own[of]);
}
