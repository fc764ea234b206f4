import type { Point } from '../geometry/curve.ts';
import type { DepthMap } from './depth-map.ts';
import { type Hand, lengthOfLine, smoothedLine } from './smoothed-line.ts';
import { isEmpty } from './visible-parts.ts';

/** A shorter line of hers is not drawn, mm. */
const LEAST = 40;

/** The parts of a line in the plane of the view that lie where there is no skirt. */
export function unhidden(map: DepthMap, line: readonly Point[]): Point[][] {
  const parts: Point[][] = [];
  let part: Point[] = [];
  for (const point of closely(line)) {
    if (isEmpty(map, point)) part.push(point);
    else if (part.length > 0) {
      parts.push(part);
      part = [];
    }
  }
  if (part.length > 0) parts.push(part);
  return parts.filter((own) => lengthOfLine(own) > LEAST).map((own) => smoothedLine(own, KEPT));
}

const KEPT: Hand = { step: 4, rounds: 0, tolerance: 0.5 };

/** The same line with places no more than 4 mm apart. */
function closely(line: readonly Point[]): Point[] {
  return line.slice(1).flatMap((to, i) => {
    const from = line[i]!;
    const count = Math.max(1, Math.ceil(lengthOfLine([from, to]) / 4));
    const between = Array.from({ length: count }, (_, k) => ({
      x: from.x + ((to.x - from.x) * k) / count,
      y: from.y + ((to.y - from.y) * k) / count,
    }));
    return i + 2 === line.length ? [...between, to] : between;
  });
}
