/** Something that can only come after some others, and before some. */
export interface Ordered {
  readonly id: string;
  /** Ids of what has to be done before; ids that nothing bears are ignored. */
  readonly after: readonly string[];
  /** Ids of what has to wait for it; ids that nothing bears are ignored. */
  readonly before?: readonly string[];
}

/**
 * Puts things after what they wait for; where several could come next, the one that was listed first does, so that the
 * order is always the same. Where some wait for each other they are given as `stuck`, in the order listed.
 */
export function prerequisiteOrder<T extends Ordered>(
  things: readonly T[],
): { readonly order: readonly T[]; readonly stuck: readonly T[] } {
  const waitsFor = new Map(things.map(({ id, after }) => [id, new Set(after)]));
  for (const { id, before = [] } of things) for (const later of before) waitsFor.get(later)?.add(id);
  const done = new Set<string>();
  const order: T[] = [];
  const left = [...things];
  const isReady = (thing: T): boolean =>
    [...waitsFor.get(thing.id)!].every((id) => done.has(id) || !waitsFor.has(id));
  for (;;) {
    const next = left.findIndex(isReady);
    if (next < 0) return { order, stuck: left };
    const [thing] = left.splice(next, 1);
    order.push(thing!);
    done.add(thing!.id);
  }
}
