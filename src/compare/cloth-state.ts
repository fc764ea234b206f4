import type { Spec } from '../gown-file/spec.ts';
import type { GownVersion } from './gown-version.ts';

/**
 * What the spec's `cut` says of a layer: cut from the old version, from the new one already, from another (its hash,
 * and what that version is called where it was found), not cut yet, or nothing (no layer is recorded).
 */
export type ClothState =
  | 'cut-from-old'
  | 'cut-from-new'
  | { readonly cutFrom: string; readonly found?: string }
  | 'not-cut'
  | 'not-recorded';

/** By layer of the new version. What the new spec records holds before what the old one did. */
export function clothStates(
  old: GownVersion,
  now: GownVersion,
  found: ReadonlyMap<string, { readonly name: string }>,
): ReadonlyMap<string, ClothState> {
  const cut = recordedCuts(old.spec, now.spec);
  const recorded = Object.keys(cut).length > 0;
  return new Map(
    now.layers.map(({ name }): [string, ClothState] => {
      const hash = cut[name];
      if (hash === undefined) return [name, recorded ? 'not-cut' : 'not-recorded'];
      if (isSameHash(hash, old.content)) return [name, 'cut-from-old'];
      if (isSameHash(hash, now.content)) return [name, 'cut-from-new'];
      const version = found.get(name);
      return [name, { cutFrom: hash, ...(version === undefined ? {} : { found: version.name }) }];
    }),
  );
}

/** By layer: the hash that it was cut from, in small letters. */
export function recordedCuts(old: Spec, now: Spec): Readonly<Record<string, string>> {
  const cut = Object.entries({ ...old.cut, ...now.cut });
  return Object.fromEntries(cut.map(([layer, hash]) => [layer, hash.toLowerCase()]));
}

/** A spec may record fewer or more digits than are printed. */
export function isSameHash(recorded: string, content: string): boolean {
  return recorded.startsWith(content) || content.startsWith(recorded);
}
