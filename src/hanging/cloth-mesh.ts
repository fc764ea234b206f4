import {
  type Closing,
  columnsOf,
  type Folded,
  flatApart,
  flatIndex,
  type SewnCloth,
  type Strip,
} from './sewn-cloth.ts';

/** The cloth as it is computed: every `stride`-th row and column of what was given. Numbers by place, see `placeIndex`. */
export interface ClothMesh {
  readonly columns: number;
  /** Places in a column. */
  readonly rows: number;
  readonly closing: Closing;
  readonly stride: number;
  /** Three numbers a place. */
  readonly place: Float64Array;
  readonly motion: Float64Array;
  readonly before: Float64Array;
  /** How easily a place moves: one over its inertia; 0 where the cloth is held. Set by `settle`. */
  readonly ease: Float64Array;
  readonly held: Uint8Array;
  /** Cloth that a place stands for, which is its weight, mm². */
  readonly area: Float64Array;
  /** Rest lengths to the place below and to that in the next column. */
  readonly along: Float64Array;
  readonly across: Float64Array;
  /** Of the four places here, below, beyond and below beyond: area, and the difference of the squared diagonals at rest. */
  readonly cell: Float64Array;
  readonly skew: Float64Array;
  /** Least share of `across`. */
  readonly gathered: Float64Array;
  /** How far off what is worn under it it lies, mm. */
  readonly lifted: Float64Array;
  /** 1 where a fold is pressed. */
  readonly pressed: Uint8Array;
  /** Two places sewn together, the second under the first, and how far. */
  readonly stitched: Stitch[];
  readonly bends: Bends;
}

/** One place sewn to another: so far outside of it that it lies, mm. */
export interface Stitch {
  readonly on: number;
  readonly under: number;
  readonly off: number;
}

/**
 * How the bend at a place is read from its neighbours: `before`·(place before − own) + `after`·(place after − own) −
 * `lean`·(place below − place above) is nothing where the cloth lies flat, and its length over `reach` is the curvature.
 */
export interface Bends {
  readonly before: Float64Array;
  readonly after: Float64Array;
  readonly lean: Float64Array;
  readonly reach: Float64Array;
}

export function meshOf(cloth: SewnCloth, stride: number): ClothMesh {
  const columns = cloth.closing === 'ring' ? columnsOf(cloth) / stride : (columnsOf(cloth) - 1) / stride + 1;
  const rows = cloth.down / stride + 1;
  const count = columns * rows;
  const numbers = (): Float64Array => new Float64Array(count);
  const mesh: ClothMesh = {
    columns,
    rows,
    closing: cloth.closing,
    stride,
    place: new Float64Array(3 * count),
    motion: new Float64Array(3 * count),
    before: new Float64Array(3 * count),
    ease: numbers(),
    held: new Uint8Array(count),
    area: numbers(),
    along: numbers(),
    across: numbers(),
    cell: numbers(),
    skew: numbers(),
    gathered: numbers(),
    lifted: numbers(),
    pressed: new Uint8Array(count),
    stitched: [],
    bends: { before: numbers(), after: numbers(), lean: numbers(), reach: numbers() },
  };
  for (let column = 0; column < columns; column++) {
    for (let row = 0; row < rows; row++) {
      const own = column * rows + row;
      const given = column * stride * (cloth.down + 1) + row * stride;
      mesh.gathered[own] = cloth.gathered[given]!;
      mesh.lifted[own] = cloth.lifted[given]!;
      mesh.held[own] = cloth.held[given]!;
      for (let axis = 0; axis < 3; axis++) mesh.place[3 * own + axis] = cloth.start[3 * given + axis]!;
    }
  }
  measurePanels(cloth, mesh);
  return mesh;
}

function measurePanels(cloth: SewnCloth, mesh: ClothMesh): void {
  let first = 0;
  for (const panel of cloth.panels) {
    const across = panel.across / mesh.stride;
    const folds = new Set(panel.folded?.folds.map((column) => column / mesh.stride));
    for (const strip of panel.strips) measureStrip(mesh, strip, { first, across, folds });
    for (const stitched of panel.folded?.stitched ?? []) stitch(mesh, first, stitched);
    first += across;
  }
  finishBends(mesh);
}

/** Where a panel lies among the columns of a mesh, and which of its own are pressed into folds. */
interface PanelColumns {
  readonly first: number;
  readonly across: number;
  readonly folds: ReadonlySet<number>;
}

function measureStrip(mesh: ClothMesh, strip: Strip, { first, across, folds }: PanelColumns): void {
  const { stride, columns, rows } = mesh;
  const top = strip.first / stride;
  const bottom = top + strip.down / stride;
  const x = (column: number, row: number): number =>
    strip.flat[flatIndex(strip, column * stride, row * stride)]!;
  const y = (column: number, row: number): number =>
    strip.flat[flatIndex(strip, column * stride, row * stride) + 1]!;
  const apart = (c0: number, r0: number, c1: number, r1: number): number =>
    flatApart(strip, c0 * stride, r0 * stride, c1 * stride, r1 * stride);
  for (let column = 0; column <= across; column++) {
    const start = ((first + column) % columns) * rows;
    for (let row = top; row <= bottom; row++) {
      const own = start + row;
      // Along a seam between two strips the upper one's width holds, and nothing bends across.
      const isSeam = row === top && row > 0;
      if (row < bottom) mesh.along[own] = apart(column, row, column, row + 1);
      if (!isSeam && (row < bottom || row + 1 === rows)) leanOf(mesh, own, column, row, across, x, y);
      if (folds.has(column)) mesh.pressed[own] = 1;
      if (column === across) continue;
      if (!isSeam) mesh.across[own] = apart(column, row, column + 1, row);
      if (row === bottom) continue;
      const next = ((first + column + 1) % columns) * rows + row;
      const [ax, ay] = [x(column + 1, row + 1) - x(column, row), y(column + 1, row + 1) - y(column, row)];
      const [bx, by] = [x(column + 1, row) - x(column, row + 1), y(column + 1, row) - y(column, row + 1)];
      mesh.cell[own] = Math.abs(ax * by - ay * bx) / 2;
      mesh.skew[own] = ax * ax + ay * ay - bx * bx - by * by;
      for (const corner of [own, own + 1, next, next + 1]) mesh.area[corner]! += mesh.cell[own]! / 4;
    }
  }
}

function stitch(
  { columns, rows, stride, along, lifted, stitched }: ClothMesh,
  first: number,
  { columns: pair, down }: Folded['stitched'][number],
): void {
  const [over, under] = pair.map((column) => ((first + column / stride) % columns) * rows) as [
    number,
    number,
  ];
  for (let [row, depth] = [0, 0]; row + 1 < rows && depth <= down; depth += along[over + row]!, row++)
    if (row > 0)
      stitched.push({ on: over + row, under: under + row, off: lifted[under + row]! - lifted[over + row]! });
}

type Flat = (column: number, row: number) => number;

/** Gathers, panel by panel, how far the two neighbours lie across the column and how far along it. */
function leanOf(
  { bends, rows }: ClothMesh,
  own: number,
  column: number,
  row: number,
  across: number,
  x: Flat,
  y: Flat,
): void {
  const [above, below] = [Math.max(0, row - 1), Math.min(rows - 1, row + 1)];
  const [dx, dy] = [x(column, below) - x(column, above), y(column, below) - y(column, above)];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (!(length > 0)) return;
  for (const side of [-1, 1]) {
    const neighbour = column + side;
    if (neighbour < 0 || neighbour > across) continue;
    const [nx, ny] = [x(neighbour, row) - x(column, row), y(neighbour, row) - y(column, row)];
    const sideways = Math.abs(nx * dy - ny * dx) / length;
    if (!(sideways > LEAST_WIDTH)) continue;
    const forwards = (nx * dx + ny * dy) / (length * length);
    const into = side < 0 ? bends.before : bends.after;
    into[own] = 1 / sideways;
    bends.lean[own]! += forwards / sideways;
    bends.reach[own]! += sideways / 2;
  }
}

/** Cloth narrower than this between two columns is not bent across, mm. */
const LEAST_WIDTH = 0.5;

/** The column lies on the plane of the mirror image. */
export function isOnPlane(closing: Closing, column: number, columns: number): boolean {
  if (column === columns - 1) return closing === 'mirrored' || closing === 'half';
  return column === 0 && closing === 'mirrored';
}

/** A place with a neighbour on one side alone does not bend across: a free edge, or the side of a godet at its point. */
function finishBends({ bends, closing, columns, rows }: ClothMesh): void {
  for (let own = 0; own < bends.reach.length; own++) {
    const column = Math.floor(own / rows);
    if (isOnPlane(closing, column, columns)) {
      const only = bends.before[own]! + bends.after[own]!;
      // Its mirror image stands in for the neighbour that is not there.
      bends.before[own] = only;
      bends.after[own] = only;
      bends.lean[own]! *= 2;
      bends.reach[own]! *= 2;
    } else if (bends.before[own] === 0 || bends.after[own] === 0) {
      bends.reach[own] = 0;
    }
  }
}
