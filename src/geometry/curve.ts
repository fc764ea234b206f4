/**
 * The exact curves that outlines are made of. Coordinates in mm; x to the right, y down the cloth.
 * Nothing here knows of gowns.
 */

/** A point or a vector, mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight piece from one point to another. */
export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/**
 * A circular arc. Angles in radians, measured from +x towards +y (clockwise as drawn, since y points down);
 * `sweep` is signed: positive runs clockwise as drawn.
 */
export interface Arc {
  readonly kind: 'arc';
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

/** A cubic Bézier. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly control1: Point;
  readonly control2: Point;
  readonly to: Point;
}

export type Curve = Line | Arc | Cubic;
