import { held } from './held';

/** Numbers kept for a boundary segment: start x, y, unit direction x, y, length, and the ends' flags; one is free. */
const STRIDE = 8;

/** Cells a side of a rough grid: small, so that all grids together stay near the processor. */
export const ROUGH_CELLS = 16;

/** Numbers for a cell of it, the last unused: four are read at once. */
const PLANE = 4;

/** Numbers for a side in short: its start, and the way from there to its end. */
const SHORT_SIDE = 4;

/** Cells whose candidate segments are looked up together when the grid is made: this many a side. */
const BLOCK = 8;

/** Added to a number of fewer than 51 bits, this leaves the nearest whole number in its lowest bits. */
const WHOLE_BITS: f64 = 6755399441055744;

/** Used again for each grid that is made: nothing here is ever freed. */
let distances = new StaticArray<f64>(0);
let candidates = new StaticArray<i32>(0);
let lists = new StaticArray<i32>(0);

/**
 * Where one shape may not lie beside another: the region of shifts of B, relative to A, at which the two overlap
 * (the Minkowski sum A ⊕ −B). How deep a shift lies inside it is the least distance by which B must move to come
 * free of A: the measure of overlap that the search works down.
 *
 * A grid over the region keeps, for each cell, the few boundary segments that can be nearest to a point in it,
 * so that the exact depth costs a handful of operations whatever the outlines are.
 */
export class NoFitRegion {
  readonly halfWidth: f64;
  readonly halfHeight: f64;
  readonly sides: i32;
  private readonly segments: StaticArray<f64>;
  /** Rough depths, a plane for each cell: how depth grows a cell across and down, and its value at the first cell's middle. */
  readonly rough: StaticArray<f32>;
  /** The boundary in short. */
  readonly shortSides: StaticArray<f32>;

  /** Left by `depthAndWayOut`. */
  outX: f64 = 0;
  outY: f64 = 0;
  /** Left by `findNearest`. */
  private least: f64 = 0;
  private inside: bool = false;
  private nearestAt: i32 = 0;

  /** Overlap that is let pass. */
  private readonly slack: f64;
  private readonly columns: i32;
  private readonly rows: i32;
  private readonly columnsPerUnit: f64;
  private readonly rowsPerUnit: f64;
  /** Each cell's list stands in `nearest` from one number here up to the next, side by side for each cell. */
  private readonly spans: StaticArray<i32>;
  private nearest: StaticArray<i32> = new StaticArray<i32>(0);
  /** 1 for a cell that lies wholly outside. */
  private readonly outside: StaticArray<u8>;

  constructor(halfWidth: f64, halfHeight: f64, slack: f64, sides: i32, cells: i32) {
    const size = Math.sqrt((halfWidth * halfHeight * 4) / (cells as f64));
    const columns = max(4, Math.ceil((2 * halfWidth) / size) as i32);
    const rows = max(4, Math.ceil((2 * halfHeight) / size) as i32);
    this.halfWidth = halfWidth;
    this.halfHeight = halfHeight;
    this.slack = slack;
    this.sides = sides;
    this.columns = columns;
    this.rows = rows;
    this.columnsPerUnit = (columns as f64) / (2 * halfWidth);
    this.rowsPerUnit = (rows as f64) / (2 * halfHeight);
    this.segments = new StaticArray<f64>(sides * STRIDE);
    this.rough = new StaticArray<f32>(PLANE * ROUGH_CELLS * ROUGH_CELLS);
    this.shortSides = new StaticArray<f32>(SHORT_SIDE * sides);
    this.spans = new StaticArray<i32>(2 * columns * rows);
    this.outside = new StaticArray<u8>(columns * rows);
  }

  setSide(side: i32, x: f64, y: f64, directionX: f64, directionY: f64, length: f64, insideAtEnds: i32): void {
    const at = side * STRIDE;
    this.segments[at] = x;
    this.segments[at + 1] = y;
    this.segments[at + 2] = directionX;
    this.segments[at + 3] = directionY;
    this.segments[at + 4] = length;
    this.segments[at + 5] = (insideAtEnds & 1) as f64;
    this.segments[at + 6] = (insideAtEnds >> 1) as f64;
    this.shortSides[side * SHORT_SIDE] = x as f32;
    this.shortSides[side * SHORT_SIDE + 1] = y as f32;
    this.shortSides[side * SHORT_SIDE + 2] = (directionX * length) as f32;
    this.shortSides[side * SHORT_SIDE + 3] = (directionY * length) as f32;
  }

  /** Makes the grids, once all sides are set. */
  finish(): void {
    const cellWidth = 1 / this.columnsPerUnit;
    const cellHeight = 1 / this.rowsPerUnit;
    const reach = Math.sqrt(cellWidth * cellWidth + cellHeight * cellHeight) / 2;
    this.listNearest(cellWidth, cellHeight, reach);
    this.markOutside(cellWidth, cellHeight, reach);
    this.fillRough();
  }

  /** How deep the shift lies inside, 0 outside. The shift must lie within the bounds. */
  depth(x: f64, y: f64): f64 {
    if (this.outside[this.cellOf(x, y)] === 1) return 0;
    const signed = this.signedDepth(x, y);
    return signed > 0 ? signed : 0;
  }

  /** The same, leaving the unit vector of the shortest way out in `outX` and `outY`; below zero outside. */
  depthAndWayOut(x: f64, y: f64): f64 {
    this.findNearest(x, y);
    const segments = this.segments;
    const at = this.nearestAt;
    const tx = segments[at + 2];
    const ty = segments[at + 3];
    const px = x - segments[at];
    const py = y - segments[at + 1];
    const along = held(px * tx + py * ty, 0, segments[at + 4]);
    const distance = Math.sqrt(this.least);
    const signed = this.inside ? distance : -distance;
    if (distance === 0) {
      this.outX = ty;
      this.outY = -tx;
    } else {
      const outward = 1 / signed;
      this.outX = (along * tx - px) * outward;
      this.outY = (along * ty - py) * outward;
    }
    return signed - this.slack;
  }

  private signedDepth(x: f64, y: f64): f64 {
    this.findNearest(x, y);
    const distance = Math.sqrt(this.least);
    return (this.inside ? distance : -distance) - this.slack;
  }

  private cellOf(x: f64, y: f64): i32 {
    const column = floored((x + this.halfWidth) * this.columnsPerUnit);
    const row = floored((y + this.halfHeight) * this.rowsPerUnit);
    return min(row, this.rows - 1) * this.columns + min(column, this.columns - 1);
  }

  /** The boundary segment nearest to a shift, its square distance, and whether the shift lies inside. */
  private findNearest(x: f64, y: f64): void {
    const segments = this.segments;
    const nearest = this.nearest;
    const cell = this.cellOf(x, y);
    const end = this.spans[2 * cell + 1];
    let least: f64 = Infinity;
    let inside = false;
    let nearestAt = 0;
    for (let k = this.spans[2 * cell]; k < end; k++) {
      const at = nearest[k];
      const px = x - segments[at];
      const py = y - segments[at + 1];
      const tx = segments[at + 2];
      const ty = segments[at + 3];
      const length = segments[at + 4];
      const along = px * tx + py * ty;
      let square: f64;
      let within: bool;
      if (along < 0) {
        square = px * px + py * py;
        within = segments[at + 5] !== 0;
      } else if (along > length) {
        const qx = px - length * tx;
        const qy = py - length * ty;
        square = qx * qx + qy * qy;
        within = segments[at + 6] !== 0;
      } else {
        const outward = px * ty - py * tx;
        square = outward * outward;
        within = outward < 0;
      }
      if (square < least) {
        least = square;
        inside = within;
        nearestAt = at;
      }
    }
    this.least = least;
    this.inside = inside;
    this.nearestAt = nearestAt;
  }

  /** Lists for each cell the segments (as offsets) that can be nearest to a point of it. */
  private listNearest(cellWidth: f64, cellHeight: f64, reach: f64): void {
    const all = new StaticArray<i32>(this.sides);
    for (let i = 0; i < this.sides; i++) all[i] = i * STRIDE;
    if (distances.length < this.sides) {
      distances = new StaticArray<f64>(this.sides);
      candidates = new StaticArray<i32>(this.sides);
    }
    let length = 0;
    for (let top = 0; top < this.rows; top += BLOCK) {
      for (let left = 0; left < this.columns; left += BLOCK) {
        const x = ((left + BLOCK / 2) as f64) * cellWidth - this.halfWidth;
        const y = ((top + BLOCK / 2) as f64) * cellHeight - this.halfHeight;
        const count = this.within(all, this.sides, x, y, reach * (BLOCK as f64), candidates, 0);
        for (let row = top; row < min(top + BLOCK, this.rows); row++) {
          for (let column = left; column < min(left + BLOCK, this.columns); column++) {
            if (length + count > lists.length) lists = longer(lists, length + count);
            const cell = row * this.columns + column;
            const middleX = (column + 0.5) * cellWidth - this.halfWidth;
            const middleY = (row + 0.5) * cellHeight - this.halfHeight;
            this.spans[2 * cell] = length;
            length += this.within(candidates, count, middleX, middleY, reach, lists, length);
            this.spans[2 * cell + 1] = length;
          }
        }
      }
    }
    this.nearest = lists.slice<StaticArray<i32>>(0, length);
  }

  private markOutside(cellWidth: f64, cellHeight: f64, reach: f64): void {
    for (let row = 0; row < this.rows; row++) {
      for (let column = 0; column < this.columns; column++) {
        const x = (column + 0.5) * cellWidth - this.halfWidth;
        const y = (row + 0.5) * cellHeight - this.halfHeight;
        this.outside[row * this.columns + column] = this.signedDepth(x, y) < -reach - this.slack ? 1 : 0;
      }
    }
  }

  private fillRough(): void {
    const cellWidth = (2 * this.halfWidth) / ROUGH_CELLS;
    const cellHeight = (2 * this.halfHeight) / ROUGH_CELLS;
    for (let row = 0; row < ROUGH_CELLS; row++) {
      for (let column = 0; column < ROUGH_CELLS; column++) {
        const x = (column + 0.5) * cellWidth - this.halfWidth;
        const depth = this.depthAndWayOut(x, (row + 0.5) * cellHeight - this.halfHeight);
        const across = -this.outX * cellWidth;
        const down = -this.outY * cellHeight;
        const at = PLANE * (row * ROUGH_CELLS + column);
        this.rough[at] = across as f32;
        this.rough[at + 1] = down as f32;
        this.rough[at + 2] = (depth - across * (column as f64) - down * (row as f64)) as f32;
      }
    }
  }

  /** Puts those of `count` segments that may be nearest to some point within `reach` of a place into a list; how many. */
  private within(
    from: StaticArray<i32>,
    count: i32,
    x: f64,
    y: f64,
    reach: f64,
    into: StaticArray<i32>,
    start: i32,
  ): i32 {
    let least: f64 = Infinity;
    for (let i = 0; i < count; i++) {
      const distance = this.distanceTo(from[i], x, y);
      distances[i] = distance;
      if (distance < least) least = distance;
    }
    const limit = least + 2 * reach * (1 + 1e-9);
    let to = start;
    for (let i = 0; i < count; i++) if (distances[i] <= limit) into[to++] = from[i];
    return to - start;
  }

  private distanceTo(at: i32, x: f64, y: f64): f64 {
    const segments = this.segments;
    const px = x - segments[at];
    const py = y - segments[at + 1];
    const tx = segments[at + 2];
    const ty = segments[at + 3];
    const along = held(px * tx + py * ty, 0, segments[at + 4]);
    const qx = px - along * tx;
    const qy = py - along * ty;
    return Math.sqrt(qx * qx + qy * qy);
  }
}

/** How many sides stand in short at an address. */
export function sidesAt(address: usize): i32 {
  return changetype<StaticArray<f32>>(address).length / SHORT_SIDE;
}

/** The whole number below a small one that is not negative; on a border of cells either does. */
function floored(value: f64): i32 {
  return reinterpret<i64>(value - 0.5 + WHOLE_BITS) as i32;
}

function longer(list: StaticArray<i32>, least: i32): StaticArray<i32> {
  const copy = new StaticArray<i32>(2 * least);
  for (let i = 0; i < list.length; i++) copy[i] = list[i];
  return copy;
}
