import type { Point } from '../geometry/curve.ts';
import type { DepthMap } from './depth-map.ts';

/** A hole thinner than this on the mean is no hole that a hand would draw: a hem just over what lies behind it, mm. */
const THINNEST = 12;
/** A loop of fewer cell sides is a speck. */
const LEAST_SIDES = 40;
/** What a sliver is filled with lies behind everything, mm. */
const BEHIND = -100_000;

/**
 * The loops round all that is seen, without specks and slivers: these are filled, so that a hem along one is a hem and
 * no outline.
 */
export function withoutSlivers(
  map: DepthMap,
  loops: readonly Point[][],
): { readonly map: DepthMap; readonly loops: readonly Point[][] } {
  const slivers = loops.filter(isSliver);
  const depth = slivers.length > 0 ? map.depth.slice() : map.depth;
  for (const loop of slivers) fill({ ...map, depth }, loop);
  return {
    map: { ...map, depth },
    loops: loops.filter((loop) => loop.length > LEAST_SIDES && !slivers.includes(loop)),
  };
}

/** Round a hole the loop runs the other way. */
function isSliver(loop: Point[]): boolean {
  const [first] = loop;
  let [twice, round] = [0, 0];
  for (const [i, at] of loop.entries()) {
    const next = loop[i + 1] ?? first!;
    twice += at.x * next.y - next.x * at.y;
    round += Math.abs(next.x - at.x) + Math.abs(next.y - at.y);
  }
  return twice < 0 && (loop.length <= LEAST_SIDES || -twice / round < THINNEST);
}

/** Every empty cell that is reached from the one beside the loop's first step. */
function fill({ left, top, cell, width, height, depth }: DepthMap, [from, to]: Point[]): void {
  if (from === undefined || to === undefined) return;
  const [x, y] = [(from.x - left) / cell + 0.5, (from.y - top) / cell + 0.5].map(Math.round) as [
    number,
    number,
  ];
  const right = to.x > from.x;
  const [leftwards, up] = [to.x < from.x, to.y < from.y];
  const open = [(y - (right || up ? 1 : 0)) * width + x - (leftwards || up ? 1 : 0)];
  while (open.length > 0) {
    const own = open.pop()!;
    if (depth[own] !== Number.NEGATIVE_INFINITY) continue;
    depth[own] = BEHIND;
    const column = own % width;
    if (column > 0) open.push(own - 1);
    if (column + 1 < width) open.push(own + 1);
    if (own >= width) open.push(own - width);
    if (own < (height - 1) * width) open.push(own + width);
  }
}
