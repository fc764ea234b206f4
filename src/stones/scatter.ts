import type { Point } from '../geometry/curve.ts';
import { distance } from '../geometry/point.ts';
import { evenRandom } from './random.ts';
import { acrossSeam, type Beside, beside, type SeamLine } from './seam-line.ts';

/** A piece that stones are set on: drawn flat, with what lies beyond each of its sides once it is sewn. mm. */
export interface Patch {
  /** Seam-line outline as points, closed. */
  readonly outline: readonly Point[];
  readonly sides: readonly PatchSide[];
  /** Stones for a square decimetre here; 0 where none may be. */
  readonly densityAt: (point: Point) => number;
}

export interface PatchSide {
  readonly line: SeamLine;
  /** Index of the patch beyond and the line of its own side; nothing where the edge is free. */
  readonly beyond?: {
    readonly patch: number;
    readonly line: SeamLine;
    readonly mirrored: boolean;
  };
}

/**
 * Stones scattered evenly over sewn pieces, as far apart as their density asks, across seams too: dart throwing from a
 * growing front (R. Bridson, Fast Poisson disk sampling in arbitrary dimensions, 2007), 30 tries around each stone.
 * The same seed gives the same stones.
 * @param apart nearer to each other than this none is set, whatever the density asks, mm
 * @returns for each patch its stones, in its own coordinates
 */
export function scattered(patches: readonly Patch[], seed: number, apart = 0): Point[][] {
  const set = new StoneSetting(patches, evenRandom(seed), apart);
  for (const patch of patches.keys()) set.fill(patch);
  return set.stones.map((own) => own.map(({ at }) => at));
}

/** Tries around a stone before it is left: the paper's own figure. */
const TRIES = 30;

/**
 * Stones on an area for the least distance d between them: 0.62 · area / d² with 30 tries (simulated; 0.696 is the
 * limit of random packing, 1.155 the hexagonal one).
 */
export const PACKED = 0.62;

/** Fewer than this on a square decimetre are none: the next stone would be far out of sight. */
const FEWEST = 0.05;

/** Least distance that gives so many stones a square decimetre, mm. */
export function distanceFor(density: number): number {
  return 100 * Math.sqrt(PACKED / density);
}

interface Stone {
  readonly at: Point;
  readonly apart: number;
}

class StoneSetting {
  readonly stones: Stone[][];
  private readonly near: Neighbours[];

  constructor(
    private readonly patches: readonly Patch[],
    private readonly random: () => number,
    private readonly leastApart: number,
  ) {
    this.stones = patches.map(() => []);
    this.near = patches.map(() => new Neighbours());
  }

  /** Fills one piece from many first darts, so that no corner is left that a front could not reach. */
  fill(index: number): void {
    const patch = this.patches[index]!;
    const box = boxOf(patch.outline);
    const area = (box.right - box.left) * (box.bottom - box.top);
    const darts = Math.min(20_000, Math.ceil(area / 400));
    for (let dart = 0; dart < darts; dart++) {
      const first = this.placed(index, {
        x: box.left + this.random() * (box.right - box.left),
        y: box.top + this.random() * (box.bottom - box.top),
      });
      if (first !== undefined) this.spread(index, first);
    }
  }

  private spread(index: number, first: Stone): void {
    const front = [first];
    while (front.length > 0) {
      const place = Math.floor(this.random() * front.length);
      const from = front[place]!;
      const next = this.around(index, from);
      if (next === undefined) front.splice(place, 1);
      else front.push(next);
    }
  }

  private around(index: number, { at, apart }: Stone): Stone | undefined {
    for (let dart = 0; dart < TRIES; dart++) {
      const stone = this.placed(index, this.inRing(at, apart));
      if (stone !== undefined) return stone;
    }
    return undefined;
  }

  /** An even place between one and two distances away; thrown again until it falls there. */
  private inRing({ x, y }: Point, apart: number): Point {
    for (;;) {
      const [dx, dy] = [4 * this.random() - 2, 4 * this.random() - 2];
      const square = dx * dx + dy * dy;
      if (square >= 1 && square <= 4) return { x: x + dx * apart, y: y + dy * apart };
    }
  }

  /** Sets a stone where it may be and no other is too near, on this piece or beyond its seams. */
  private placed(index: number, at: Point): Stone | undefined {
    const patch = this.patches[index]!;
    if (!isInside(patch.outline, at)) return undefined;
    const density = patch.densityAt(at);
    if (!(density >= FEWEST)) return undefined;
    const apart = Math.max(this.leastApart, distanceFor(density));
    if (this.near[index]!.isTaken(at, apart)) return undefined;
    if (patch.sides.some((side) => this.isTakenBeyond(side, at, apart))) return undefined;
    const stone = { at, apart };
    this.stones[index]!.push(stone);
    this.near[index]!.add(stone);
    return stone;
  }

  private isTakenBeyond({ line, beyond }: PatchSide, at: Point, apart: number): boolean {
    if (beyond === undefined) return false;
    const own: Beside = beside(line, at);
    if (own.away > apart) return false;
    // Its own mirror image lies as far beyond the seam as it lies before it.
    if (beyond.mirrored && 2 * own.away < apart) return true;
    const place = acrossSeam(beyond.line, line, own.way, at, beyond.mirrored);
    return this.near[beyond.patch]!.isTaken(place, apart);
  }
}

/** Stones by cells of a grid, to find those near a place. */
class Neighbours {
  private readonly cells = new Map<string, Stone[]>();
  private widest = 0;

  add(stone: Stone): void {
    const key = keyOf(Math.floor(stone.at.x / CELL), Math.floor(stone.at.y / CELL));
    const cell = this.cells.get(key);
    if (cell === undefined) this.cells.set(key, [stone]);
    else cell.push(stone);
    this.widest = Math.max(this.widest, stone.apart);
  }

  /** Whether a stone lies nearer than the mean of the distances that both ask for. */
  isTaken(at: Point, apart: number): boolean {
    const reach = (apart + this.widest) / 2;
    const [left, right] = [Math.floor((at.x - reach) / CELL), Math.floor((at.x + reach) / CELL)];
    const [top, bottom] = [Math.floor((at.y - reach) / CELL), Math.floor((at.y + reach) / CELL)];
    for (let x = left; x <= right; x++)
      for (let y = top; y <= bottom; y++)
        for (const other of this.cells.get(keyOf(x, y)) ?? [])
          if (distance(at, other.at) < (apart + other.apart) / 2) return true;
    return false;
  }
}

/** mm. */
const CELL = 20;

function keyOf(x: number, y: number): string {
  return `${x},${y}`;
}

function boxOf(points: readonly Point[]): { left: number; right: number; top: number; bottom: number } {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

export function isInside(outline: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const [a, b] = [outline[i]!, outline[j]!];
    if (a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)) inside = !inside;
  }
  return inside;
}
