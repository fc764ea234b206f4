import { seenPlace } from './lines-on-skirt.ts';
import type { Surface } from './surface.ts';

/** What fills the edge that a skirt is sewn to, seen from above: she. One does not look down past her to the floor. */
export function insideOfEdge({ columns, rows, place }: Surface): Surface {
  const edge = Array.from({ length: columns }, (_, column) => seenPlace(place, column * rows));
  const middle = [0, 1, 2].map((axis) => edge.reduce((sum, own) => sum + own[axis]!, 0) / columns);
  const own = new Float64Array(6 * columns);
  for (const [column, [x, y, z]] of edge.entries())
    own.set([x, y, z - BELOW_EDGE, middle[0]!, middle[1]!, middle[2]! - BELOW_EDGE], 6 * column);
  return { columns, rows: 2, place: own, closed: true };
}

/** So far below the edge, which it does not hide, mm. */
const BELOW_EDGE = 20;
