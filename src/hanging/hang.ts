import type { ClothMesh } from './cloth-mesh.ts';
import type { Body } from './sewn-cloth.ts';
import type { GownHung, HungSeam } from './sewn-gown.ts';

/** A gown as it hangs: the cloth all the way round, from the centre front by her left. mm; axes as in `SewnCloth`. */
export interface Hang {
  readonly columns: number;
  readonly rows: number;
  /** Columns of the given cloth to one of these; seams and joins are counted in these. */
  readonly stride: number;
  /** One half is the other's image. */
  readonly mirrored: boolean;
  /** Three numbers a place, column by column, each from the sewn edge down. */
  readonly place: Float64Array;
  /** Length of cloth from the sewn edge down to each place, mm. */
  readonly depth: Float64Array;
  /** Every seam once for each side that it lies on. */
  readonly seams: readonly HungSeam[];
  /** By station, the last of a ring the first again. */
  readonly stationNames: readonly string[];
  /** Rows along which strips are sewn together. */
  readonly joins: readonly number[];
  readonly body: Body;
  readonly waistHeight: number;
  /** Nobody measured how high the waist is: the floor is where it usually lies. */
  readonly assumedFloor: boolean;
  /** Largest share by which cloth between two neighbouring places is longer than it lies flat. */
  readonly stretch: number;
}

export function hangOf(sewn: GownHung, mesh: ClothMesh): Hang {
  const whole = mesh.closing === 'mirrored' ? mirrored(mesh) : mesh;
  const { columns, rows } = whole;
  return {
    columns,
    rows,
    stride: mesh.stride,
    mirrored: mesh.closing === 'mirrored',
    place: whole.place,
    depth: depths(whole),
    seams: sewn.seams.map((seam) => ({ ...seam, column: seam.column / mesh.stride })),
    stationNames: sewn.stations.map(({ name }) => name),
    joins: sewn.joins.map((row) => row / mesh.stride),
    body: sewn.body,
    waistHeight: sewn.waistHeight,
    assumedFloor: sewn.assumedFloor,
    stretch: stretchOf(mesh),
  };
}

type Whole = Pick<ClothMesh, 'columns' | 'rows' | 'place' | 'along'>;

/** The half and its image: the columns on the plane belong to both. */
function mirrored({ columns, rows, place, along }: ClothMesh): Whole {
  const all = 2 * (columns - 1);
  const whole: Whole = {
    columns: all,
    rows,
    place: new Float64Array(3 * all * rows),
    along: new Float64Array(all * rows),
  };
  for (let column = 0; column < all; column++) {
    const own = column < columns ? column : all - column;
    const side = column < columns ? 1 : -1;
    for (let row = 0; row < rows; row++) {
      const [to, from] = [column * rows + row, own * rows + row];
      whole.place[3 * to] = side * place[3 * from]!;
      whole.place[3 * to + 1] = place[3 * from + 1]!;
      whole.place[3 * to + 2] = place[3 * from + 2]!;
      whole.along[to] = along[from]!;
    }
  }
  return whole;
}

function depths({ columns, rows, along }: Whole): Float64Array {
  const depth = new Float64Array(columns * rows);
  for (let column = 0; column < columns; column++) {
    for (let row = 1; row < rows; row++) {
      const own = column * rows + row;
      depth[own] = depth[own - 1]! + along[own - 1]!;
    }
  }
  return depth;
}

function stretchOf({ columns, rows, closing, place, along, across, held }: ClothMesh): number {
  let most = 0;
  const look = (a: number, b: number, rest: number): void => {
    if (!(rest > LEAST_MEASURED) || (held[a] === 1 && held[b] === 1)) return;
    const x = place[3 * b]! - place[3 * a]!;
    const y = place[3 * b + 1]! - place[3 * a + 1]!;
    const z = place[3 * b + 2]! - place[3 * a + 2]!;
    most = Math.max(most, Math.sqrt(x * x + y * y + z * z) / rest - 1);
  };
  for (let column = 0; column < columns; column++) {
    const next = column + 1 < columns ? column + 1 : closing === 'ring' ? 0 : undefined;
    for (let row = 0; row < rows; row++) {
      const own = column * rows + row;
      if (row + 1 < rows) look(own, own + 1, along[own]!);
      if (next !== undefined) look(own, next * rows + row, across[own]!);
    }
  }
  return most;
}

/** Between two places nearer than this a tenth of a millimetre would count as stretch, mm: a godet just below its point. */
const LEAST_MEASURED = 5;
