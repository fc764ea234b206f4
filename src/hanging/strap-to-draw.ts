import { columnOf, type DrawnPart, rowOf } from './drawn-part.ts';
import { heightAt, heightOf, type Wearer } from './figure-lines.ts';
import type { SpacePoint } from './space-point.ts';
import { smoothSurface } from './surface.ts';

/** Where a strap goes over the shoulder: across and height, for one of her height (from memory: drawing manuals). */
const SHOULDER = { across: 0.07, height: 0.832 };
/** How far up and how far in a strap bends over from its straight way, as parts of the way from its end to the shoulder. */
const BENDS = { up: 0.95, in: 0.45 };
/** Places of a strap, from the front up and down behind. */
const PLACES = 17;

/** How a strap lies on her: outwards across it, on her left; on the chest, on the shoulder and behind (from memory). */
const LIES: readonly [SpacePoint, SpacePoint, SpacePoint] = [
  [0.87, 0.5, 0],
  [0.92, 0, -0.4],
  [0.87, -0.5, 0],
];

/** A strap from the upper edge in front over the shoulder to behind. */
export function strapToDraw(
  {
    front,
    back,
    width,
    side,
  }: {
    readonly front: SpacePoint;
    readonly back: SpacePoint;
    readonly width: number;
    readonly side: 'left' | 'right';
  },
  wearer: Wearer,
): DrawnPart {
  const tall = heightOf(wearer);
  const sign = side === 'left' ? 1 : -1;
  const top: SpacePoint = [sign * SHOULDER.across * tall, 0, heightAt(wearer, SHOULDER.height)];
  const place = new Float64Array(6 * PLACES);
  for (let k = 0; k < PLACES; k++) {
    const part = (2 * k) / (PLACES - 1);
    const [x, y, z] = part <= 1 ? bent(front, top, part) : bent(back, top, 2 - part);
    const [outX, outY, outZ] = part <= 1 ? lies(LIES[0], part) : lies(LIES[2], 2 - part);
    // Its face is outwards: in front, where it runs up, its columns run to her right.
    for (const column of [0, 1]) {
      const half = ((column === 0) === (side === 'left') ? width : -width) / 2;
      place.set([x + sign * half * outX, y + half * outY, z + half * outZ], 3 * (column * PLACES + k));
    }
  }
  const surface = smoothSurface({ columns: 2, rows: PLACES, place, closed: false });
  return {
    surface,
    filled: true,
    notFromAbove: true,
    lifted: 0,
    edges: [columnOf(surface, 0), columnOf(surface, surface.columns - 1), rowOf(surface, 0)],
    seams: [],
    opening: [],
    folds: false,
  };
}

/** From an end up and over to the shoulder: a parabola (Bézier). */
function bent(end: SpacePoint, top: SpacePoint, part: number): SpacePoint {
  const bend = (axis: 0 | 1 | 2): number =>
    end[axis] + (top[axis] - end[axis]) * (axis === 2 ? BENDS.up : BENDS.in);
  const at = (axis: 0 | 1 | 2): number =>
    end[axis] * (1 - part) * (1 - part) + 2 * bend(axis) * part * (1 - part) + top[axis] * part * part;
  return [at(0), at(1), at(2)];
}

function lies(from: SpacePoint, part: number): SpacePoint {
  const at = (axis: 0 | 1 | 2): number => from[axis] + (LIES[1][axis] - from[axis]) * part;
  return [at(0), at(1), at(2)];
}
