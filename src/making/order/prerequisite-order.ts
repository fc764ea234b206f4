/** Something that can only come after others. */
export interface Ordered {
  readonly id: string;
  /** Ids of what has to be done before; ids that nothing bears are ignored. */
  readonly after: readonly string[];
}

/**
 * Puts things after what they wait for; where several could come next, the one that was listed first does, so that the
 * order is always the same. Where some wait for each other they are given as `stuck`, in the order listed.
 */
export function prerequisiteOrder<T extends Ordered>(
  things: readonly T[],
): { readonly order: readonly T[]; readonly stuck: readonly T[] } {
  const known = new Set(things.map((thing) => thing.id));
  const done = new Set<string>();
  const order: T[] = [];
  const left = [...things];
  for (;;) {
    const next = left.findIndex((thing) => thing.after.every((id) => done.has(id) || !known.has(id)));
    if (next < 0) return { order, stuck: left };
    const [thing] = left.splice(next, 1);
    order.push(thing!);
    done.add(thing!.id);
  }
}
