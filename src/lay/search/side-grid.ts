import { clamp } from './clamp';

/** Numbers kept for a boundary segment: start x, y, unit direction x, y, length, and the ends' flags; one is free. */
export const STRIDE = 8;

/** While a grid is made, cells share a first selection of segments in blocks of so many by so many. */
const BLOCK = 8;

/** 1.5 · 2^52. Added to a small number, it leaves the nearest integer in the lowest bits of the sum. */
const WHOLE_BITS: f64 = 6755399441055744;

/** Kept from one grid to the next: this memory is never freed. */
let distances = new StaticArray<f64>(0);
let candidates = new StaticArray<i32>(0);
let lists = new StaticArray<i32>(0);

/**
 * The boundary of a polygon and a grid over its bounds, which keeps for each cell the few segments of the boundary that
 * can be nearest to a point in it: the nearest one then costs a handful of operations however many there are.
 */
export class SideGrid {
  readonly halfWidth: f64;
  readonly halfHeight: f64;
  readonly sides: i32;
  readonly segments: StaticArray<f64>;
  readonly columns: i32;
  readonly rows: i32;
  /** Left by `findNearest`: the square of the distance, whether the point lies inside, and the segment's offset. */
  least: f64 = 0;
  inside: bool = false;
  nearestAt: i32 = 0;

  private readonly columnsPerUnit: f64;
  private readonly rowsPerUnit: f64;
  /** Where each cell's list begins and ends in `nearest`: two numbers for each cell. */
  private readonly spans: StaticArray<i32>;
  private nearest: StaticArray<i32> = new StaticArray<i32>(0);

  constructor(halfWidth: f64, halfHeight: f64, sides: i32, cells: i32) {
    const size = Math.sqrt((halfWidth * halfHeight * 4) / (cells as f64));
    const columns = max(4, Math.ceil((2 * halfWidth) / size) as i32);
    const rows = max(4, Math.ceil((2 * halfHeight) / size) as i32);
    this.halfWidth = halfWidth;
    this.halfHeight = halfHeight;
    this.sides = sides;
    this.columns = columns;
    this.rows = rows;
    this.columnsPerUnit = (columns as f64) / (2 * halfWidth);
    this.rowsPerUnit = (rows as f64) / (2 * halfHeight);
    this.segments = new StaticArray<f64>(sides * STRIDE);
    this.spans = new StaticArray<i32>(2 * columns * rows);
  }

  get cellWidth(): f64 {
    return 1 / this.columnsPerUnit;
  }

  get cellHeight(): f64 {
    return 1 / this.rowsPerUnit;
  }

  /** Half the diagonal of a cell: no point of it lies further from its middle. */
  get cellReach(): f64 {
    const width = this.cellWidth;
    const height = this.cellHeight;
    return Math.sqrt(width * width + height * height) / 2;
  }

  middleX(column: i32): f64 {
    return (column + 0.5) * this.cellWidth - this.halfWidth;
  }

  middleY(row: i32): f64 {
    return (row + 0.5) * this.cellHeight - this.halfHeight;
  }

  cellOf(x: f64, y: f64): i32 {
    const column = floored((x + this.halfWidth) * this.columnsPerUnit);
    const row = floored((y + this.halfHeight) * this.rowsPerUnit);
    return min(row, this.rows - 1) * this.columns + min(column, this.columns - 1);
  }

  /** Finds the boundary segment nearest to a shift, the square of its distance, and whether the shift lies inside. */
  findNearest(x: f64, y: f64): void {
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
  listNearest(): void {
    const reach = this.cellReach;
    const all = new StaticArray<i32>(this.sides);
    for (let i = 0; i < this.sides; i++) all[i] = i * STRIDE;
    if (distances.length < this.sides) {
      distances = new StaticArray<f64>(this.sides);
      candidates = new StaticArray<i32>(this.sides);
    }
    let length = 0;
    for (let top = 0; top < this.rows; top += BLOCK) {
      for (let left = 0; left < this.columns; left += BLOCK) {
        const x = ((left + BLOCK / 2) as f64) * this.cellWidth - this.halfWidth;
        const y = ((top + BLOCK / 2) as f64) * this.cellHeight - this.halfHeight;
        const count = this.within(all, this.sides, x, y, reach * (BLOCK as f64), candidates, 0);
        for (let row = top; row < min(top + BLOCK, this.rows); row++) {
          for (let column = left; column < min(left + BLOCK, this.columns); column++) {
            if (length + count > lists.length) lists = longer(lists, length + count);
            const cell = row * this.columns + column;
            this.spans[2 * cell] = length;
            length += this.within(
              candidates,
              count,
              this.middleX(column),
              this.middleY(row),
              reach,
              lists,
              length,
            );
            this.spans[2 * cell + 1] = length;
          }
        }
      }
    }
    this.nearest = lists.slice<StaticArray<i32>>(0, length);
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

/** A small number that is not negative, rounded down; on the border between two cells either will do. */
function floored(value: f64): i32 {
  return reinterpret<i64>(value - 0.5 + WHOLE_BITS) as i32;
}

function longer(list: StaticArray<i32>, least: i32): StaticArray<i32> {
  const copy = new StaticArray<i32>(2 * least);
  for (let i = 0; i < list.length; i++) copy[i] = list[i];
  return copy;
}
