import type { Arc, Cubic, Point } from '../../geometry/curve.ts';

/**
 * An arc as cubics, for formats that have none. By parts of 22.5° at most, with the usual handle of 4/3·tan(θ/4):
 * the error is 6.6e-8 of the radius, 0.001 mm at a radius of 15 m.
 */
export function arcToCubics(arc: Arc): Cubic[] {
  const parts = Math.max(1, Math.ceil(Math.abs(arc.sweep) / LARGEST_PART));
  return Array.from({ length: parts }, (_, part) =>
    cubicOf(arc, arc.start + (arc.sweep * part) / parts, arc.sweep / parts),
  );
}

/** Radians. */
const LARGEST_PART = Math.PI / 8;

function cubicOf(arc: Arc, start: number, sweep: number): Cubic {
  const handle = (4 / 3) * Math.tan(sweep / 4);
  const on = (angle: number, tangential: number): Point => ({
    x: arc.centre.x + arc.radius * (Math.cos(angle) - tangential * Math.sin(angle)),
    y: arc.centre.y + arc.radius * (Math.sin(angle) + tangential * Math.cos(angle)),
  });
  const end = start + sweep;
  return {
    kind: 'cubic',
    from: on(start, 0),
    control1: on(start, handle),
    control2: on(end, -handle),
    to: on(end, 0),
  };
}
