import type { Point } from '../geometry/curve.ts';
import { metLine } from './met-lines.ts';
import { inPlane } from './seen.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import type { SeenLine } from './turning-lines.ts';

const SEAM: Hand = { step: 20, rounds: 2, tolerance: 0.8 };

/** A line shorter than this is not drawn, mm. */
export const LEAST_LINE = 40;
/** A seam or an edge is drawn on to the line that it points at over this, mm. */
const REACH = 40;

/** Lines as they are drawn, smoothed, those that are too short left out. */
export function drawn(lines: readonly SeenLine[]): Point[][] {
  return smooth(lines.map(inPlane).filter((line) => lengthOfLine(line) >= LEAST_LINE));
}

export function smooth(lines: readonly (readonly Point[])[]): Point[][] {
  return lines.map((line) => smoothedLine(line, SEAM));
}

/** Lines with their ends drawn on to, or back to, those that they point at. */
export function met(lines: readonly Point[][], targets: readonly (readonly Point[])[]): Point[][] {
  return lines.map((line) => [...metLine(line, targets, REACH).line]);
}
