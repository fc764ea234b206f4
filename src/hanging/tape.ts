import { type Figure, halfWidthOf } from './figure.ts';
import { CIRCLE, CIRCLE_POINTS } from './unit-circle.ts';

/** Distance between two levels at which the tape is looked at, mm. */
const STEP = 10;

/**
 * Length of a tape from the waist to the floor over what she wears, mm: drawn tight over it, and plumb from where it
 * stands out farthest.
 * @param part of the way round, 0 to 1, from the centre front by her left
 */
export function tapeToFloor(figure: Figure, waistHeight: number, part: number): number {
  const i = 2 * (Math.round(part * CIRCLE_POINTS) % CIRCLE_POINTS);
  const [x, y] = [CIRCLE[i]!, CIRCLE[i + 1]!];
  const outAt = (height: number): number => {
    const roundness = figure.roundnessAt(height);
    const halfWidth = halfWidthOf(figure.girthAt(height), roundness);
    const [right, back] = [halfWidth * x, halfWidth * roundness * y];
    return Math.sqrt(right * right + back * back);
  };
  // Corners of the tape, each a height and how far out it is there: it bends inwards at none but where it turns plumb.
  const tape: (readonly [number, number])[] = [];
  let widest = 0;
  for (let height = waistHeight; height > -STEP; height -= STEP) {
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

/** The second of three places, from the top down, lies outside of the straight line from the first to the third. */
function isOutside(
  [top, inner]: readonly [number, number],
  [height, out]: readonly [number, number],
  [bottom, outer]: readonly [number, number],
): boolean {
  return (out - inner) * (top - bottom) > (outer - inner) * (top - height);
}
