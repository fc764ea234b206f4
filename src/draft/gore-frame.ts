import type { Curve, Point } from '../geometry/curve.ts';

/**
 * Where a gore lies flat: a place on it is named by its slant distance below the level waist (s, mm) and how far
 * across it lies (f, 0 at the front edge, 1 at the back edge). Drawn with the grain along y.
 */
export interface GoreFrame {
  /** Width along the level at slant distance s, mm. */
  readonly widthAt: (s: number) => number;
  readonly pointAt: (s: number, f: number) => Point;
  /** Which way "down the cloth" lies there, square to the level: angle from the grain, radians, positive towards the back edge. */
  readonly downAt: (s: number, f: number) => number;
  /** How the point moves with s; a unit vector square to the level on both edges. */
  readonly bySlant: (s: number, f: number) => Point;
  /** The level line at s from f = 0 to 1. */
  readonly levelAt: (s: number) => readonly Curve[];
  /** A side edge between two slant distances, downwards. */
  readonly sideFrom: (side: 'front' | 'back', from: number, to: number) => readonly Curve[];
}
