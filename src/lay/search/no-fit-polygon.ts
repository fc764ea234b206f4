import { clamp } from './clamp';

/** Numbers kept for a boundary segment: start x, y, unit direction x, y, length, and the ends' flags; one is free. */
const STRIDE = 8;

/** Cells along each side of a rough grid: few, so that the grids of all pairs fit the processor's cache together. */
export const ROUGH_CELLS = 16;

/** Numbers kept for a rough cell: four, as four are read at once; the last is unused. */
const PLANE = 4;

/** Numbers kept for a side in single precision: its start, and the vector from there to its end. */
const SIDE_32 = 4;

/** While a grid is made, cells share a first selection of segments in blocks of so many by so many. */
const BLOCK = 8;

/** 1.5 · 2^52. Added to a small number, it leaves the nearest integer in the lowest bits of the sum. */
const WHOLE_BITS: f64 = 6755399441055744;

/** Kept from one grid to the next: this memory is never freed. */
let distances = new StaticArray<f64>(0);
let candidates = new StaticArray<i32>(0);
let lists = new StaticArray<i32>(0);

/**
 * The no-fit polygon of two shapes: all shifts of B, relative to A, at which the two overlap (the Minkowski sum A ⊕ −B).
 * The depth of a shift inside it, its penetration depth, is the least distance by which B must move to come free of A.
 * The search minimises the sum of these depths.
 *
 * A grid over the polygon keeps for each cell the few boundary segments that can be nearest to a point in it, so that an
 * exact depth costs a handful of operations however many corners the outlines have.
 */
export class NoFitPolygon {
  readonly halfWidth: f64;
  readonly halfHeight: f64;
  readonly sides: i32;
  private readonly segments: StaticArray<f64>;
  /**
   * Rough depths, a plane for each rough cell: how depth grows per cell across and per cell down, and the plane's value
   * at the middle of the grid's first cell.
   */
  readonly rough: StaticArray<f32>;
  /** The boundary in single precision. */
  readonly sides32: StaticArray<f32>;

  /** Left by `depthAndWayOut`. */
  outX: f64 = 0;
  outY: f64 = 0;
  /** Left by `findNearest`. */
  private least: f64 = 0;
  private inside: bool = false;
  private nearestAt: i32 = 0;

  /** Depth that does not count as overlap. */
  private readonly slack: f64;
  private readonly columns: i32;
  private readonly rows: i32;
  private readonly columnsPerUnit: f64;
  private readonly rowsPerUnit: f64;
  /** Where each cell's list begins and ends in `nearest`: two numbers for each cell. */
  private readonly spans: StaticArray<i32>;
  private nearest: StaticArray<i32> = new StaticArray<i32>(0);
  /** 1 for a cell that lies entirely outside the polygon. */
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
    this.sides32 = new StaticArray<f32>(SIDE_32 * sides);
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
    this.sides32[side * SIDE_32] = x as f32;
    this.sides32[side * SIDE_32 + 1] = y as f32;
    this.sides32[side * SIDE_32 + 2] = (directionX * length) as f32;
    this.sides32[side * SIDE_32 + 3] = (directionY * length) as f32;
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

  /** The depth of a shift, 0 outside. The shift must lie within the bounds. */
  depth(x: f64, y: f64): f64 {
    if (this.outside[this.cellOf(x, y)] === 1) return 0;
    const signed = this.signedDepth(x, y);
    return signed > 0 ? signed : 0;
  }

  /**
   * The depth of a shift, below zero outside. Leaves the unit vector of the shortest way out in `outX` and `outY`; from
   * outside it points away from the boundary too.
   */
  depthAndWayOut(x: f64, y: f64): f64 {
    this.findNearest(x, y);
    const segments = this.segments;
    const at = this.nearestAt;
    const tx = segments[at + 2];
    const ty = segments[at + 3];
    const px = x - segments[at];
    const py = y - segments[at + 1];
    const along = clamp(px * tx + py * ty, 0, segments[at + 4]);
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

  /** Finds the boundary segment nearest to a shift, the square of its distance, and whether the shift lies inside. */
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

  /** Lists for each cell the segments, as offsets into `segments`, that can be nearest to a point in it. */
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

  /** Copies those segments to a list that may be nearest to some point within `reach` of a place; how many. */
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
    const along = clamp(px * tx + py * ty, 0, segments[at + 4]);
    const qx = px - along * tx;
    const qy = py - along * ty;
    return Math.sqrt(qx * qx + qy * qy);
  }
}

/** How many sides in single precision stand at an address. */
export function sidesAt(address: usize): i32 {
  return changetype<StaticArray<f32>>(address).length / SIDE_32;
}

/** A small number that is not negative, rounded down; on the border between two cells either will do. */
function floored(value: f64): i32 {
  return reinterpret<i64>(value - 0.5 + WHOLE_BITS) as i32;
}

function longer(list: StaticArray<i32>, least: i32): StaticArray<i32> {
  const copy = new StaticArray<i32>(2 * least);
  for (let i = 0; i < list.length; i++) copy[i] = list[i];
  return copy;
}
