/** Height of the level waist above the floor where nobody measured it, in bare feet: 168 tall (from memory). */
const USUAL_WAIST_HEIGHT = 1040;

/**
 * A waist of a child's size stands as high as a child's: 104 cm tall with 53, 128 with 59 (EN 13402-3, from memory), the
 * waist at 0.6 of that (from memory).
 */
export function usualWaistHeight(waist: number): number {
  return waist < CHILDS_WAIST ? 0.6 * (1040 + 4 * (waist - 530)) : USUAL_WAIST_HEIGHT;
}

const CHILDS_WAIST = 590;

/** How far a waist leans from front to back or side to side, mm. From memory. */
const LEVEL_WITHIN = 30;
/** A station that is lower than the highest by more than this is no floor but a hem set by hand, mm. */
const SET_BY_HAND = 80;

/** Heights of a waist that leans no more than waists do; where nothing is known, as high as the nearest station or as usual. */
export function levelled(known: readonly (number | undefined)[], usual: number): number[] {
  const highest = Math.max(...known.map((height) => height ?? 0));
  return known.map((height, i) => {
    if (height !== undefined) return height < highest - SET_BY_HAND ? highest - LEVEL_WITHIN : height;
    const nearest = known
      .map((other, k) => ({ other, apart: Math.abs(k - i) }))
      .filter(({ other }) => other !== undefined)
      .sort((a, b) => a.apart - b.apart)[0];
    return nearest?.other === undefined ? usual : Math.max(nearest.other, highest - LEVEL_WITHIN);
  });
}
