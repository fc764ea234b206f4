import type { ClothMesh } from './cloth-mesh.ts';
import { columnOf, type DrawnPart, type PlaceLine, rowOf } from './drawn-part.ts';
import { fairedSurface } from './faired-surface.ts';
import { gatherLines, isGatheredAt } from './gather-lines.ts';
import { FINEST, FOURS, flounceRows, flounceStrip } from './gown-panels.ts';
import type { Hang } from './hang.ts';
import { hangCloth, type Settling } from './hang-cloth.ts';
import { depthOfCloth } from './lines-on-skirt.ts';
import { outlineBody } from './outline-body.ts';
import type { ClothOver, FlounceOver, PartToHang } from './part-to-hang.ts';
import { columnsOf, newCloth, placeIndex } from './sewn-cloth.ts';
import { type SpacePoint, spaceApart } from './space-point.ts';
import { gatherStrip } from './start-of-cloth.ts';
import { FINER, type Surface, smoothSurface } from './surface.ts';

/** A part as it hangs, and as it is drawn: both sides of it. */
export interface HungPart {
  readonly name: string;
  readonly drawn: readonly DrawnPart[];
}

/** What hangs over the skirt is smaller than it and is held where it hangs: fewer steps. */
const SETTLES: readonly Settling[] = [
  { stride: 2, steps: 160, fall: 0.15, keeps: 0.96 },
  { stride: 1, steps: 50, fall: 0.03, keeps: 0.95 },
  { stride: 1, steps: 40, fall: 0.004, keeps: 0.9 },
];

/** Every part nearer to the eye than the one before it, mm. */
const LIFTED = 14;

/** Hangs what is sewn to a hung skirt over it, part by part. */
export function hungParts(
  parts: readonly PartToHang[],
  hang: Hang,
  around: { readonly floor: number; readonly floorGrip: number; readonly bodyGrip: number },
): HungPart[] {
  if (parts.length === 0) return [];
  const skirt: Surface = { ...hang, closed: true };
  const surfaces = [skirt];
  return parts.map((part, i) => {
    const own = part.is === 'flounce' ? flounceCloth(part, hang) : part;
    const over = own.over === undefined ? { outline: outlineBody(surfaces) } : { body: own.over };
    const mesh = hangCloth(own.cloth, { ...around, ...over }, SETTLES);
    const drawn = drawnOf(own, mesh, LIFTED * (i + 1));
    if (own.over === undefined) surfaces.push(surfaceOf(mesh));
    return { name: part.name, drawn };
  });
}

function surfaceOf({ columns, rows, place, closing }: ClothMesh): Surface {
  if (closing === 'ring' || closing === 'open') return { columns, rows, place, closed: closing === 'ring' };
  const closed = closing === 'mirrored';
  const all = closed ? 2 * (columns - 1) : 2 * columns - 1;
  const whole = new Float64Array(3 * all * rows);
  for (let column = 0; column < all; column++) {
    const own = column < columns ? column : 2 * (columns - 1) - column;
    for (let k = 0; k < 3 * rows; k++) {
      const turned = column >= columns && k % 3 === 0 ? -1 : 1;
      whole[3 * column * rows + k] = turned * place[3 * own * rows + k]!;
    }
  }
  return { columns: all, rows, place: whole, closed };
}

function drawnOf(part: Pick<ClothOver, 'seams' | 'image'>, mesh: ClothMesh, lifted: number): DrawnPart[] {
  const whole = surfaceOf(mesh);
  const lines = (surface: Surface): Pick<DrawnPart, 'edges' | 'seams'> => ({
    edges: [
      rowOf(surface, surface.rows - 1),
      rowOf(surface, 0),
      ...(surface.closed ? [] : [columnOf(surface, 0), columnOf(surface, surface.columns - 1)]),
    ],
    seams: seamsOf(part.seams, mesh, surface),
  });
  const turned = whole.columns - (whole.closed ? 0 : 1);
  const isGathered = (column: number): boolean =>
    isGatheredAt(mesh, column < mesh.columns ? column : Math.max(0, turned - column));
  const drawn = (given: Surface): DrawnPart => {
    const surface = smoothSurface(fairedSurface(given));
    return {
      surface,
      filled: false,
      notFromAbove: false,
      lifted,
      ...lines(surface),
      opening: [],
      gathers: gatherLines(
        surface,
        (column) => isGathered(Math.floor(column / FINER)),
        depthOfCloth(surface),
      ),
      folds: true,
    };
  };
  return part.image ? [drawn(whole), drawn(imageOf(whole))] : [drawn(whole)];
}

function seamsOf(seams: readonly number[], { columns, closing }: ClothMesh, surface: Surface): PlaceLine[] {
  const all = 2 * (columns - 1);
  const isHalf = closing === 'mirrored' || closing === 'half';
  const columnsOfAll = isHalf ? seams.flatMap((seam) => [seam, all - seam]) : seams;
  return columnsOfAll.map((column) => columnOf(surface, (column * FINER) % surface.columns));
}

/** Her other side's, its columns in their order round her: from the back. */
function imageOf({ columns, rows, place, closed }: Surface): Surface {
  const other = new Float64Array(place.length);
  for (let column = 0; column < columns; column++) {
    const from = 3 * (columns - 1 - column) * rows;
    for (let k = 0; k < 3 * rows; k++)
      other[3 * column * rows + k] = (k % 3 === 0 ? -1 : 1) * place[from + k]!;
  }
  return { columns, rows, place: other, closed };
}

/** Least cloth between two columns of a flounce, about, mm. */
const NARROWEST = 12;

/** How far out from what it is sewn to a flounce starts, for each mm that it hangs. */
const LEANS = 0.3;

/** A flounce sewn along a line of the hung skirt. */
function flounceCloth(flounce: FlounceOver, hang: Hang): ClothOver {
  const { columns, mirrored: isMirrored } = hang;
  const line = lineAbove(hang, flounce.aboveHem);
  const own = isMirrored ? line.slice(0, columns / 2 + 1) : [...line, line[0]!];
  const passed = [0];
  for (let i = 1; i < own.length; i++) passed.push(passed[i - 1]! + spaceApart(own[i - 1]!, own[i]!));
  const length = passed[passed.length - 1]!;
  // A narrow frill falls in narrow folds.
  const every = Math.min(FINEST, Math.max(NARROWEST, flounce.depth / 6));
  const across = FOURS * Math.max(2, Math.round((length * flounce.fullness) / every / FOURS));
  const down = flounceRows(flounce, every);
  const strip = flounceStrip(length, flounce, { across, down }, 0);
  const panel = { name: flounce.name, across, strips: [strip] };
  const cloth = newCloth([panel], down, isMirrored ? 'mirrored' : 'ring', flounce);
  const count = columnsOf(cloth);
  for (let column = 0; column < count; column++) {
    const [x, y, z] = alongLine(own, passed, (length * column) / across);
    const out = Math.sqrt(x * x + y * y);
    for (let row = 0; row <= down; row++) {
      const i = placeIndex(cloth, column, row);
      const fall = (flounce.depth * row) / down;
      const share = out > 0 ? (out + LEANS * fall) / out : 1;
      // Ripples to start from: a whole one for every four columns.
      const ripple =
        row === 0 ? 1 : 1 + ((column % 4 < 2 ? 1 : -1) * Math.min(8, fall / 10)) / Math.max(out, 50);
      cloth.start.set([x * share * ripple, y * share * ripple, Math.max(1, z - 0.95 * fall)], 3 * i);
    }
    cloth.held[placeIndex(cloth, column, 0)] = 1;
  }
  if (flounce.kind === 'straight') gatherStrip(cloth, { first: 0, across }, strip, flounce.fullness);
  return { is: 'cloth', name: flounce.name, cloth, image: false, seams: [] };
}

/** Places of a hung skirt so far above its hem, column by column. */
function lineAbove({ columns, rows, place, depth, joins }: Hang, above: number): SpacePoint[] {
  // The sewn hem is where a flounce of its own begins.
  const hem = joins[0] ?? rows - 1;
  return Array.from({ length: columns }, (_, column) => {
    const first = column * rows;
    const wanted = Math.max(0, depth[first + hem]! - above);
    let row = 1;
    while (row + 1 < rows && depth[first + row]! < wanted) row++;
    const [a, b] = [depth[first + row - 1]!, depth[first + row]!];
    const share = b > a ? Math.min(1, Math.max(0, (wanted - a) / (b - a))) : 0;
    const at = (axis: number): number => {
      const own = 3 * (first + row) + axis;
      return place[own - 3]! + (place[own]! - place[own - 3]!) * share;
    };
    return [at(0), at(1), at(2)];
  });
}

/** At a distance along a line of places. */
export function alongLine(
  line: readonly SpacePoint[],
  passed: readonly number[],
  wanted: number,
): SpacePoint {
  const found = passed.findIndex((own) => own >= wanted);
  const next = found < 0 ? line.length - 1 : Math.max(1, found);
  const span = passed[next]! - passed[next - 1]!;
  const share = span > 0 ? Math.min(1, (wanted - passed[next - 1]!) / span) : 0;
  const [a, b] = [line[next - 1]!, line[next]!];
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];
}
