import type { Line, Point } from '../geometry/curve.ts';
import { distance } from '../geometry/point.ts';
import type { Cell } from './touched-sheets.ts';

/**
 * The longest part of a grain line that lies on sheets which are printed anyway: a sheet for a stretch of grain alone
 * is wasted paper. The whole line where that part would be too short to lay cloth by.
 */
export function shownGrain(
  grain: Line,
  cell: Cell,
  isPrinted: (row: number, column: number) => boolean,
): Line {
  const length = distance(grain.from, grain.to);
  const steps = Math.max(1, Math.ceil(length / STEP));
  const at = (step: number): Point => ({
    x: grain.from.x + ((grain.to.x - grain.from.x) * step) / steps,
    y: grain.from.y + ((grain.to.y - grain.from.y) * step) / steps,
  });
  let best = { from: 0, to: 0 };
  let from: number | undefined;
  for (let step = 0; step <= steps; step++) {
    const { x, y } = at(step);
    const printed = isPrinted(Math.floor(y / cell.height), Math.floor(x / cell.width));
    if (!printed) from = undefined;
    else from ??= step;
    if (from !== undefined && step - from > best.to - best.from) best = { from, to: step };
  }
  const whole = best.from === 0 && best.to === steps;
  if (whole || ((best.to - best.from) / steps) * length < SHORTEST) return grain;
  return { kind: 'line', from: at(best.from), to: at(best.to) };
}

/** mm. */
const STEP = 5;

/** A grain line shorter than this, mm, can be laid askew by a degree with shears' width to spare. */
const SHORTEST = 150;
