import type { Layout } from './layout.ts';
import { Neighbours } from './neighbours.ts';
import { shapeOf } from './no-fit-table.ts';
import type { Random } from './random.ts';

/** How hard one move looks for a place. */
export interface SearchEffort {
  /** Places tried anywhere on the strip, just touching another item, and around where the item lies. */
  readonly anywhere: number;
  readonly touching: number;
  readonly nearby: number;
  /** How many of the best are improved step by step. */
  readonly improved: number;
}

/** First and last step of the two rounds of improving, as shares of the item's smaller half extent. */
const FIRST_STEP = 1 / 8;
const MIDDLE_STEP = 1 / 256;
const LAST_STEP = 1 / 65536;

/** How far improving may wander, in first steps: what lies farther is not looked at. */
const WANDER = 6;

interface Place {
  lie: number;
  choice: number;
  x: number;
  y: number;
  cost: number;
}

/**
 * Looks for the place of least weighted overlap for one item while all others stay: places drawn at random, the
 * best of them improved by a pattern search whose steps grow on success and halve on failure.
 * After J. Gardeyn, G. Vanden Berghe and T. Wauters, "An open-source heuristic to reboot 2D nesting research",
 * 2025, arXiv 2509.13329, with exact penetration depths in place of their estimate and draws along the no-fit
 * boundaries, where every tight place lies.
 */
export class PlaceSearch {
  private readonly layout: Layout;
  private readonly random: Random;
  private readonly neighbours: Neighbours;
  private readonly best: Place[] = [];
  private readonly effort: SearchEffort;

  constructor(layout: Layout, random: Random, effort: SearchEffort) {
    this.effort = effort;
    this.layout = layout;
    this.random = random;
    this.neighbours = new Neighbours(layout);
  }

  /** Moves the item to the best place found, if it is better than where it lies. */
  move(item: number): void {
    const { layout } = this;
    const lie = layout.lie[item]!;
    const x = layout.x[item]!;
    const y = layout.y[item]!;
    this.neighbours.fillNear(item, lie, x, y, 0);
    const current = this.costNear(item, lie, x, y, Infinity);
    if (current === 0) return;
    this.best.length = 0;
    this.offer(lie, layout.choice[item]!, x, y, current);
    this.neighbours.fillBands(item);
    this.drawAnywhere(item);
    this.drawTouching(item);
    this.drawNearby(item);
    const size = Math.min(layout.halfWidth[item]!, layout.halfHeight[item]!);
    for (const place of this.best) this.improve(item, place, size * FIRST_STEP, size * MIDDLE_STEP);
    const best = this.best.reduce((a, b) => (b.cost < a.cost ? b : a));
    if (best.cost > 0) this.improve(item, best, size * MIDDLE_STEP, size * LAST_STEP);
    if (best.cost < current) layout.put(item, best.choice, best.x, best.y);
  }

  private drawAnywhere(item: number): void {
    const { layout, random } = this;
    for (let i = 0; i < this.effort.anywhere; i++) {
      const choice = this.anyChoice(item);
      const lie = layout.lieAt(item, choice);
      const width = layout.shapeHalfWidth[shapeOf(lie)]!;
      const height = layout.shapeHalfHeight[shapeOf(lie)]!;
      const x = random.between(width, layout.problem.width - width);
      this.consider(item, choice, lie, x, random.between(height, layout.length - height));
    }
  }

  private drawTouching(item: number): void {
    const { layout, random } = this;
    const { table } = layout;
    for (let i = 0; i < this.effort.touching; i++) {
      const choice = this.anyChoice(item);
      const lie = layout.lieAt(item, choice);
      const other = random.below(layout.count);
      if (other === item) continue;
      const region = table.prepare(layout.lie[other]!, lie);
      const at = layout.lie[other]! * table.lies + lie;
      const side = random.below(region.sides);
      const share = random.unit();
      const x = layout.x[other]! + region.touchingX(side, share) * table.signX[at]!;
      const y = layout.y[other]! + region.touchingY(side, share) * table.signY[at]!;
      if (x !== layout.withinX(item, lie, x) || y !== layout.withinY(lie, y)) continue;
      this.consider(item, choice, lie, x, y);
    }
  }

  private drawNearby(item: number): void {
    const { layout, random } = this;
    const reachX = layout.halfWidth[item]! / 2;
    const reachY = layout.halfHeight[item]! / 2;
    const x = layout.x[item]!;
    const y = layout.y[item]!;
    for (let i = 0; i < this.effort.nearby; i++) {
      const toX = x + random.between(-reachX, reachX);
      this.consider(item, layout.choice[item]!, layout.lie[item]!, toX, y + random.between(-reachY, reachY));
    }
  }

  private anyChoice(item: number): number {
    const choices = this.layout.choices(item);
    return choices === 1 ? 0 : this.random.below(choices);
  }

  private consider(item: number, choice: number, lie: number, freeX: number, freeY: number): void {
    const { layout, best, neighbours } = this;
    const x = layout.withinX(item, lie, freeX);
    const y = layout.withinY(lie, freeY);
    const limit = best.length < this.effort.improved ? Infinity : best[best.length - 1]!.cost;
    const band = neighbours.bandAt(y);
    const from = neighbours.starts[band]!;
    const to = neighbours.starts[band + 1]!;
    const cost = layout.costAmong(neighbours.items, from, to, item, lie, x, y, limit);
    if (cost < limit) this.offer(lie, choice, x, y, cost);
  }

  /** Keeps the best few, best first. */
  private offer(lie: number, choice: number, x: number, y: number, cost: number): void {
    const { best } = this;
    if (best.length === this.effort.improved) best.pop();
    let at = best.length;
    while (at > 0 && best[at - 1]!.cost > cost) at--;
    best.splice(at, 0, { lie, choice, x, y, cost });
  }

  /** Pattern search along x, y and the diagonals, from steps of `from` down to `to`. */
  private improve(item: number, place: Place, from: number, to: number): void {
    const reach = from * WANDER;
    const home = { x: place.x, y: place.y };
    const free = this.layout.problem.items[item]!.middleAt === undefined;
    this.neighbours.fillNear(item, place.lie, home.x, home.y, reach);
    let stepX = free ? from : 0;
    let stepY = from;
    while ((stepX > to || stepY > to) && place.cost > 0) {
      const axis = free ? this.random.below(4) : 1;
      const dx = axis === 1 ? 0 : stepX;
      const dy = axis === 0 ? 0 : axis === 3 ? -stepY : stepY;
      const better =
        this.step(item, place, home, reach, dx, dy) || this.step(item, place, home, reach, -dx, -dy);
      const factor = better ? 1.1 : axis < 2 ? 0.5 : Math.SQRT1_2;
      if (axis !== 1) stepX *= factor;
      if (axis !== 0) stepY *= factor;
    }
  }

  private step(
    item: number,
    place: Place,
    home: { readonly x: number; readonly y: number },
    reach: number,
    dx: number,
    dy: number,
  ): boolean {
    const x = this.layout.withinX(item, place.lie, place.x + dx);
    const y = this.layout.withinY(place.lie, place.y + dy);
    if (Math.abs(x - home.x) > reach || Math.abs(y - home.y) > reach) return false;
    const cost = this.costNear(item, place.lie, x, y, place.cost);
    if (cost >= place.cost) return false;
    place.x = x;
    place.y = y;
    place.cost = cost;
    return true;
  }

  private costNear(item: number, lie: number, x: number, y: number, limit: number): number {
    const { near, nearCount } = this.neighbours;
    return this.layout.costAmong(near, 0, nearCount, item, lie, x, y, limit);
  }
}
