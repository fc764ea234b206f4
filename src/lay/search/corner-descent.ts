import { layout } from './layout';
import { neighbours } from './neighbours';
import { pairs } from './no-fit-pairs';

/** Where an item may lie, and the weighted overlap that it has there. */
export class Place {
  choice: i32 = 0;
  lie: i32 = 0;
  x: f64 = 0;
  y: f64 = 0;
  cost: f64 = Infinity;
}

/** The crossing of two lines is numbered by the first line, shifted by so many bits, and the second; the first may be none. */
const LINE_BITS = 15;
const STRAIGHT = (1 << LINE_BITS) - 1;
const FOUR = i32x4(0, 1, 2, 3);

// Figures are as `../pack/pack-strip.ts` says.

/**
 * How far a descent may stray from where it began, with 0.5 −0.3, −0.2, +0.1, with 2 −0.5, +0.1, +0.7; and the longest first step,
 * with 0.25 −0.9, −0.6, −0.3, with 1 −0.4, +0.1, +0.9: shares of the item's smaller half extent.
 */
const STRAY: f64 = 1;
const FIRST_REACH: f64 = 0.5;
/**
 * After a step that was no better, the next may be at most this share of its length: with 0.125 −1.3, +0.3, +0.9, with 0.5 −0.1,
 * −0.1, +0.4.
 */
const SHORTER: f64 = 0.25;
/** A reach below this share ends the descent: with 1e-3 0.0, −0.1, +0.2, with 1e-5 −0.7, +0.4, +0.2. */
const LEAST_REACH: f64 = 1e-4;
/** With 6 −0.3, −0.5, +0.6, with 24 −0.7, +0.5, −0.1. */
const STEPS = 12;
/** A step is tried only if the lines promise to leave at most this share of the overlap. With 0.95 −0.5, −0.7, +0.4. */
const PROMISED: f64 = 0.999;
/**
 * Lines that meet at a smaller angle than this (its sine) count as parallel. With 0.01 −0.3, 0.0, +0.1, with 1e-4 +0.1, 0.0,
 * +0.2.
 */
const PARALLEL: f64 = 1e-3;
/** Steps aim this far beyond touching, as a share of the strip's width, so that rounding leaves no overlap. */
const BEYOND: f64 = 1e-10;

/** The lines near a place, those of the strip's walls last. */
class Lines {
  /** The unit vector outwards across each, and how far away the line is along it. */
  outX: StaticArray<f64>;
  outY: StaticArray<f64>;
  depth: StaticArray<f64>;
  /** The same in single precision, and the weight of each pair. */
  outX32: StaticArray<f32>;
  outY32: StaticArray<f32>;
  depth32: StaticArray<f32>;
  weight32: StaticArray<f32>;
  /** Without walls. */
  count: i32 = 0;

  constructor(most: i32) {
    this.outX = new StaticArray<f64>(most);
    this.outY = new StaticArray<f64>(most);
    this.depth = new StaticArray<f64>(most);
    this.outX32 = new StaticArray<f32>(most + 3);
    this.outY32 = new StaticArray<f32>(most + 3);
    this.depth32 = new StaticArray<f32>(most + 3);
    this.weight32 = new StaticArray<f32>(most + 3);
  }

  set(at: i32, outX: f64, outY: f64, depth: f64): void {
    this.outX[at] = outX;
    this.outY[at] = outY;
    this.depth[at] = depth;
    this.set32(at, outX, outY, depth);
  }

  set32(at: i32, outX: f64, outY: f64, depth: f64): void {
    this.outX32[at] = outX as f32;
    this.outY32[at] = outY as f32;
    this.depth32[at] = depth as f32;
  }
}

/**
 * Improves an item's place step by step. Close to a place, the boundary of each no-fit polygon is one straight line, and
 * the weighted overlap is piecewise linear. A piecewise linear function is least at a corner: where two such lines
 * cross, or a line and a wall of the strip. Each step goes to the crossing within reach that promises least, looks up
 * the true overlap there, and goes on from it.
 */
class CornerDescent {
  /** The lines near the place, and those near the place that was looked at last. */
  private lines: Lines = new Lines(0);
  private looked: Lines = new Lines(0);
  private walls: i32 = 0;
  /** The best crossing found, as a step from the place, and the overlap that it promises. */
  private stepX: f64 = 0;
  private stepY: f64 = 0;
  private promised: f64 = 0;
  /** In each of four lanes, the least overlap promised so far and the number of its crossing. */
  private least: v128 = f32x4.splat(0);
  private crossings: v128 = i32x4.splat(0);

  begin(): void {
    this.lines = new Lines(layout.count + 4);
    this.looked = new Lines(layout.count + 4);
  }

  /** Improves a place of the item that `neighbours` was prepared for. Returns what it cost before. */
  descend(item: i32, place: Place): f64 {
    const lie = place.lie;
    const size = min(layout.halfWidthOf(lie), layout.halfHeightOf(lie));
    const homeX = place.x;
    const homeY = place.y;
    const stray = size * STRAY;
    neighbours.fillNear(lie, homeX, homeY, stray);
    const before = this.look(item, lie, homeX, homeY, Infinity);
    place.cost = before;
    this.goOn();
    let reach = size * FIRST_REACH;
    for (let step = 0; step < STEPS && place.cost > 0 && reach > size * LEAST_REACH; step++) {
      this.addWalls(item, place, reach);
      this.bestCrossing(place.cost, reach);
      if (this.promised > place.cost * PROMISED) break;
      const x = layout.withinX(item, lie, place.x + this.stepX);
      const y = layout.withinY(lie, place.y + this.stepY);
      if (abs(x - homeX) > stray || abs(y - homeY) > stray) break;
      const cost = this.look(item, lie, x, y, place.cost);
      if (cost < place.cost) {
        place.x = x;
        place.y = y;
        place.cost = cost;
        this.goOn();
      } else reach = SHORTER * Math.sqrt(this.stepX * this.stepX + this.stepY * this.stepY);
    }
    return before;
  }

  /** Takes the lines of the place that was looked at last. */
  private goOn(): void {
    const lines = this.looked;
    this.looked = this.lines;
    this.lines = lines;
  }

  /** The weighted overlap at a place; leaves the lines near it in `looked`. Gives up, lines unfinished, once past `limit`. */
  private look(item: i32, lie: i32, x: f64, y: f64, limit: f64): f64 {
    const halfWidth = layout.halfWidthOf(lie) + layout.gap;
    const halfHeight = layout.halfHeightOf(lie) + layout.gap;
    const row = item * layout.count;
    const beyond = layout.width * BEYOND;
    const near = neighbours.near;
    const count = neighbours.nearCount;
    const lines = this.looked;
    let sum: f64 = 0;
    let found = 0;
    for (let k = 0; k < count; k++) {
      const other = near[k];
      const dy = y - layout.y[other];
      const reachY = halfHeight + layout.halfHeight[other];
      if (dy >= reachY || dy <= -reachY) continue;
      const dx = x - layout.x[other];
      const reachX = halfWidth + layout.halfWidth[other];
      if (dx >= reachX || dx <= -reachX) continue;
      const pair = pairs.known(layout.lie[other], lie);
      const polygon = pair.polygon;
      const depth = polygon.depthAndWayOut(dx * pair.signX, dy * pair.signY);
      const weight = layout.weights[row + other];
      if (depth > 0) {
        sum += depth * weight;
        if (sum >= limit) break;
      }
      lines.set(found, polygon.outX * pair.signX, polygon.outY * pair.signY, depth + beyond);
      lines.weight32[found++] = weight as f32;
    }
    lines.count = found;
    layout.work += (1 + found) as f64;
    return sum;
  }

  /** Adds the walls within reach, as lines that others may cross and that cost nothing; a step is clamped to them. */
  private addWalls(item: i32, place: Place, reach: f64): void {
    const x = place.x;
    const y = place.y;
    const halfWidth = layout.halfWidthOf(place.lie);
    const halfHeight = layout.halfHeightOf(place.lie);
    this.walls = this.lines.count;
    if (layout.isHeld(item)) this.addWall(1, 0, 0);
    else {
      if (x - halfWidth < reach) this.addWall(1, 0, halfWidth - x);
      if (layout.width - halfWidth - x < reach) this.addWall(-1, 0, x - (layout.width - halfWidth));
    }
    if (y - halfHeight < reach) this.addWall(0, 1, halfHeight - y);
    if (layout.length - halfHeight - y < reach) this.addWall(0, -1, y - (layout.length - halfHeight));
  }

  private addWall(outX: f64, outY: f64, depth: f64): void {
    this.lines.set(this.walls++, outX, outY, depth);
  }

  /** Finds the crossing within reach that promises the least overlap: in single precision, four at a time. */
  private bestCrossing(current: f64, reach: f64): void {
    const outX = changetype<usize>(this.lines.outX32);
    const outY = changetype<usize>(this.lines.outY32);
    const depth = changetype<usize>(this.lines.depth32);
    const walls = this.walls;
    for (let pad = 0; pad < 3; pad++) this.lines.set32(walls + pad, 0, 0, 0);
    const square = f32x4.splat((reach * reach) as f32);
    this.least = f32x4.splat(current as f32);
    this.crossings = i32x4.splat(-1);
    for (let j = 0; j < walls; j += 4) {
      const mx = v128.load(outX + (j << 2));
      const my = v128.load(outY + (j << 2));
      const e = v128.load(depth + (j << 2));
      const reached = v128.and(f32x4.gt(e, f32x4.splat(0)), f32x4.le(f32x4.mul(e, e), square));
      this.consider(f32x4.mul(mx, e), f32x4.mul(my, e), reached, STRAIGHT, j);
      for (let i = 0; i < min(walls, j + 4); i++) {
        const nx = v128.load32_splat(outX + (i << 2));
        const ny = v128.load32_splat(outY + (i << 2));
        const d = v128.load32_splat(depth + (i << 2));
        const turn = f32x4.sub(f32x4.mul(nx, my), f32x4.mul(ny, mx));
        const dx = f32x4.div(f32x4.sub(f32x4.mul(d, my), f32x4.mul(ny, e)), turn);
        const dy = f32x4.div(f32x4.sub(f32x4.mul(nx, e), f32x4.mul(d, mx)), turn);
        const distance = f32x4.add(f32x4.mul(dx, dx), f32x4.mul(dy, dy));
        const crosses = f32x4.gt(f32x4.abs(turn), f32x4.splat(PARALLEL as f32));
        this.consider(dx, dy, v128.and(crosses, f32x4.le(distance, square)), i, j);
      }
    }
    this.promised = current;
    let crossing = -1;
    for (let lane = 0; lane < 4; lane++) {
      const promised = f32x4.extract_lane(this.least, 0) as f64;
      if (promised < this.promised) {
        this.promised = promised;
        crossing = i32x4.extract_lane(this.crossings, 0);
      }
      this.least = v128.shuffle<f32>(this.least, this.least, 1, 2, 3, 0);
      this.crossings = v128.shuffle<i32>(this.crossings, this.crossings, 1, 2, 3, 0);
    }
    if (crossing >= 0) this.stepTo(crossing >> LINE_BITS, crossing & ((1 << LINE_BITS) - 1));
  }

  /** Keeps the steps that promise least in their lanes; they lead to where line `i` crosses `j` and the next three lines. */
  private consider(dx: v128, dy: v128, counts: v128, i: i32, j: i32): void {
    const promised = this.promisedBy(dx, dy);
    const better = v128.and(counts, f32x4.lt(promised, this.least));
    const crossings = i32x4.add(i32x4.splat((i << LINE_BITS) + j), FOUR);
    this.least = v128.bitselect(promised, this.least, better);
    this.crossings = v128.bitselect(crossings, this.crossings, better);
  }

  /** The weighted overlap that the lines promise after each of four steps. */
  private promisedBy(dx: v128, dy: v128): v128 {
    const outX = changetype<usize>(this.lines.outX32);
    const outY = changetype<usize>(this.lines.outY32);
    const depth = changetype<usize>(this.lines.depth32);
    const weight = changetype<usize>(this.lines.weight32);
    const end = (this.lines.count << 2) as usize;
    let sum = f32x4.splat(0);
    for (let at: usize = 0; at < end; at += 4) {
      const out = f32x4.add(
        f32x4.mul(dx, v128.load32_splat(outX + at)),
        f32x4.mul(dy, v128.load32_splat(outY + at)),
      );
      const left = f32x4.pmax(f32x4.sub(v128.load32_splat(depth + at), out), f32x4.splat(0));
      sum = f32x4.add(sum, f32x4.mul(left, v128.load32_splat(weight + at)));
    }
    return sum;
  }

  /** Works out, in double precision, the step to where two lines cross; or straight out across one. */
  private stepTo(i: i32, j: i32): void {
    const lines = this.lines;
    const mx = lines.outX[j];
    const my = lines.outY[j];
    const e = lines.depth[j];
    if (i === STRAIGHT) {
      this.stepX = mx * e;
      this.stepY = my * e;
      return;
    }
    const nx = lines.outX[i];
    const ny = lines.outY[i];
    const d = lines.depth[i];
    const turn = nx * my - ny * mx;
    this.stepX = (d * my - ny * e) / turn;
    this.stepY = (nx * e - d * mx) / turn;
  }
}

export const descent = new CornerDescent();
