/** A place in the room: to her left, behind her and up, mm. */
export type SpacePoint = readonly [number, number, number];

/** Distance between two places, mm. */
export function spaceApart(a: SpacePoint, b: SpacePoint): number {
  const [x, y, z] = [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
  return Math.sqrt(x * x + y * y + z * z);
}
