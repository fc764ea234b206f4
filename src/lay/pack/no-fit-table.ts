import type { Point } from '../../geometry/curve.ts';
import { convexParts } from './convex-parts.ts';
import { convexSum } from './convex-sum.ts';
import { type SearchCode, searchCode } from './search-code.ts';
import { type Attitude, middleOfBounds, signsOf } from './strip-problem.ts';
import { boundaryOfUnion } from './union-boundary.ts';

/** Ways in which one shape may lie: as drawn, x flipped, y flipped, both. Bit 0 flips x, bit 1 flips y. */
const FLIPS = 4;

/**
 * Usual number of cells in the grid of a no-fit polygon. More cells have shorter lists and take longer to make; between
 * 600 and 4000 the sum of both hardly changes.
 */
const CELLS = 1024;

/**
 * The no-fit polygons of all pairs of shapes in all attitudes, made when first asked for and memoized; and the compiled
 * search that uses them, which has one layout at a time. A shape in an attitude is called a lie and numbered by `lieOf`.
 * If both lies are flipped, so is their no-fit polygon; if they are swapped, it turns by 180°. So few are really made.
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

  /** Hands the search the no-fit polygon of two lies: the shifts of the moving one at which it overlaps the fixed one. */
  private makePair(fixed: number, moving: number): void {
    const a = shapeOf(fixed);
    const b = shapeOf(moving);
    const relative = (fixed ^ moving) & 3;
    const swapped = a > b;
    const flip = (swapped ? moving : fixed) & 3;
    const polygon = swapped ? this.polygon(b, a, relative) : this.polygon(a, b, relative);
    const signX = ((flip & 1) !== 0) !== swapped ? -1 : 1;
    const signY = ((flip & 2) !== 0) !== swapped ? -1 : 1;
    this.code.setPair(fixed, moving, polygon, signX, signY);
  }

  private polygon(a: number, b: number, flip: number): number {
    const key = (a * this.parts.length + b) * FLIPS + flip;
    const known = this.made.get(key);
    if (known !== undefined) return known;
    const moving = this.parts[b]!.map((part) => flipped(part, flip));
    const polygon = this.makePolygon(this.parts[a]!, moving);
    this.made.set(key, polygon);
    return polygon;
  }

  /**
   * `a` and `b` in convex parts, each about the middle of its own bounds. A gap above zero grows the polygon. Below zero
   * the polygon is not shrunk, which would turn short edges inside out: so much depth does not count as overlap instead.
   */
  private makePolygon(a: readonly Point[][], b: readonly Point[][]): number {
    const { code, gap } = this;
    const sums = a.flatMap((partOfA) => b.map((partOfB) => convexSum(partOfA, partOfB, Math.max(0, gap))));
    const corners = sums.flat();
    const halfWidth = Math.max(...corners.map((point) => Math.abs(point.x)));
    const halfHeight = Math.max(...corners.map((point) => Math.abs(point.y)));
    const boundary = boundaryOfUnion(sums, halfWidth + halfHeight);
    const polygon = code.newPolygon(halfWidth, halfHeight, Math.max(0, -gap), boundary.length, this.cells);
    boundary.forEach(({ from, direction, length, insideAtStart, insideAtEnd }, side) => {
      const insideAtEnds = (insideAtStart ? 1 : 0) + (insideAtEnd ? 2 : 0);
      code.setSide(polygon, side, from.x, from.y, direction.x, direction.y, length, insideAtEnds);
    });
    code.finishPolygon(polygon);
    return polygon;
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
