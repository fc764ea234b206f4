import { descent, Place } from './corner-descent';
import { layout } from './layout';
import { neighbours } from './neighbours';
import { pairs } from './no-fit-pairs';
import { random } from './random';

/** How far about where it lies an item is tried, as a share of its half extents. */
const NEARBY: f64 = 0.5;

/**
 * Looks for the place of least weighted overlap for one item while all others stay: places drawn at random, the
 * best of them improved from crossing to crossing of the no-fit lines.
 * After J. Gardeyn, G. Vanden Berghe and T. Wauters, "An open-source heuristic to reboot 2D nesting research",
 * 2025, arXiv 2509.13329, with exact penetration depths in place of their estimate and draws along the no-fit
 * boundaries, where every tight place lies.
 */
class PlaceSearch {
  /** Places tried anywhere on the strip, just touching another item, and around where the item lies. */
  private anywhere: i32 = 0;
  private touching: i32 = 0;
  private nearby: i32 = 0;
  /** The best drawn, best first, to be improved. */
  private best: StaticArray<Place> = new StaticArray<Place>(0);
  private kept: i32 = 0;
  private readonly here: Place = new Place();

  begin(anywhere: i32, touching: i32, nearby: i32, improved: i32): void {
    this.anywhere = anywhere;
    this.touching = touching;
    this.nearby = nearby;
    this.best = new StaticArray<Place>(improved);
    for (let i = 0; i < improved; i++) this.best[i] = new Place();
    descent.begin();
  }

  /** Moves the item to the best place found, if it is better than where it lies. */
  move(item: i32): void {
    const here = this.here;
    here.choice = layout.choice[item];
    here.lie = layout.lie[item];
    here.x = layout.x[item];
    here.y = layout.y[item];
    neighbours.about(item);
    const current = descent.descend(item, here);
    if (current === 0) return;
    let best = here;
    this.kept = 0;
    if (here.cost > 0) this.draw(item);
    for (let i = 0; i < this.kept && best.cost > 0; i++) {
      const place = this.best[i];
      descent.descend(item, place);
      if (place.cost < best.cost) best = place;
    }
    if (best.cost < current) layout.put(item, best.choice, best.x, best.y);
  }

  private draw(item: i32): void {
    for (let i = 0; i < this.anywhere; i++) this.drawAnywhere(item);
    for (let i = 0; i < this.touching; i++) this.drawTouching(item);
    for (let i = 0; i < this.nearby; i++) this.drawNearby(item);
    layout.work += (this.anywhere + this.touching + this.nearby) as f64;
  }

  private drawAnywhere(item: i32): void {
    const choice = random.below(layout.choices(item));
    const lie = layout.lieAt(item, choice);
    const width = layout.halfWidthOf(lie);
    const height = layout.halfHeightOf(lie);
    const x = layout.withinX(item, lie, random.between(width, layout.width - width));
    const y = layout.withinY(lie, random.between(height, layout.length - height));
    this.consider(choice, lie, x, y);
  }

  private drawTouching(item: i32): void {
    const pick = random.below(layout.choices(item) * layout.count);
    const choice = pick / layout.count;
    const other = pick - choice * layout.count;
    if (other === item) return;
    const lie = layout.lieAt(item, choice);
    const pair = pairs.known(layout.lie[other], lie);
    const along = random.unit() * (pair.region.sides as f64);
    const side = along as i32;
    const share = along - (side as f64);
    const x = layout.x[other] + pair.region.touchingX(side, share) * pair.signX;
    const y = layout.y[other] + pair.region.touchingY(side, share) * pair.signY;
    if (x !== layout.withinX(item, lie, x) || y !== layout.withinY(lie, y)) return;
    this.consider(choice, lie, x, y);
  }

  private drawNearby(item: i32): void {
    const reachX = layout.halfWidth[item] * NEARBY;
    const reachY = layout.halfHeight[item] * NEARBY;
    const lie = layout.lie[item];
    const x = layout.withinX(item, lie, layout.x[item] + random.between(-reachX, reachX));
    const y = layout.withinY(lie, layout.y[item] + random.between(-reachY, reachY));
    this.consider(layout.choice[item], lie, x, y);
  }

  private consider(choice: i32, lie: i32, x: f64, y: f64): void {
    const most = this.best.length;
    const limit = this.kept < most ? f32.MAX_VALUE : (this.best[most - 1].cost as f32);
    const cost = neighbours.roughCost(lie, x, y, limit);
    if (cost < limit) this.offer(choice, lie, x, y, cost as f64);
  }

  /** Keeps the best few, best first; the worst is written over. */
  private offer(choice: i32, lie: i32, x: f64, y: f64, cost: f64): void {
    const best = this.best;
    let at = this.kept < best.length ? this.kept++ : best.length - 1;
    const place = best[at];
    for (; at > 0 && best[at - 1].cost > cost; at--) best[at] = best[at - 1];
    best[at] = place;
    place.choice = choice;
    place.lie = lie;
    place.x = x;
    place.y = y;
    place.cost = cost;
  }
}

export const search = new PlaceSearch();
