import type { Point } from '../geometry/curve.ts';
import type { Surface } from './surface.ts';

/** From where it is seen, by what the wearer calls it; from above her front is up. */
export type ViewFrom = 'front' | 'side' | 'back' | 'above';

/** A place as the eye sees it: to the right, down and towards the eye, mm. */
export type SeenPoint = readonly [number, number, number];

/** To the right and down on the paper and towards the eye, as sums of x, y, z. */
const AXES: Readonly<Record<ViewFrom, readonly (readonly [number, number, number])[]>> = {
  front: [
    [1, 0, 0],
    [0, 0, -1],
    [0, -1, 0],
  ],
  side: [
    [0, 1, 0],
    [0, 0, -1],
    [1, 0, 0],
  ],
  back: [
    [-1, 0, 0],
    [0, 0, -1],
    [0, 1, 0],
  ],
  above: [
    [-1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
};

/** A surface as the eye sees it: to the right, down, and towards the eye; three numbers a place, mm. */
export function seenFrom(surface: Surface, side: ViewFrom): Surface {
  const place = new Float64Array(surface.place.length);
  for (const [axis, [x, y, z]] of AXES[side].entries()) {
    for (let i = 0; i < place.length; i += 3)
      place[i + axis] = x * surface.place[i]! + y * surface.place[i + 1]! + z * surface.place[i + 2]!;
  }
  return { ...surface, place };
}

/** As it lies on the paper. */
export function inPlane(line: readonly SeenPoint[]): Point[] {
  return line.map(([x, y]) => ({ x, y }));
}
