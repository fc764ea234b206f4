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

/** How far one descent may wander, and its first step's reach, as shares of the item's smaller half extent. */
const WANDER: f64 = 1;
const FIRST_REACH: f64 = 0.5;
/** A step that does not better the place is tried again this much shorter. */
const SHORTER: f64 = 0.25;
const LEAST_REACH: f64 = 1e-4;
const STEPS = 12;
/** A step is taken only if it is foreseen to leave at most this share of the overlap. */
const FORESEEN: f64 = 0.999;
/** Lines that meet at less than this (sine of the angle) are taken as parallel. */
const PARALLEL: f64 = 1e-3;
/** Aimed so far beyond touching, as a share of the strip's width, that rounding does not leave an overlap. */
const BEYOND: f64 = 1e-10;

/**
 * Improves an item's place step by step. Near a place every other item is a straight no-fit boundary, and the
 * weighted overlap a sum of slopes, so it is least where two of these lines, or one and a wall, cross: each step goes
 * to the best of the crossings within reach, looks what the overlap there really is, and goes on from there.
 */
class CornerDescent {
  /** Lines about the place: the unit way out across each, how far it lies that way, and the pair's weight. */
  private outX: StaticArray<f64> = new StaticArray<f64>(0);
  private outY: StaticArray<f64> = new StaticArray<f64>(0);
  private depth: StaticArray<f64> = new StaticArray<f64>(0);
  private weight: StaticArray<f64> = new StaticArray<f64>(0);
  private lines: i32 = 0;
  private walls: i32 = 0;
  /** Best crossing found. */
  private stepX: f64 = 0;
  private stepY: f64 = 0;
  private foreseen: f64 = 0;

  begin(): void {
    const most = layout.count + 4;
    this.outX = new StaticArray<f64>(most);
    this.outY = new StaticArray<f64>(most);
    this.depth = new StaticArray<f64>(most);
    this.weight = new StaticArray<f64>(most);
  }

  /** Betters the place of an item that `neighbours` are about. What it cost before. */
  descend(item: i32, place: Place): f64 {
    const lie = place.lie;
    const size = min(layout.halfWidthOf(lie), layout.halfHeightOf(lie));
    const homeX = place.x;
    const homeY = place.y;
    const wander = size * WANDER;
    neighbours.fillNear(lie, homeX, homeY, wander);
    const before = this.look(item, lie, homeX, homeY, Infinity);
    place.cost = before;
    let reach = size * FIRST_REACH;
    for (let step = 0; step < STEPS && place.cost > 0 && reach > size * LEAST_REACH; step++) {
      this.addWalls(item, place, reach);
      this.bestCrossing(place.cost, reach);
      if (this.foreseen > place.cost * FORESEEN) break;
      const x = layout.withinX(item, lie, place.x + this.stepX);
      const y = layout.withinY(lie, place.y + this.stepY);
      if (abs(x - homeX) > wander || abs(y - homeY) > wander) break;
      const cost = this.look(item, lie, x, y, place.cost);
      if (cost < place.cost) {
        place.x = x;
        place.y = y;
        place.cost = cost;
      } else {
        reach = SHORTER * Math.sqrt(this.stepX * this.stepX + this.stepY * this.stepY);
        this.look(item, lie, place.x, place.y, Infinity);
      }
    }
    return before;
  }

  /** Weighted overlap at a place, leaving the lines about it; stops once past `limit`, the lines unfinished. */
  private look(item: i32, lie: i32, x: f64, y: f64, limit: f64): f64 {
    const halfWidth = layout.halfWidthOf(lie) + layout.gap;
    const halfHeight = layout.halfHeightOf(lie) + layout.gap;
    const row = item * layout.count;
    const beyond = layout.width * BEYOND;
    const near = neighbours.near;
    const count = neighbours.nearCount;
    let sum: f64 = 0;
    let lines = 0;
    for (let k = 0; k < count; k++) {
      const other = near[k];
      const dy = y - layout.y[other];
      const reachY = halfHeight + layout.halfHeight[other];
      if (dy >= reachY || dy <= -reachY) continue;
      const dx = x - layout.x[other];
      const reachX = halfWidth + layout.halfWidth[other];
      if (dx >= reachX || dx <= -reachX) continue;
      const pair = pairs.known(layout.lie[other], lie);
      const region = pair.region;
      const depth = region.depthAndWayOut(dx * pair.signX, dy * pair.signY);
      const weight = layout.weights[row + other];
      if (depth > 0) {
        sum += depth * weight;
        if (sum >= limit) break;
      }
      this.outX[lines] = region.outX * pair.signX;
      this.outY[lines] = region.outY * pair.signY;
      this.depth[lines] = depth + beyond;
      this.weight[lines] = weight;
      lines++;
    }
    this.lines = lines;
    layout.work += (1 + lines) as f64;
    return sum;
  }

  /** The walls within reach, as lines that are never overlapped. */
  private addWalls(item: i32, place: Place, reach: f64): void {
    const x = place.x;
    const y = place.y;
    const halfWidth = layout.halfWidthOf(place.lie);
    const halfHeight = layout.halfHeightOf(place.lie);
    this.walls = this.lines;
    if (layout.isHeld(item)) this.addWall(1, 0, 0);
    else {
      if (x - halfWidth < reach) this.addWall(1, 0, halfWidth - x);
      if (layout.width - halfWidth - x < reach) this.addWall(-1, 0, x - (layout.width - halfWidth));
    }
    if (y - halfHeight < reach) this.addWall(0, 1, halfHeight - y);
    if (layout.length - halfHeight - y < reach) this.addWall(0, -1, y - (layout.length - halfHeight));
  }

  private addWall(outX: f64, outY: f64, depth: f64): void {
    const at = this.walls++;
    this.outX[at] = outX;
    this.outY[at] = outY;
    this.depth[at] = depth;
  }

  /** Finds the crossing within reach that is foreseen to have the least overlap. */
  private bestCrossing(current: f64, reach: f64): void {
    const outX = this.outX;
    const outY = this.outY;
    const depth = this.depth;
    const walls = this.walls;
    const square = reach * reach;
    this.foreseen = current;
    for (let i = 0; i < walls; i++) {
      const nx = outX[i];
      const ny = outY[i];
      const d = depth[i];
      if (d > 0 && d <= reach) this.consider(nx * d, ny * d);
      for (let j = i + 1; j < walls; j++) {
        const turn = nx * outY[j] - ny * outX[j];
        if (turn < PARALLEL && turn > -PARALLEL) continue;
        const dx = (d * outY[j] - ny * depth[j]) / turn;
        const dy = (nx * depth[j] - d * outX[j]) / turn;
        if (dx * dx + dy * dy <= square) this.consider(dx, dy);
      }
    }
  }

  private consider(dx: f64, dy: f64): void {
    const outX = this.outX;
    const outY = this.outY;
    const depth = this.depth;
    const weight = this.weight;
    const lines = this.lines;
    const foreseen = this.foreseen;
    let sum: f64 = 0;
    for (let k = 0; k < lines; k++) {
      const left = depth[k] - dx * outX[k] - dy * outY[k];
      if (left > 0) {
        sum += left * weight[k];
        if (sum >= foreseen) return;
      }
    }
    this.foreseen = sum;
    this.stepX = dx;
    this.stepY = dy;
  }
}

export const descent = new CornerDescent();
