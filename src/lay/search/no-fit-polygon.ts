import { clamp } from './clamp';
import { SideGrid, STRIDE } from './side-grid';

/** Cells along each side of a rough grid: few, so that the grids of all pairs fit the processor's cache together. */
export const ROUGH_CELLS = 16;

/** Numbers kept for a rough cell: four, as four are read at once; the last is unused. */
const PLANE = 4;

/** Numbers kept for a side in single precision: its start, and the vector from there to its end. */
const SIDE_32 = 4;

/**
 * The no-fit polygon of two shapes: all shifts of B, relative to A, at which the two overlap (the Minkowski sum A ⊕ −B).
 * The depth of a shift inside it, its penetration depth, is the least distance by which B must move to come free of A.
 * The search minimises the sum of these depths.
 */
export class NoFitPolygon extends SideGrid {
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

  /** Depth that does not count as overlap. */
  private readonly slack: f64;
  /** 1 for a cell that lies entirely outside the polygon. */
  private outside: StaticArray<u8> = new StaticArray<u8>(0);

  constructor(halfWidth: f64, halfHeight: f64, slack: f64, sides: i32, cells: i32) {
    super(halfWidth, halfHeight, sides, cells);
    this.slack = slack;
    this.rough = new StaticArray<f32>(PLANE * ROUGH_CELLS * ROUGH_CELLS);
    this.sides32 = new StaticArray<f32>(SIDE_32 * sides);
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
    this.listNearest();
    this.markOutside();
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

  private markOutside(): void {
    this.outside = new StaticArray<u8>(this.columns * this.rows);
    const depthOutside = -this.cellReach - this.slack;
    for (let row = 0; row < this.rows; row++) {
      for (let column = 0; column < this.columns; column++) {
        const depth = this.signedDepth(this.middleX(column), this.middleY(row));
        this.outside[row * this.columns + column] = depth < depthOutside ? 1 : 0;
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
}

/** How many sides in single precision stand at an address. */
export function sidesAt(address: usize): i32 {
  return changetype<StaticArray<f32>>(address).length / SIDE_32;
}
