/** What a lay is called after; `layer` only where the cloth's layers are kept apart. */
interface LayOf {
  readonly cloth: string;
  readonly layer: string | undefined;
}

/** `crepe`, or `crepe-lining` where its layers are kept apart; no two alike, though a cloth may be called `crepe-lining`. */
export function layNames(lays: readonly LayOf[]): string[] {
  const taken = new Set(lays.flatMap(({ cloth, layer }) => (layer === undefined ? [cloth] : [])));
  return lays.map(({ cloth, layer }) => {
    if (layer === undefined) return cloth;
    const own = `${cloth}-${layer}`;
    let name = own;
    for (let next = 2; taken.has(name); next++) name = `${own}-${next}`;
    taken.add(name);
    return name;
  });
}
