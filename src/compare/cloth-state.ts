import type { GownVersion } from './gown-version.ts';

/**
 * What the spec's `cut` says of a layer: cut from the old version, from the new one already, from another (its hash),
 * not cut yet, or nothing (no layer is recorded).
 */
export type ClothState =
  | 'cut-from-old'
  | 'cut-from-new'
  | { readonly cutFrom: string }
  | 'not-cut'
  | 'not-recorded';

/** By layer of the new version. What the new spec records holds before what the old one did. */
export function clothStates(old: GownVersion, now: GownVersion): ReadonlyMap<string, ClothState> {
  const cut = { ...old.spec.cut, ...now.spec.cut };
  const recorded = Object.keys(cut).length > 0;
  return new Map(
    now.layers.map(({ name }): [string, ClothState] => {
      const hash = cut[name]?.toLowerCase();
      if (hash === undefined) return [name, recorded ? 'not-cut' : 'not-recorded'];
      if (isSameHash(hash, old.content)) return [name, 'cut-from-old'];
      return [name, isSameHash(hash, now.content) ? 'cut-from-new' : { cutFrom: hash }];
    }),
  );
}

/** A spec may record fewer or more digits than are printed. */
function isSameHash(recorded: string, content: string): boolean {
  return recorded.startsWith(content) || content.startsWith(recorded);
}
