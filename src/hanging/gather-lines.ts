import type { ClothMesh } from './cloth-mesh.ts';
import type { PlaceLine } from './drawn-part.ts';
import { columnsAllRound, placeIndex, type SewnCloth } from './sewn-cloth.ts';
import { placesApart, type Surface } from './surface.ts';

/** Distance between the strokes that say that cloth is gathered, along what it is gathered to, mm. */
const APART = 17;
/** How long they are, one after the other, for the longest: a hand lets no two beside one another end alike. */
const LONG = [0.55, 1, 0.7, 0.4, 0.85, 0.6, 0.95, 0.45] as const;
/** The longest of a skirt, mm, and as a share of shallow cloth. */
const LONGEST = 120;
const OF_DEPTH = 0.55;

/**
 * Short strokes down from a gathered edge, the surface's first row: by these a drawing says what is gathered, and that its
 * cloth does not go on into the seam smoothly.
 *
 * @param isGathered whether the cloth is gathered at a column
 * @param deep how deep the cloth is, mm
 */
export function gatherLines(
  surface: Surface,
  isGathered: (column: number) => boolean,
  deep: number,
): PlaceLine[] {
  const { columns, rows, closed } = surface;
  const longest = Math.min(LONGEST, OF_DEPTH * deep);
  const lines: PlaceLine[] = [];
  let passed = APART / 2;
  for (let column = 0; column < (closed ? columns : columns - 1); column++) {
    if (isGathered(column) && passed >= APART) {
      lines.push(downTo(surface, column, longest * LONG[lines.length % LONG.length]!));
      passed = 0;
    }
    passed += placesApart(surface, column * rows, ((column + 1) % columns) * rows);
  }
  return lines;
}

/** Cloth that is pushed together to less than this share of its width is gathered for the eye. */
const GATHERED = 0.87;

/** From one column of the cloth all the way round to another. */
export interface Columns {
  readonly from: number;
  readonly to: number;
}

/** Where a skirt is gathered, and not pleated, to what it is sewn to. @param pleated by panel */
export function gatheredColumns(cloth: SewnCloth, pleated: readonly boolean[]): Columns[] {
  let first = 0;
  const own = cloth.panels.flatMap(({ across }, panel) => {
    const from = first;
    first += across;
    const isGathered = cloth.gathered[placeIndex(cloth, from, 0)]! < GATHERED;
    return isGathered && pleated[panel] !== true ? [{ from, to: first }] : [];
  });
  if (cloth.closing !== 'mirrored') return own;
  const all = columnsAllRound(cloth);
  return [...own, ...own.map(({ from, to }) => ({ from: all - to, to: all - from }))];
}

/** By column: whether cloth as it is computed is gathered at its upper edge. */
export function isGatheredAt({ gathered, rows }: ClothMesh, column: number): boolean {
  return gathered[column * rows]! < GATHERED;
}

/** Places down a column, as far as a length of cloth. */
function downTo(surface: Surface, column: number, long: number): PlaceLine {
  const first = column * surface.rows;
  const line = [first];
  let passed = 0;
  for (let row = 1; row < surface.rows && passed < long; row++) {
    passed += placesApart(surface, first + row - 1, first + row);
    line.push(first + row);
  }
  return line;
}
