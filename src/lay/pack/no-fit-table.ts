import type { Point } from '../../geometry/curve.ts';
import { convexParts } from './convex-parts.ts';
import { convexSum } from './convex-sum.ts';
import { type SearchCode, searchCode } from './search-code.ts';
import { type Attitude, middleOfBounds, signsOf } from './strip-problem.ts';
import { boundaryOfUnion } from './union-boundary.ts';

/** Ways in which one shape may lie: as drawn, x flipped, y flipped, both. Bit 0 flips x, bit 1 flips y. */
const FLIPS = 4;

/** Usual number of cells in the grid of a region: more make lists shorter and the making longer; flat from 600 to 4000. */
const CELLS = 1024;

/**
 * No-fit regions of every pair of shapes in every attitude, each made when first asked for, and the search that uses
 * them, which has one layout at a time. Flipping both shapes flips the region, and swapping them turns it by half, so
 * few are really made. A shape in an attitude is a "lie", numbered by `lieOf`.
 */
export class NoFitTable {
  readonly code: SearchCode;
  /** Whether the search should end, given the work that it has done. */
  isStopped: (work: number) => boolean = () => false;
  private readonly lies: number;
  private readonly parts: Point[][][];
  private readonly made = new Map<number, number>();
  private readonly gap: number;
  private readonly cells: number;

  constructor(shapes: readonly (readonly Point[])[], gap: number, cells = CELLS) {
    this.cells = cells;
    this.gap = gap;
    this.lies = shapes.length * FLIPS;
    this.parts = shapes.map((outline) => {
      const middle = middleOfBounds(outline);
      return convexParts(outline.map((point) => ({ x: point.x - middle.x, y: point.y - middle.y })));
    });
    this.code = searchCode({
      makePair: (fixed, moving) => this.makePair(fixed, moving),
      isStopped: (work) => this.isStopped(work),
    });
    this.code.beginPairs(this.lies);
  }

  /** Hands the search the region in which shifts of the moving lie overlap the fixed one. */
  private makePair(fixed: number, moving: number): void {
    const a = shapeOf(fixed);
    const b = shapeOf(moving);
    const relative = (fixed ^ moving) & 3;
    const swapped = a > b;
    const flip = (swapped ? moving : fixed) & 3;
    const region = swapped ? this.region(b, a, relative) : this.region(a, b, relative);
    const signX = ((flip & 1) !== 0) !== swapped ? -1 : 1;
    const signY = ((flip & 2) !== 0) !== swapped ? -1 : 1;
    this.code.setPair(fixed, moving, region, signX, signY);
  }

  private region(a: number, b: number, flip: number): number {
    const key = (a * this.parts.length + b) * FLIPS + flip;
    const known = this.made.get(key);
    if (known !== undefined) return known;
    const moving = this.parts[b]!.map((part) => flipped(part, flip));
    const region = this.makeRegion(this.parts[a]!, moving);
    this.made.set(key, region);
    return region;
  }

  /**
   * `a` and `b` in convex parts, each about the middle of its own bounds. A gap above zero grows the region; below
   * zero so much overlap passes, as shrinking would turn short edges inside out.
   */
  private makeRegion(a: readonly Point[][], b: readonly Point[][]): number {
    const { code, gap } = this;
    const sums = a.flatMap((partOfA) => b.map((partOfB) => convexSum(partOfA, partOfB, Math.max(0, gap))));
    const corners = sums.flat();
    const halfWidth = Math.max(...corners.map((point) => Math.abs(point.x)));
    const halfHeight = Math.max(...corners.map((point) => Math.abs(point.y)));
    const boundary = boundaryOfUnion(sums, halfWidth + halfHeight);
    const region = code.newRegion(halfWidth, halfHeight, Math.max(0, -gap), boundary.length, this.cells);
    boundary.forEach(({ from, direction, length, insideAtStart, insideAtEnd }, side) => {
      const insideAtEnds = (insideAtStart ? 1 : 0) + (insideAtEnd ? 2 : 0);
      code.setSide(region, side, from.x, from.y, direction.x, direction.y, length, insideAtEnds);
    });
    code.finishRegion(region);
    return region;
  }
}

export function lieOf(attitude: Attitude): number {
  const signs = signsOf(attitude);
  return attitude.shape * FLIPS + (signs.x < 0 ? 1 : 0) + (signs.y < 0 ? 2 : 0);
}

function shapeOf(lie: number): number {
  return lie >> 2;
}

/** A part flipped about the axes, still running the positive way. */
function flipped(part: readonly Point[], flip: number): Point[] {
  const x = (flip & 1) === 0 ? 1 : -1;
  const y = (flip & 2) === 0 ? 1 : -1;
  const points = part.map((point) => ({ x: point.x * x, y: point.y * y }));
  return x * y < 0 ? points.reverse() : points;
}
