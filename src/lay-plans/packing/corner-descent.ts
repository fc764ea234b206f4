import type { Layout } from './layout.ts';
import type { Neighbours } from './neighbours.ts';
import { shapeOf } from './no-fit-table.ts';

/** Where an item may lie, and the weighted overlap that it has there. */
export interface Place {
  lie: number;
  choice: number;
  x: number;
  y: number;
  cost: number;
}

/** How far one descent may wander, and its first step's reach, as shares of the item's smaller half extent. */
const WANDER = 1;
const FIRST_REACH = 0.5;
/** A step that does not better the place is tried again this much shorter. */
const SHORTER = 0.25;
const LEAST_REACH = 1e-4;
const STEPS = 12;
/** A step is taken only if it is foreseen to leave at most this share of the overlap. */
const FORESEEN = 0.999;
/** Lines that meet at less than this (sine of the angle) are taken as parallel. */
const PARALLEL = 1e-3;
/** Aimed so far beyond touching, as a share of the strip's width, that rounding does not leave an overlap. */
const BEYOND = 1e-10;

/**
 * Improves an item's place step by step. Near a place every other item is a straight no-fit boundary, and the
 * weighted overlap a sum of slopes, so it is least where two of these lines, or one and a wall, cross: each step goes
 * to the best of the crossings within reach, looks what the overlap there really is, and goes on from there.
 */
export class CornerDescent {
  private readonly layout: Layout;
  private readonly neighbours: Neighbours;
  /** Lines about the place: the unit way out across each, how far it lies that way, and the pair's weight. */
  private readonly outX: Float64Array;
  private readonly outY: Float64Array;
  private readonly depth: Float64Array;
  private readonly weight: Float64Array;
  private lines = 0;
  private walls = 0;
  /** Best crossing found. */
  private stepX = Number.NaN;
  private stepY = Number.NaN;
  private foreseen = Number.NaN;

  constructor(layout: Layout, neighbours: Neighbours) {
    this.layout = layout;
    this.neighbours = neighbours;
    const most = layout.count + 4;
    this.outX = new Float64Array(most);
    this.outY = new Float64Array(most);
    this.depth = new Float64Array(most);
    this.weight = new Float64Array(most);
  }

  /** Betters the place. What it cost before. */
  descend(item: number, place: Place): number {
    const { layout } = this;
    const { halfWidth, halfHeight } = this.halves(place.lie);
    const size = Math.min(halfWidth, halfHeight);
    const home = { x: place.x, y: place.y };
    const wander = size * WANDER;
    this.neighbours.fillNear(place.lie, home.x, home.y, wander);
    const before = this.look(item, place.lie, place.x, place.y, Infinity);
    place.cost = before;
    let reach = size * FIRST_REACH;
    for (let step = 0; step < STEPS && place.cost > 0 && reach > size * LEAST_REACH; step++) {
      this.addWalls(item, place, halfWidth, halfHeight, reach);
      this.bestCrossing(place.cost, reach);
      if (this.foreseen > place.cost * FORESEEN) break;
      const x = layout.withinX(item, place.lie, place.x + this.stepX);
      const y = layout.withinY(place.lie, place.y + this.stepY);
      if (Math.abs(x - home.x) > wander || Math.abs(y - home.y) > wander) break;
      const cost = this.look(item, place.lie, x, y, place.cost);
      if (cost < place.cost) {
        place.x = x;
        place.y = y;
        place.cost = cost;
      } else {
        reach = SHORTER * Math.sqrt(this.stepX * this.stepX + this.stepY * this.stepY);
        this.look(item, place.lie, place.x, place.y, Infinity);
      }
    }
    return before;
  }

  private halves(lie: number): { halfWidth: number; halfHeight: number } {
    const shape = shapeOf(lie);
    return { halfWidth: this.layout.shapeHalfWidth[shape]!, halfHeight: this.layout.shapeHalfHeight[shape]! };
  }

  /** Weighted overlap at a place, leaving the lines about it; stops once past `limit`, the lines unfinished. */
  private look(item: number, lie: number, x: number, y: number, limit: number): number {
    const { layout } = this;
    const { table, weights, problem } = layout;
    const { near, nearCount } = this.neighbours;
    const shape = shapeOf(lie);
    const halfWidth = layout.shapeHalfWidth[shape]! + problem.gap;
    const halfHeight = layout.shapeHalfHeight[shape]! + problem.gap;
    const row = item * layout.count;
    const beyond = problem.width * BEYOND;
    let sum = 0;
    this.lines = 0;
    layout.work++;
    for (let k = 0; k < nearCount; k++) {
      const other = near[k]!;
      const dy = y - layout.y[other]!;
      const reachY = halfHeight + layout.halfHeight[other]!;
      if (dy >= reachY || dy <= -reachY) continue;
      const dx = x - layout.x[other]!;
      const reachX = halfWidth + layout.halfWidth[other]!;
      if (dx >= reachX || dx <= -reachX) continue;
      const at = layout.lie[other]! * table.lies + lie;
      const region = table.regions[at] ?? table.prepare(layout.lie[other]!, lie);
      const signX = table.signX[at]!;
      const signY = table.signY[at]!;
      const depth = region.depthAndWayOut(dx * signX, dy * signY);
      layout.work++;
      const weight = weights[row + other]!;
      if (depth > 0) {
        sum += depth * weight;
        if (sum >= limit) return sum;
      }
      const line = this.lines++;
      this.outX[line] = region.outX * signX;
      this.outY[line] = region.outY * signY;
      this.depth[line] = depth + beyond;
      this.weight[line] = weight;
    }
    return sum;
  }

  /** The walls within reach, as lines that are never overlapped. */
  private addWalls(
    item: number,
    { x, y }: Place,
    halfWidth: number,
    halfHeight: number,
    reach: number,
  ): void {
    const { problem, length } = this.layout;
    this.walls = this.lines;
    if (problem.items[item]!.middleAt !== undefined) this.addWall(1, 0, 0);
    else {
      if (x - halfWidth < reach) this.addWall(1, 0, halfWidth - x);
      if (problem.width - halfWidth - x < reach) this.addWall(-1, 0, x - (problem.width - halfWidth));
    }
    if (y - halfHeight < reach) this.addWall(0, 1, halfHeight - y);
    if (length - halfHeight - y < reach) this.addWall(0, -1, y - (length - halfHeight));
  }

  private addWall(outX: number, outY: number, depth: number): void {
    const at = this.walls++;
    this.outX[at] = outX;
    this.outY[at] = outY;
    this.depth[at] = depth;
  }

  /** Finds the crossing within reach that is foreseen to have the least overlap. */
  private bestCrossing(current: number, reach: number): void {
    const { outX, outY, depth, walls } = this;
    const square = reach * reach;
    this.foreseen = current;
    for (let i = 0; i < walls; i++) {
      const nx = outX[i]!;
      const ny = outY[i]!;
      const d = depth[i]!;
      if (d > 0 && d <= reach) this.consider(nx * d, ny * d);
      for (let j = i + 1; j < walls; j++) {
        const turn = nx * outY[j]! - ny * outX[j]!;
        if (turn < PARALLEL && turn > -PARALLEL) continue;
        const dx = (d * outY[j]! - ny * depth[j]!) / turn;
        const dy = (nx * depth[j]! - d * outX[j]!) / turn;
        if (dx * dx + dy * dy <= square) this.consider(dx, dy);
      }
    }
  }

  private consider(dx: number, dy: number): void {
    const { outX, outY, depth, weight, lines, foreseen } = this;
    let sum = 0;
    for (let k = 0; k < lines; k++) {
      const left = depth[k]! - dx * outX[k]! - dy * outY[k]!;
      if (left > 0) {
        sum += left * weight[k]!;
        if (sum >= foreseen) return;
      }
    }
    this.foreseen = sum;
    this.stepX = dx;
    this.stepY = dy;
  }
}
