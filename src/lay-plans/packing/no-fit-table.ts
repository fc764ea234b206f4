import type { Point } from '../../geometry/curve.ts';
import { convexParts } from './convex-parts.ts';
import { NoFitRegion } from './no-fit-region.ts';
import { type Attitude, middleOfBounds, signsOf } from './strip-problem.ts';

/** Ways in which one shape may lie: as drawn, x flipped, y flipped, both. Bit 0 flips x, bit 1 flips y. */
const FLIPS = 4;

/** Usual number of cells in the grid of a region: more make lists shorter and the making longer; flat from 600 to 4000. */
const CELLS = 1024;

/** Cells a side of a rough grid: small, so that all grids together stay near the processor. */
export const ROUGH_CELLS = 16;

/**
 * No-fit regions of every pair of shapes in every attitude, each made when first asked for. Flipping both shapes
 * flips the region, and swapping them turns it by half, so few are really made. A shape in an attitude is a
 * "lie", numbered by `lieOf`.
 */
export class NoFitTable {
  readonly lies: number;
  /** By fixed lie · `lies` + moving lie; made by `prepare`. Multiply a shift by the signs before asking. */
  readonly regions: (NoFitRegion | undefined)[];
  readonly signX: Int8Array;
  readonly signY: Int8Array;
  /** Rough depths of all regions, a plane in three numbers for each cell: depth at the grid's corner, and how it grows
   * a cell across and down; where a pair's grid begins in it, and cells for a unit of shift. */
  rough = new Float32Array(0);
  readonly roughAt: Int32Array;
  readonly cellsPerX: Float64Array;
  readonly cellsPerY: Float64Array;
  private readonly grids = new Map<NoFitRegion, number>();
  private readonly parts: Point[][][];
  private readonly made = new Map<number, NoFitRegion>();
  private readonly gap: number;
  private readonly cells: number;

  constructor(shapes: readonly (readonly Point[])[], gap: number, cells = CELLS) {
    this.cells = cells;
    this.gap = gap;
    this.lies = shapes.length * FLIPS;
    this.regions = new Array(this.lies * this.lies).fill(undefined);
    this.signX = new Int8Array(this.lies * this.lies);
    this.signY = new Int8Array(this.lies * this.lies);
    this.roughAt = new Int32Array(this.lies * this.lies).fill(-1);
    this.cellsPerX = new Float64Array(this.lies * this.lies);
    this.cellsPerY = new Float64Array(this.lies * this.lies);
    this.parts = shapes.map((outline) => {
      const middle = middleOfBounds(outline);
      return convexParts(outline.map((point) => ({ x: point.x - middle.x, y: point.y - middle.y })));
    });
  }

  /** Region in which shifts of the moving lie overlap the fixed one. */
  prepare(fixed: number, moving: number): NoFitRegion {
    const at = fixed * this.lies + moving;
    const known = this.regions[at];
    if (known !== undefined) return known;
    const a = shapeOf(fixed);
    const b = shapeOf(moving);
    const relative = (fixed ^ moving) & 3;
    const swapped = a > b;
    const flip = (swapped ? moving : fixed) & 3;
    const region = swapped ? this.region(b, a, relative) : this.region(a, b, relative);
    this.signX[at] = ((flip & 1) !== 0) !== swapped ? -1 : 1;
    this.signY[at] = ((flip & 2) !== 0) !== swapped ? -1 : 1;
    this.regions[at] = region;
    this.cellsPerX[at] = (this.signX[at]! * ROUGH_CELLS) / (2 * region.halfWidth);
    this.cellsPerY[at] = (this.signY[at]! * ROUGH_CELLS) / (2 * region.halfHeight);
    this.roughAt[at] = this.gridOf(region);
    return region;
  }

  private gridOf(region: NoFitRegion): number {
    const known = this.grids.get(region);
    if (known !== undefined) return known;
    const size = 3 * ROUGH_CELLS * ROUGH_CELLS;
    const start = this.grids.size * size;
    this.grids.set(region, start);
    if (start + size > this.rough.length) {
      const longer = new Float32Array(2 * (start + size));
      longer.set(this.rough);
      this.rough = longer;
    }
    for (let row = 0; row < ROUGH_CELLS; row++) {
      for (let column = 0; column < ROUGH_CELLS; column++) {
        const width = (2 * region.halfWidth) / ROUGH_CELLS;
        const height = (2 * region.halfHeight) / ROUGH_CELLS;
        const depth = region.depthAndWayOut(
          (column + 0.5) * width - region.halfWidth,
          (row + 0.5) * height - region.halfHeight,
        );
        const across = -region.outX * width;
        const down = -region.outY * height;
        this.rough.set(
          [depth - across * (column + 0.5) - down * (row + 0.5), across, down],
          start + 3 * (row * ROUGH_CELLS + column),
        );
      }
    }
    return start;
  }

  private region(a: number, b: number, flip: number): NoFitRegion {
    const key = (a * this.parts.length + b) * FLIPS + flip;
    const known = this.made.get(key);
    if (known !== undefined) return known;
    const moving = this.parts[b]!.map((part) => flipped(part, flip));
    const region = new NoFitRegion(this.parts[a]!, moving, this.gap, this.cells);
    this.made.set(key, region);
    return region;
  }
}

export function lieOf(attitude: Attitude): number {
  const signs = signsOf(attitude);
  return attitude.shape * FLIPS + (signs.x < 0 ? 1 : 0) + (signs.y < 0 ? 2 : 0);
}

export function shapeOf(lie: number): number {
  return lie >> 2;
}

/** A part flipped about the axes, still running the positive way. */
function flipped(part: readonly Point[], flip: number): Point[] {
  const x = (flip & 1) === 0 ? 1 : -1;
  const y = (flip & 2) === 0 ? 1 : -1;
  const points = part.map((point) => ({ x: point.x * x, y: point.y * y }));
  return x * y < 0 ? points.reverse() : points;
}
