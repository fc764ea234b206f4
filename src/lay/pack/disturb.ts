import type { Layout } from './layout.ts';

/** How a layout that is jammed may be disturbed. */
export type Disturbance = 'none' | 'move' | 'exchange-near' | 'exchange-far' | 'scatter';

/**
 * Two items are near each other if their middles lie within so many times the distance at which their bounds touch. With 1.2
 * 0.0, −0.1, −0.1, with 2.4 0.0, +0.5, −0.1, as `pack-strip.ts` says.
 */
const NEAR = 1.6;

/**
 * Disturbs a layout that no small cut shortens any more. Not at all: the cut alone, at another place, may do. Or one
 * large item goes somewhere else; or it changes places with another item near it, or with another large one anywhere.
 */
export function disturb(layout: Layout, ways: readonly Disturbance[]): void {
  const way = anyOf(layout, ways);
  if (way === 'none') return;
  if (way === 'scatter') {
    for (let each = 0; each < layout.count; each++) moveAnywhere(layout, each);
    return;
  }
  const bySize = Array.from(layout.areas.keys()).sort((a, b) => layout.areas[b]! - layout.areas[a]!);
  const large = bySize.slice(0, Math.max(2, Math.ceil(bySize.length / 2)));
  const item = anyOf(layout, large);
  if (way === 'move') {
    moveAnywhere(layout, item);
    return;
  }
  const partners = way === 'exchange-far' ? large : bySize.filter((other) => isNear(layout, item, other));
  const others = partners.filter((other) => layout.areas[other] !== layout.areas[item]);
  if (others.length > 0) exchange(layout, item, anyOf(layout, others));
}

function moveAnywhere(layout: Layout, item: number): void {
  const choice = Math.floor(layout.unit() * layout.choices(item));
  layout.put(item, choice, layout.unit() * layout.problem.width, layout.unit() * layout.length);
}

function exchange(layout: Layout, a: number, b: number): void {
  const [x, y] = [layout.x(a), layout.y(a)];
  layout.put(a, layout.choice(a), layout.x(b), layout.y(b));
  layout.put(b, layout.choice(b), x, y);
}

function isNear(layout: Layout, a: number, b: number): boolean {
  return (
    Math.abs(layout.x(a) - layout.x(b)) < NEAR * (layout.halfWidth(a) + layout.halfWidth(b)) &&
    Math.abs(layout.y(a) - layout.y(b)) < NEAR * (layout.halfHeight(a) + layout.halfHeight(b))
  );
}

function anyOf<T>(layout: Layout, list: readonly T[]): T {
  return list[Math.floor(layout.unit() * list.length)]!;
}
