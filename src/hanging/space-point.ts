/** A place in the room: to her left, behind her and up, mm. */
export type SpacePoint = readonly [number, number, number];
