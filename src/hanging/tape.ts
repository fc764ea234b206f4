import { type Figure, halfWidthOf } from './figure.ts';
import type { EdgePlace } from './sewn-edge.ts';

/** Distance between two levels at which the tape is looked at, mm. */
const STEP = 10;

/**
 * Length of a tape from a place on the bodice's edge to the floor over what she wears, mm: drawn tight over it, and plumb
 * from where it stands out farthest.
 */
export function tapeToFloor(figure: Figure, from: EdgePlace): number {
  const outAt = (height: number): number => outwards(figure, height, from.outX, from.outY);
  // Corners of the tape, each a height and how far out it is there: it bends inwards at none but where it turns plumb.
  let widest = Math.sqrt(from.x * from.x + from.y * from.y);
  const tape: (readonly [number, number])[] = [[from.z, widest]];
  for (let height = from.z - STEP; height > -STEP; height -= STEP) {
    const level = Math.max(0, height);
    widest = Math.max(widest, outAt(level));
    while (tape.length > 1 && !isOutside(tape[tape.length - 2]!, tape[tape.length - 1]!, [level, widest]))
      tape.pop();
    tape.push([level, widest]);
  }
  return tape.slice(1).reduce((sum, [height, out], k) => {
    const [down, off] = [tape[k]![0] - height, out - tape[k]![1]];
    return sum + Math.sqrt(down * down + off * off);
  }, 0);
}

/** How far out from her middle what she wears comes at a height in one direction, mm. */
export function outwards(figure: Figure, height: number, x: number, y: number): number {
  const roundness = figure.roundnessAt(height);
  const halfWidth = halfWidthOf(figure.girthAt(height), roundness);
  const [right, back] = [halfWidth * x, halfWidth * roundness * y];
  return Math.sqrt(right * right + back * back);
}

/** The second of three places, from the top down, lies outside of the straight line from the first to the third. */
function isOutside(
  [top, inner]: readonly [number, number],
  [height, out]: readonly [number, number],
  [bottom, outer]: readonly [number, number],
): boolean {
  return (out - inner) * (top - bottom) > (outer - inner) * (top - height);
}
