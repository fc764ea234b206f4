import type { ClothMesh } from './cloth-mesh.ts';
import { directionOf } from './outline-body.ts';
import type { OutlineBody } from './sewn-cloth.ts';

/** Cloth lies on other cloth, not in it, mm. */
const ABOVE = 5;

/** Keeps cloth outside of what it hangs over, straight out from the middle. */
export function leaveOutline(
  { place, ease }: ClothMesh,
  { lowest, step, directions, reach }: OutlineBody,
): void {
  const levels = reach.length / directions;
  for (let i = 0; i < ease.length; i++) {
    if (ease[i] === 0) continue;
    const a = 3 * i;
    const [x, y] = [place[a]!, place[a + 1]!];
    const out = Math.sqrt(x * x + y * y);
    const up = Math.min(levels - 1.001, Math.max(0, (place[a + 2]! - lowest) / step));
    const level = Math.floor(up);
    const along = directionOf(x, y, directions);
    const direction = Math.floor(along) % directions;
    const next = (direction + 1) % directions;
    const [u, v] = [up - level, along - Math.floor(along)];
    const low = reach[level * directions + direction]! * (1 - v) + reach[level * directions + next]! * v;
    const high =
      reach[(level + 1) * directions + direction]! * (1 - v) + reach[(level + 1) * directions + next]! * v;
    const wanted = low * (1 - u) + high * u + ABOVE;
    if (!(out > 0) || out >= wanted) continue;
    place[a] = (x * wanted) / out;
    place[a + 1] = (y * wanted) / out;
  }
}
