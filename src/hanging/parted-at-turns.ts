import type { Point } from '../geometry/curve.ts';
import { cosineOfTurn, evenlySpaced } from './smoothed-line.ts';

/** Distance between places at which a sharp turn is looked for, mm, and the cosine of the least turn over four that is one: 45°. */
const STEP = 8;
const TURNS = 0.7;

/** A line in parts between its sharp turns: where a fold hooks round, it has gone over its crest; where a hem does, it goes on behind. */
export function partedAtTurns(line: readonly Point[]): Point[][] {
  if (line.length < 2) return [];
  const points = evenlySpaced(line, STEP);
  const parts: Point[][] = [[]];
  for (const [i, point] of points.entries()) {
    parts[parts.length - 1]!.push(point);
    if (turnAt(points, i) < TURNS) parts.push([]);
  }
  return parts.filter((part) => part.length > 2);
}

function turnAt(points: readonly Point[], i: number): number {
  const [a, b, c] = [points[i - 2], points[i], points[i + 2]];
  return a === undefined || b === undefined || c === undefined ? 1 : cosineOfTurn(a, b, c);
}
