import type { Point } from '../../geometry/curve.ts';
import { convexSum } from './convex-sum.ts';
import { boundaryOfUnion } from './union-boundary.ts';

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
  /** Each cell's list stands in `nearest` from its start to its end. */
  private readonly starts: Int32Array;
  private readonly ends: Int32Array;
  private nearest: Int32Array;
  private readonly segments: Float64Array;
  /** 1 for a cell that lies wholly outside. */
  private readonly outside: Uint8Array;
  /** Depth at its middle below which a cell lies wholly outside. */
  private readonly clear: number;
  private readonly cellWidth: number;
  private readonly cellHeight: number;

  /** Left by `depthAndWayOut`. */
  outX = Number.NaN;
  outY = Number.NaN;
  /** Left by `findNearest`. */
  private least = Number.NaN;
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
    this.cellWidth = 1 / this.columnsPerUnit;
    this.cellHeight = 1 / this.rowsPerUnit;
    const reach = Math.sqrt(this.cellWidth ** 2 + this.cellHeight ** 2) / 2;
    this.clear = -reach - this.slack;
    this.segments = packedBoundary(sums, this.halfWidth + this.halfHeight);
    this.starts = new Int32Array(this.columns * this.rows);
    this.ends = new Int32Array(this.columns * this.rows);
    this.nearest = new Int32Array(8 * this.starts.length);
    this.listNearest(reach);
    this.outside = this.outsideCells();
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
    if (this.outside[this.cellOf(x, y)] === 1) return 0;
    return Math.max(0, this.signedDepth(x, y));
  }

  /** The same, leaving the unit vector of the shortest way out in `outX` and `outY`; below zero outside. */
  depthAndWayOut(x: number, y: number): number {
    const signed = this.signedDepth(x, y);
    const at = this.nearestAt;
    const tx = this.segments[at + 2]!;
    const ty = this.segments[at + 3]!;
    const px = x - this.segments[at]!;
    const py = y - this.segments[at + 1]!;
    const along = Math.min(this.segments[at + 4]!, Math.max(0, px * tx + py * ty));
    const distance = Math.sqrt(this.least);
    if (distance === 0) {
      this.outX = ty;
      this.outY = -tx;
    } else {
      const sign = this.inside === 0 ? -distance : distance;
      this.outX = (along * tx - px) / sign;
      this.outY = (along * ty - py) / sign;
    }
    return signed;
  }

  private signedDepth(x: number, y: number): number {
    this.findNearest(x, y);
    const distance = Math.sqrt(this.least);
    return (this.inside === 0 ? -distance : distance) - this.slack;
  }

  private cellOf(x: number, y: number): number {
    let column = ((x + this.halfWidth) * this.columnsPerUnit) | 0;
    let row = ((y + this.halfHeight) * this.rowsPerUnit) | 0;
    if (column >= this.columns) column = this.columns - 1;
    if (row >= this.rows) row = this.rows - 1;
    return row * this.columns + column;
  }

  /** The boundary segment nearest to a shift, its square distance, and whether the shift lies inside. */
  private findNearest(x: number, y: number): void {
    const segments = this.segments;
    const cell = this.cellOf(x, y);
    const end = this.ends[cell]!;
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

  /** Lists for each cell the segments (as offsets) that can be nearest to a point of it. */
  private listNearest(reach: number): void {
    const all = Int32Array.from({ length: this.sides }, (_, i) => i * STRIDE);
    const candidates = new Int32Array(this.sides);
    const distances = new Float64Array(this.sides);
    let length = 0;
    for (let top = 0; top < this.rows; top += BLOCK) {
      for (let left = 0; left < this.columns; left += BLOCK) {
        const x = (left + BLOCK / 2) * this.cellWidth - this.halfWidth;
        const y = (top + BLOCK / 2) * this.cellHeight - this.halfHeight;
        const count = this.within(all, all.length, x, y, reach * BLOCK, distances, candidates, 0);
        for (let row = top; row < Math.min(top + BLOCK, this.rows); row++) {
          for (let column = left; column < Math.min(left + BLOCK, this.columns); column++) {
            if (length + count > this.nearest.length) this.nearest = longer(this.nearest, length + count);
            const cell = row * this.columns + column;
            const middleX = (column + 0.5) * this.cellWidth - this.halfWidth;
            const middleY = (row + 0.5) * this.cellHeight - this.halfHeight;
            this.starts[cell] = length;
            length += this.within(
              candidates,
              count,
              middleX,
              middleY,
              reach,
              distances,
              this.nearest,
              length,
            );
            this.ends[cell] = length;
          }
        }
      }
    }
    this.nearest = this.nearest.slice(0, length);
  }

  private outsideCells(): Uint8Array {
    const outside = new Uint8Array(this.columns * this.rows);
    for (let row = 0; row < this.rows; row++) {
      for (let column = 0; column < this.columns; column++) {
        const x = (column + 0.5) * this.cellWidth - this.halfWidth;
        const depth = this.signedDepth(x, (row + 0.5) * this.cellHeight - this.halfHeight);
        outside[row * this.columns + column] = depth < this.clear ? 1 : 0;
      }
    }
    return outside;
  }

  /** Puts those of `count` segments that may be nearest to some point within `reach` of a place into a list; how many. */
  private within(
    segments: Int32Array,
    count: number,
    x: number,
    y: number,
    reach: number,
    distances: Float64Array,
    into: Int32Array,
    from: number,
  ): number {
    let least = Infinity;
    for (let i = 0; i < count; i++) {
      const distance = this.distanceTo(segments[i]!, x, y);
      distances[i] = distance;
      if (distance < least) least = distance;
    }
    const limit = least + 2 * reach * (1 + 1e-9);
    let to = from;
    for (let i = 0; i < count; i++) if (distances[i]! <= limit) into[to++] = segments[i]!;
    return to - from;
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

function longer(list: Int32Array, least: number): Int32Array {
  const copy = new Int32Array(2 * least);
  copy.set(list);
  return copy;
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
