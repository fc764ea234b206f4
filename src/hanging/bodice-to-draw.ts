import type { Side } from '../gown/station.ts';
import type { BodiceHalf, BodiceShape, BodiceSlice } from './bodice-shape.ts';
import { columnOf, type DrawnPart, type PlaceLine, rowOf } from './drawn-part.ts';
import { halfWidthOf } from './figure.ts';
import { type SpacePoint, spaceApart } from './space-point.ts';
import { CIRCLE, CIRCLE_POINTS } from './unit-circle.ts';
import type { UpperBody } from './upper-body.ts';

/** Places of a half bodice's lower edge in the air, from the centre front to the centre back, both as if on her left. */
export type HalfEdge = readonly SpacePoint[];

export interface BodiceToDraw {
  readonly shape: BodiceShape;
  readonly body: UpperBody;
  readonly waistHeight: number;
  /** What the skirt is sewn to. */
  readonly lower: { readonly left: HalfEdge; readonly right: HalfEdge };
  readonly closing?: {
    readonly station: string;
    readonly side?: 'left' | 'right';
    /** Two edges that are laced; else they meet. */
    readonly laced: boolean;
  };
}

/** A bodice as it is drawn, and where its upper edge lies. */
export interface BodiceDrawn {
  readonly part: DrawnPart;
  /** By side and station, from the centre front; at a part of the way to the next one. */
  readonly upperAt: (side: Side, station: string) => SpacePoint | undefined;
  /** The upper edge of a side between two stations. */
  readonly upperBetween: (side: Side, from: string, to: string) => readonly SpacePoint[];
}

/** Columns in a panel and rows from the upper to the lower edge. */
const ACROSS = 8;
const ROWS = 25;

/** The bodice round her: each level as long as it is sewn, on the ellipse of her body, down to the edge of the skirt. */
export function bodiceToDraw(bodice: BodiceToDraw): BodiceDrawn {
  const { left, right } = bodice.shape;
  const count = { left: left.slices.length * ACROSS, right: right.slices.length * ACROSS };
  const columns = count.left + count.right;
  const place = new Float64Array(3 * columns * ROWS);
  const set = (side: Side, k: number, own: number): void => {
    const column = placesDown(bodice, side, Math.min(count[side] / ACROSS - 1, Math.floor(k / ACROSS)), k);
    place.set(column, 3 * own * ROWS);
  };
  for (let k = 0; k <= count.left; k++) set('left', k, k);
  // The right half runs back from the centre back to the centre front, whose column is the first.
  for (let k = count.right - 1; k > 0; k--) set('right', k, columns - k);
  const surface = { columns, rows: ROWS, place, closed: true };
  const columnAt = (side: Side, slice: number): number =>
    side === 'left' ? slice * ACROSS : (columns - slice * ACROSS) % columns;
  const part: DrawnPart = {
    surface,
    filled: true,
    notFromAbove: true,
    lifted: 0,
    edges: [rowOf(surface, 0)],
    seams: seamColumns(bodice, columnAt).map((column) => columnOf(surface, column)),
    ...closingLines(bodice, columnAt),
    folds: false,
  };
  const top = (column: number): SpacePoint => {
    const a = 3 * (((column + columns) % columns) * ROWS);
    return [place[a]!, place[a + 1]!, place[a + 2]!];
  };
  const sliceOf = (side: Side, station: string): number | undefined =>
    bodice.shape[side].stations.find(({ name }) => name === station)?.slice;
  return {
    part,
    upperAt: (side, station) => {
      const slice = sliceOf(side, station);
      return slice === undefined ? undefined : top(columnAt(side, slice));
    },
    upperBetween: (side, from, to) => {
      const [start, end] = [sliceOf(side, from), sliceOf(side, to)];
      if (start === undefined || end === undefined) return [];
      const step = side === 'left' ? 1 : -1;
      return Array.from({ length: Math.max(0, end - start) * ACROSS + 1 }, (_, k) =>
        top(columnAt(side, start) + step * k),
      );
    },
  };
}

/** Every seam once; none where a panel lies on the fold, which nobody knows of a made bodice's centre front. */
function seamColumns(
  { shape }: BodiceToDraw,
  columnAt: (side: Side, slice: number) => number,
): readonly number[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const { stations } = shape[side];
    return stations.slice(1, -1).map(({ slice }) => columnAt(side, slice));
  });
}

/** The two laced edges with the cord between them, or the one line where it opens. */
function closingLines(
  { closing, shape }: BodiceToDraw,
  columnAt: (side: Side, slice: number) => number,
): Pick<DrawnPart, 'opening'> & { readonly seams?: readonly PlaceLine[] } {
  if (closing === undefined) return { opening: [] };
  const sides = (['left', 'right'] as const).filter(
    (side) => closing.side === undefined || closing.side === side,
  );
  const lines = sides.flatMap((side): PlaceLine[] => {
    const station = shape[side].stations.find(({ name }) => name === closing.station);
    return station === undefined ? [] : [columnOf({ rows: ROWS }, columnAt(side, station.slice))];
  });
  const centre = closing.station === 'centre-front' || closing.station === 'centre-back';
  if (!closing.laced || !centre || lines.length < 2) return { opening: centre ? lines.slice(0, 1) : lines };
  const [a, b] = [lines[0]!, lines[1]!];
  const cord = [a, b].map((from, i) => {
    const to = i === 0 ? b : a;
    return Array.from({ length: Math.ceil(ROWS / LACED) }, (_, k) => (k % 2 === 0 ? from : to)[k * LACED]!);
  });
  return {
    opening: [],
    seams: [
      ...seamColumns({ shape } as BodiceToDraw, columnAt).map((column) => columnOf({ rows: ROWS }, column)),
      a,
      b,
      ...cord,
    ],
  };
}

/** Rows from one crossing of the cord to the next. */
const LACED = 2;

/** One column, from the upper edge down. */
function placesDown(bodice: BodiceToDraw, side: Side, slice: number, column: number): Float64Array {
  const { shape, waistHeight, body, lower } = bodice;
  const half = shape[side];
  const other = shape[side === 'left' ? 'right' : 'left'];
  const part = column / ACROSS - slice;
  const sign = side === 'left' ? 1 : -1;
  const [lowX, lowY, lowZ] = lowerPlace(lower[side], half, slice, part);
  const low = [sign * lowX, lowY, lowZ] as const;
  const top = half.slices[slice]!.topAt(part) + waistHeight;
  const at = (z: number): [number, number, number] => {
    const above = z - waistHeight;
    const [own, all] = [widthsAt(half, above), widthsAt(other, above)];
    const before = own.slice(0, slice).reduce((sum, width) => sum + width, 0);
    const mine = own.reduce((sum, width) => sum + width, 0);
    const theirs = all.reduce((sum, width) => sum + width, 0);
    const girth = mine + theirs;
    // What is known of a made bodice is her body's girths alone: its panels say where its seams run.
    const round = body.girthAt(above);
    const roundness = body.roundnessAt(above);
    const width = halfWidthOf(round, roundness);
    const [x, y] = ellipseAt(roundness, girth > 0 ? (before + part * own[slice]!) / mine : 0);
    return [sign * x * width, y * width * roundness - body.forwardAt(above), z];
  };
  const end = at(low[2]);
  const out = new Float64Array(3 * ROWS);
  for (let row = 0; row < ROWS; row++) {
    const down = row / (ROWS - 1);
    const [x, y, z] = at(top + (low[2] - top) * down);
    // It ends on the skirt's edge, whatever her ellipses say.
    const drawn = (down * down * down) ** 2;
    out.set([x + (low[0] - end[0]) * drawn, y + (low[1] - end[1]) * drawn, z], 3 * row);
  }
  return out;
}

function widthsAt({ slices }: BodiceHalf, above: number): number[] {
  return slices.map(({ widthAt }) => Math.max(0, widthAt(above)));
}

/** Where a panel meets the skirt: the two are as long as each other, and what is laced open ends there. */
function lowerPlace(edge: HalfEdge, { slices }: BodiceHalf, slice: number, part: number): SpacePoint {
  const width = ({ isGap, widthAt }: BodiceSlice): number => (isGap ? 0 : widthAt(0));
  const whole = slices.reduce((sum, own) => sum + width(own), 0);
  const before = slices.slice(0, slice).reduce((sum, own) => sum + width(own), 0);
  const wanted = (before + part * width(slices[slice]!)) / whole;
  const passed = [0];
  for (let i = 1; i < edge.length; i++) passed.push(passed[i - 1]! + spaceApart(edge[i - 1]!, edge[i]!));
  const all = passed[passed.length - 1]!;
  const found = passed.findIndex((own) => own >= wanted * all);
  const next = found < 0 ? edge.length - 1 : Math.max(1, found);
  const span = passed[next]! - passed[next - 1]!;
  const share = span > 0 ? (wanted * all - passed[next - 1]!) / span : 0;
  const [a, b] = [edge[next - 1]!, edge[next]!];
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];
}

/** Of the 1024 points of the circle these are looked at on the half. */
const EVERY = 8;

/** On half an ellipse as wide as 1 and so deep, from the front round: a part of its length on. x, y of the unit circle. */
function ellipseAt(roundness: number, part: number): [number, number] {
  const count = CIRCLE_POINTS / 2 / EVERY;
  const point = (k: number): [number, number] => {
    const i = 2 * ((k * EVERY) % CIRCLE_POINTS);
    return [CIRCLE[i]!, CIRCLE[i + 1]!];
  };
  const passed = [0];
  for (let k = 1; k <= count; k++) {
    const [a, b] = [point(k - 1), point(k)];
    const [x, y] = [b[0] - a[0], (b[1] - a[1]) * roundness];
    passed.push(passed[k - 1]! + Math.sqrt(x * x + y * y));
  }
  const wanted = Math.min(1, Math.max(0, part)) * passed[count]!;
  const found = passed.findIndex((own) => own >= wanted);
  const next = found < 0 ? count : Math.max(1, found);
  const share = (wanted - passed[next - 1]!) / (passed[next]! - passed[next - 1]!);
  const [a, b] = [point(next - 1), point(next)];
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}
