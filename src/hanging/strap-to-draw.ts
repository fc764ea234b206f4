import { columnOf, type DrawnPart, rowOf } from './drawn-part.ts';
import { heightAt, heightOf, type Wearer } from './figure-lines.ts';
import type { SpacePoint } from './space-point.ts';
import { smoothSurface } from './surface.ts';

/** Where a strap goes over the shoulder: across and height, for one of her height (from memory: drawing manuals). */
const SHOULDER = { across: 0.07, height: 0.838 };
/** How far before and behind a strap's straight way her chest and her back push it out, for one of her height. */
const PUSHED = { front: 0.012, back: 0.016 };
/** Places of a strap, from the front up and down behind. */
const PLACES = 13;

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
  const middle = Array.from({ length: PLACES }, (_, k): SpacePoint => {
    const part = (2 * k) / (PLACES - 1);
    return part <= 1
      ? over(front, top, part, -PUSHED.front * tall)
      : over(top, back, part - 1, PUSHED.back * tall);
  });
  const place = new Float64Array(6 * PLACES);
  for (const [k, [x, y, z]] of middle.entries()) {
    place.set([x - width / 2, y, z], 3 * k);
    place.set([x + width / 2, y, z], 3 * (PLACES + k));
  }
  const surface = smoothSurface({ columns: 2, rows: PLACES, place, closed: false });
  return {
    surface,
    filled: false,
    notFromAbove: true,
    lifted: 0,
    edges: [columnOf(surface, 0), columnOf(surface, surface.columns - 1), rowOf(surface, 0)],
    seams: [],
    opening: [],
    folds: false,
  };
}

/** A parabola between two places that stands out from the line between them. */
function over(from: SpacePoint, to: SpacePoint, part: number, out: number): SpacePoint {
  const at = (axis: 0 | 1 | 2): number => from[axis] + (to[axis] - from[axis]) * part;
  return [at(0), at(1) + out * 4 * part * (1 - part), at(2)];
}
