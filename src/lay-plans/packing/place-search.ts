import { CornerDescent, type Place } from './corner-descent.ts';
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

/**
 * Looks for the place of least weighted overlap for one item while all others stay: places drawn at random, the
 * best of them improved from crossing to crossing of the no-fit lines.
 * After J. Gardeyn, G. Vanden Berghe and T. Wauters, "An open-source heuristic to reboot 2D nesting research",
 * 2025, arXiv 2509.13329, with exact penetration depths in place of their estimate and draws along the no-fit
 * boundaries, where every tight place lies.
 */
export class PlaceSearch {
  private readonly layout: Layout;
  private readonly random: Random;
  private readonly neighbours: Neighbours;
  private readonly descent: CornerDescent;
  private readonly best: Place[];
  private readonly here = noPlace();
  private kept = 0;
  private readonly effort: SearchEffort;

  constructor(layout: Layout, random: Random, effort: SearchEffort) {
    this.effort = effort;
    this.best = Array.from({ length: effort.improved }, noPlace);
    this.layout = layout;
    this.random = random;
    this.neighbours = new Neighbours(layout);
    this.descent = new CornerDescent(layout, this.neighbours);
  }

  /** Moves the item to the best place found, if it is better than where it lies. */
  move(item: number): void {
    const { layout, here } = this;
    here.lie = layout.lie[item]!;
    here.choice = layout.choice[item]!;
    here.x = layout.x[item]!;
    here.y = layout.y[item]!;
    this.neighbours.about(item);
    const current = this.descent.descend(item, here);
    if (current === 0) return;
    let best = here;
    this.kept = 0;
    if (here.cost > 0) this.draw(item);
    for (let i = 0; i < this.kept && best.cost > 0; i++) {
      const place = this.best[i]!;
      this.descent.descend(item, place);
      if (place.cost < best.cost) best = place;
    }
    if (best.cost < current) layout.put(item, best.choice, best.x, best.y);
  }

  private draw(item: number): void {
    this.drawAnywhere(item);
    this.drawTouching(item);
    this.drawNearby(item);
  }

  private drawAnywhere(item: number): void {
    const { layout, random } = this;
    for (let i = 0; i < this.effort.anywhere; i++) {
      const choice = this.anyChoice(item);
      const lie = layout.lieAt(item, choice);
      const width = layout.shapeHalfWidth[shapeOf(lie)]!;
      const height = layout.shapeHalfHeight[shapeOf(lie)]!;
      const x = layout.withinX(item, lie, random.between(width, layout.problem.width - width));
      const y = layout.withinY(lie, random.between(height, layout.length - height));
      this.consider(choice, lie, x, y);
    }
  }

  private drawTouching(item: number): void {
    const { layout, random } = this;
    const { table, count } = layout;
    for (let i = 0; i < this.effort.touching; i++) {
      const pick = random.below(layout.choices(item) * count);
      const choice = Math.floor(pick / count);
      const other = pick - choice * count;
      if (other === item) continue;
      const lie = layout.lieAt(item, choice);
      const region = table.prepare(layout.lie[other]!, lie);
      const at = layout.lie[other]! * table.lies + lie;
      const along = random.unit() * region.sides;
      const side = Math.floor(along);
      const x = layout.x[other]! + region.touchingX(side, along - side) * table.signX[at]!;
      const y = layout.y[other]! + region.touchingY(side, along - side) * table.signY[at]!;
      if (x !== layout.withinX(item, lie, x) || y !== layout.withinY(lie, y)) continue;
      this.consider(choice, lie, x, y);
    }
  }

  private drawNearby(item: number): void {
    const { layout, random } = this;
    const reachX = layout.halfWidth[item]! / 2;
    const reachY = layout.halfHeight[item]! / 2;
    const choice = layout.choice[item]!;
    const lie = layout.lie[item]!;
    for (let i = 0; i < this.effort.nearby; i++) {
      const x = layout.withinX(item, lie, layout.x[item]! + random.between(-reachX, reachX));
      const y = layout.withinY(lie, layout.y[item]! + random.between(-reachY, reachY));
      this.consider(choice, lie, x, y);
    }
  }

  private anyChoice(item: number): number {
    const choices = this.layout.choices(item);
    return choices === 1 ? 0 : this.random.below(choices);
  }

  private consider(choice: number, lie: number, x: number, y: number): void {
    const { best } = this;
    const limit = this.kept < best.length ? Infinity : best[best.length - 1]!.cost;
    const cost = this.neighbours.roughCost(lie, x, y, limit);
    if (cost < limit) this.offer(lie, choice, x, y, cost);
  }

  /** Keeps the best few, best first; the worst is written over. */
  private offer(lie: number, choice: number, x: number, y: number, cost: number): void {
    const { best } = this;
    let at = this.kept < best.length ? this.kept++ : best.length - 1;
    const place = best[at]!;
    for (; at > 0 && best[at - 1]!.cost > cost; at--) best[at] = best[at - 1]!;
    best[at] = place;
    place.lie = lie;
    place.choice = choice;
    place.x = x;
    place.y = y;
    place.cost = cost;
  }
}

function noPlace(): Place {
  return { lie: 0, choice: 0, x: Number.NaN, y: Number.NaN, cost: Infinity };
}
