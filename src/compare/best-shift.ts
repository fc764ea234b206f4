import type { Point } from '../geometry/curve.ts';
import { type Depth, depthIn, type Region, reentrantCorners } from '../geometry/region.ts';
import { CLOTH_HOLDS } from '../geometry/tolerances.ts';

/** An outline moved on a region, and how deep its shallowest point then lies: negative where it sticks out. */
export interface Laid {
  readonly shift: Point;
  readonly depth: number;
}

/**
 * Lays points on a region without turning them, for the grain's sake: where they are if they fit there, else moved
 * as little as makes them fit, else where the one that sticks out farthest sticks out least.
 * @param start where they lie unmoved
 * @param onFold only along the fold, which is upright
 * @param own the region that the points go round: no corner of the other may stand into it between two of them
 */
export function laidOn(
  points: readonly Point[],
  region: Region,
  start: Point,
  onFold: boolean,
  own?: Region,
): Laid {
  const corners = own === undefined ? [] : reentrantCorners(region);
  const depthAt = (shift: Point): number => {
    let least = Infinity;
    for (const { x, y } of points) least = Math.min(least, depthIn(region, x + shift.x, y + shift.y).depth);
    for (const { x, y } of corners) least = Math.min(least, -depthIn(own!, x - shift.x, y - shift.y).depth);
    return least;
  };
  const unmoved = { shift: start, depth: depthAt(start) };
  if (unmoved.depth >= -CLOTH_HOLDS) return unmoved;
  const best = deepest(points, region, unmoved, onFold, depthAt);
  return best.depth >= -CLOTH_HOLDS ? leastMoved(start, best, depthAt) : best;
}

/** First and smallest step of the search, mm, and how many steps it takes at most. */
const FIRST_REACH = 60;
const LAST_REACH = 0.004;
const STEPS = 40;
/** One in so many points is enough to choose a move by; whether it helps is judged by all. */
const THINNED = 3;

/**
 * Where the shallowest point lies deepest. Around a place every depth is nearly linear in the shift; the best shift
 * of those linear depths within reach is tried, and the reach halved where it does not help.
 */
function deepest(
  points: readonly Point[],
  region: Region,
  unmoved: Laid,
  onFold: boolean,
  depthAt: (shift: Point) => number,
): Laid {
  let best = unmoved;
  let reach = FIRST_REACH;
  for (let step = 0; step < STEPS && reach > LAST_REACH; step++) {
    const { x, y } = best.shift;
    // Moving by (reach, reach) changes no depth by more than √2·reach: what lies deeper cannot become the shallowest.
    const near = points
      .filter((_, i) => i % THINNED === 0)
      .map((point) => depthIn(region, point.x + x, point.y + y))
      .filter(({ depth }) => depth <= best.depth + 2.9 * reach);
    const move = bestLinearMove(near, reach, onFold);
    const shift = { x: x + move.x, y: y + move.y };
    const depth = depthAt(shift);
    if (depth > best.depth + 1e-6) best = { shift, depth };
    else reach /= 2;
  }
  return best;
}

/** The move within a square of half width `reach` that makes the least of depth + deeper·move greatest. */
function bestLinearMove(depths: readonly Depth[], reach: number, onFold: boolean): Point {
  const least = (x: number, y: number): number => {
    let value = Infinity;
    for (const { depth, deeper } of depths) value = Math.min(value, depth + deeper.x * x + deeper.y * y);
    return value;
  };
  const bestDown = (x: number): { y: number; value: number } => {
    const { at, value } = peak((y) => least(x, y), reach);
    return { y: at, value };
  };
  const x = onFold ? 0 : peak((across) => bestDown(across).value, reach).at;
  return { x, y: bestDown(x).y };
}

/** Peak of a concave function on -reach … reach, by golden section. */
function peak(value: (at: number) => number, reach: number): { at: number; value: number } {
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = -reach;
  let high = reach;
  let a = high - golden * (high - low);
  let b = low + golden * (high - low);
  let atA = value(a);
  let atB = value(b);
  for (let step = 0; step < 30; step++) {
    if (atA < atB) {
      low = a;
      a = b;
      atA = atB;
      b = low + golden * (high - low);
      atB = value(b);
    } else {
      high = b;
      b = a;
      atB = atA;
      a = high - golden * (high - low);
      atA = value(a);
    }
  }
  return atA > atB ? { at: a, value: atA } : { at: b, value: atB };
}

/** The first place on the way from the start to the best one where everything fits. */
function leastMoved(start: Point, best: Laid, depthAt: (shift: Point) => number): Laid {
  const enough = best.depth >= 0 ? 0 : -CLOTH_HOLDS;
  const at = (part: number): Point => ({
    x: start.x + (best.shift.x - start.x) * part,
    y: start.y + (best.shift.y - start.y) * part,
  });
  const first = at(firstThatFits(0, 1, 10, (part) => depthAt(at(part)) >= enough));
  const shift = pulledBack(pulledBack(first, start, 'x', enough, depthAt), start, 'y', enough, depthAt);
  return { shift, depth: depthAt(shift) };
}

/** Along one axis no farther than it has to go: where it lies deepest is as far to the side as there is room. */
function pulledBack(
  shift: Point,
  start: Point,
  axis: 'x' | 'y',
  enough: number,
  depthAt: (shift: Point) => number,
): Point {
  const at = (value: number): Point => ({ ...shift, [axis]: value });
  if (depthAt(at(start[axis])) >= enough) return at(start[axis]);
  return at(firstThatFits(start[axis], shift[axis], 8, (value) => depthAt(at(value)) >= enough));
}

/** Halved so many times between a place that does not fit and one that does. */
function firstThatFits(from: number, to: number, steps: number, fits: (value: number) => boolean): number {
  let [low, high] = [from, to];
  for (let step = 0; step < steps; step++) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return high;
}
