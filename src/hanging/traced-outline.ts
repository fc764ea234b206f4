import type { Point } from '../geometry/curve.ts';
import type { DepthMap } from './depth-map.ts';

/** The closed lines round all that is seen, and round every hole in it: along the sides of the cells. */
export function tracedOutline(map: DepthMap): Point[][] {
  const { width, height } = map;
  const filled = (x: number, y: number): boolean =>
    x >= 0 && y >= 0 && x < width && y < height && map.depth[y * width + x]! > Number.NEGATIVE_INFINITY;
  // Every side between a filled cell and an empty one, the filled one on its right: from one corner to the next.
  const from = new Map<number, number[]>();
  const corner = (x: number, y: number): number => y * (width + 1) + x;
  const side = (a: number, b: number): void => {
    const others = from.get(a);
    if (others === undefined) from.set(a, [b]);
    else others.push(b);
  };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (!filled(x, y)) continue;
      if (!filled(x, y - 1)) side(corner(x, y), corner(x + 1, y));
      if (!filled(x + 1, y)) side(corner(x + 1, y), corner(x + 1, y + 1));
      if (!filled(x, y + 1)) side(corner(x + 1, y + 1), corner(x, y + 1));
      if (!filled(x - 1, y)) side(corner(x, y + 1), corner(x, y));
    }
  }
  const loops: Point[][] = [];
  for (const start of from.keys()) {
    while ((from.get(start)?.length ?? 0) > 0) {
      const loop: Point[] = [];
      let at = start;
      do {
        const [x, y] = [at % (width + 1), Math.floor(at / (width + 1))];
        loop.push({ x: map.left + (x - 0.5) * map.cell, y: map.top + (y - 0.5) * map.cell });
        at = from.get(at)!.pop()!;
      } while (at !== start);
      loops.push(loop);
    }
  }
  return loops;
}
