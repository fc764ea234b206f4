import type { Point } from '../geometry/curve.ts';
import { met, smooth } from './drawn-lines.ts';
import { keptApart, keptApartFromAll } from './kept-apart.ts';
import { partedAtTurns } from './parted-at-turns.ts';
import { inPlane } from './seen.ts';
import { lengthOfLine } from './smoothed-line.ts';
import type { SeenLine } from './turning-lines.ts';

/** An edge shorter than this is not drawn, mm. */
const LEAST_EDGE = 60;
/** The far side of a hem is left out where it runs along the near one for more than this, mm. */
const LEAST_FAR = 200;

/** Hem and sewn edge, and edges of what is sewn to the skirt, as far as they are neither the outline nor each other. */
export function edgeLines(
  outlines: readonly (readonly Point[])[],
  ends: readonly SeenLine[],
  ofParts: readonly SeenLine[],
): { readonly edges: Point[][]; readonly parts: Point[][] } {
  const both = ends.map(inPlane).flatMap(nearAndFar);
  const edges = met(smooth(keptApartFromAll(both, outlines, LEAST_EDGE)), outlines);
  const apartFrom = [...outlines, ...edges];
  return { edges, parts: met(smooth(keptApart(ofParts.map(inPlane), apartFrom, LEAST_EDGE)), apartFrom) };
}

/** A hem seen from before and behind at once, as two lines; one that curls in folds is one line all the same. */
function nearAndFar(line: readonly Point[]): (readonly Point[])[] {
  const parts = partedAtTurns(line);
  return parts.every((part) => lengthOfLine(part) > LEAST_FAR) ? parts : [line];
}

/** Of a line all round, the part that ends where it began runs on in the one that begins there. */
export function roundAgain(line: SeenLine, parts: readonly SeenLine[]): readonly SeenLine[] {
  const [first, last] = [parts[0], parts[parts.length - 1]];
  if (first === undefined || last === undefined) return parts;
  if (first[0] !== line[0] || last[last.length - 1] !== line[line.length - 1]) return parts;
  // All of it: from behind on, where it is least looked at.
  const half = Math.floor(line.length / 2);
  if (first === last) return [[...line.slice(half), ...line.slice(1, half + 1)]];
  return [[...last, ...first.slice(1)], ...parts.slice(1, -1)];
}
