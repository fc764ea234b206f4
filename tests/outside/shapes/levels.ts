import type { Gore } from '../measure/gore.ts';
import { type CurvePath, samplesOf } from '../measure/path.ts';
import { cross, distance, dot, minus, type Point } from '../measure/segment.ts';

/** A place on a seam at a distance from its upper end, and the direction down the seam there. */
export function placeDown(seam: CurvePath, way: number): { point: Point; down: Point } {
  const samples = samplesOf(seam, 1);
  const found = samples.findIndex((sample) => sample.distance >= way);
  const after = found < 0 ? samples.length - 1 : Math.max(1, found);
  const [a, b] = [samples[after - 1]!, samples[after]!];
  const t = (way - a.distance) / (b.distance - a.distance);
  // Between samples a millimetre apart a seam is its chord to well under a micrometre.
  const mixed = (p: Point, q: Point) => ({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t });
  const down = mixed(a.direction, b.direction);
  const size = Math.hypot(down.x, down.y);
  return { point: mixed(a.point, b.point), down: { x: down.x / size, y: down.y / size } };
}

/**
 * How wide a gore is on the flat at a slant distance below the level waist: the level begins and ends at that distance
 * down its two seams and is square to both. Between, it is the curve whose bend changes evenly (a clothoid; a circle
 * where both angles are one).
 */
export function widthOnTheFlat(gore: Gore, slant: number, frontDrop: number, backDrop: number): number {
  const front = placeDown(gore.front, slant - frontDrop);
  const back = placeDown(gore.back, slant - backDrop);
  const chord = minus(back.point, front.point);
  const facing = Math.sign(
    cross(minus(gore.waist.to, gore.waist.from), minus(gore.hem.from, gore.waist.from)),
  );
  // Square to the seam, towards the back edge.
  const across = (down: Point): Point => ({ x: down.y * facing, y: -down.x * facing });
  const angle = (a: Point, b: Point): number => Math.atan2(cross(a, b), dot(a, b));
  return evenlyBent(
    distance(front.point, back.point),
    angle(across(front.down), chord),
    angle(chord, across(back.down)),
  );
}

/** Length of the curve over a chord that leaves it by one angle and comes back to it by the other. */
function evenlyBent(chord: number, leaves: number, returns: number): number {
  const turned = (t: number, k: number) => -leaves + (leaves + returns) * t + k * t * (1 - t);
  const over = (f: (t: number) => number) => {
    let sum = 0;
    const n = 200;
    for (let i = 0; i <= n; i++) sum += (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2) * f(i / n);
    return sum / (3 * n);
  };
  let [low, high] = [-3, 3];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (over((t) => Math.sin(turned(t, middle))) < 0) low = middle;
    else high = middle;
  }
  return chord / over((t) => Math.cos(turned(t, (low + high) / 2)));
}
