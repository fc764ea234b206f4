import type { Point } from '../../geometry/curve.ts';
import { convexSum } from './convex-sum.ts';
import { boundaryOfUnion, contains } from './union-boundary.ts';

/** Numbers kept for a boundary segment: start x, y, unit direction x, y, length, and the ends' flags. */
const STRIDE = 7;

/** Cells whose candidate segments are looked up together when the grid is made: this many a side. */
const BLOCK = 8;

/**
 * Where one shape may not lie beside another: the region of shifts of B, relative to A, at which the two overlap
 * (the Minkowski sum A ⊕ −B). How deep a shift lies inside it is the least distance by which B must move to come
 * free of A: the measure of overlap that the search works down.
 *
 * A grid over the region keeps, for each cell, the few boundary segments that can be nearest to a point in it,
 * so that the exact depth costs a handful of operations whatever the outlines are.
 */
export class NoFitRegion {
  readonly halfWidth: number;
  readonly halfHeight: number;
  private readonly columns: number;
  private readonly rows: number;
  private readonly columnsPerUnit: number;
  private readonly rowsPerUnit: number;
  /** Where each cell's list begins in `nearest`; an empty list is a cell wholly outside. */
  private readonly starts: Int32Array;
  private readonly nearest: Int32Array;
  private readonly segments: Float64Array;

  /** Left by `depthAndWayOut`. */
  outX = 0;
  outY = 0;
  /** Left by `findNearest`. */
  private least = 0;
  private inside = 0;
  private nearestAt = 0;
  /** Overlap that is let pass. */
  private readonly slack: number;

  /**
   * `a` and `b` in convex parts, each about the middle of its own bounds; about `cells` cells in the grid. A gap above
   * zero grows the region; below zero so much overlap passes, as shrinking would turn short edges inside out.
   */
  constructor(a: readonly Point[][], b: readonly Point[][], gap: number, cells: number) {
    this.slack = Math.max(0, -gap);
    const sums = a.flatMap((partOfA) => b.map((partOfB) => convexSum(partOfA, partOfB, Math.max(0, gap))));
    const corners = sums.flat();
    this.halfWidth = Math.max(...corners.map((point) => Math.abs(point.x)));
    this.halfHeight = Math.max(...corners.map((point) => Math.abs(point.y)));
    const size = Math.sqrt((this.halfWidth * this.halfHeight * 4) / cells);
    this.columns = Math.max(4, Math.ceil((2 * this.halfWidth) / size));
    this.rows = Math.max(4, Math.ceil((2 * this.halfHeight) / size));
    this.columnsPerUnit = this.columns / (2 * this.halfWidth);
    this.rowsPerUnit = this.rows / (2 * this.halfHeight);
    this.segments = packedBoundary(sums, this.halfWidth + this.halfHeight);
    const lists = this.listsOfCells(sums);
    this.starts = new Int32Array(lists.length + 1);
    lists.forEach((list, i) => {
      this.starts[i + 1] = this.starts[i]! + list.length;
    });
    this.nearest = Int32Array.from(lists.flat());
  }

  /** How many segments the boundary has. */
  get sides(): number {
    return this.segments.length / STRIDE;
  }

  /** The point at a share of a boundary segment: a shift at which the two just touch. */
  touchingX(side: number, share: number): number {
    const at = side * STRIDE;
    return this.segments[at]! + share * this.segments[at + 4]! * this.segments[at + 2]!;
  }

  touchingY(side: number, share: number): number {
    const at = side * STRIDE;
    return this.segments[at + 1]! + share * this.segments[at + 4]! * this.segments[at + 3]!;
  }

  /** How deep the shift lies inside, 0 outside. The shift must lie within the bounds. */
  depth(x: number, y: number): number {
    this.findNearest(x, y);
    return this.inside === 0 ? 0 : Math.max(0, Math.sqrt(this.least) - this.slack);
  }

  /** The same, leaving the unit vector of the shortest way out in `outX` and `outY`. */
  depthAndWayOut(x: number, y: number): number {
    const depth = this.depth(x, y);
    if (depth === 0) return 0;
    const at = this.nearestAt;
    const tx = this.segments[at + 2]!;
    const ty = this.segments[at + 3]!;
    const px = x - this.segments[at]!;
    const py = y - this.segments[at + 1]!;
    const along = Math.min(this.segments[at + 4]!, Math.max(0, px * tx + py * ty));
    const distance = Math.sqrt(this.least);
    this.outX = (along * tx - px) / distance;
    this.outY = (along * ty - py) / distance;
    return depth;
  }

  /** The boundary segment nearest to a shift, its square distance, and whether the shift lies inside. */
  private findNearest(x: number, y: number): void {
    const segments = this.segments;
    let column = ((x + this.halfWidth) * this.columnsPerUnit) | 0;
    let row = ((y + this.halfHeight) * this.rowsPerUnit) | 0;
    if (column >= this.columns) column = this.columns - 1;
    if (row >= this.rows) row = this.rows - 1;
    const cell = row * this.columns + column;
    const end = this.starts[cell + 1]!;
    let least = Infinity;
    let inside = 0;
    let nearestAt = 0;
    for (let k = this.starts[cell]!; k < end; k++) {
      const at = this.nearest[k]!;
      const px = x - segments[at]!;
      const py = y - segments[at + 1]!;
      const tx = segments[at + 2]!;
      const ty = segments[at + 3]!;
      const length = segments[at + 4]!;
      const along = px * tx + py * ty;
      let square: number;
      let within: number;
      if (along < 0) {
        square = px * px + py * py;
        within = segments[at + 5]!;
      } else if (along > length) {
        const qx = px - length * tx;
        const qy = py - length * ty;
        square = qx * qx + qy * qy;
        within = segments[at + 6]!;
      } else {
        const outward = px * ty - py * tx;
        square = outward * outward;
        within = outward < 0 ? 1 : 0;
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

  /** For each cell the segments (as offsets) that can be nearest to a point of it; none where it lies outside. */
  private listsOfCells(sums: readonly Point[][]): number[][] {
    const lists: number[][] = [];
    const width = 1 / this.columnsPerUnit;
    const height = 1 / this.rowsPerUnit;
    const reach = Math.sqrt(width * width + height * height) / 2;
    const all = Array.from({ length: this.sides }, (_, i) => i * STRIDE);
    for (let top = 0; top < this.rows; top += BLOCK) {
      for (let left = 0; left < this.columns; left += BLOCK) {
        const x = (left + BLOCK / 2) * width - this.halfWidth;
        const y = (top + BLOCK / 2) * height - this.halfHeight;
        const candidates = this.within(all, x, y, reach * BLOCK).near;
        for (let row = top; row < Math.min(top + BLOCK, this.rows); row++) {
          for (let column = left; column < Math.min(left + BLOCK, this.columns); column++) {
            const middle = {
              x: (column + 0.5) * width - this.halfWidth,
              y: (row + 0.5) * height - this.halfHeight,
            };
            const { near, least } = this.within(candidates, middle.x, middle.y, reach);
            const outside = least > reach && !sums.some((sum) => contains(sum, middle));
            lists[row * this.columns + column] = outside ? [] : near;
          }
        }
      }
    }
    return lists;
  }

  /** Which segments may be nearest to some point within `reach` of a place, and the least distance. */
  private within(
    segments: readonly number[],
    x: number,
    y: number,
    reach: number,
  ): { near: number[]; least: number } {
    const distances = segments.map((at) => this.distanceTo(at, x, y));
    let least = Infinity;
    for (const distance of distances) if (distance < least) least = distance;
    const limit = least + 2 * reach * (1 + 1e-9);
    return { near: segments.filter((_, i) => distances[i]! <= limit), least };
  }

  private distanceTo(at: number, x: number, y: number): number {
    const px = x - this.segments[at]!;
    const py = y - this.segments[at + 1]!;
    const tx = this.segments[at + 2]!;
    const ty = this.segments[at + 3]!;
    const along = Math.min(this.segments[at + 4]!, Math.max(0, px * tx + py * ty));
    const qx = px - along * tx;
    const qy = py - along * ty;
    return Math.sqrt(qx * qx + qy * qy);
  }
}

function packedBoundary(sums: readonly Point[][], size: number): Float64Array {
  const boundary = boundaryOfUnion(sums, size);
  const packed = new Float64Array(boundary.length * STRIDE);
  boundary.forEach(({ from, direction, length, insideAtStart, insideAtEnd }, i) => {
    const flags = [insideAtStart ? 1 : 0, insideAtEnd ? 1 : 0];
    packed.set([from.x, from.y, direction.x, direction.y, length, ...flags], i * STRIDE);
  });
  return packed;
}
