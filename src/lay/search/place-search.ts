import { descent, Place } from './corner-descent';
import { drawnPlaces } from './drawn-places';
import { layout } from './layout';
import { beside, neighbours } from './neighbours';
import { ENTRY_SHIFT, pairs, SIDES_AT } from './no-fit-pairs';
import { sidesAt } from './no-fit-polygon';
import { random } from './random';

/**
 * How far from where it lies an item is tried nearby, as a share of its half extents. With 0.25 −0.9, +0.3, +0.7, with
 * 1 −0.7, +0.1, +0.8, as `../pack/pack-strip.ts` says.
 */
const NEARBY: f64 = 0.5;

/**
 * Looks for the place of least weighted overlap for one item while all others stay. Places are drawn at random and
 * priced roughly, and the best few are improved step by step: a general method, whose source `../pack/pack-strip.ts` names.
 * Overlap is the exact penetration depth here. Most places are drawn on the
 * boundaries of no-fit polygons, as every tight place lies on two of them.
 */
class PlaceSearch {
  /** How many places are drawn anywhere on the strip, touching another item, and near where the item lies. */
  private anywhere: i32 = 0;
  private touching: i32 = 0;
  private nearby: i32 = 0;
  /** The cheapest places drawn, the best first. */
  private best: StaticArray<Place> = new StaticArray<Place>(0);
  private kept: i32 = 0;
  private readonly here: Place = new Place();

  begin(anywhere: i32, touching: i32, nearby: i32, improved: i32): void {
    this.anywhere = anywhere;
    this.touching = touching;
    this.nearby = nearby;
    this.best = new StaticArray<Place>(improved);
    for (let i = 0; i < improved; i++) this.best[i] = new Place();
    drawnPlaces.begin(anywhere + touching + nearby);
    descent.begin();
  }

  /** Moves the item to the best place found, if that is better than where it lies. */
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
    const choices = layout.choices(item);
    this.drawNearby(item);
    this.consider(item, layout.choice[item], layout.lie[item]);
    for (let choice = 0; choice < choices; choice++) {
      const lie = layout.lieAt(item, choice);
      this.drawTouching(item, lie, shareOf(this.touching, choice, choices));
      this.drawAnywhere(lie, shareOf(this.anywhere, choice, choices));
      this.consider(item, choice, lie);
    }
    layout.work += (this.anywhere + this.touching + this.nearby) as f64;
  }

  /** Near where the item lies, in its present attitude. */
  private drawNearby(item: i32): void {
    const lie = layout.lie[item];
    const reachX = layout.halfWidth[item] * NEARBY;
    const reachY = layout.halfHeight[item] * NEARBY;
    const x = layout.x[item] - reachX;
    const y = layout.y[item] - reachY;
    const low = lowest(lie);
    const high = highest(lie);
    for (let i = 0; i < this.nearby; i++) {
      const place = beside((x + 2 * reachX * random.unit()) as f32, (y + 2 * reachY * random.unit()) as f32);
      drawnPlaces.add(f32x4.pmax(low, f32x4.pmin(place, high)), true);
    }
  }

  private drawAnywhere(lie: i32, count: i32): void {
    const low = lowest(lie);
    const room = f32x4.sub(highest(lie), low);
    for (let i = 0; i < count; i++) {
      const share = beside(random.unit() as f32, random.unit() as f32);
      drawnPlaces.add(f32x4.add(low, f32x4.mul(room, share)), true);
    }
  }

  /**
   * Touching another item: on the boundary of their no-fit polygon. One random number chooses the other item, then a side
   * of the polygon, then a point of that side: its range is divided among the items, an item's part among the sides.
   */
  private drawTouching(item: i32, lie: i32, count: i32): void {
    const entries = pairs.roughOf(lie);
    const low = lowest(lie);
    const high = highest(lie);
    const others = layout.count as u64;
    for (let i = 0; i < count; i++) {
      const pick = (random.bits() as u64) * others;
      const other = (pick >>> 32) as i32;
      const entry = entries + (layout.lie[other] << ENTRY_SHIFT);
      const sides = load<usize>(entry, SIDES_AT);
      const along = (pick & 0xffffffff) * (sidesAt(sides) as u64);
      const side = v128.load((sides + ((along >>> 32) << 4)) as usize);
      const share = f32x4.splat((along as u32 as f32) / 4294967296);
      const touching = f32x4.add(side, f32x4.mul(v128.shuffle<f32>(side, side, 2, 3, 2, 3), share));
      const flips = v128.and(v128.load64_zero(entry), f32x4.splat(-0.0));
      const place = f32x4.add(
        v128.load64_zero(changetype<usize>(layout.places) + (other << 3)),
        v128.xor(touching, flips),
      );
      const within = v128.and(f32x4.ge(place, low), f32x4.le(place, high));
      drawnPlaces.add(place, (i64x2.extract_lane(within, 0) === -1) & (other !== item));
    }
  }

  /** Keeps the best few of the places drawn. */
  private consider(item: i32, choice: i32, lie: i32): void {
    const most = this.best.length;
    const limit = this.kept < most ? f32.MAX_VALUE : (this.best[most - 1].cost as f32);
    if (!layout.isFree(item)) drawnPlaces.snap(item, lie);
    drawnPlaces.price(item, lie, limit);
    for (let k = 0; k < drawnPlaces.count; k++) {
      const cost = drawnPlaces.costAt(k);
      if (this.kept < most || cost < this.best[most - 1].cost) this.offer(item, choice, lie, k, cost);
    }
    drawnPlaces.count = 0;
  }

  /** Keeps the best few, best first; the worst is written over. */
  private offer(item: i32, choice: i32, lie: i32, drawn: i32, cost: f64): void {
    const best = this.best;
    let at = this.kept < best.length ? this.kept++ : best.length - 1;
    const place = best[at];
    for (; at > 0 && best[at - 1].cost > cost; at--) best[at] = best[at - 1];
    best[at] = place;
    place.choice = choice;
    place.lie = lie;
    place.x = layout.withinX(item, lie, drawnPlaces.xAt(drawn));
    place.y = layout.withinY(lie, drawnPlaces.yAt(drawn));
    place.cost = cost;
  }
}

/** How many of `count` draws one of several choices gets. */
function shareOf(count: i32, choice: i32, choices: i32): i32 {
  return (count * (choice + 1)) / choices - (count * choice) / choices;
}

/** The least place that the middle of an item in this lie may have, in single precision. */
function lowest(lie: i32): v128 {
  return beside(layout.halfWidthOf(lie) as f32, layout.halfHeightOf(lie) as f32);
}

/** The greatest such place. */
function highest(lie: i32): v128 {
  return beside(
    (layout.width - layout.halfWidthOf(lie)) as f32,
    (layout.length - layout.halfHeightOf(lie)) as f32,
  );
}

export const search = new PlaceSearch();
